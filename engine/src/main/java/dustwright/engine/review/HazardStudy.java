package dustwright.engine.review;

import dustwright.engine.finding.Finding;
import dustwright.engine.interlock.DefaultSequence;
import dustwright.engine.interlock.Options;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.sheet.Collecting;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The hazard study of a plant: lines that its drawing, its checks and its control sequence give rise to, joined with what a team has written
 * to them. It asks; people judge.
 *
 * @param rows in the order of the plant, then the team's own
 */
public record HazardStudy(Notes notes, List<Row> rows) {
    public HazardStudy {
        rows = List.copyOf(rows);
    }

    /** Node of a row that is not the plant's and names no part of it. */
    public static final String NO_NODE = "no part of the plant is named";

    /** Where a row comes from. */
    public enum Origin {
        /** As the plant gives rise to it. */
        PLANT("from the plant"),
        /** The same, with words of the team in place of some. */
        REWORDED("reworded by the team"),
        /** Written by the team. */
        TEAM("the team's own"),
        /** The plant no longer gives rise to it; what the team wrote is kept. */
        GONE("no line of this plant; kept");

        private final String words;

        Origin(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    /**
     * A row of the study.
     *
     * @param line as it stands, with the team's words where it has any
     * @param guards safeguards that the program finds, whatever the team writes
     * @param found what the program finds missing, whatever the team writes
     * @param note what the team decided
     * @param risk by the team's matrix; empty while severity and likelihood are not both judged
     */
    public record Row(
            Deviation line, List<String> guards, List<String> found, Origin origin, Note note, Optional<String> risk) {}

    /** Joins the lines of a plant with what a team has written. */
    public static HazardStudy of(List<Deviation> lines, Notes notes) {
        List<Row> rows = new ArrayList<>();
        Map<String, Note> open = new LinkedHashMap<>(notes.byId());
        for (Deviation line : lines) {
            Note note = Optional.ofNullable(open.remove(line.id())).orElse(Note.NOTHING);
            rows.add(new Row(
                    note.reword(line),
                    line.safeguards(),
                    line.missing(),
                    note.rewords() ? Origin.REWORDED : Origin.PLANT,
                    note,
                    risk(notes, note)));
        }
        open.forEach((id, note) -> rows.add(new Row(
                note.reword(new Deviation(id, NO_NODE, "", "", "", List.of(), List.of())),
                List.of(),
                List.of(),
                note.deviation().isPresent() ? Origin.TEAM : Origin.GONE,
                note,
                risk(notes, note))));
        return new HazardStudy(notes, rows);
    }

    private static Optional<String> risk(Notes notes, Note note) {
        return note.severity()
                .flatMap(s -> note.likelihood().map(l -> notes.matrix().risk(s, l)));
    }

    /** Rows that nobody has judged yet. */
    public long notJudged() {
        return rows.stream().filter(r -> r.risk().isEmpty()).count();
    }

    /** Rows whose risk asks for an action and that name none. */
    public long withoutAction() {
        return rows.stream()
                .filter(r -> r.risk()
                                .filter(k -> !notes.matrix().accepted().contains(k))
                                .isPresent()
                        && r.note().action().isEmpty())
                .count();
    }

    /**
     * The lines a plant gives rise to, without words of any team.
     *
     * @param findings what the plant's checks came to, one per requirement and place
     * @param own sequences that stations are controlled by, by station; the others are asked of the default one, and every line says of which
     */
    public static List<Deviation> lines(Plant plant, List<Finding> findings, Map<String, Controlled> own) {
        List<Deviation> lines = new ArrayList<>();
        for (Collecting here : Collecting.all(plant)) {
            if (here.dusts().isEmpty()) {
                continue;
            }
            Asking asking = new Asking(here, findings, here.station().flatMap(s -> sequence(plant, s, own)));
            lines.addAll(new UserLines(plant, here, asking).lines());
            here.station().ifPresent(s -> lines.addAll(new StationLines(here, s, asking).lines()));
        }
        return lines;
    }

    /** Its own sequence, else the one a station begins with; none for more producers than that is made for. */
    private static Optional<Controlled> sequence(Plant plant, Station station, Map<String, Controlled> own) {
        if (own.containsKey(station.id())) {
            return Optional.ofNullable(own.get(station.id()));
        }
        if (station.producers().isEmpty() || station.producers().size() > 2) {
            return Optional.empty();
        }
        return Optional.of(new Controlled(
                DefaultSequence.of(plant.name() + ", station " + station.id(), Options.of(station, Set.of())),
                Controlled.DEFAULT));
    }
}
