package dustwright.engine.plant;

import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Velocity;
import java.util.Optional;

/**
 * What is asked of the plant. An absent limit is not checked, and the report says so.
 *
 * @param toolFlow least free air at every open tool
 * @param inletVacuum least vacuum at every open inlet valve
 * @param transportFactor times the dust's minimum velocity [-]
 * @param saltationFactor times the greatest computed saltation or choking velocity [-]
 * @param loadingRatio greatest mass of dust per mass of air [-]
 * @param wearVelocity greatest velocity in tubing that carries dust
 * @param airToCloth greatest filtration velocity at the actual flow in the receiver
 * @param canVelocity greatest upward velocity between the filter elements
 * @param receiver what is asked of receivers, filters and rotary valves beyond one set of open inlets
 */
public record Requirements(
        Optional<Limit<FreeAirFlow>> toolFlow,
        Optional<Limit<PressureDifference>> inletVacuum,
        Limit<Ratio> transportFactor,
        Optional<Limit<Ratio>> saltationFactor,
        Optional<Limit<Ratio>> loadingRatio,
        Optional<Limit<Velocity>> wearVelocity,
        Optional<Limit<Velocity>> airToCloth,
        Optional<Limit<Velocity>> canVelocity,
        ReceiverLimits receiver) {

    /** Nothing asked beyond single sets of open inlets. */
    public Requirements(
            Optional<Limit<FreeAirFlow>> toolFlow,
            Optional<Limit<PressureDifference>> inletVacuum,
            Limit<Ratio> transportFactor,
            Optional<Limit<Ratio>> saltationFactor,
            Optional<Limit<Ratio>> loadingRatio,
            Optional<Limit<Velocity>> wearVelocity,
            Optional<Limit<Velocity>> airToCloth,
            Optional<Limit<Velocity>> canVelocity) {
        this(
                toolFlow,
                inletVacuum,
                transportFactor,
                saltationFactor,
                loadingRatio,
                wearVelocity,
                airToCloth,
                canVelocity,
                ReceiverLimits.NONE);
    }
}
