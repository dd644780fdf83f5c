package dustwright.engine.quantity;

/** Electrical energy [J]. */
public record ElectricalEnergy(double joules) implements Quantity, Comparable<ElectricalEnergy> {
    public ElectricalEnergy {
        Finite.check("ElectricalEnergy", joules);
    }

    @Override
    public double si() {
        return joules;
    }

    @Override
    public Dimension dimension() {
        return Dimension.ENERGY;
    }

    @Override
    public int compareTo(ElectricalEnergy other) {
        return Double.compare(joules, other.joules);
    }
}
