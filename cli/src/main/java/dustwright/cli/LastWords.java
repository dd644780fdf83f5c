package dustwright.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

/** Lets a long work end early, by its time or by Ctrl-C, and waits until what it has is written. */
final class LastWords {
    private static final int WAIT_s = 20;

    private final long end_ns;
    private final AtomicBoolean cancelled = new AtomicBoolean();
    private final CountDownLatch written = new CountDownLatch(1);
    private final Thread hook = new Thread(this::stopAndWait);

    private LastWords(double seconds) {
        end_ns = System.nanoTime() + Math.round(seconds * 1e9);
    }

    /** From now on, for so many seconds. */
    static LastWords within(double seconds) {
        LastWords last = new LastWords(seconds);
        Runtime.getRuntime().addShutdownHook(last.hook);
        return last;
    }

    /** Whether to end with what there is. */
    boolean stopped() {
        return cancelled.get() || System.nanoTime() > end_ns;
    }

    /** All is written. */
    void said() {
        written.countDown();
        if (!cancelled.get()) {
            Runtime.getRuntime().removeShutdownHook(hook);
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
