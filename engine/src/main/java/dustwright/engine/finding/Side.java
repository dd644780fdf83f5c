package dustwright.engine.finding;

/** On which side of its limit a value must lie. */
public enum Side {
    AT_LEAST,
    AT_MOST;

    /**
     * Margin towards the good side: (value − limit)/|limit|, sign turned for an upper limit [-]. With a limit of zero it is the plain
     * distance.
     */
    public double margin(double value, double limit) {
        double distance = this == AT_LEAST ? value - limit : limit - value;
        return limit == 0 ? distance : distance / Math.abs(limit);
    }
}
