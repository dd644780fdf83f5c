package dustwright.engine.discharge;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.discharge.DustFlow.Moment;
import dustwright.engine.discharge.WorkWeek.Stretch;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What holds whatever the plant: seeded plants, the seed in every message. */
class DischargeLawsTest {
    private static final int PLANTS = 2000;

    private static double between(SplittableRandom random, double least, double most) {
        return least * Math.pow(most / least, random.nextDouble());
    }

    private static DischargeLine line(SplittableRandom random) {
        OptionalDouble valve =
                random.nextInt(5) == 0 ? OptionalDouble.empty() : OptionalDouble.of(between(random, 0.005, 3));
        double hopper_kg = random.nextInt(4) == 0 ? 0 : between(random, 1, 800);
        return new DischargeLine(
                valve, hopper_kg, between(random, 20, 1500), between(random, 30, 7200), random.nextBoolean());
    }

    private static WorkWeek week(SplittableRandom random, double times) {
        if (random.nextBoolean()) {
            double shift_s = 8 * 3600;
            return WorkWeek.ofShifts(
                    random.nextInt(1, 8),
                    random.nextInt(1, 4),
                    shift_s,
                    between(random, 60, shift_s),
                    times * between(random, 1e-4, 0.5));
        }
        List<Stretch> stretches = new ArrayList<>();
        double at_s = 0;
        while (at_s < WorkWeek.WEEK_s) {
            double from_s = at_s + between(random, 60, 40_000);
            double to_s = Math.min(WorkWeek.WEEK_s, from_s + between(random, 60, 30_000));
            if (from_s < WorkWeek.WEEK_s) {
                stretches.add(new Stretch(from_s, to_s, times * between(random, 1e-4, 0.5)));
            }
            at_s = to_s > from_s ? to_s : WorkWeek.WEEK_s;
        }
        return new WorkWeek(stretches);
    }

    @Test
    void what_came_in_is_in_bags_receiver_or_taken_away() {
        for (int seed = 0; seed < PLANTS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            DischargeLine line = line(random);
            DustFlow flow = Discharge.over(line, week(random, 1), 1, 1);
            assertThat(Math.abs(flow.imbalance_kg()))
                    .as("seed %d", seed)
                    .isLessThanOrEqualTo(1e-9 * flow.collected_kg());
            assertThat(flow.receiver_kg()).as("seed %d", seed).isBetween(0.0, line.hopper_kg());
            assertThat(flow.container_kg()).as("seed %d", seed).isBetween(0.0, line.container_kg());
            assertThat(flow.collected_kg()).as("seed %d", seed).isLessThanOrEqualTo(flow.asked_kg() * (1 + 1e-12));
        }
    }

    /** Dust that is not picked up is exactly what the waiting time would have brought. */
    @Test
    void what_is_left_on_the_floor_is_what_the_waiting_cost() {
        for (int seed = 0; seed < PLANTS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            DischargeLine line = line(random);
            double feed_kgPerS = between(random, 1e-4, 0.5);
            WorkWeek week = WorkWeek.ofShifts(5, 2, 8 * 3600, between(random, 60, 8 * 3600), feed_kgPerS);
            DustFlow flow = Discharge.over(line, week, 1, 0);
            assertThat(flow.asked_kg() - flow.collected_kg())
                    .as("seed %d", seed)
                    .isCloseTo(
                            flow.waited_s() * feed_kgPerS, org.assertj.core.data.Offset.offset(1e-9 * flow.asked_kg()));
        }
    }

