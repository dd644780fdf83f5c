package dustwright.engine.noise;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dustwright.engine.noise.Exposure.Stretch;
import dustwright.engine.quantity.OutOfRangeException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Daily noise exposure by equal energy, against published tables. */
class DailyExposureTest {
    /**
     * SCENIHR, Potential health risks of exposure to noise from personal music players, 2008, Table 3: levels and times equivalent to the
     * values of Directive 2003/10/EC at 3 dB for each halving of time. The table rounds to whole decibels.
     */
    @ParameterizedTest
    @CsvSource({
        "83, 4,    80", "86, 2,    80", "89, 1,    80", "92, 0.5, 80", "95, 0.25, 80", "88, 4, 85", "91, 2, 85",
        "94, 1,    85", "97, 0.5,  85", "100, 0.25, 85", "90, 4, 87", "93, 2, 87", "96, 1, 87", "99, 0.5, 87"
    })
    void half_the_time_is_worth_three_decibels(double level_dBA, double hours, double daily_dBA) {
        assertClose(level_dBA + " dBA", Exposure.daily_dBA(List.of(new Stretch(level_dBA, hours))), daily_dBA, 0, 0.06);
    }

    /** Worked example of a public ISO 9612 report: 1.5 h at 70.0, 5 h at 80.8, 1.5 h at 90.1 dB come to 84.3 dB. */
    @Test
    void a_welders_day_comes_to_the_printed_level() {
        List<Stretch> day = List.of(new Stretch(70.0, 1.5), new Stretch(80.8, 5), new Stretch(90.1, 1.5));
        assertClose("day", Exposure.daily_dBA(day), 84.3, 0, 0.05);
    }

    @Test
    void eight_hours_at_one_level_are_that_level() {
        assertClose("day", Exposure.daily_dBA(List.of(new Stretch(81.5, 8))), 81.5, 1e-12);
    }

    @Test
    void a_day_without_an_hour_has_no_level() {
        assertThatThrownBy(() -> Exposure.daily_dBA(List.of(new Stretch(80, 0))))
                .isInstanceOf(OutOfRangeException.class);
    }
}
