package dustwright.engine.coverage;

import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;

/** Follows long work: how far it is, and whether anybody still wants it. Shared by all threads. */
final class Watch {
    private final BooleanSupplier cancelled;
    private final DoubleConsumer share;
    private final AtomicLong done = new AtomicLong();
    private volatile long all = 1;

    Watch(BooleanSupplier cancelled, DoubleConsumer share) {
        this.cancelled = cancelled;
        this.share = share;
    }

    /** The same, silent about parts of a step that is told of as a whole. */
    Watch still() {
        return new Watch(cancelled, part -> {});
    }

    void expect(long steps) {
        done.set(0);
        all = Math.max(1, steps);
    }

    void did(long steps) {
        share.accept(Math.min(1, (double) done.addAndGet(steps) / all));
    }

    /** Stops here when nobody wants the answer any more. */
    void goOn() {
        if (cancelled.getAsBoolean()) {
            throw new CancellationException();
        }
    }
}
