package dustwright.engine.discharge;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dustwright.engine.bagging.BagFill;
import dustwright.engine.discharge.DustFlow.Moment;
import dustwright.engine.discharge.WorkWeek.Stretch;
import dustwright.engine.quantity.OutOfRangeException;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Weeks that can be gone through by hand. */
class DischargeTest {
    private static final double HOUR_s = 3600;

    /** One stretch of ten hours at 100 kg/h. */
    private static final WorkWeek TEN_HOURS = new WorkWeek(List.of(new Stretch(0, 10 * HOUR_s, 100 / HOUR_s)));

    private static DischargeLine line(double valve_kgPerH, double hopper_kg, double bag_kg, double change_min) {
        return new DischargeLine(OptionalDouble.of(valve_kgPerH / HOUR_s), hopper_kg, bag_kg, change_min * 60, false);
    }

    @Test
    void a_valve_faster_than_the_feed_keeps_the_receiver_empty() {
        DustFlow flow = Discharge.over(line(600, 50, 2000, 10), TEN_HOURS, 1, 1);
        assertThat(flow.highest_kg()).isZero();
        assertThat(flow.changes()).isEmpty();
        assertClose("bag", flow.container_kg(), 1000, 1e-12);
    }

    /** 400 kg bags at 100 kg/h: full after 4 h, change of half an hour, full again at 8.5 h, 100 kg more until the tenth hour. */
    @Test
    void users_who_wait_for_a_change_lose_its_time() {
        DustFlow flow = Discharge.over(line(600, 50, 400, 30), TEN_HOURS, 1, 1);
        assertThat(flow.changes()).hasSize(2);
        assertClose("first change", flow.changes().get(0), 4 * HOUR_s, 1e-12);
        assertClose("second change", flow.changes().get(1), 8.5 * HOUR_s, 1e-12);
        assertClose("waited", flow.waitedForChange_s(), 2 * 0.5 * HOUR_s, 1e-12);
        assertClose("in the third bag", flow.container_kg(), 100, 1e-10);
        assertThat(flow.receiver_kg()).isZero();
    }

    /** With a hopper for 30 kg and users who go on: high after 18 of 30 minutes, the other 12 are lost. */
    @Test
    void a_receiver_that_holds_less_than_a_change_brings_reaches_its_high_level() {
        DustFlow flow = Discharge.over(line(600, 30, 400, 30).withVacuumingGoingOn(true), TEN_HOURS, 1, 1);
        assertThat(flow.highDuringChange()).isEqualTo(flow.changes().size());
        assertClose("high after", momentOf(flow, 30).at_s(), (4 + 0.3) * HOUR_s, 1e-12);
        assertClose("waited", flow.waitedForLevel_s(), 2 * 12 * 60.0, 1e-9);
        assertThat(flow.waitedForChange_s()).isZero();
        assertThat(flow.highest_kg()).isEqualTo(30);
    }

    @Test
    void a_receiver_that_holds_what_a_change_brings_loses_no_time() {
        DustFlow flow = Discharge.over(line(600, 60, 400, 30).withVacuumingGoingOn(true), TEN_HOURS, 1, 1);
        assertThat(flow.highLevels()).isZero();
        assertThat(flow.waited_s()).isZero();
        assertClose("highest", flow.highest_kg(), 50, 1e-12);
        assertClose("collected", flow.collected_kg(), 1000, 1e-12);
    }

    /** 60 kg/h of valve under 100 kg/h of feed: 20 kg of hopper are full after half an hour, then four tenths of the time are lost. */
    @Test
    void a_valve_slower_than_the_feed_holds_users_back_at_the_high_level() {
        DustFlow flow = Discharge.over(line(60, 20, 5000, 10), TEN_HOURS, 1, 1);
        assertThat(flow.highLevels()).isEqualTo(1);
        assertClose("waited", flow.waitedForLevel_s(), 9.5 * HOUR_s * 0.4, 1e-9);
        assertClose("collected", flow.collected_kg(), 0.5 * 100 + 9.5 * 60, 1e-9);
        assertThat(flow.receiver_kg()).as("emptied after work").isZero();
    }

    /** 800 kg at 100 kg/h are 8 h of vacuuming; two changes of half an hour on the way make it 9 h. */
    @Test
    void a_stated_mass_is_picked_up_however_long_users_wait_while_the_stretch_lasts() {
        DustFlow flow = Discharge.over(line(600, 50, 300, 30), picking(800), 1, 1);
        assertClose("collected", flow.collected_kg(), 800, 1e-12);
        assertClose("vacuumed", flow.vacuumed_s(), 8 * HOUR_s, 1e-12);
        assertClose("waited", flow.waited_s(), HOUR_s, 1e-12);
        assertThat(flow.longestWait_s()).isEqualTo(flow.waited_s());
        DustFlow.Moment last = flow.line().stream()
                .filter(m -> m.at_s() > 8.5 * HOUR_s)
                .findFirst()
                .orElseThrow();
        assertClose("through after", last.at_s(), 9 * HOUR_s, 1e-12);
        assertThat(last.collecting()).isFalse();
    }

