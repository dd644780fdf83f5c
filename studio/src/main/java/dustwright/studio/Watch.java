package dustwright.studio;

import io.javalin.http.Context;
import io.javalin.http.sse.SseClient;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import java.util.function.Predicate;

/** Tells pages of every new version, also of those another studio on the same database made; ends those whose people no longer may look. */
final class Watch implements AutoCloseable {
    private static final int EACH_ms = 1000;
    private static final int MOST_PAGES = 400;

    private final Queue<SseClient> pages = new ConcurrentLinkedQueue<>();
    private final LongSupplier version;
    private final Predicate<Context> may;
    private final ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor(task -> {
        Thread thread = new Thread(task, "watch");
        thread.setDaemon(true);
        return thread;
    });
    private final Future<?> looking;
    private long told = -1;

    /** Watches a version; {@code may} tells whether who asked for a page may still look. */
    Watch(LongSupplier version, Predicate<Context> may) {
        this.version = version;
        this.may = may;
        looking = clock.scheduleWithFixedDelay(this::look, EACH_ms, EACH_ms, TimeUnit.MILLISECONDS);
    }

    void add(SseClient page) {
        if (pages.size() >= MOST_PAGES) {
            page.close();
            return;
        }
        page.keepAlive();
        page.onClose(() -> pages.remove(page));
        pages.add(page);
    }

    synchronized void tell(long now) {
        told = now;
        pages.forEach(page -> page.sendEvent("version", Long.toString(now)));
    }

    private void look() {
        if (pages.isEmpty()) {
            return;
        }
        try {
            pages.stream().filter(page -> !may.test(page.ctx())).forEach(SseClient::close);
            long now = version.getAsLong();
            if (now != told) {
                tell(now);
            }
        } catch (Store.KeepingFault unreachable) {
            // the database does not answer: pages are told by what they ask next, and this asks again in a second
        }
    }

    @Override
    public void close() {
        looking.cancel(true);
        clock.shutdownNow();
    }
}
