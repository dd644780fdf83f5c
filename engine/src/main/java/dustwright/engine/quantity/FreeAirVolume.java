package dustwright.engine.quantity;

/** Volume of free air: at 101 325 Pa, 20 °C, dry [m³]. */
public record FreeAirVolume(double cubicMetres) implements Quantity, Comparable<FreeAirVolume> {
    public FreeAirVolume {
        Finite.check("FreeAirVolume", cubicMetres);
    }

    @Override
    public double si() {
        return cubicMetres;
    }

    @Override
    public Dimension dimension() {
        return Dimension.FREE_AIR_VOLUME;
    }

    @Override
    public int compareTo(FreeAirVolume other) {
        return Double.compare(cubicMetres, other.cubicMetres);
    }
}
