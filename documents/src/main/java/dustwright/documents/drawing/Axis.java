package dustwright.documents.drawing;

import dustwright.documents.writing.Figures;
import java.util.ArrayList;
import java.util.List;

/** A straight scale from a value to a value, laid between two coordinates of the sheet, with ticks at round steps. */
record Axis(double from, double to, double step, double at_from, double at_to) {
    private static final double[] ROUND = {1, 2, 2.5, 5, 10};

    /** From zero to a round value at or above {@code most}, in at most {@code steps} steps. */
    static Axis fromZero(double most, int steps, double at_from, double at_to) {
        double least = Math.max(most, 1e-9) / steps;
        double decade = Math.pow(10, Math.floor(Math.log10(least)));
        double step = decade * 10;
        for (double round : ROUND) {
            if (round * decade >= least * (1 - 1e-9)) {
                step = round * decade;
                break;
            }
        }
        return new Axis(0, step * Math.ceil(most / step - 1e-9), step, at_from, at_to);
    }

    double at(double value) {
        return at_from + (at_to - at_from) * (value - from) / (to - from);
    }

    List<Double> ticks() {
        List<Double> ticks = new ArrayList<>();
        int count = (int) Math.round((to - from) / step);
        for (int i = 0; i <= count; i++) {
            ticks.add(from + i * step);
        }
        return ticks;
    }

    String words(double tick) {
        int decimals =
                step >= 1 ? (step == 2.5 ? 1 : 0) : (int) Math.ceil(-Math.log10(step) + (isQuarter() ? 1 : 0) - 1e-9);
        return Figures.fixed(tick, decimals);
    }

    private boolean isQuarter() {
        double mantissa = step / Math.pow(10, Math.floor(Math.log10(step)));
        return Math.abs(mantissa - 2.5) < 1e-6;
    }
}
