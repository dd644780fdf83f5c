package dustwright.engine.quantity;

/** Volume the mass flow would have at the reference state 101 325 Pa, 20 °C, dry [m³/s free air]: a mass flow in disguise. */
public record FreeAirFlow(double cubicMetresPerSecond) implements Quantity, Comparable<FreeAirFlow> {
    public FreeAirFlow {
        Finite.check("FreeAirFlow", cubicMetresPerSecond);
    }

    @Override
    public double si() {
        return cubicMetresPerSecond;
    }

    @Override
    public Dimension dimension() {
        return Dimension.FREE_AIR_FLOW;
    }

    @Override
    public int compareTo(FreeAirFlow other) {
        return Double.compare(cubicMetresPerSecond, other.cubicMetresPerSecond);
    }

    /** Density of the reference state: 101 325 Pa, 293.15 K, dry air, R = 287.05287 J/(kg K) [kg/m³]. */
    public static final double REFERENCE_DENSITY_kgPerM3 = 101_325 / (287.05287 * 293.15);

    /** The same air as a mass flow. */
    public MassFlow mass() {
        return new MassFlow(cubicMetresPerSecond * REFERENCE_DENSITY_kgPerM3);
    }

    /** A mass flow of air said as free air. */
    public static FreeAirFlow of(MassFlow mass) {
        return new FreeAirFlow(mass.kgPerSecond() / REFERENCE_DENSITY_kgPerM3);
    }
}
