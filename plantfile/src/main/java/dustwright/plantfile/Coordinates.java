package dustwright.plantfile;

import dustwright.engine.quantity.Dimension;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.QuantityText;
import dustwright.engine.quantity.Unit;
import dustwright.engine.tubing.Position;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Three coordinates as written: numbers with a unit, or bare numbers in the unit of the plant's coordinates. */
record Coordinates(List<Coordinate> xyz) {
    /** Of a point whose place is not known. */
    static final Coordinates NOWHERE = new Coordinates(List.of());

    private static final double FARTHEST_m = 10_000;
    private static final String EXPECTED = "three coordinates such as [4.5, 2, 6] or [12 ft, 3 ft, 9 ft]";

    private static final List<Dimension> KINDS = List.of(Dimension.RATIO, Dimension.LENGTH);

    /** One coordinate; bare when it has no unit of its own. */
    record Coordinate(double number, boolean bare) {}

    boolean placed() {
        return !xyz.isEmpty();
    }

    boolean anyBare() {
        return xyz.stream().anyMatch(Coordinate::bare);
    }

    Position in(Unit unit) {
        double[] metres = new double[3];
        for (int i = 0; i < 3; i++) {
            Coordinate c = xyz.get(i);
            metres[i] = c.bare() ? unit.toSi(c.number()) : c.number();
        }
        return new Position(metres[0], metres[1], metres[2]);
    }

    static @Nullable Coordinates read(Tree tree, String path, Faults faults) {
        if (!(tree instanceof Tree.Items items) || items.items().size() != 3) {
            faults.add(tree.span(), path, tree.words() + " where a place belongs", EXPECTED);
            return null;
        }
        java.util.ArrayList<Coordinate> xyz = new java.util.ArrayList<>(3);
        for (Tree part : items.items()) {
            Coordinate coordinate = coordinate(part, path, faults);
            if (coordinate != null) {
                xyz.add(coordinate);
            }
        }
        return xyz.size() == 3 ? new Coordinates(List.copyOf(xyz)) : null;
    }

    private static @Nullable Coordinate coordinate(Tree part, String path, Faults faults) {
        if (part instanceof Tree.Scalar scalar) {
            QuantityText.Read read = QuantityText.read(scalar.text(), KINDS);
            if (read instanceof QuantityText.Read.Good good
                    && Math.abs(good.quantity().si()) <= FARTHEST_m) {
                if (good.quantity() instanceof Length length) {
                    return new Coordinate(length.metres(), false);
                }
                if (!scalar.text().contains("%")) {
                    return new Coordinate(good.quantity().si(), true);
                }
            }
        }
        faults.add(part.span(), path, part.words() + " is no coordinate within " + (int) FARTHEST_m + " m", EXPECTED);
        return null;
    }
}
