package dustwright.engine.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.coverage.Remedy;
import dustwright.engine.plant.Plant;
import dustwright.engine.sizing.Curve.Point;
import dustwright.engine.sizing.OneChange.Changes;
import dustwright.engine.sizing.SearchTest.Drawn;
import dustwright.engine.sizing.SearchTest.Lobes;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What is asked besides the cheapest sizes, against trying every design in every set: the curve, the remedies, one change. */
class BesidesTest {
    private static final int USERS = 2;

    @Test
    void every_point_of_the_curve_is_the_cheapest_for_its_number_of_users() {
        int rising = 0;
        for (int seed = 0; seed < 16; seed++) {
            Drawn drawn = SearchTest.drawn(seed);
            Curve curve = Curve.of(drawn.plant(), drawn.choices(), USERS, n -> new Lobes(n, 0), Patience.endless());
            assertThat(curve.points()).extracting(Point::users).containsExactly(1, 2);
            for (Point point : curve.points()) {
                double least = SearchTest.leastByTrying(drawn, new Lobes(point.users(), 0));
                assertThat(point.sizing().best().map(Design::cost).orElse(Double.POSITIVE_INFINITY))
                        .as("seed " + seed + ", " + point.users() + " users")
                        .isCloseTo(least, within(1e-9 * Math.min(least, 1e9)));
            }
            rising += costs(curve.points().get(0)) < costs(curve.points().get(1)) ? 1 : 0;
        }
        assertThat(rising).isPositive();
    }

    private static double costs(Point point) {
        return point.sizing().best().map(Design::cost).orElse(Double.POSITIVE_INFINITY);
    }

    @Test
    void after_each_remedy_the_sizes_are_the_cheapest_of_the_changed_plant_and_those_that_hold_stand_first() {
        int holding = 0;
        for (int seed = 0; seed < 50 && holding < 3; seed++) {
            Drawn drawn = SearchTest.drawn(seed);
            Rules rules = new Lobes(USERS, 0);
            Sizing without = Search.of(drawn.plant(), drawn.choices(), rules, Patience.endless());
            if (without.best().isPresent()
                    || without.deadlock().flatMap(Deadlock::nearest).isEmpty()) {
                continue;
            }
            List<Escape> escapes = Escape.of(drawn.plant(), drawn.choices(), rules, without, Patience.endless());
            assertThat(escapes.stream().map(e -> e.sizing().best().isPresent()))
                    .as("seed " + seed)
                    .isSortedAccordingTo(Comparator.reverseOrder());
            Map<String, Remedy.Change> changes = Remedy.changes(
                            drawn.plant(),
                            without.deadlock()
                                    .flatMap(Deadlock::nearest)
                                    .orElseThrow()
                                    .coverage())
                    .stream()
                    .collect(Collectors.toMap(Remedy.Change::what, Function.identity()));
            for (Escape escape : escapes) {
                Remedy.Change change = Objects.requireNonNull(changes.get(escape.what()), escape.what());
                if (change.plant().bleeds().equals(drawn.plant().bleeds())) {
                    double least = SearchTest.leastByTrying(
                            new Drawn(change.plant(), drawn.choices()),
                            new Lobes(change.question().users().size(), 0));
                    assertThat(escape.sizing().best().map(Design::cost).orElse(Double.POSITIVE_INFINITY))
                            .as("seed " + seed + ", " + escape.what())
                            .isCloseTo(least, within(1e-9 * Math.min(least, 1e9)));
                    holding += Double.isFinite(least) ? 1 : 0;
                }
            }
        }
        assertThat(holding).isPositive();
    }

    @Test
    void remedies_that_a_stopped_search_did_not_get_to_are_listed_and_say_so() {
        for (int seed = 0; seed < 50; seed++) {
            Drawn drawn = SearchTest.drawn(seed);
            Rules rules = new Lobes(USERS, 0);
            Sizing without = Search.of(drawn.plant(), drawn.choices(), rules, Patience.endless());
            if (without.deadlock().flatMap(Deadlock::nearest).isPresent()) {
                Patience over = new Patience(0, 1, 1_000_000, () -> true, words -> {}, List.of(), List.of());
                List<Escape> escapes = Escape.of(drawn.plant(), drawn.choices(), rules, without, over);
                assertThat(escapes).isNotEmpty().allSatisfy(e -> {
                    assertThat(e.sizing().best()).isEmpty();
                    assertThat(e.sizing().stopped()).isNotEmpty();
                });
                return;
            }
        }
        throw new AssertionError("no plant without a design");
    }

    @Test
    void one_change_that_is_shown_to_cure_a_plant_holds_in_every_set_and_one_shown_not_to_fails_in_some() {
        int proven = 0;
        for (int seed = 0; seed < 12; seed++) {
            Drawn drawn = SearchTest.drawn(seed);
            Rules rules = new Lobes(USERS, 0);
            Changes changes = OneChange.of(drawn.plant(), drawn.choices(), rules, Patience.endless());
            assertThat(changes.holdsNow()).isEqualTo(SearchTest.holdsEverywhere(drawn.plant(), rules));
            Map<String, Plant> made = drawn.choices().stream()
                    .flatMap(choice -> choice.options().stream()
                            .map(o -> Map.entry(choice.id() + " " + o.id(), with(drawn.plant(), choice, o.id()))))
                    .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
            for (OneChange change : changes.changes()) {
                Plant changed = made.get(change.what());
                if (changed != null && (change.proven() || change.failing() > 0)) {
                    proven++;
                    assertThat(change.failing() == 0)
                            .as("seed " + seed + ", " + change.what())
                            .isEqualTo(SearchTest.holdsEverywhere(changed, rules));
                }
            }
        }
        assertThat(proven).isPositive();
    }

    private static Plant with(Plant plant, Choice choice, String tube) {
        Choice.Tubes tubes = (Choice.Tubes) choice;
        return plant.withTubing(
                plant.runs().stream()
                        .map(r -> tubes.runs().contains(r.id()) ? r.in(tube) : r)
                        .toList(),
                plant.bleeds());
    }
}
