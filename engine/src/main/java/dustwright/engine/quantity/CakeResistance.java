package dustwright.engine.quantity;

/** Specific resistance of a dust cake on cloth: pressure drop over filtration velocity and dust per area [1/s], that is Pa/((m/s)(kg/m²)). */
public record CakeResistance(double perSecond) implements Quantity, Comparable<CakeResistance> {
    public CakeResistance {
        Finite.atLeastZero("CakeResistance", perSecond);
    }

    @Override
    public double si() {
        return perSecond;
    }

    @Override
    public Dimension dimension() {
        return Dimension.CAKE_RESISTANCE;
    }

    @Override
    public int compareTo(CakeResistance other) {
        return Double.compare(perSecond, other.perSecond);
    }
}
