package dustwright.engine.network;

import dustwright.engine.conveying.RiserFoot;
import dustwright.engine.conveying.SolidsDrop;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Velocity;
import java.util.List;

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
 * @param streams every named dust of it, with what it adds to the pressure drop
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
        List<DustStream> streams,
        boolean choked) {
    /** What the piece is. */
    public enum Kind {
        RUN,
        HOSE
    }

    public LegResult {
        streams = List.copyOf(streams);
    }

    /** What all dusts of known particles add to the pressure drop at the leg's mean pressure. */
    public PressureDifference solidsDrop() {
        double sum_Pa = 0;
        for (DustStream stream : streams) {
            sum_Pa += stream.drop().map(drop -> drop.total().pascals()).orElse(0.0);
        }
        return new PressureDifference(sum_Pa);
    }

    /** Loading ratio: dust over air by mass (equation CON-2) [-]; 0 at rest. */
    public double loading() {
        double air_kgPerS = Math.abs(flow.kgPerSecond());
        return air_kgPerS == 0 ? 0 : dust.kgPerSecond() / air_kgPerS;
    }

    /** Whether dust in this piece is held at the velocity of least drop: there is no dilute flow through it. */
    public boolean held() {
        return streams.stream()
                .anyMatch(stream -> stream.drop().filter(SolidsDrop::held).isPresent());
    }

    /** Whether dust collapses in this piece: at the foot of a rise, or because it is held. */
    public boolean chokesOnDust() {
        return held()
                || streams.stream()
                        .anyMatch(stream ->
                                stream.foot().filter(RiserFoot.Found::chokes).isPresent());
    }

    /** Pressure where the air is densest and slowest. */
    public AbsolutePressure upstream() {
        return velocityFrom.compareTo(velocityTo) <= 0 ? pressureFrom : pressureTo;
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
