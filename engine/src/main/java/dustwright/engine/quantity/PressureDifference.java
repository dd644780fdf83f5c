package dustwright.engine.quantity;

/** A difference of two pressures, or a vacuum: how far below the site barometer [Pa]. */
public record PressureDifference(double pascals) implements Quantity, Comparable<PressureDifference> {
    public PressureDifference {
        Finite.check("PressureDifference", pascals);
    }

    /** So many inches of water, conventional. */
    public static PressureDifference ofInchesOfWater(double inches) {
        return new PressureDifference(inches * Units.INCH_OF_WATER_Pa);
    }

    /** In inches of water, conventional. */
    public double inchesOfWater() {
        return pascals / Units.INCH_OF_WATER_Pa;
    }

    @Override
    public double si() {
        return pascals;
    }

    @Override
    public Dimension dimension() {
        return Dimension.PRESSURE_DIFFERENCE;
    }

    @Override
    public int compareTo(PressureDifference other) {
        return Double.compare(pascals, other.pascals);
    }
}
