package dustwright.studio;

import dustwright.plantfile.PlantEditor;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What changed since the last accepted revision, as it is written in the plant file.
 *
 * @param revision 0 where none was accepted
 * @param parts of the plant file that changed, where they are neither tubes nor inlets nor stations
 */
record Since(int revision, String at, String author, List<Piece> pieces, List<String> parts) {
    static final Since NEVER = new Since(0, "", "", List.of(), List.of());

    private static final Map<String, String> KINDS = Map.of("runs", "run", "inlets", "inlet", "stations", "station");

    /** One piece: {@code new}, {@code changed} or {@code gone}. */
    record Piece(String kind, String id, String what) {}

    /** Compares the text of a revision with the one worked on. */
    static Since of(Kept.Revision revision, String now) {
        List<Piece> pieces = new ArrayList<>();
        List<String> parts = new ArrayList<>();
        for (Piece part : different("", values(revision.text(), ""), values(now, ""))) {
            String kind = KINDS.get(part.id());
            if (kind == null) {
                parts.add(part.id());
            } else {
                pieces.addAll(different(kind, values(revision.text(), part.id()), values(now, part.id())));
            }
        }
        return new Since(revision.number(), revision.at(), revision.author(), pieces, parts);
    }

    private static Map<String, String> values(String text, String path) {
        Map<String, String> values = new LinkedHashMap<>();
        PlantEditor.values(text, path).forEach(written -> values.put(written.key(), written.onOneLine()));
        return values;
    }

    /** What is new, changed or gone of two sets of pieces by their ids. */
    static <T> List<Piece> different(String kind, Map<String, T> before, Map<String, T> now) {
        List<Piece> pieces = new ArrayList<>();
        now.forEach((id, written) -> {
            if (!written.equals(before.get(id))) {
                pieces.add(new Piece(kind, id, before.containsKey(id) ? "changed" : "new"));
            }
        });
        before.keySet().stream()
                .filter(id -> !now.containsKey(id))
                .forEach(id -> pieces.add(new Piece(kind, id, "gone")));
        return pieces;
    }
}
