package dustwright.engine.interlock;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Own returns and starts are counted within their windows; shown by running, since the search lets every count be full at any time. */
class CountsTest {
    private static final Sequence WHOLE = DefaultSequence.of("bag", Options.USUAL);

    @Test
    void three_own_returns_in_ten_minutes_are_allowed_the_next_receiver_high_is_a_fault() {
        assertThat(fourthHighTrips(WHOLE)).isTrue();
    }

    @Test
    void returns_that_are_long_ago_do_not_count() {
        assertThat(spreadHighsTrip(WHOLE)).isFalse();
    }

    @Test
    void a_second_window_is_counted_like_the_first() {
        assertThat(secondWindowTrips(WHOLE)).isTrue();
    }

    @Test
    void five_starts_in_an_hour_are_allowed_the_next_is_refused_until_the_hour_is_over() {
        assertThat(startsAreLimited(WHOLE)).isTrue();
    }

    /** Whether all of it is so; also asked of sequences that are wrong. */
    static boolean countsAreRight(Sequence sequence) {
        try {
            return fourthHighTrips(sequence)
                    && !spreadHighsTrip(sequence)
                    && secondWindowTrips(sequence)
                    && startsAreLimited(sequence)
                    && weakVacuumIsTold(sequence)
                    && DirtyClothTest.isJudged(sequence);
        } catch (AssertionError neverReached) {
            return false;
        }
    }

    /** Starts within an hour alone. */
    static boolean startsAreRight(Sequence sequence) {
        try {
            return startsAreLimited(sequence) && weakVacuumIsTold(sequence) && DirtyClothTest.isJudged(sequence);
        } catch (AssertionError neverReached) {
            return false;
        }
    }

    private static boolean fourthHighTrips(Sequence sequence) {
        Bench bench = Bench.vacuuming(sequence);
        for (int high = 1; high <= 3; high++) {
            highAndClear(bench, 20);
            bench.until("vacuuming", 30);
        }
        bench.controller.contact("receiver_free", false);
        bench.run(3.5);
        return bench.controller.step().equals("tripped") && bench.is("high_too_often");
    }

    private static boolean spreadHighsTrip(Sequence sequence) {
        Bench bench = Bench.vacuuming(sequence);
        for (int high = 1; high <= 5; high++) {
            highAndClear(bench, 20);
            bench.until("vacuuming", 30);
            bench.run(320);
        }
        return bench.controller.step().equals("tripped");
    }

    /** A second window is counted like the first. */
    private static boolean secondWindowTrips(Sequence sequence) {
        Bench bench = Bench.vacuuming(sequence);
        highAndClear(bench, 20);
        bench.until("vacuuming", 30);
        bench.run(900);
        for (int high = 1; high <= 3; high++) {
            highAndClear(bench, 20);
            bench.until("vacuuming", 30);
        }
        bench.controller.contact("receiver_free", false);
        bench.run(3.5);
        return bench.controller.step().equals("tripped");
    }

    private static void highAndClear(Bench bench, double covered_s) {
        bench.controller.contact("receiver_free", false);
        bench.run(covered_s);
        bench.controller.contact("receiver_free", true);
        bench.run(10);
    }

    private static boolean startsAreLimited(Sequence sequence) {
        Bench bench = Bench.vacuuming(sequence);
        bench.push("stop");
        bench.until("standing", 300);
        for (int start = 2; start <= 5; start++) {
            bench.run(31);
            bench.push("start");
            bench.until("vacuuming", 60);
            bench.push("stop");
            bench.until("standing", 300);
        }
        bench.run(31);
        bench.push("start");
        boolean refused = bench.controller.step().equals("standing") && bench.is("starts");
        bench.run(3600);
        bench.push("start");
        bench.until("vacuuming", 60);
        return refused && secondHourIsCountedToo(bench);
    }

    private static boolean secondHourIsCountedToo(Bench bench) {
        for (int start = 2; start <= 5; start++) {
            bench.push("stop");
            bench.until("standing", 300);
            bench.run(31);
            bench.push("start");
            bench.until("vacuuming", 60);
        }
        bench.push("stop");
        bench.until("standing", 300);
        bench.run(31);
        bench.push("start");
        return bench.controller.step().equals("standing");
    }

    private static boolean weakVacuumIsTold(Sequence sequence) {
        Bench bench = Bench.vacuuming(sequence);
        bench.run(20);
        return !bench.is("weak");
    }
}
