package dustwright.engine.rehearsal;

import dustwright.engine.interlock.Controller;
import dustwright.engine.interlock.Sequence;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Watches somebody who goes through a drill by hand: what the panel asked for and when it was done, what was named as wrong, and what must not be pressed at a
 * time. The marks are our own way of talking over a drill; they are no proof of anybody's skill.
 */
public final class Trainee {
    /** Beyond this nobody is waited for, where a drill does not say how long its people take [s]. */
    private static final double USUAL_WAIT_s = 600;

    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9_]*");

    private final Set<String> signals;
    private final Map<String, String> lamps = new HashMap<>();
    private final double change_s;
    private final double longest_s;
    private final List<Answer> answers = new ArrayList<>();
    private final Set<PlantFault> broken = new LinkedHashSet<>();
    private Optional<People.Intention> asked = Optional.empty();
    private long askedAt_ms;
    private boolean changing;
    private long changedAt_ms;
    private int wrongGuesses;
    private int withHandsInside;
    private int placedTooEarly;
    private boolean acted;

    /** What was asked for, and how long it took; empty where it was not done yet. */
    private record Answer(People.Intention asked, double took_s) {}

    Trainee(Sequence sequence, Script drill, double change_s) {
        signals = sequence.names().collect(Collectors.toCollection(HashSet::new));
        sequence.lamps().forEach(lamp -> lamps.put(lamp.name(), "lamp " + lamp.words()));
        this.change_s = change_s;
        longest_s = drill.people().map(Script.Answering::greatest_s).orElse(USUAL_WAIT_s);
    }

    /** The drill as a trainee goes through it: nobody else answers, and what breaks stays broken until somebody finds it. */
    public static Script script(Script drill) {
        return new Script(
                drill.title(),
                drill.begins_s(),
                drill.lasts_s(),
                drill.seed(),
                drill.feed(),
                drill.containerLeft_s(),
                drill.receiverLeft_s(),
                Optional.empty(),
                drill.acts().stream()
                        .filter(a -> !(a instanceof Script.Act.Mended))
                        .toList(),
                drill.sees(),
                drill.does(),
                drill.must());
    }

    void look(Controller controller, boolean work, boolean inside, long now_ms) {
        Optional<People.Intention> now = People.asked(controller, signals, work, inside, changing);
        if (!now.equals(asked)) {
            asked.ifPresent(a -> answers.add(new Answer(a, (now_ms - askedAt_ms) / 1000.0)));
            asked = now;
            askedAt_ms = now_ms;
        }
    }

    void pressed(String button, boolean inside, long now_ms) {
        acted = true;
        if (inside && (button.equals("reset") || button.equals("start"))) {
            withHandsInside++;
        }
        if (button.equals("container_change")) {
            changing = true;
            changedAt_ms = now_ms;
        }
        if (button.equals("container_placed")) {
            if (!changing || now_ms - changedAt_ms < 1000 * change_s) {
                placedTooEarly++;
            }
            changing = false;
        }
    }

    void breaks(PlantFault fault) {
        broken.add(fault);
    }

    /** Something is looked at and mended; what was not broken was a wrong guess. */
    void mended(PlantFault fault) {
        acted = true;
        if (!broken.remove(fault)) {
            wrongGuesses++;
        }
    }

    /**
     * One point of a drill.
     *
     * @param asked what was asked
     * @param went how it went
     * @param met whether it was met
     */
    public record Mark(String asked, String went, boolean met) {}

    /** Marks up to a time, demands of the drill first. Who has done nothing yet has no point, whatever went right by itself. */
    List<Mark> marks(List<Played.Verdict> verdicts, long now_ms) {
        return earned(verdicts, now_ms).stream()
                .map(mark -> acted ? mark : new Mark(mark.asked(), "nothing was done", false))
                .toList();
    }

    private List<Mark> earned(List<Played.Verdict> verdicts, long now_ms) {
        List<Mark> marks = new ArrayList<>();
        for (Played.Verdict verdict : verdicts) {
            marks.add(new Mark(inWords(verdict.must()), verdict.met() ? "so it was" : "it was not so", verdict.met()));
        }
        marks.add(answered(now_ms));
        marks.add(new Mark(
                "what is wrong is named, nothing else taken apart",
                broken.isEmpty()
                        ? wrongGuesses == 0
                                ? "nothing was mended that was not broken"
                                : times(wrongGuesses) + " a guess"
                        : "not found yet: " + broken.size()
                                + (wrongGuesses == 0 ? "" : ", " + times(wrongGuesses) + " a guess"),
                broken.isEmpty() && wrongGuesses == 0));
        marks.add(new Mark(
                "no RESET and no START while hands are in valve or hopper",
                withHandsInside == 0 ? "none was pressed" : times(withHandsInside) + " pressed",
                withHandsInside == 0));
        marks.add(new Mark(
                "IN PLACE only after CHANGE and the time a change takes, " + span(change_s),
                placedTooEarly == 0 ? "never too early" : times(placedTooEarly) + " too early",
                placedTooEarly == 0));
        return marks;
    }

    /** A demand as one says it to a person. */
    private String inWords(Script.Must must) {
        String condition = inWords(must.condition().text()).replaceAll("\\bnot ", "no ");
        return switch (must.when()) {
            case SOMETIME -> "at some time in the drill: " + condition;
            case NEVER -> "at no time in the drill: " + condition + (condition.contains(" and ") ? " at once" : "");
            case AT_THE_END -> "when the drill ends: " + condition;
        };
    }

    /** A condition as a reader of the panel knows its signals. */
    private String inWords(String condition) {
        return NAME.matcher(condition)
                .replaceAll(found -> Matcher.quoteReplacement(
                        lamps.getOrDefault(found.group(), found.group().replace('_', ' '))));
    }

    private Mark answered(long now_ms) {
        double late_s = asked.filter(People.Intention::isCall).isPresent() ? (now_ms - askedAt_ms) / 1000.0 : 0;
        double slowest_s = Math.max(
                late_s,
                answers.stream()
                        .filter(a -> a.asked.isCall())
                        .mapToDouble(a -> a.took_s - (a.asked == People.Intention.PLACED ? change_s : 0))
                        .max()
                        .orElse(0));
        boolean any = late_s > 0 || answers.stream().anyMatch(a -> a.asked.isCall());
        return new Mark(
                "what the panel and users wait for is done within " + span(longest_s),
                any ? "the slowest took " + span(slowest_s) : "nothing was waited for",
                slowest_s <= longest_s);
    }

    private static String times(int count) {
        return count == 1 ? "once" : count + " times";
    }

    private static String span(double time_s) {
        long second = Math.round(time_s);
        return second < 60
                ? second + " s"
                : second % 60 == 0 ? second / 60 + " min" : second / 60 + " min " + second % 60 + " s";
    }
}
