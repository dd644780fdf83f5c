package dustwright.engine.tubing;

import dustwright.engine.quantity.Angle;
import dustwright.engine.quantity.Length;
import java.util.List;
import java.util.Optional;

/**
 * A run of tubing of one size between two points, drawn in the direction toward the receiver.
 *
 * @param from id of a point, an inlet or a station, or {@link #STILL_AIR}
 * @param to id of a point, an inlet or a station
 * @param tube id of the tube size
 * @param wye angle at which this run enters the run it joins at its downstream end; absent on the straight-through run
 * @param dust false where the plant file says that only clean air passes; what is asked of a run follows the dust itself, not this word
 */
public record Run(
        String id,
        String from,
        String to,
        String tube,
        Route route,
        List<Fitting> fittings,
        Optional<Angle> wye,
        boolean dust) {
    /** Reserved name of the still air of the site: a run from here starts with one velocity head of its own. */
    public static final String STILL_AIR = "air";

    public Run {
        fittings = List.copyOf(fittings);
    }

    /** The same run under another name between other points, joining the next as it does here, or straight on. */
    public Run between(String otherId, String otherFrom, String otherTo, Optional<Angle> otherWye) {
        return new Run(otherId, otherFrom, otherTo, tube, route, fittings, otherWye, dust);
    }

    /** The same run in another tube. */
    public Run in(String otherTube) {
        return new Run(id, from, to, otherTube, route, fittings, wye, dust);
    }

    /** Where a run goes. */
    public sealed interface Route {
        /**
         * Through corners in the building, both ends included; lengths, bends and their angles follow from them.
         *
         * @param bendRadius centre-line radius of every bend of this run
         */
        record Drawn(List<Position> corners, Length bendRadius) implements Route {
            public Drawn {
                corners = List.copyOf(corners);
                if (corners.size() < 2) {
                    throw new IllegalArgumentException("a drawn route needs both its ends");
                }
            }
        }

        /**
         * By measured length and summed loss coefficient K on the run's own velocity [-].
         *
         * @param rise height by which it rises as drawn, in upright tube; below zero where it falls
         */
        record Measured(Length length, double k, Length rise) implements Route {
            /** A measured run that lies level. */
            public Measured(Length length, double k) {
                this(length, k, new Length(0));
            }

            public Measured {
                if (!(Math.abs(rise.metres()) <= length.metres())) {
                    throw new IllegalArgumentException("a measured run rises or falls by no more than its length");
                }
            }
        }
    }
}
