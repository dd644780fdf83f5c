package dustwright.engine.quantity;

/** A-weighted sound pressure level over 20 µPa, slow response [dBA]. */
public record SoundPressureLevel(double decibels) implements Quantity, Comparable<SoundPressureLevel> {
    public SoundPressureLevel {
        Finite.check("SoundPressureLevel", decibels);
    }

    @Override
    public double si() {
        return decibels;
    }

    @Override
    public Dimension dimension() {
        return Dimension.SOUND_LEVEL;
    }

    @Override
    public int compareTo(SoundPressureLevel other) {
        return Double.compare(decibels, other.decibels);
    }
}
