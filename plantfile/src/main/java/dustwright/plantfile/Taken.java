package dustwright.plantfile;

import dustwright.engine.finding.Assumption;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.plantfile.keys.Group;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Defaults taken while a plant was read. The same default at many parts becomes one assumption that names them. */
final class Taken {
    private static final int MOST_NAMED = 8;

    private final Map<What, List<String>> ids = new LinkedHashMap<>();

    private record What(Place.Kind kind, String part, String what, Source basis) {}

    void record(Group group, String id, String what, Source basis) {
        ids.computeIfAbsent(new What(group.place(), group.words(), what, basis), k -> new ArrayList<>())
                .add(id);
    }

    /** Something that is taken at a place whatever the file says. */
    void record(Place place, String what, Source basis) {
        ids.computeIfAbsent(new What(place.kind(), "", what, basis), k -> new ArrayList<>())
                .add(place.id());
    }

    List<Assumption> assumptions() {
        return ids.entrySet().stream()
                .map(e -> assumption(e.getKey(), e.getValue()))
                .toList();
    }

    private static Assumption assumption(What what, List<String> ids) {
        List<String> distinct = ids.stream().distinct().toList();
        if (distinct.size() == 1) {
            return new Assumption(new Place(what.kind(), distinct.get(0)), what.what(), what.basis());
        }
        String shown = String.join(", ", distinct.subList(0, Math.min(MOST_NAMED, distinct.size())));
        String more = distinct.size() > MOST_NAMED ? " and " + (distinct.size() - MOST_NAMED) + " more" : "";
        return new Assumption(new Place(what.kind(), ""), what.what() + " (" + shown + more + ")", what.basis());
    }
}
