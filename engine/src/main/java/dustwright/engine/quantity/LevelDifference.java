package dustwright.engine.quantity;

/** Difference of two levels, such as what a silencer takes away [dB]. */
public record LevelDifference(double decibels) implements Quantity, Comparable<LevelDifference> {
    public LevelDifference {
        Finite.check("LevelDifference", decibels);
    }

    @Override
    public double si() {
        return decibels;
    }

    @Override
    public Dimension dimension() {
        return Dimension.LEVEL_DIFFERENCE;
    }

    @Override
    public int compareTo(LevelDifference other) {
        return Double.compare(decibels, other.decibels);
    }
}
