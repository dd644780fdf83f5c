package dustwright.plantfile;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.States;
import dustwright.engine.finding.Outcome;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.plant.Plant;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.sheet.DustWays;
import dustwright.engine.sheet.DustWeek;
import dustwright.engine.sheet.Sheets;
import dustwright.plantfile.keys.Group;
import dustwright.plantfile.keys.Key;
import dustwright.plantfile.keys.PlantKeys;
import dustwright.plantfile.keys.Shape;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.yaml.snakeyaml.Yaml;

/** Law: every key of a plant may take both ends of its range as documented: the file has a fault, or every sheet is written. */
class RangeEndsTest {
    private final Set<String> tried = new TreeSet<>();
    private final Set<String> broken = new TreeSet<>();
    private Map<String, Object> plant = Map.of();

    @SuppressWarnings("unchecked")
    private static Map<String, Object> map(Object tree) {
        return (Map<String, Object>) tree;
    }

    private static Map<String, Object> with(Map<String, Object> tree, List<String> path, Object value) {
        Map<String, Object> copy = new LinkedHashMap<>(tree);
        String first = path.get(0);
        copy.put(
                first,
                path.size() == 1
                        ? value
                        : with(map(Objects.requireNonNull(copy.get(first))), path.subList(1, path.size()), value));
        return copy;
    }

    private static List<String> further(List<String> path, String name) {
        return Stream.concat(path.stream(), Stream.of(name)).toList();
    }

    /** Of things that are told apart by ids only the first is walked through. */
    private void walk(Map<String, Object> tree, Group group, List<String> path) {
        for (Key key : group.keys()) {
            Object value = tree.get(key.name());
            List<String> at = further(path, key.name());
            Shape shape = key.shape() instanceof Shape.Sourced sourced ? sourced.value() : key.shape();
            if (shape instanceof Shape.Amount amount) {
                ends(at, amount);
            } else if (value instanceof Map && shape instanceof Shape.Named named) {
                map(value).entrySet().stream()
                        .findFirst()
                        .ifPresent(entry -> into(entry.getValue(), named.entry(), further(at, entry.getKey())));
            } else {
                into(value, shape, at);
            }
        }
    }

    private void into(@Nullable Object value, Shape shape, List<String> path) {
        if (!(value instanceof Map)) {
            return;
        }
        if (shape instanceof Shape.Keys keys) {
            walk(map(value), keys.group(), path);
        } else if (shape instanceof Shape.Kinds kinds) {
            Object kind = map(value).get("kind");
            kinds.groups().stream()
                    .filter(g -> g.key("kind")
                            .map(Key::shape)
                            .filter(Shape.Word.class::isInstance)
                            .map(Shape.Word.class::cast)
                            .filter(word -> word.words().contains(String.valueOf(kind)))
                            .isPresent())
                    .findFirst()
                    .ifPresent(group -> walk(map(value), group, path));
        }
    }

    private void ends(List<String> path, Shape.Amount amount) {
        Shape.Range range = amount.ranges().get(0);
        for (String end : List.of(range.least(), range.greatest())) {
            if (PlantReader.read(new Yaml().dump(with(plant, path, end))) instanceof Reading.Read read) {
                tried.add(String.join("/", path));
                try {
                    sheets(read.plant());
                } catch (RuntimeException fault) {
                    broken.add(path + ": " + end + ": " + fault);
                }
            }
        }
    }

    private static Optional<DutyPoint> solved(Plant plant, List<String> open) {
        try {
            return DutyPointSolver.solve(plant, States.open(plant, open, FilterCondition.NORMAL))
                    .match(Optional::of, why -> Optional.empty());
        } catch (IllegalArgumentException outsideFormula) {
            return Optional.empty();
        }
    }

    /** With dust arriving, over the weeks of a year, and with all inlets shut. */
    private static void sheets(Plant plant) {
        Optional<DutyPoint> shut = solved(plant, List.of());
        List<DutyPoint> duties = new ArrayList<>(shut.stream().toList());
        plant.usage().designSets().stream()
                .findFirst()
                .flatMap(set -> solved(plant, set.open()))
                .ifPresent(duties::add);
        DustWays ways = DustWays.of(plant, open -> new Outcome.NotSolved<>("not asked"));
        List<DustWeek> weeks = plant.stations().stream()
                .flatMap(station -> DustWeek.of(plant, station, ways).stream())
                .toList();
        Sheets.of(plant, new Sheets.Solved(duties, shut, duties, shut.isPresent()), ways, weeks);
    }

    @ParameterizedTest
    @ValueSource(strings = {"bakery", "cement-packing", "plastics", "aluminium-finishing"})
    void both_ends_of_every_range_give_a_fault_or_all_sheets(String example) throws IOException {
        plant = map(new Yaml().load(Files.readString(Path.of("..", "examples", example, "plant.yaml"))));
        walk(plant, PlantKeys.TOP, List.of());
        assertThat(tried).hasSizeGreaterThan(20);
        assertThat(broken).isEmpty();
    }
}
