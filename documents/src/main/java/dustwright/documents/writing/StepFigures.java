package dustwright.documents.writing;

import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.quantity.Dimension;
import dustwright.engine.quantity.Quantity;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.regex.Pattern;

/**
 * The numbers of one step of a calculation in SI. Results have five figures. What is added or taken away has as many places as the result
 * and two more, so that whoever adds up the printed numbers comes to the printed result.
 */
public final class StepFigures {
    private static final int FIGURES = 5;
    private static final int MORE_PLACES = 2;
    private static final int MOST_FIGURES = 12;

    /** Beyond this a bare number beside a bare result is a factor, such as a Reynolds number, and nothing that is added. */
    private static final double LARGEST_RATIO = 100;

    private static final Pattern ADDS = Pattern.compile("[+−Σ]|sum");

    private final Step step;

    public StepFigures(Step step) {
        this.step = step;
    }

    public String result() {
        return Show.si(step.result().value(), FIGURES);
    }

    public String input(Term term) {
        return Show.si(term.value(), figures(term.value()));
    }

    private int figures(Quantity input) {
        Quantity result = step.result().value();
        if (!added(input, result)) {
            return FIGURES;
        }
        int places = FIGURES - 1 - exponent(result.si()) + MORE_PLACES;
        return Math.max(FIGURES, Math.min(MOST_FIGURES, exponent(input.si()) + 1 + places));
    }

    private boolean added(Quantity input, Quantity result) {
        boolean alike = input.siSymbol().equals(result.siSymbol());
        boolean factor = result.dimension() == Dimension.RATIO
                && Math.abs(input.si()) > LARGEST_RATIO * Math.max(1, Math.abs(result.si()));
        return alike
                && !factor
                && input.si() != 0
                && result.si() != 0
                && ADDS.matcher(step.formula()).find();
    }

    /** Power of ten of the first figure, as printed. */
    private static int exponent(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(FIGURES, RoundingMode.HALF_UP));
        return rounded.precision() - rounded.scale() - 1;
    }
}
