package dustwright.documents.report;

import dustwright.documents.writing.Element;
import dustwright.engine.coverage.Answer;
import dustwright.engine.coverage.Answer.Worst;
import dustwright.engine.coverage.Coverage;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Place;
import dustwright.engine.plant.Plant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The least margin of every inlet and every run, by number of users, over all sets and conditions. */
final class CoverMatrix {
    private final Plant plant;
    private final Coverage coverage;

    CoverMatrix(Plant plant, Coverage coverage) {
        this.plant = plant;
        this.coverage = coverage;
    }

    Element key(String what) {
        return Parts.paragraph(
                "cap",
                what
                        + " Over all sets and every condition asked; the last column names the worst set of the row. An empty field:"
                        + " nothing is asked there, or not shown.");
    }

    Element inlets() {
        return rows(
                "Inlet",
                plant.inlets().stream().map(i -> i.id()).toList(),
                id -> place -> (place.kind() == Place.Kind.INLET && place.id().equals(id))
                        || (place.kind() == Place.Kind.HOSE && place.id().equals("at " + id)));
    }

    Element runs() {
        return rows(
                "Run",
                plant.runs().stream().map(r -> r.id()).toList(),
                id -> place -> place.kind() == Place.Kind.RUN && place.id().equals(id));
    }

    /** Which places a row is about. */
    @FunctionalInterface
    private interface About {
        Predicate<Place> of(String id);
    }

    private Element rows(String head, List<String> ids, About about) {
        List<Table.Column> columns = new ArrayList<>(List.of(Table.words(head)));
        List<Integer> users = coverage.question().users();
        users.forEach(n -> columns.add(Table.sized(n + (n == 1 ? " user" : " users"), "tight")));
        columns.add(Table.words("Tightest with"));
        Table table = Table.of(columns.toArray(Table.Column[]::new));
        for (String id : ids) {
            Predicate<Place> here = about.of(id);
            List<Object> row = new ArrayList<>(List.of(id));
            users.forEach(n -> row.add(least(here, n).<Object>map(Parts::margin).orElse("")));
            row.add(users.stream()
                    .flatMap(n -> least(here, n).stream())
                    .min(Comparator.comparingDouble(Finding::margin))
                    .map(Finding::state)
                    .orElse(""));
            table.row(row.toArray());
        }
        return table.element("");
    }

    private Optional<Finding> least(Predicate<Place> here, int users) {
        Stream<Answer> answers = coverage.answers().stream().filter(a -> a.users() == users);
        return answers.flatMap(a -> a.worst().stream())
                .map(Worst::finding)
                .filter(f -> here.test(f.where()))
                .min(Comparator.comparingDouble(Finding::margin));
    }
}
