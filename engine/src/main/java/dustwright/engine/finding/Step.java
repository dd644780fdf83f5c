package dustwright.engine.finding;

import java.util.List;

/**
 * One line of a calculation: an equation by id, the numbers put in, the result, and where the equation comes from.
 *
 * @param equation id as on the equation pages, for example {@code TUB-2}
 * @param formula the formula in plain text
 * @param inputs the values put in
 * @param result symbol, meaning and value that come out
 * @param source the published source of the formula
 */
public record Step(String equation, String formula, List<Term> inputs, Term result, Source source) {
    /** In place of an equation's id: the figure is not computed but stated. */
    public static final String STATED = "stated";

    public Step {
        inputs = List.copyOf(inputs);
    }
}