    /** Waiting included, cleaning ends with the stated mass or with the shift. */
    @Test
    void a_stated_mass_is_picked_up_wherever_the_waiting_fits_the_shift() {
        for (int seed = 0; seed < PLANTS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            DischargeLine line = line(random);
            double feed_kgPerS = between(random, 1e-4, 0.5);
            double shift_s = 8 * 3600;
            double goal_kg = between(random, 0.01, 1.1) * feed_kgPerS * shift_s;
            DustFlow flow = Discharge.over(line, WorkWeek.ofPickUps(5, 2, shift_s, goal_kg, feed_kgPerS), 2, 0);
            boolean fits = goal_kg / feed_kgPerS + flow.longestWait_s() <= shift_s;
            double left = 1 - flow.collected_kg() / flow.asked_kg();
            assertThat(left).as("seed %d", seed).isGreaterThan(-1e-12);
            assertThat(left <= 1e-12).as("seed %d, left %s", seed, left).isEqualTo(fits);
            assertThat(Math.abs(flow.imbalance_kg()))
                    .as("seed %d", seed)
                    .isLessThanOrEqualTo(1e-9 * flow.collected_kg());
            assertThat(flow.vacuumed_s() * feed_kgPerS)
                    .as("seed %d", seed)
                    .isCloseTo(flow.collected_kg(), org.assertj.core.data.Offset.offset(1e-9 * flow.collected_kg()));
        }
    }

    @Test
    void more_feed_never_fills_the_first_bag_later() {
        for (int seed = 0; seed < PLANTS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            DischargeLine line = line(random);
            long again = random.nextLong();
            DustFlow less = Discharge.over(line, week(new SplittableRandom(again), 1), 8, 0);
            DustFlow more = Discharge.over(line, week(new SplittableRandom(again), 1.25), 8, 0);
            if (!less.changes().isEmpty()) {
                assertThat(more.changes()).as("seed %d", seed).isNotEmpty();
                assertThat(more.changes().get(0))
                        .as("seed %d", seed)
                        .isLessThanOrEqualTo(less.changes().get(0) * (1 + 1e-9));
            }
        }
    }

    /**
     * Where the receiver holds what comes meanwhile, nobody waits, and every bag is full no later. Where users wait, a busier week may
     * see fewer changes: one that fell into a break falls into work and stops it.
     */
    @Test
    void more_feed_never_lengthens_the_life_of_a_bag_where_nobody_waits() {
        for (int seed = 0; seed < PLANTS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            DischargeLine line = nobodyWaits(line(random), random);
            long again = random.nextLong();
            DustFlow less = Discharge.over(line, week(new SplittableRandom(again), 1), 8, 0);
            DustFlow more = Discharge.over(line, week(new SplittableRandom(again), 1.25), 8, 0);
            assertThat(less.waited_s()).as("seed %d", seed).isZero();
            assertThat(more.changes().size())
                    .as("seed %d", seed)
                    .isGreaterThanOrEqualTo(less.changes().size());
            for (int n = 0; n < less.changes().size(); n++) {
                assertThat(more.changes().get(n))
                        .as("seed %d, change %d", seed, n)
                        .isLessThanOrEqualTo(less.changes().get(n) * (1 + 1e-9));
            }
        }
    }

    @Test
    void a_larger_bag_is_never_changed_more_often_where_nobody_waits() {
        for (int seed = 0; seed < PLANTS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            DischargeLine line = nobodyWaits(line(random), random);
            WorkWeek week = week(random, 1);
            int small = Discharge.over(line, week, 4, 0).changes().size();
            int large = Discharge.over(line.withContainer(1.3 * line.container_kg()), week, 4, 0)
                    .changes()
                    .size();
            assertThat(large).as("seed %d", seed).isLessThanOrEqualTo(small);
        }
    }

    private static DischargeLine nobodyWaits(DischargeLine line, SplittableRandom random) {
        double valve_kgPerS = between(random, 0.7, 3);
        return new DischargeLine(OptionalDouble.of(valve_kgPerS), 1e6, line.container_kg(), line.change_s(), true);
    }

    /** The drawn corners hold the whole way: the greatest level among them is the greatest level there was. */
    @Test
    void the_drawn_course_misses_no_corner() {
        for (int seed = 0; seed < PLANTS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            DustFlow flow = Discharge.over(line(random), week(random, 1), 1, 1);
            double drawn_kg =
                    flow.line().stream().mapToDouble(Moment::receiver_kg).max().orElseThrow();
            assertThat(drawn_kg).as("seed %d", seed).isEqualTo(flow.highest_kg());
            for (int n = 1; n < flow.line().size(); n++) {
                assertThat(flow.line().get(n).at_s())
                        .as("seed %d", seed)
                        .isGreaterThanOrEqualTo(flow.line().get(n - 1).at_s());
            }
        }
    }
}
