package dustwright.engine.quantity;

/** Energy of a spark, or the least that ignites a dust cloud [J]. */
public record SparkEnergy(double joules) implements Quantity, Comparable<SparkEnergy> {
    public SparkEnergy {
        Finite.atLeastZero("SparkEnergy", joules);
    }

    @Override
    public double si() {
        return joules;
    }

    @Override
    public Dimension dimension() {
        return Dimension.SPARK_ENERGY;
    }

    @Override
    public int compareTo(SparkEnergy other) {
        return Double.compare(joules, other.joules);
    }
}
