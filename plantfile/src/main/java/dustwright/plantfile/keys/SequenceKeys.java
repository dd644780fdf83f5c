package dustwright.plantfile.keys;

import dustwright.engine.finding.Place;
import dustwright.engine.quantity.Dimension;
import dustwright.plantfile.keys.Shape.ListOf;
import dustwright.plantfile.keys.Shape.Named;
import dustwright.plantfile.keys.Shape.Text;
import dustwright.plantfile.keys.Shape.Word;
import dustwright.plantfile.keys.Shape.YesNo;
import java.util.List;

/** The keys of a sequence file. */
public final class SequenceKeys {
    /** Version of the format that this program reads. */
    public static final int VERSION = 1;

    private static final Shape CONDITION = new Text(2000);
    private static final Shape WORDS = new Text(200);
    private static final Shape TAG = new Text(40);
    private static final Shape NAME = new Text(40);
    private static final Shape NAMES = new ListOf(NAME, 0);
    private static final Shape TIME =
            new Shape.Amount(List.of(Shape.Range.of(Dimension.DURATION, "0 s", "24 h")), "3 s");
    private static final Shape SCAN =
            new Shape.Amount(List.of(Shape.Range.of(Dimension.DURATION, "0.001 s", "1 s")), "0.1 s");

    private SequenceKeys() {}

    private static final Group INPUT = group(
            "an input",
            Key.required("tag", TAG, "Tag, letters after ISA-5.1."),
            Key.required("what", WORDS, "What it watches."),
            Key.required("good", WORDS, "Word for 1: closed, energised, all well."),
            Key.required("bad", WORDS, "Word for 0, also what a broken wire reads."),
            Key.optional("filter", NAME, "Time for which it must have been bad before it counts as bad."));

    private static final Group BUTTON = group(
            "a button",
            Key.required("tag", TAG, "Tag."),
            Key.required("what", WORDS, "Inscription."),
            Key.required("contact", new Word(List.of("opens", "closes")), "What its contact does when it is pressed."));

    private static final Group OUTPUT = group(
            "an output",
            Key.required("tag", TAG, "Tag."),
            Key.required("what", WORDS, "What it drives."),
            Key.required("on", WORDS, "Word for 1, energised."),
            Key.required("off", WORDS, "Word for 0, also without power."),
            Key.required("stop", WORDS, "Word with which a cause forbids it at once."),
            Key.optional("off when", CONDITION, "Further condition that keeps it off."),
            Key.optional("never with", NAMES, "Outputs that may not be on in the same step."));

    private static final Group TIMER = group(
            "a time",
            Key.required("time", TIME, "The time."),
            Key.required("from", TIME, "Least setting."),
            Key.required("to", TIME, "Greatest setting."),
            Key.required("what", WORDS, "What it is for."));

    private static final Group RULE = group(
            "a rule",
            Key.optional("when", CONDITION, "True when this is; with a time or a number, when it has been."),
            Key.optional("after", NAME, "Time for which `when` must be true without a break."),
            Key.optional("in all", NAME, "Time for which `when` must be true in all."),
            Key.optional("times", new Shape.Whole(1, 1000), "How often `when` must be true."),
            Key.optional("forget when", CONDITION, "Forgets what `in all` or `times` counted."),
            Key.optional("set when", CONDITION, "Sets it."),
            Key.optional("reset when", CONDITION, "Clears it, unless it is set in the same scan."),
            Key.optional("kept without power", new YesNo(), "`yes`: as it was when power returns."),
            Key.optional("starts", new Word(List.of("on", "off")), "What it is when power comes on."),
            Key.required("what", WORDS, "What it says."));

    private static final Group CAUSE = group(
            "a cause",
            Key.required("when", CONDITION, "When it is present."),
            Key.optional(
                    "demands",
                    new Named("demand", WORDS),
                    "Output and word; the output's own stop word forbids it at once."),
            Key.optional("latched", new YesNo(), "`yes`: kept until RESET in a scan in which it is absent."),
            Key.required(
                    "priority", new Word(List.of("high", "medium", "low", "status")), "How soon a person must act."),
            Key.required("message", WORDS, "What the operator reads."),
            Key.required("consequence", WORDS, "What happens if nobody acts."),
            Key.required("response", WORDS, "What the operator does."));

    private static final Group EXIT = group(
            "an exit",
            Key.required("to", NAME, "Step it leads to."),
            Key.required("when", CONDITION, "When it is taken; `time_out` is true when the step's time is out."));