    /** 950 kg would take 9.5 h and the waiting for three changes: two of half an hour leave 9 h, so 900 kg are in. */
    @Test
    void where_a_stretch_is_too_short_for_the_waiting_the_rest_stays() {
        DustFlow flow = Discharge.over(line(600, 50, 300, 30), picking(950), 1, 0);
        assertClose("collected", flow.collected_kg(), 900, 1e-12);
        assertClose("asked", flow.asked_kg(), 950, 1e-12);
        assertClose("vacuumed and waited", flow.vacuumed_s() + flow.waited_s(), 10 * HOUR_s, 1e-12);
    }

    /** Bag and stated mass are full at one time: nobody waits, as nothing is left to pick up. */
    @Test
    void a_change_after_the_last_kilogram_costs_no_waiting() {
        WorkWeek week = WorkWeek.ofPickUps(5, 3, 8 * HOUR_s, 200, 100 / HOUR_s);
        DustFlow flow = Discharge.over(line(600, 50, 1000, 30), week, 52, 0);
        assertThat(flow.changes()).hasSizeBetween(52 * 3 - 1, 52 * 3);
        assertThat(flow.waited_s()).isLessThan(1e-6);
        assertClose("collected", flow.collected_kg(), 52 * 15 * 200.0, 1e-12);
    }

    private static WorkWeek picking(double goal_kg) {
        return new WorkWeek(List.of(new Stretch(0, 10 * HOUR_s, 100 / HOUR_s, OptionalDouble.of(goal_kg))));
    }

    @Test
    void without_a_valve_the_dust_is_in_the_container_at_once_and_users_wait_for_its_change() {
        DischargeLine drum = new DischargeLine(OptionalDouble.empty(), 0, 400, 30 * 60, true);
        DustFlow flow = Discharge.over(drum, TEN_HOURS, 1, 1);
        assertThat(flow.changes()).hasSize(2);
        assertThat(flow.highest_kg()).isZero();
        assertClose("waited", flow.waitedForChange_s(), HOUR_s, 1e-12);
    }

    @Test
    void a_year_of_changes_agrees_with_mass_over_container() {
        WorkWeek week = WorkWeek.ofShifts(5, 2, 8 * HOUR_s, 0.5 * HOUR_s, 120 / HOUR_s);
        assertClose("hours", week.cleaning_s(), 5 * HOUR_s, 1e-12);
        DustFlow year = Discharge.over(line(900, 100, 450, 0), week, 52, 0);
        double byMass = BagFill.changesPerWeek(450, 120 / HOUR_s, week.cleaning_s());
        assertThat(year.changes()).hasSize((int) Math.floor(52 * byMass));
        assertThat(year.line()).isEmpty();
    }

    @Test
    void the_drawn_course_shows_the_change_as_two_moments_at_one_time() {
        DustFlow flow = Discharge.over(line(600, 50, 400, 30), TEN_HOURS, 1, 1);
        List<Moment> atChange = flow.line().stream()
                .filter(m -> Math.abs(m.at_s() - 4 * HOUR_s) < 1e-6)
                .toList();
        assertThat(atChange).hasSize(2);
        assertThat(atChange.get(0).container_kg()).isEqualTo(400);
        assertThat(atChange.get(1).container_kg()).isZero();
        assertThat(atChange.get(1).changing()).isTrue();
    }

    @Test
    void shifts_longer_than_a_day_and_cleaning_longer_than_a_shift_are_refused() {
        assertThatThrownBy(() -> WorkWeek.ofShifts(5, 4, 8 * HOUR_s, HOUR_s, 0.01))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> WorkWeek.ofShifts(5, 1, 8 * HOUR_s, 9 * HOUR_s, 0.01))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> new WorkWeek(List.of(new Stretch(0, 10, 1), new Stretch(5, 20, 1))))
                .hasMessageContaining("overlap");
        assertThatThrownBy(() -> line(600, 50, 0, 10)).isInstanceOf(OutOfRangeException.class);
    }

    private static Moment momentOf(DustFlow flow, double receiver_kg) {
        return flow.line().stream()
                .filter(m -> m.receiver_kg() == receiver_kg)
                .findFirst()
                .orElseThrow();
    }
}
