package dustwright.documents.control;

import dustwright.engine.rehearsal.Played;
import dustwright.engine.rehearsal.Script;
import java.util.Locale;

/** Times of a rehearsal as a clock shows them. */
public final class Clock {
    private static final long DAY_s = 24 * 3600;

    private Clock() {}

    /** Time of day of a moment, to the second; the day is said from the second one on. */
    public static String of(Played played, long at_ms) {
        return of(played.script(), at_ms);
    }

    /** The same while it is still going on. */
    public static String of(Script script, long at_ms) {
        long second = Math.round(script.begins_s()) + at_ms / 1000;
        String clock =
                String.format(Locale.ROOT, "%02d:%02d:%02d", second % DAY_s / 3600, second % 3600 / 60, second % 60);
        return second < DAY_s ? clock : "day " + (1 + second / DAY_s) + ", " + clock;
    }
}
