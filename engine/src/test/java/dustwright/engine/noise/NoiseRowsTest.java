package dustwright.engine.noise;

import dustwright.engine.ComputedRows;
import dustwright.engine.noise.Exposure.Rule;
import dustwright.engine.noise.Exposure.Stretch;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every row of the noise table. */
class NoiseRowsTest {
    private static Map<String, Supplier<Object>> answers() {
        Map<String, Supplier<Object>> a = new LinkedHashMap<>();
        a.put("NOI-01", () -> SoundLevel.sum_dB(85, 83, 88));
        a.put("NOI-02", () -> SoundLevel.sum_dB(70, 70));
        a.put("NOI-03", () -> SoundLevel.sum_dB(88, 86, 80, 85));
        // the printed 75 comes from a table of whole decibels; the exact sum must round to it
        a.put("NOI-04", () -> Math.rint(SoundLevel.sum_dB(70, 73)));
        a.put("NOI-05", () -> SoundLevel.sum_dB(62, 73));
        a.put("NOI-06", () -> Exposure.permitted_h(Rule.OSHA, 95));
        a.put("NOI-07", () -> Exposure.permitted_h(Rule.OSHA, 92));
        a.put("NOI-08", () -> 100 * Exposure.dose(Rule.OSHA, List.of(new Stretch(95, 2), new Stretch(90, 4))));
        a.put("NOI-09", () -> Exposure.timeWeightedAverage_dBA(0.5));
        a.put("NOI-10", () -> Exposure.timeWeightedAverage_dBA(2));
        a.put("NOI-11", () -> SoundLevel.atDistance_dB(88, 1, 4));
        a.put("NOI-12", () -> SoundLevel.pulsation_Hz(2, 30));
        a.put("NOI-13", () -> SoundLevel.pulsation_Hz(3, 30));
        a.put("NOI-14", () -> SoundLevel.sum_dB(SoundLevel.silenced_dB(105, 25), 85));
        // tabulated to a tenth of a decibel
        a.put("NOI-15", () -> Math.rint(10 * SoundLevel.aWeighting_dB(125)) / 10);
        a.put("NOI-16", () -> SoundLevel.powerLevel_dB(0.01));
        return a;
    }

    @TestFactory
    Stream<DynamicTest> rows() {
        return ComputedRows.tests("equipment-noise.csv", "id", answers());
    }
}
