package dustwright.engine.coverage;

import dustwright.engine.coverage.Answer.Verdict;
import java.util.Optional;

/**
 * A number of users that is shown to hold, whoever they are, and why no greater one is named.
 *
 * @param shown greatest number asked for which every set holds, as for every smaller one; 0 where none was shown
 * @param end what stands against the next number
 */
public record Users(int shown, End end) {
    /** What stands against the next number. */
    public enum End {
        /** Some set does not hold. */
        FAILS,
        /** It could not be decided. */
        UNDECIDED,
        /** The work was stopped before. */
        STOPPED,
        /** It was not asked. */
        NOT_ASKED
    }

    static Users upTo(int shown, Optional<Answer> stop) {
        return new Users(shown, stop.map(Users::end).orElse(End.NOT_ASKED));
    }

    private static End end(Answer stop) {
        return stop.verdict() == Verdict.NOT_DONE
                ? End.STOPPED
                : stop.verdict() == Verdict.UNDECIDED ? End.UNDECIDED : End.FAILS;
    }

    /** Whether the work was stopped before the number was known. */
    public boolean partial() {
        return end == End.STOPPED;
    }
}
