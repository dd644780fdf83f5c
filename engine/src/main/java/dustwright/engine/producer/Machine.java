package dustwright.engine.producer;

import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.Volume;
import java.util.List;

/** What makes the vacuum. */
public sealed interface Machine {
    /**
     * Lobe-type positive displacement pump.
     *
     * @param displacement volume displaced per turn
     * @param slipAtOnePsi slip speed at 1 psi on air of 1.2041 kg/m³: the strongest parameter, a catalogue states it per machine
     * @param mechanicalEfficiency air power over shaft power without idle loss [-]
     * @param idleLoss shaft power at no pressure difference, at rated speed
     */
    record LobePump(Volume displacement, RotationalSpeed slipAtOnePsi, double mechanicalEfficiency, Power idleLoss)
            implements Machine {}

    /**
     * Any machine known by its measured curve: multistage centrifugal, side-channel, claw, liquid ring.
     *
     * @param kind the trade's word for it
     * @param ratedSpeed speed of the curve
     * @param ratedDensity density at the machine's inlet at which the curve was taken
     * @param dynamic true for centrifugal and side-channel machines, whose vacuum follows speed² and inlet density; false for
     *     displacement machines, whose flow follows speed
     * @param points flow falling, vacuum rising
     */
    record CurveMachine(
            String kind, RotationalSpeed ratedSpeed, Density ratedDensity, boolean dynamic, List<CurvePoint> points)
            implements Machine {
        public CurveMachine {
            points = List.copyOf(points);
        }
    }

    /** One point of a producer's curve: inlet volume flow, vacuum made and shaft power. */
    record CurvePoint(ActualVolumeFlow flow, PressureDifference vacuum, Power power) {}
}
