package dustwright.engine.quantity;

/** An amount of money in the plant's own currency. Nothing is ever converted from one currency to another. */
public record Money(double amount, String currency) implements Quantity {
    /** Sign of a currency that is not named. */
    public static final String UNNAMED = "¤";

    public Money {
        Finite.check("Money", amount);
    }

    /** The same amount in a named currency. */
    public Money in(String other) {
        return new Money(amount, other);
    }

    @Override
    public double si() {
        return amount;
    }

    @Override
    public Dimension dimension() {
        return Dimension.MONEY;
    }

    @Override
    public String named(String unit) {
        return unit.replace(UNNAMED, currency);
    }
}
