package dustwright.engine.quantity;

/** Refuses numbers that are not numbers at the door of every quantity. */
final class Finite {
    private Finite() {}

    static void check(String what, double value) {
        if (!(Math.abs(value) <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(what + " is not a finite number: " + value);
        }
    }

    static void atLeastZero(String what, double value) {
        check(what, value);
        if (value < 0) {
            throw new IllegalArgumentException(what + " is negative: " + value);
        }
    }
}
