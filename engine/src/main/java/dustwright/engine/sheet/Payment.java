package dustwright.engine.sheet;

/**
 * Money paid once in the life of a plant; a worth at its end is negative.
 *
 * @param what it is for
 * @param year after how many years
 */
record Payment(String what, double amount, int year) {}
