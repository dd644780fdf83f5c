package dustwright.engine.finding;

/** On which side of its limit a value must lie. */
public enum Side {
    AT_LEAST,
    AT_MOST;

    /** Parts of a limit within which a value is the limit: what a change of units leaves in the last digits. */
    private static final double ROUNDING = 1e-12;

    /**
     * Margin towards the good side: (value − limit)/|limit|, sign turned for an upper limit [-]. Where the limit is zero there
     * is nothing to divide by: then all of the value is the distance, so the margin is 1, 0 or −1. A value that misses its limit by
     * the last digits only, as one unit turned into another may, is the limit, and the margin is 0.
     */
    public double margin(double value, double limit) {
        double distance = this == AT_LEAST ? value - limit : limit - value;
        if (Math.abs(distance) <= ROUNDING * Math.abs(limit)) {
            return 0;
        }
        return limit == 0 ? Math.signum(distance) : distance / Math.abs(limit);
    }
}
