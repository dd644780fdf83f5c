package dustwright.engine.finding;

/** On which side of its limit a value must lie. */
public enum Side {
    AT_LEAST,
    AT_MOST;

    /**
     * Margin towards the good side: (value − limit)/|limit|, sign turned for an upper limit [-]. Where the limit is zero there
     * is nothing to divide by: then all of the value is the distance, so the margin is 1, 0 or −1.
     */
    public double margin(double value, double limit) {
        double distance = this == AT_LEAST ? value - limit : limit - value;
        return limit == 0 ? Math.signum(distance) : distance / Math.abs(limit);
    }
}