    private static final Group STEP = group(
            "a step",
            Key.required("what", WORDS, "What happens in it."),
            Key.optional("on", NAMES, "Outputs it switches on."),
            Key.optional("keep", NAMES, "Outputs that stay on if they were on; all others are off."),
            Key.optional("time", NAME, "Time of the step."),
            Key.required(
                    "exits",
                    new ListOf(new Shape.Keys(EXIT), 0),
                    "Ways out; the first whose condition is true is taken."));

    private static final Group LAMP = group(
            "a lamp",
            Key.required("tag", TAG, "Tag."),
            Key.required(
                    "colour",
                    new Word(List.of("white", "green", "yellow", "blue", "red")),
                    "Colour, in the sense of IEC 60073."),
            Key.optional("flashes", new YesNo(), "`yes` when it flashes."),
            Key.required("shows", WORDS, "Inscription."),
            Key.required("when", CONDITION, "When it is lit."));

    private static final Group PART = group(
            "a part",
            Key.required("what", WORDS, "What it is."),
            Key.optional(
                    "B10d",
                    new Shape.Amount(List.of(Shape.Range.of(Dimension.RATIO, "1", "10000000000")), "2000000"),
                    "Operations until 10 % of such parts have failed dangerously, from its maker; needs `operated`."),
            Key.optional(
                    "operated",
                    new Shape.Amount(
                            List.of(Shape.Range.of(Dimension.FREQUENCY, "0.1 /year", "1000000000 /year")), "300 /year"),
                    "How often it is operated, in the mean; a year has 52 weeks."),
            Key.optional(
                    "MTTFd",
                    new Shape.Amount(
                            List.of(Shape.Range.of(Dimension.DURATION, "0.1 years", "100000 years")), "75 years"),
                    "Mean time to dangerous failure, from its maker, where it does not wear with its operations."),
            Key.optional(
                    "coverage",
                    new Shape.Amount(List.of(Shape.Range.of(Dimension.RATIO, "0 %", "99.9 %")), "90 %"),
                    "Share of its dangerous failures that is noticed, by the standard's Annex E."));

    private static final Group CHANNEL = group(
            "a channel",
            Key.required(
                    "parts", new ListOf(new Shape.Keys(PART), 1), "Its parts: if one fails, so does the channel."));

    private static final Group SAFETY = group(
            "a safety function",
            Key.required("what", WORDS, "What it does."),
            Key.required("severity", new Word(List.of("S1", "S2")), "Harm: slight, or serious."),
            Key.required("exposure", new Word(List.of("F1", "F2")), "Exposed: seldom, or often."),
            Key.required("avoidance", new Word(List.of("P1", "P2")), "Harm avoided: sometimes, or hardly."),
            Key.optional("category", new Word(List.of("B", "1", "2", "3", "4")), "Architecture after ISO 13849-1."),
            Key.optional(
                    "common cause",
                    new Shape.Whole(0, 100),
                    "Points against failures of common cause, by the list of the standard's Annex F."),
            Key.optional(
                    "channels",
                    new ListOf(new Shape.Keys(CHANNEL), 1),
                    "One in categories B, 1 and 2 (without the test channel), two in 3 and 4."));

    /** The whole file. */
    public static final Group TOP = group(
            "a sequence",
            Key.required("sequence", new Shape.Whole(VERSION, VERSION), "Version of this format."),
            Key.required("title", new Text(120), "What it is for."),
            Key.required("scan", SCAN, "Usual time from scan to scan."),
            Key.optional("options", new Named("option", WORDS, true), "What it was made for."),
            Key.required("inputs", new Named("input", new Shape.Keys(INPUT)), "Contacts, 1 when all is well."),
            Key.required("buttons", new Named("button", new Shape.Keys(BUTTON)), "Push buttons in order of rank."),
            Key.required("outputs", new Named("output", new Shape.Keys(OUTPUT)), "What the controller drives."),
            Key.required("times", new Named("time", new Shape.Keys(TIMER)), "Times with their ranges."),
            Key.required(
                    "rules",
                    new Named("rule", new Shape.Keys(RULE)),
                    "Signals with a name of their own, in the order of the scan."),
            Key.required(
                    "causes",
                    new Named("cause", new Shape.Keys(CAUSE)),
                    "What demands something of the outputs, and what is said."),
            Key.required(
                    "steps", new Named("step", new Shape.Keys(STEP)), "Steps; the first is the one after power on."),
            Key.required("lamps", new Named("lamp", new Shape.Keys(LAMP)), "Lamps."),
            Key.optional(
                    "safety",
                    new Named("safety function", new Shape.Keys(SAFETY)),
                    "Safety functions, for a screening of their level; nothing else reads them."));

    private static Group group(String words, Key... keys) {
        return new Group(words, Place.Kind.PLANT, List.of(keys), List.of());
    }
}
