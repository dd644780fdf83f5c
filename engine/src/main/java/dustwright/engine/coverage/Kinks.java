package dustwright.engine.coverage;

import dustwright.engine.network.TubingTree.Draw;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A station's curve as least and greatest of smooth ones (equation COV-11): between two kinks it is one of them, continued along its
 * tangents. Where the slope falls at a kink, as when a relief valve opens, the curve is the lesser of the two sides, where it rises the
 * greater. Maps that keep order keep least and greatest, so bounds may be found for every smooth curve by itself, without a table that
 * smears the kink.
 */
final class Kinks {
    private static final int LOOKS = 400;
    private static final double SAME = 1e-9;
    /** Kinks are slivers of the station's table; this is clear of them. */
    private static final double NUDGE = 1e-8;

    private final Draw draw;
    private final List<Double> ends;
    private final List<Boolean> lesser = new ArrayList<>();

    Kinks(Draw draw, double from, double to) {
        this.draw = draw;
        ends = new ArrayList<>(List.of(from));
        for (double kink : draw.kinks(from, to)) {
            ends.add(kink);
            lesser.add(draw.slope(kink + NUDGE) < draw.slope(kink - NUDGE));
        }
        ends.add(to);
    }

    int pieces() {
        return ends.size() - 1;
    }

    double from(int piece) {
        return ends.get(piece) + (piece == 0 ? 0 : NUDGE);
    }

    double to(int piece) {
        return ends.get(piece + 1) - (piece == pieces() - 1 ? 0 : NUDGE);
    }

    /** Whether the curve is that combination at all places looked at. */
    boolean hold() {
        double from = ends.get(0);
        double to = ends.get(ends.size() - 1);
        for (int n = 0; n <= LOOKS; n++) {
            double u = from + (to - from) * n / LOOKS;
            double flow = draw.flow_kgPerS(u);
            double[] pieces = new double[pieces()];
            for (int p = 0; p < pieces.length; p++) {
                double at = Math.max(from(p), Math.min(to(p), u));
                pieces[p] = draw.flow_kgPerS(at) + draw.slope(at) * (u - at);
            }
            if (Math.abs(combined(pieces) - flow) > SAME * Math.max(flow, draw.flow_kgPerS(from))) {
                return false;
            }
        }
        return true;
    }

    /** What follows for the whole from what is known of every piece. */
    double combined(double[] pieces) {
        double value = pieces[pieces.length - 1];
        for (int p = pieces.length - 2; p >= 0; p--) {
            value = lesser.get(p) ? Math.min(pieces[p], value) : Math.max(pieces[p], value);
        }
        return value;
    }

    /** Extremes with the bounds that those of the pieces give. */
    List<Extreme> bounded(List<Extreme> whole, List<List<Extreme>> byPiece) {
        List<Map<String, Extreme>> keyed = byPiece.stream().map(Kinks::keyed).toList();
        return whole.stream().map(extreme -> bounded(extreme, keyed)).toList();
    }

    private Extreme bounded(Extreme extreme, List<Map<String, Extreme>> byPiece) {
        double[] bounds = new double[byPiece.size()];
        for (int p = 0; p < bounds.length; p++) {
            Extreme piece = byPiece.get(p).get(key(extreme));
            if (piece == null || extreme.bound() == 0) {
                return extreme;
            }
            bounds[p] = piece.bound();
        }
        return extreme.boundedBy(combined(bounds));
    }

    private static Map<String, Extreme> keyed(List<Extreme> extremes) {
        Map<String, Extreme> keyed = new HashMap<>();
        extremes.forEach(e -> keyed.put(key(e), e));
        return keyed;
    }

    private static String key(Extreme extreme) {
        return extreme.measure() + "/" + extreme.place() + "/" + extreme.users();
    }
}
