package dustwright.engine.coverage;

import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.DoubleAccumulator;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;

/** Follows long work: how far it is, and whether anybody still wants it. Shared by all threads. */
final class Watch {
    private final BooleanSupplier cancelled;
    private final DoubleConsumer share;
    private final AtomicLong done = new AtomicLong();
    private final DoubleAccumulator furthest = new DoubleAccumulator(Math::max, 0);
    private volatile long all = 1;
    private final AtomicInteger answered = new AtomicInteger();
    private volatile int questions = 1;

    Watch(BooleanSupplier cancelled, DoubleConsumer share) {
        this.cancelled = cancelled;
        this.share = share;
    }

    /** The same, silent about parts of a step that is told of as a whole. */
    Watch still() {
        return new Watch(cancelled, part -> {});
    }

    /** Of so many answers the work consists, whatever ways lead to each. */
    void questions(int number) {
        questions = Math.max(1, number);
    }

    /** One of them is found. */
    void answered() {
        expect(1);
        answered.incrementAndGet();
        did(0);
    }

    void expect(long steps) {
        done.set(0);
        all = Math.max(1, steps);
    }

    void did(long steps) {
        double ofThis = Math.min(1, (double) done.addAndGet(steps) / all);
        furthest.accumulate(Math.min(1, (answered.get() + ofThis) / questions));
        share.accept(furthest.get());
    }

    /** Stops here when nobody wants the answer any more. */
    void goOn() {
        if (cancelled.getAsBoolean()) {
            throw new CancellationException();
        }
    }
}
