package dustwright.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

/** Lets a long work end early, by its time or by Ctrl-C, and waits until what it has is written. */
final class LastWords {
    private static final int WAIT_s = 20;

    private final long begun_ns = System.nanoTime();
    private final double seconds;
    private final AtomicBoolean cancelled = new AtomicBoolean();
    private final CountDownLatch written = new CountDownLatch(1);
    private final Thread hook = new Thread(this::stopAndWait);

    private LastWords(double seconds) {
        this.seconds = seconds;
    }

    /** From now on, for so many seconds. */
    static LastWords within(double seconds) {
        LastWords last = new LastWords(seconds);
        Runtime.getRuntime().addShutdownHook(last.hook);
        return last;
    }

    /** From now on, until it is done or somebody stops it. */
    static LastWords endless() {
        return within(Double.POSITIVE_INFINITY);
    }

    /** Whether to end with what there is. */
    boolean stopped() {
        return cancelled.get() || (System.nanoTime() - begun_ns) / 1e9 > seconds;
    }

    /** All is written. */
    void said() {
        written.countDown();
        if (!cancelled.get()) {
            try {
                Runtime.getRuntime().removeShutdownHook(hook);
            } catch (IllegalStateException ending) {
                // somebody ends the program just now: the hook finds that all is written
                cancelled.set(true);
            }
        }
    }

    private void stopAndWait() {
        cancelled.set(true);
        try {
            if (!written.await(WAIT_s, TimeUnit.SECONDS)) {
                Thread.currentThread().interrupt();
            }
        } catch (InterruptedException hurry) {
            Thread.currentThread().interrupt();
        }
    }
}
