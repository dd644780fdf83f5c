package dustwright.documents.drawing;

import dustwright.engine.tubing.Inlet;
import dustwright.engine.tubing.Position;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Finds what a plan would draw over something else: level tubing over level tubing, an inlet over an inlet. */
final class Overlaps {
    private static final double SAME_LINE_m = 0.3;
    private static final double SAME_LEVEL_m = 0.5;
    private static final double LEAST_OVERLAP_m = 1;
    private static final double INLET_APART_m = 0.6;

    private Overlaps() {}

    /** One level straight along x or y: the coordinate across it, and its two ends along it. */
    private record Level(boolean alongX, double across_m, double from_m, double to_m, double z_m) {
        boolean over(Level other) {
            return alongX == other.alongX
                    && Math.abs(across_m - other.across_m) < SAME_LINE_m
                    && Math.abs(z_m - other.z_m) > SAME_LEVEL_m
                    && Math.min(to_m, other.to_m) - Math.max(from_m, other.from_m) > LEAST_OVERLAP_m;
        }
    }

    static boolean anyTubingOverTubing(Map<String, List<Position>> routes) {
        List<Level> levels = new ArrayList<>();
        for (List<Position> corners : routes.values()) {
            for (int i = 1; i < corners.size(); i++) {
                add(levels, corners.get(i - 1), corners.get(i));
            }
        }
        for (int i = 0; i < levels.size(); i++) {
            for (int k = 0; k < i; k++) {
                if (levels.get(i).over(levels.get(k))) {
                    return true;
                }
            }
        }
        return false;
    }

    static boolean anyInletOverInlet(List<Inlet> inlets) {
        List<Position> places = inlets.stream().flatMap(i -> i.at().stream()).toList();
        for (int i = 0; i < places.size(); i++) {
            for (int k = 0; k < i; k++) {
                if (over(places.get(i), places.get(k))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean over(Position a, Position b) {
        return Math.abs(a.x_m() - b.x_m()) < INLET_APART_m
                && Math.abs(a.y_m() - b.y_m()) < INLET_APART_m
                && Math.abs(a.z_m() - b.z_m()) > SAME_LEVEL_m;
    }

    private static void add(List<Level> levels, Position a, Position b) {
        if (Math.abs(a.z_m() - b.z_m()) > SAME_LEVEL_m) {
            return;
        }
        if (Math.abs(a.y_m() - b.y_m()) < SAME_LINE_m) {
            levels.add(new Level(true, a.y_m(), Math.min(a.x_m(), b.x_m()), Math.max(a.x_m(), b.x_m()), a.z_m()));
        } else if (Math.abs(a.x_m() - b.x_m()) < SAME_LINE_m) {
            levels.add(new Level(false, a.x_m(), Math.min(a.y_m(), b.y_m()), Math.max(a.y_m(), b.y_m()), a.z_m()));
        }
    }
}
