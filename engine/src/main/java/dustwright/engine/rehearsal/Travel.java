package dustwright.engine.rehearsal;

/** A device that follows its command after a time of its own, on or off. */
final class Travel {
    private final long on_ms;
    private final long off_ms;
    private boolean commanded;
    private boolean there;
    private long arrives_ms = Long.MAX_VALUE;

    Travel(long on_ms, long off_ms) {
        this.on_ms = on_ms;
        this.off_ms = off_ms;
    }

    /** Takes a command; one that is taken back before it was followed leaves all as it is. */
    void command(boolean on, long now_ms) {
        if (on != commanded) {
            commanded = on;
            arrives_ms = on == there ? Long.MAX_VALUE : now_ms + (on ? on_ms : off_ms);
        }
    }

    void at(long now_ms) {
        if (now_ms >= arrives_ms) {
            there = commanded;
            arrives_ms = Long.MAX_VALUE;
        }
    }

    /** Follows at once what it was told, as when its time had passed. */
    boolean there() {
        return there;
    }

    boolean travels() {
        return arrives_ms != Long.MAX_VALUE;
    }

    long next_ms() {
        return arrives_ms;
    }
}
