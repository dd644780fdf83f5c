package dustwright.engine.tubing;

import dustwright.engine.quantity.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * What the route of a run makes of it: straight tube left between the bends, every bend with its angle, and the loss coefficient of
 * everything on it.
 *
 * @param developed length along the corner-to-corner lines, as tubing is ordered
 * @param straight tube left when every bend has taken its tangents; for a measured run the measured length
 * @param straights the same, stretch by stretch between the bends
 * @param bends in the drawn direction; empty for a measured run
 * @param fittingsK summed K of fittings and, for a measured run, its measured K [-]
 */
public record RunGeometry(
        Length developed, Length straight, List<Length> straights, List<Bend> bends, double fittingsK) {
    /** Below this change of direction [rad] a corner is a straight joint, not a bend: 0.05°, drawing accuracy. */
    public static final double STRAIGHT_JOINT_rad = Math.toRadians(0.05);

    /** One bend: its change of direction [rad], centre-line radius and loss. */
    public record Bend(double angle_rad, Length radius, BendLoss loss) {}

    public RunGeometry {
        straights = List.copyOf(straights);
        bends = List.copyOf(bends);
    }

    /**
     * Geometry of a run in a tube.
     *
     * @throws IllegalArgumentException in words for people when the bends do not fit between the corners
     */
    public static RunGeometry of(Run run, Tube tube) {
        double k = run.fittings().stream().mapToDouble(f -> f.k() * f.count()).sum();
        if (run.route() instanceof Run.Route.Measured measured) {
            return new RunGeometry(
                    measured.length(), measured.length(), List.of(measured.length()), List.of(), k + measured.k());
        }
        return drawn(run.id(), (Run.Route.Drawn) run.route(), tube.bore(), k);
    }

    /** L/D with what the bends add to it [-]: multiplied by f it is the loss that goes with friction. */
    public double frictionLength(Length bore) {
        double bends_k1 =
                bends.stream().mapToDouble(b -> b.loss().perFriction()).sum();
        return straight.metres() / bore.metres() + bends_k1;
    }

    /** Loss coefficient that does not go with friction [-]. */
    public double k() {
        return fittingsK + bends.stream().mapToDouble(b -> b.loss().constant()).sum();
    }

    private static RunGeometry drawn(String run, Run.Route.Drawn route, Length bore, double fittingsK) {
        List<Position> corners = route.corners();
        double radius_m = route.bendRadius().metres();
        List<Bend> bends = new ArrayList<>();
        double developed_m = 0;
        double straight_m = 0;
        List<Length> straights = new ArrayList<>();
        double stretch_m = 0;
        double tangentBefore_m = 0;
        for (int n = 1; n < corners.size(); n++) {
            double leg_m = corners.get(n - 1).distanceTo(corners.get(n)).metres();
            double angle_rad =
                    n + 1 < corners.size() ? turn_rad(corners.get(n - 1), corners.get(n), corners.get(n + 1)) : 0;
            if (angle_rad > Math.PI - STRAIGHT_JOINT_rad) {
                throw new IllegalArgumentException(
                        "run " + run + ": it turns back on itself at the end of stretch " + n);
            }
            boolean bend = angle_rad > STRAIGHT_JOINT_rad;
            double tangent_m = bend ? BendLoss.tangent_m(angle_rad, radius_m) : 0;
            double left_m = leg_m - tangentBefore_m - tangent_m;
            if (!(left_m >= -1e-9 * leg_m)) {
                throw new IllegalArgumentException(doNotFit(run, n, leg_m, tangentBefore_m + tangent_m));
            }
            if (bend) {
                bends.add(
                        new Bend(angle_rad, route.bendRadius(), BendLoss.rennels(angle_rad, radius_m / bore.metres())));
            }
            developed_m += leg_m;
            straight_m += Math.max(0, left_m);
            stretch_m += Math.max(0, left_m);
            if (bend || n + 1 == corners.size()) {
                straights.add(new Length(stretch_m));
                stretch_m = 0;
            }
            tangentBefore_m = tangent_m;
        }
        return new RunGeometry(new Length(developed_m), new Length(straight_m), straights, bends, fittingsK);
    }

    /** Metres to the millimetre. */
    private static String millimetres(double length_m) {
        return BigDecimal.valueOf(length_m)
                .setScale(3, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** Change of direction at a corner [rad], 0 to π, by atan2 so that small and square angles keep their digits. */
    public static double turn_rad(Position before, Position corner, Position after) {
        double ax = corner.x_m() - before.x_m();
        double ay = corner.y_m() - before.y_m();
        double az = corner.z_m() - before.z_m();
        double bx = after.x_m() - corner.x_m();
        double by = after.y_m() - corner.y_m();
        double bz = after.z_m() - corner.z_m();
        double cx = ay * bz - az * by;
        double cy = az * bx - ax * bz;
        double cz = ax * by - ay * bx;
        return Math.atan2(Math.sqrt(cx * cx + cy * cy + cz * cz), ax * bx + ay * by + az * bz);
    }

    private static String doNotFit(String run, int stretch, double leg_m, double tangents_m) {
        return "run " + run + ": the bends at the ends of stretch " + stretch + " need " + millimetres(tangents_m)
                + " m of its " + millimetres(leg_m)
                + " m from corner to corner; use a smaller bend radius or move the corners";
    }
}
