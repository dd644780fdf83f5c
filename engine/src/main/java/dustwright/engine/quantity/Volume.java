package dustwright.engine.quantity;

/** A volume of space or bulk material [m³]. */
public record Volume(double cubicMetres) implements Quantity, Comparable<Volume> {
    public Volume {
        Finite.check("Volume", cubicMetres);
    }

    @Override
    public double si() {
        return cubicMetres;
    }

    @Override
    public Dimension dimension() {
        return Dimension.VOLUME;
    }

    @Override
    public int compareTo(Volume other) {
        return Double.compare(cubicMetres, other.cubicMetres);
    }
}
