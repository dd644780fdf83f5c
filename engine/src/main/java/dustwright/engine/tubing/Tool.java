package dustwright.engine.tubing;

import dustwright.engine.hazard.ChargePath;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.PressureDifference;
import java.util.List;
import java.util.Optional;

/**
 * What is at the end of a hose: a floor tool, a crevice nozzle, an open end.
 *
 * @param charge how charge leaves it, from its tip to the hose's cuff
 */
public record Tool(String id, Law law, ChargePath charge) {
    /** A tool of which nobody has said how charge leaves it. */
    public Tool(String id, Law law) {
        this(id, law, ChargePath.UNKNOWN);
    }

    /** How the tool resists the air. */
    public sealed interface Law {
        /** Loss in velocity heads of the hose; the head the air gains on leaving still air is not in it [-]. */
        record VelocityHeads(double k) implements Law {}

        /** An effective opening: isentropic nozzle of this area times its discharge coefficient [-]. */
        record Opening(Area area, double dischargeCoefficient) implements Law {
            /**
             * Its effective area on a hose [m²] (equation TUB-27): no wider than the hose's bore, as the air must gain the hose's
             * velocity too, and no opening lets in more than the bore without loss.
             */
            public double effective_m2(Hose hose) {
                double bore_m2 =
                        Math.PI / 4 * hose.bore().metres() * hose.bore().metres();
                return Math.min(area.squareMetres() * dischargeCoefficient, bore_m2);
            }
        }

        /** A measured curve, vacuum rising and flow rising with it. */
        record Curve(List<CurvePoint> points) implements Law {
            public Curve {
                points = List.copyOf(points);
            }
        }
    }

    /** What passes it at most: a round hole of the area of its opening; absent where the opening is not stated. */
    public Optional<Length> widest() {
        return law instanceof Law.Opening opening
                ? Optional.of(new Length(2 * Math.sqrt(opening.area().squareMetres() / Math.PI)))
                : Optional.empty();
    }

    /** One point of a measured tool curve: the flow it passes at a vacuum in the hose end. */
    public record CurvePoint(PressureDifference vacuum, FreeAirFlow flow) {}
}
