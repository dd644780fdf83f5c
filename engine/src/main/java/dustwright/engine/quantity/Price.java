package dustwright.engine.quantity;

/**
 * Money for each unit of something, in the plant's own currency.
 *
 * @param si money for each SI unit of what the dimension says: a joule, a cubic metre of free air, a second, a metre
 * @param dimension a price of energy, of compressed air, a cost per time or per length
 */
public record Price(double si, Dimension dimension, String currency) implements Quantity {
    public Price {
        Finite.check("Price", si);
    }

    static Price ofEnergy(double perJoule) {
        return new Price(perJoule, Dimension.ENERGY_PRICE, Money.UNNAMED);
    }

    static Price ofAir(double perCubicMetre) {
        return new Price(perCubicMetre, Dimension.AIR_PRICE, Money.UNNAMED);
    }

    static Price ofTime(double perSecond) {
        return new Price(perSecond, Dimension.TIME_PRICE, Money.UNNAMED);
    }

    static Price ofLength(double perMetre) {
        return new Price(perMetre, Dimension.LENGTH_PRICE, Money.UNNAMED);
    }

    /** The same price in a named currency. */
    public Price in(String other) {
        return new Price(si, dimension, other);
    }

    @Override
    public String named(String unit) {
        return unit.replace(Money.UNNAMED, currency);
    }
}
