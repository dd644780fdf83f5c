package dustwright.engine.quantity;

/** An area: cross-section, cloth, opening [m²]. */
public record Area(double squareMetres) implements Quantity, Comparable<Area> {
    public Area {
        Finite.check("Area", squareMetres);
    }

    @Override
    public double si() {
        return squareMetres;
    }

    @Override
    public Dimension dimension() {
        return Dimension.AREA;
    }

    @Override
    public int compareTo(Area other) {
        return Double.compare(squareMetres, other.squareMetres);
    }
}
