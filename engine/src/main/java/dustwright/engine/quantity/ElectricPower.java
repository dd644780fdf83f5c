package dustwright.engine.quantity;

/** Electrical power and the heat it becomes in a panel [W]; never shown in horsepower, as shaft power may be. */
public record ElectricPower(double watts) implements Quantity, Comparable<ElectricPower> {
    public ElectricPower {
        Finite.check("ElectricPower", watts);
    }

    @Override
    public double si() {
        return watts;
    }

    @Override
    public Dimension dimension() {
        return Dimension.ELECTRIC_POWER;
    }

    @Override
    public int compareTo(ElectricPower other) {
        return Double.compare(watts, other.watts);
    }
}
