package dustwright.engine.quantity;

/** Voltage, between lines for three phases [V]. */
public record Voltage(double volts) implements Quantity, Comparable<Voltage> {
    public Voltage {
        Finite.check("Voltage", volts);
    }

    @Override
    public double si() {
        return volts;
    }

    @Override
    public Dimension dimension() {
        return Dimension.VOLTAGE;
    }

    @Override
    public int compareTo(Voltage other) {
        return Double.compare(volts, other.volts);
    }
}
