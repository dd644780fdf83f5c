package dustwright.engine.coverage;

import dustwright.engine.finding.Finding;
import java.math.BigInteger;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What was found for one number of users in one condition of filter, valves and producers.
 *
 * @param users inlets open at once
 * @param condition words for the condition, for example {@code filter dirty}
 * @param sets number of sets of inlets this speaks of
 * @param method how it was found
 * @param solved states solved exactly
 * @param failing number of sets that do not hold, where every set was solved
 * @param worst the least margin of every requirement at every place, smallest first
 * @param why what stands against a verdict, or empty
 */
public record Answer(
        int users,
        String condition,
        Verdict verdict,
        BigInteger sets,
        Method method,
        long solved,
        OptionalLong failing,
        List<Worst> worst,
        String why) {
    /** Whether every requirement holds whichever inlets are open. */
    public enum Verdict {
        HOLDS("holds"),
        FAILS("does not hold"),
        UNDECIDED("not decided"),
        NO_SET("no such set"),
        NOT_DONE("not done");

        private final String words;

        Verdict(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** How it was found. */
    public enum Method {
        ENVELOPES("envelopes"),
        BRANCHES("branch and bound"),
        EVERY_SET("every set"),
        NONE("nothing");

        private final String words;

        Method(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * A requirement at a place where it comes nearest to its limit, or misses it most.
     *
     * @param finding in the worst state, solved exactly
     * @param open ids of the inlets open in that state
     * @param bound margin that no set falls below [-]; that of the finding where it is known to be the least of all, minus infinity where no bound
     *     is known
     */
    public record Worst(Finding finding, List<String> open, double bound) {
        /** Within this share two margins are the same [-]. */
        private static final double SAME = 1e-9;

        public Worst {
            open = List.copyOf(open);
        }

        /** The least of all. */
        public Worst(Finding finding, List<String> open) {
            this(finding, open, finding.margin());
        }

        /** Requirement and place. */
        public String key() {
            return key(finding.code().name(), finding.where().toString());
        }

        /** The same from the words of both. */
        public static String key(String code, String place) {
            return code + "/" + place;
        }

        /** Whether no set is worse. */
        public boolean exact() {
            double margin = finding.margin();
            return bound >= margin || bound >= margin - SAME * Math.max(1, Math.abs(margin));
        }

        /** Whether the worst set found keeps the limit while another, by the bound, need not. */
        public boolean undecided() {
            return finding.holds() && !exact() && bound < 0;
        }

        /** The same with a bound that may be lower than its own. */
        Worst boundedBy(double other) {
            return new Worst(finding, open, Math.min(bound, other));
        }

        /** The worst per requirement and place, smallest margin first; of equals the one met first. */
        public static List<Worst> perPlace(Stream<Worst> all) {
            Map<String, Worst> least = new TreeMap<>();
            all.forEach(worst -> least.merge(
                    worst.key(),
                    worst,
                    (a, b) -> b.finding.margin() < a.finding.margin() ? b.boundedBy(a.bound) : a.boundedBy(b.bound)));
            return least.values().stream()
                    .sorted(Comparator.comparingDouble(w -> w.finding.margin()))
                    .toList();
        }
    }

    public Answer {
        worst = List.copyOf(worst);
    }

    /** The same answer, with why no bound was used. */
    Answer because(String noBound) {
        return why.isEmpty()
                ? new Answer(users, condition, verdict, sets, method, solved, failing, worst, noBound)
                : this;
    }

    /** Sets that were not solved, because a bound shows that none of them is worse than those that were. */
    public BigInteger pruned() {
        return method == Method.ENVELOPES || method == Method.BRANCHES
                ? sets.subtract(BigInteger.valueOf(solved)).max(BigInteger.ZERO)
                : BigInteger.ZERO;
    }

    /** How far some margin may lie below the one found [-]: 0 where every one is exact, infinite where nothing is known of some. */
    public double widening() {
        return worst.stream()
                .filter(w -> !w.exact())
                .mapToDouble(w -> w.finding.margin() - w.bound)
                .max()
                .orElse(0);
    }

    /** The answer in a line for people. */
    public String words() {
        String what = users + (users == 1 ? " user, " : " users, ") + condition + ": " + verdict.words();
        if (verdict == Verdict.FAILS) {
            Finding finding = worst.get(0).finding();
            return what + ", " + finding.code().title() + " at " + finding.where() + " with "
                    + String.join("+", worst.get(0).open());
        }
        return why.isEmpty() ? what : what + ", " + why;
    }

    /** The least margin of all; empty where nothing is checked. */
    public Optional<Worst> least() {
        return worst.stream().findFirst();
    }
}
