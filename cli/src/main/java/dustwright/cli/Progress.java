package dustwright.cli;

import java.io.PrintWriter;

/** How far long work has come, on one line of the terminal that is wiped afterwards; silent when nobody watches (the launcher says so) or it is quick. */
final class Progress {
    private static final long QUIET_ms = 400;
    private static final long BETWEEN_ms = 100;

    private final PrintWriter err;
    private final String what;
    private final int all;
    private final boolean watched = Boolean.getBoolean("dustwright.watched");
    private final long start_ms = System.currentTimeMillis();
    private long last_ms = start_ms;
    private int longest;

    Progress(PrintWriter err, String what, int all) {
        this.err = err;
        this.what = what;
        this.all = all;
    }

    synchronized void done(int count) {
        long now_ms = System.currentTimeMillis();
        long left_s = Math.round((now_ms - start_ms) / 1000.0 * (all - count) / Math.max(1, count));
        say(count + " of " + all + " " + what + ", about " + left_s + " s left");
    }

    /** Where the work stands, for work whose end is not known. */
    synchronized void say(String words) {
        long now_ms = System.currentTimeMillis();
        if (!watched || now_ms - start_ms < QUIET_ms || now_ms - last_ms < BETWEEN_ms) {
            return;
        }
        last_ms = now_ms;
        err.print("\r" + words + " ".repeat(Math.max(0, longest - words.length())));
        err.flush();
        longest = Math.max(longest, words.length());
    }

    synchronized void clear() {
        if (longest > 0) {
            err.print("\r" + " ".repeat(longest) + "\r");
            err.flush();
        }
    }
}
