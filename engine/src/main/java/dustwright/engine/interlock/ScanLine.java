package dustwright.engine.interlock;

/** A line of a scan ready to be carried out, with the time or the count it keeps between two scans. */
abstract class ScanLine {
    final int to;

    ScanLine(int to) {
        this.to = to;
    }

    abstract void carryOut(boolean[] values, long sinceLast_ms);

    void forget() {}

    /** Takes over what the same line of another controller keeps. */
    void remember(ScanLine same) {}

    /** Time for which it stays as it is while what it reads stays as it is [ms]. */
    long quiet_ms(boolean[] values) {
        return Long.MAX_VALUE;
    }

    /** A condition ready to be asked. */
    interface Term {
        boolean of(boolean[] values);

        default Term inverted() {
            return values -> !of(values);
        }
    }

    static final class Assigning extends ScanLine {
        private final Term value;

        Assigning(int to, Term value) {
            super(to);
            this.value = value;
        }

        @Override
        void carryOut(boolean[] values, long sinceLast_ms) {
            values[to] = value.of(values);
        }
    }

    /** Time counts from the scan in which the condition is first true. */
    static final class Timing extends ScanLine {
        private final Term run;
        private final Term forget;
        private final long time_ms;
        private long counted_ms;
        private boolean ran;

        Timing(int to, Term run, Term forget, long time_ms) {
            super(to);
            this.run = run;
            this.forget = forget;
            this.time_ms = time_ms;
        }

        @Override
        void carryOut(boolean[] values, long sinceLast_ms) {
            boolean runs = run.of(values);
            if (forget.of(values)) {
                counted_ms = 0;
                ran = false;
            } else {
                counted_ms = Math.min(time_ms, counted_ms + (runs && ran ? sinceLast_ms : 0));
                ran = runs;
            }
            values[to] = !forget.of(values) && counted_ms >= time_ms;
        }

        @Override
        void forget() {
            counted_ms = 0;
            ran = false;
        }

        @Override
        void remember(ScanLine same) {
            counted_ms = ((Timing) same).counted_ms;
            ran = ((Timing) same).ran;
        }

        @Override
        long quiet_ms(boolean[] values) {
            return ran && counted_ms < time_ms ? time_ms - counted_ms : Long.MAX_VALUE;
        }
    }

    static final class Counting extends ScanLine {
        private final Term event;
        private final Term forget;
        private final int limit;
        private int counted;

        Counting(int to, Term event, Term forget, int limit) {
            super(to);
            this.event = event;
            this.forget = forget;
            this.limit = limit;
        }

        @Override
        void carryOut(boolean[] values, long sinceLast_ms) {
            if (forget.of(values)) {
                counted = 0;
            } else if (event.of(values)) {
                counted = Math.min(limit, counted + 1);
            }
            values[to] = counted >= limit;
        }

        @Override
        void forget() {
            counted = 0;
        }

        @Override
        void remember(ScanLine same) {
            counted = ((Counting) same).counted;
        }

        @Override
        long quiet_ms(boolean[] values) {
            return counted < limit && event.of(values) ? 0 : Long.MAX_VALUE;
        }
    }
}
