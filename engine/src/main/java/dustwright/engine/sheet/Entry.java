package dustwright.engine.sheet;

import dustwright.engine.finding.Derivation;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.quantity.Quantity;
import java.util.List;

/**
 * One line of a sheet.
 *
 * @param id stable and unique within the plant, what is asked and where: {@code dust-in-one-fill/REC}
 * @param name what it is, as a label: "Dust in one fill"
 * @param derivation how it was found; its source is where the last word comes from
 */
public record Entry(String id, String name, Answer answer, Derivation derivation) {
    /** A figure and the steps to it; its source is that of the last step. */
    public static Entry known(String id, String name, Quantity value, List<Step> steps) {
        Source source =
                steps.isEmpty() ? Source.entered() : steps.get(steps.size() - 1).source();
        return new Entry(id, name, new Answer.Known(value), new Derivation(steps, source));
    }

    /** A figure as it was entered, or taken from a table. */
    public static Entry given(String id, String name, Quantity value, Source source) {
        return new Entry(id, name, new Answer.Known(value), new Derivation(List.of(), source));
    }

    /** An answer in words, the steps that lead to it, and where the rule comes from. */
    public static Entry words(String id, String name, String text, List<Step> steps, Source source) {
        return new Entry(id, name, new Answer.Words(text), new Derivation(steps, source));
    }

    /** The same of the least that is needed. */
    public static Entry least(String id, String name, Quantity value, List<Step> steps) {
        Entry known = known(id, name, value, steps);
        return new Entry(id, name, new Answer.Known(value, true), known.derivation());
    }

    /** Not known: why, and what to enter. */
    public static Entry unknown(String id, String name, String why) {
        return new Entry(id, name, new Answer.Unknown(why), new Derivation(List.of(), Source.entered()));
    }
}
