package dustwright.engine.receiver;

import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Temperature;
import java.util.Optional;

/**
 * What a filter has to bear, beside the flow.
 *
 * @param continuous temperature in continuous service; absent where it is the site's
 * @param surge highest temperature in short surges; absent where none are known
 * @param fibre of the elements fitted, a name of {@link FilterMedium}; absent where none is chosen yet
 * @param hotAndMoist whether the air is warm and damp
 * @param application name in the factor method's list; absent where not stated
 * @param dissipative whether the elements carry charge away; absent where not stated
 * @param foodContact whether elements and all else that the dust touches are declared for contact with food; absent where not stated
 * @param greatestDifference pressure difference elements and cages bear, as their maker states it; absent where not stated
 */
public record FilterService(
        Optional<Temperature> continuous,
        Optional<Temperature> surge,
        Optional<String> fibre,
        boolean hotAndMoist,
        Optional<String> application,
        Optional<Boolean> dissipative,
        Optional<Boolean> foodContact,
        Optional<PressureDifference> greatestDifference) {
    /** Site air, nothing chosen. */
    public static final FilterService USUAL = new FilterService(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            false,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
}
