package dustwright.bench;

import dustwright.engine.discharge.Discharge;
import dustwright.engine.discharge.DischargeLine;
import dustwright.engine.discharge.DustFlow;
import dustwright.engine.discharge.WorkWeek;
import java.util.Locale;
import java.util.OptionalDouble;

/** Times a simulated year of shifts at one station, three shifts a day on seven days, with a bag full about every half hour. */
public final class DustYear {
    private static final int ROUNDS = 50;

    private DustYear() {}

    public static void main(String[] args) {
        WorkWeek week = WorkWeek.ofShifts(7, 3, 8 * 3600, 6 * 3600, 900 / 3600.0);
        DischargeLine line = new DischargeLine(OptionalDouble.of(1700 / 3600.0), 120, 450, 600, true);
        double first_ms = 0;
        double best_ms = Double.MAX_VALUE;
        DustFlow flow = Discharge.over(line, week, 1, 0);
        for (int round = 0; round < ROUNDS; round++) {
            long start = System.nanoTime();
            flow = Discharge.over(line, week, 52, 0);
            double took_ms = (System.nanoTime() - start) / 1e6;
            first_ms = round == 0 ? took_ms : first_ms;
            best_ms = Math.min(best_ms, took_ms);
        }
        System.out.printf(
                Locale.ROOT,
                "a year of 1092 shifts: %d changes, first %.2f ms, best of %d %.3f ms, imbalance %.2e of %.0f kg%n",
                flow.changes().size(),
                first_ms,
                ROUNDS,
                best_ms,
                Math.abs(flow.imbalance_kg()),
                flow.collected_kg());
    }
}
