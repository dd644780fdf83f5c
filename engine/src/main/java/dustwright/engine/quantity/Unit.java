package dustwright.engine.quantity;

import java.util.List;

/**
 * A unit people write: {@code SI number = number · factor + offset}.
 *
 * @param symbol the way we write it
 * @param dimension what it measures, reference state included: {@code inHg} is a vacuum, {@code inHg abs} an absolute pressure
 * @param factor SI units in one of this unit
 * @param offset SI number of zero on this scale; other than zero for temperatures only
 * @param otherNames further spellings we read, UCUM codes among them
 */
public record Unit(String symbol, Dimension dimension, double factor, double offset, List<String> otherNames) {
    public Unit {
        Finite.check("factor of " + symbol, factor);
        Finite.check("offset of " + symbol, offset);
        otherNames = List.copyOf(otherNames);
    }

    /** The SI number of a number in this unit. */
    public double toSi(double number) {
        return number * factor + offset;
    }

    /** The number in this unit of an SI number. */
    public double fromSi(double si) {
        return (si - offset) / factor;
    }

    /** The number in this unit of a quantity of the same kind. */
    public double of(Quantity quantity) {
        if (quantity.dimension() != dimension) {
            throw new IllegalArgumentException(
                    quantity.dimension().words() + " cannot be said in " + symbol + ", a unit of " + dimension.words());
        }
        return fromSi(quantity.si());
    }
}
