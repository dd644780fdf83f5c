package dustwright.engine.sizing;

import java.util.List;

/**
 * What a plant file leaves open.
 *
 * @param currency of every price
 */
public record OpenSizes(List<Choice> choices, String currency) {
    /** Every size is given. */
    public static final OpenSizes NONE = new OpenSizes(List.of(), "");

    public OpenSizes {
        choices = List.copyOf(choices);
    }
}
