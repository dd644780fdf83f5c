package dustwright.engine.interlock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the search leaves open: how long things take. Every time is held against the range that the default sequence gives to the same rule, step or contact, and some against
 * each other. Ranges and orders are common practice without a published source.
 */
public final class Times {
    /** Rounding of a time up to whole scans, and the scan that reads the change. */
    private static final int SCANS = 2;

    private static final String CONTACT = "contact ";
    private static final double LEAST_SCAN_s = 0.005;
    private static final double GREATEST_SCAN_s = 0.2;

    /** Of sequences that turn a valve, and of those that do not: run-on empties the one and only lets the other rest. */
    private static final Map<Boolean, Map<String, Range>> USUAL =
            Map.of(true, usual(0, 63, 64, 608), false, usual(128, 160));

    private final Sequence sequence;

    private Times(Sequence sequence) {
        this.sequence = sequence;
    }

    /** A time, or a number of times, that is usual for a rule, step or contact. */
    private record Range(double least, double greatest) {
        Range with(Range other) {
            return new Range(Math.min(least, other.least), Math.max(greatest, other.greatest));
        }
    }

    /**
     * One judgement.
     *
     * @param words what was compared, with its figures
     */
    public record Judged(String words, boolean holds) {}

    /**
     * How long a cause takes to act.
     *
     * @param message what the operator reads
     * @param time_s longest time from what brings it about to the outputs, without the travel of devices [s]
     */
    public record Reaction(String message, double time_s) {}

    /** All judgements on the times of a sequence. */
    public static List<Judged> judged(Sequence sequence) {
        Times times = new Times(sequence);
        List<Judged> judged = new ArrayList<>();
        judged.add(new Judged(
                "scan: " + sequence.scan_s() + " s, usual from " + LEAST_SCAN_s + " s to " + GREATEST_SCAN_s
                        + " s, since every reaction takes two",
                LEAST_SCAN_s <= sequence.scan_s() && sequence.scan_s() <= GREATEST_SCAN_s));
        boolean turns = sequence.outputs().stream().anyMatch(o -> o.name().equals("valve"));
        Map<String, Range> usual = USUAL.getOrDefault(turns, Map.of());
        settings(sequence).forEach((what, time) -> {
            Range range = usual.getOrDefault(what, usual.get(ofFirst(what)));
            if (range != null) {
                judged.add(new Judged(
                        what + ": " + figure(time, what) + ", usual from " + figure(range.least, what) + " to "
                                + figure(range.greatest, what),
                        range.least <= time && time <= range.greatest));
            }
        });
        times.order(
                "settling lasts at least as long as the vent's proof",
                "step settling",
                1,
                "rule vent_not_proved",
                judged);
        times.order(
                "a hold lasts at least as long as the blocked time",
                "rule unloaded_out",
                1,
                "rule blocked_long",
                judged);
        times.order(
                "the blocked time is longer than twice the clear time",
                "rule blocked_long",
                2,
                "rule receiver_clear",
                judged);
        return List.copyOf(judged);
    }

    /** How long each cause that demands something takes to act. */
    public static List<Reaction> reactions(Sequence sequence) {
        Times times = new Times(sequence);
        return sequence.causes().stream()
                .filter(c -> !c.demands().isEmpty())
                .map(c -> new Reaction(
                        c.message(),
                        times.delay(c.when(), new Bringing(sequence).withRules(c.when()), new LinkedHashSet<>())
                                + SCANS * sequence.scan_s()))
                .toList();
    }

    /** A second contact of a thing reacts as quickly as the first. */
    private static String ofFirst(String what) {
        return what.startsWith(CONTACT) ? Witnesses.unnumbered(what) : what;
    }

    private void order(String words, String longer, int factor, String shorter, List<Judged> judged) {
        Map<String, Double> settings = settings(sequence);
        Double greater = settings.get(longer);
        Double less = settings.get(shorter);
        if (greater != null && less != null) {
            judged.add(new Judged(
                    words + ": " + figure(greater, longer) + " and " + figure(less, shorter),
                    factor == 1 ? greater >= less : greater > factor * less));
        }
    }

