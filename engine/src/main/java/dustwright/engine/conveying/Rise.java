package dustwright.engine.conveying;

import dustwright.engine.quantity.Range;
import dustwright.engine.tubing.Position;
import dustwright.engine.tubing.Run;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Where dust first has to climb in a run, and how steeply at most. Where several stretches of one run rise, the foot is that of the first,
 * where air is densest and slowest, and the slope that of the steepest: the careful side.
 *
 * @param sine height over length of the steepest rising stretch [-]
 * @param before share of the run's tube that lies before the foot [-]; 0 where the place of the rise is not known, for there the air is
 *     slowest
 */
public record Rise(double sine, double before) {
    private static final Range SINE = new Range("rising stretch", "height over length", "-", 0, 1);
    private static final Range BEFORE = new Range("rising stretch", "share of the run before it", "-", 0, 1);

    public Rise {
        SINE.check(sine);
        BEFORE.check(before);
    }

    /** The rise of a run flown through along its drawn direction, or against it; empty where nothing leads upward. */
    public static Optional<Rise> of(Run run, boolean forward) {
        if (run.route() instanceof Run.Route.Measured measured) {
            double up_m = forward ? measured.rise().metres() : -measured.rise().metres();
            return up_m > 0 ? Optional.of(new Rise(1, 0)) : Optional.empty();
        }
        List<Position> corners = ((Run.Route.Drawn) run.route()).corners();
        return along(forward ? corners : reversed(corners));
    }

    private static List<Position> reversed(List<Position> corners) {
        List<Position> reversed = new ArrayList<>(corners);
        Collections.reverse(reversed);
        return reversed;
    }

    private static Optional<Rise> along(List<Position> corners) {
        double length_m = 0;
        double before_m = 0;
        double sine = 0;
        for (int n = 1; n < corners.size(); n++) {
            double stretch_m = corners.get(n - 1).distanceTo(corners.get(n)).metres();
            double up_m = corners.get(n).z_m() - corners.get(n - 1).z_m();
            before_m = up_m > 0 && sine == 0 ? length_m : before_m;
            sine = Math.max(sine, up_m / stretch_m);
            length_m += stretch_m;
        }
        return sine > 0 ? Optional.of(new Rise(Math.min(1, sine), before_m / length_m)) : Optional.empty();
    }

    /**
     * Pressure at the foot: its square falls evenly along the tube.
     *
     * <pre>
     * p_f² = p_1² − before (p_1² − p_2²)
     * </pre>
     *
     * @param upstream_Pa p_1
     * @param downstream_Pa p_2
     */
    public double foot_Pa(double upstream_Pa, double downstream_Pa) {
        double up = upstream_Pa * upstream_Pa;
        return Math.sqrt(up - before * (up - downstream_Pa * downstream_Pa));
    }

    /** One metre of it, as dust takes its way. */
    SolidsPath metre() {
        return new SolidsPath(1 - sine, sine, 0, sine, 0, 0, 0, 0);
    }
}
