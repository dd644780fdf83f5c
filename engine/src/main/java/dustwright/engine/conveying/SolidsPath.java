package dustwright.engine.conveying;

import dustwright.engine.conveying.VelocityLaw.Orientation;
import dustwright.engine.quantity.Range;
import dustwright.engine.tubing.Position;
import dustwright.engine.tubing.Run;
import dustwright.engine.tubing.RunGeometry;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The way of dust through one leg of one bore, in the direction of its flow: how much tube lies level, rises and falls, and where dust
 * must be set in motion again.
 *
 * <p>One rule for every slope, drawn or measured: a stretch of length L whose ends differ by h in height is h of upright tube and L − h of
 * level tube. So every metre has one velocity of dust, nothing jumps at an angle, and a stretch drawn in two pieces is what it was in one.
 * Lengths are taken from corner to corner, so a bend's arc is some decimetres shorter than counted. After a bend dust is slower by
 * {@link #slowing}: it is set in motion again in the stretch that follows, in its upright share to the velocity of rising where it leads
 * upward, in all else to that of level tube. Falling counts as level there, since gravity does part of the work and nothing is given back
 * for it.
 *
 * @param level_m level tube
 * @param rising_m upright tube that rises
 * @param falling_m upright tube that falls
 * @param lift_m height dust is lifted; falls give nothing back
 * @param startLevel 1 where dust enters from rest into level tube, 0 where it comes in moving [-]
 * @param startRising the same for rising tube; both share a stretch that climbs at an angle [-]
 * @param bendsLevel summed slowing of the bends before level or falling tube [-]
 * @param bendsRising summed slowing of the bends before rising tube [-]
 */
public record SolidsPath(
        double level_m,
        double rising_m,
        double falling_m,
        double lift_m,
        double startLevel,
        double startRising,
        double bendsLevel,
        double bendsRising) {
    /** Velocity of dust after a square bend over that before it [-]: 20 to 30 % slower is common practice, no source. */
    public static final double AFTER_SQUARE_BEND = 0.75;

    private static final Range LENGTH = new Range("the way of dust", "L", "m", 0, 1e5);
    private static final Range BENDS = new Range("the way of dust", "summed slowing of bends", "-", 0, 1e3);
    private static final Range START = new Range("the way of dust", "start", "-", 0, 1);

    public SolidsPath {
        LENGTH.check(level_m);
        LENGTH.check(rising_m);
        LENGTH.check(falling_m);
        LENGTH.check(lift_m);
        START.check(startLevel);
        START.check(startRising);
        BENDS.check(bendsLevel);
        BENDS.check(bendsRising);
        if ((rising_m > 0 && lift_m == 0) || (startRising + bendsRising > 0 && rising_m == 0)) {
            throw new IllegalArgumentException(
                    "a rising stretch must lift, and dust can only start in a stretch there is");
        }
    }

    /** How its stretches lie, as the laws for the least velocity tell them apart. */
    public Set<Orientation> lies() {
        EnumSet<Orientation> lies = EnumSet.noneOf(Orientation.class);
        if (level_m > 0) {
            lies.add(Orientation.LEVEL);
        }
        if (rising_m > 0) {
            lies.add(Orientation.RISING);
        }
        return lies;
    }

    /** A level hose or tube. */
    public static SolidsPath level(double length_m, boolean fromRest) {
        return new SolidsPath(length_m, 0, 0, 0, fromRest ? 1 : 0, 0, 0, 0);
    }

    /**
     * The way through a run in which dust comes moving, from the hose or the run before. A measured run rises or falls by its stated
     * height in upright tube, and its bends are unknown: dust is not set in motion again after them.
     *
     * @param forward false for dust that goes against the drawn direction
     */
    public static SolidsPath of(Run run, boolean forward) {
        if (run.route() instanceof Run.Route.Measured measured) {
            double up_m = forward ? measured.rise().metres() : -measured.rise().metres();
            double upright_m = Math.abs(up_m);
            double rises_m = Math.max(0, up_m);
            return new SolidsPath(
                    measured.length().metres() - upright_m, rises_m, upright_m - rises_m, rises_m, 0, 0, 0, 0);
        }
        List<Position> corners = new ArrayList<>(((Run.Route.Drawn) run.route()).corners());
        if (!forward) {
            Collections.reverse(corners);
        }
        return through(corners, false);
    }

    /** The way along straight stretches from corner to corner. */
    public static SolidsPath through(List<Position> corners, boolean fromRest) {
        double level_m = 0;
        double rising_m = 0;
        double falling_m = 0;
        double startLevel = 0;
        double startRising = 0;
        double bendsLevel = 0;
        double bendsRising = 0;
        for (int n = 1; n < corners.size(); n++) {
            double length_m = corners.get(n - 1).distanceTo(corners.get(n)).metres();
            double up_m = corners.get(n).z_m() - corners.get(n - 1).z_m();
            double climbs_m = Math.min(length_m, Math.max(0, up_m));
            double falls_m = Math.min(length_m, Math.max(0, -up_m));
            double climbs = climbs_m / length_m;
            level_m += length_m - climbs_m - falls_m;
            rising_m += climbs_m;
            falling_m += falls_m;
            double slowed =
                    n > 1 ? slowing(RunGeometry.turn_rad(corners.get(n - 2), corners.get(n - 1), corners.get(n))) : 0;
            bendsLevel += (1 - climbs) * slowed;
            bendsRising += climbs * slowed;
            if (n == 1 && fromRest) {
                startRising = climbs;
                startLevel = 1 - climbs;
            }
        }
        return new SolidsPath(level_m, rising_m, falling_m, rising_m, startLevel, startRising, bendsLevel, bendsRising);
    }

    /**
     * Share of its velocity that dust loses in a bend [-] (equation CON-38): a strand sliding along the outer wall loses velocity
     * exponentially with the angle; the base is that of a square bend.
     *
     * <pre>
     * slowing = 1 − 0.75^(α/90°)
     * </pre>
     *
     * @source form: sliding friction under centrifugal force; 0.75 common practice, no source
     */
    public static double slowing(double angle_rad) {
        return 1 - Math.pow(AFTER_SQUARE_BEND, angle_rad / (Math.PI / 2));
    }
}
