package dustwright.studio;

import java.util.concurrent.atomic.AtomicLong;

/** Lets pages that wait for an answer go before what is worked out behind them. */
final class Turns {
    private static final long JUST_NOW_ns = 400_000_000;
    private static final int PAUSE_ms = 2;
    private static final int MOST_PAUSES = 200;
    private static final AtomicLong ASKED_ns = new AtomicLong(System.nanoTime());

    private Turns() {}

    /** Somebody asks something. */
    static void asked() {
        ASKED_ns.set(System.nanoTime());
    }

    /** Waits while somebody has just asked something, two fifths of a second at most, so that the work behind goes on whatever comes in. */
    static void giveWay() {
        try {
            for (int n = 0; n < MOST_PAUSES && System.nanoTime() - ASKED_ns.get() < JUST_NOW_ns; n++) {
                Thread.sleep(PAUSE_ms);
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
