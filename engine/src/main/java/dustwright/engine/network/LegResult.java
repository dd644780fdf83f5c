package dustwright.engine.network;

import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Velocity;

/**
 * One piece of one bore: a run of tubing or a hose with its tool and valve.
 *
 * @param id id of the run, or of the inlet whose hose it is
 * @param from upstream point as drawn; for the hose of an open inlet {@code "air"}, or {@code "<inlet>/tool"} where the tool is given as
 *     opening or curve
 * @param flow positive in the drawn direction
 * @param pressureFrom static pressure at the drawn upstream end
 * @param pressureTo static pressure at the drawn downstream end; at a choked end the sonic pressure in the tube, not that of the point
 * @param velocityFrom gas velocity at the drawn upstream end, never negative
 * @param velocityTo gas velocity at the drawn downstream end, never negative
 * @param reynolds [-]
 * @param frictionFactor Darcy [-]; 0 at rest, where it has no value
 * @param frictionLength L/D with what the bends add to it [-]
 * @param k summed loss coefficient on the leg's own velocity, velocity head of still air included [-]
 * @param junctionLoss loss charged to this leg at the junction it enters, at the junction's density; negative where the other stream
 *     draws it
 * @param dust dust carried, in the direction of the flow
 * @param choked isothermal sonic at its downstream end
 */
public record LegResult(
        String id,
        Kind kind,
        String from,
        String to,
        Length bore,
        MassFlow flow,
        AbsolutePressure pressureFrom,
        AbsolutePressure pressureTo,
        Velocity velocityFrom,
        Velocity velocityTo,
        double reynolds,
        double frictionFactor,
        double frictionLength,
        double k,
        PressureDifference junctionLoss,
        MassFlow dust,
        boolean choked) {
    /** What the piece is. */
    public enum Kind {
        RUN,
        HOSE
    }

    /** Velocity at the slowest point: the upstream end of the flow, where the air is densest. */
    public Velocity slowest() {
        return velocityFrom.compareTo(velocityTo) <= 0 ? velocityFrom : velocityTo;
    }

    /** Velocity at the fastest point. */
    public Velocity fastest() {
        return velocityFrom.compareTo(velocityTo) > 0 ? velocityFrom : velocityTo;
    }
}