    /** The longest time that rules and filters in a condition take, one after the other, as far as they bring it about. */
    private double delay(Expr when, Set<String> bringing, Set<String> passed) {
        double longest_s = 0;
        for (String name : when.names()) {
            if (bringing.contains(name) && passed.add(name)) {
                double of_s = sequence.inputs().stream()
                        .filter(i -> i.name().equals(name))
                        .flatMap(i -> i.filter().stream())
                        .mapToDouble(t -> sequence.timer(t).time_s())
                        .sum();
                Optional<Sequence.Rule> rule = sequence.rules().stream()
                        .filter(r -> r.name().equals(name))
                        .findFirst();
                if (rule.isPresent()) {
                    of_s = ruleDelay(rule.get(), bringing, passed);
                }
                longest_s = Math.max(longest_s, of_s);
                passed.remove(name);
            }
        }
        return longest_s;
    }

    private double ruleDelay(Sequence.Rule rule, Set<String> bringing, Set<String> passed) {
        if (rule instanceof Sequence.Rule.Is is) {
            return delay(is.when(), bringing, passed);
        }
        if (rule instanceof Sequence.Rule.After after) {
            return sequence.timer(after.timer()).time_s() + delay(after.when(), bringing, passed);
        }
        if (rule instanceof Sequence.Rule.InAll sum) {
            return sequence.timer(sum.timer()).time_s() + delay(sum.when(), bringing, passed);
        }
        return rule instanceof Sequence.Rule.Latch latch ? delay(latch.set(), bringing, passed) : 0;
    }

    /** Times and numbers by what they belong to; a contact without a filter has none. */
    private static Map<String, Double> settings(Sequence sequence) {
        Map<String, Double> settings = new LinkedHashMap<>();
        sequence.inputs()
                .forEach(i -> settings.put(
                        CONTACT + i.name(),
                        i.filter().map(f -> sequence.timer(f).time_s()).orElse(0.0)));
        for (Sequence.Rule rule : sequence.rules()) {
            if (rule instanceof Sequence.Rule.After after) {
                settings.put(
                        "rule " + rule.name(), sequence.timer(after.timer()).time_s());
            } else if (rule instanceof Sequence.Rule.InAll sum) {
                settings.put("rule " + rule.name(), sequence.timer(sum.timer()).time_s());
            } else if (rule instanceof Sequence.Rule.Times times) {
                settings.put("count " + rule.name(), (double) times.limit());
            }
        }
        sequence.steps()
                .forEach(s -> s.time()
                        .ifPresent(t -> settings.put(
                                "step " + s.name(), sequence.timer(t).time_s())));
        return settings;
    }

    /** The ranges of the default sequences; where variants differ, from the least to the greatest. */
    private static Map<String, Range> usual(int... variants) {
        Map<String, Range> usual = new LinkedHashMap<>();
        for (int variant : variants) {
            ranges(DefaultSequence.of("usual", Options.numbered(variant)))
                    .forEach((what, range) -> usual.merge(what, range, Range::with));
        }
        usual.put("count returns_used", new Range(1, 5));
        usual.put("count starts_used", new Range(2, 6));
        return usual;
    }

    private static Map<String, Range> ranges(Sequence sequence) {
        Map<String, Range> ranges = new LinkedHashMap<>();
        sequence.inputs()
                .forEach(i -> ranges.put(
                        CONTACT + i.name(),
                        i.filter().map(f -> range(sequence, f)).orElse(new Range(0, 0))));
        for (Sequence.Rule rule : sequence.rules()) {
            if (rule instanceof Sequence.Rule.After after) {
                ranges.put("rule " + rule.name(), range(sequence, after.timer()));
            } else if (rule instanceof Sequence.Rule.InAll sum) {
                ranges.put("rule " + rule.name(), range(sequence, sum.timer()));
            }
        }
        sequence.steps().forEach(s -> s.time().ifPresent(t -> ranges.put("step " + s.name(), range(sequence, t))));
        return ranges;
    }

    private static Range range(Sequence sequence, String timer) {
        Sequence.Timer t = sequence.timer(timer);
        return new Range(t.least_s(), t.greatest_s());
    }

    private static String figure(double value, String what) {
        String number = value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
        return what.startsWith("count ") ? number + " times" : number + " s";
    }
}
