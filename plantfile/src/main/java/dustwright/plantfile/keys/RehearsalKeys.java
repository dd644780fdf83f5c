package dustwright.plantfile.keys;

import dustwright.engine.finding.Place;
import dustwright.engine.quantity.Dimension;
import dustwright.engine.rehearsal.PlantFault;
import dustwright.plantfile.keys.Shape.ListOf;
import dustwright.plantfile.keys.Shape.Text;
import dustwright.plantfile.keys.Shape.Word;
import java.util.List;
import java.util.stream.Stream;

/** The keys of a rehearsal script. */
public final class RehearsalKeys {
    /** Version of the format that this program reads. */
    public static final int VERSION = 1;

    private static final Shape WORDS = new Text(300);
    private static final Shape CONDITION = new Text(500);
    private static final Shape MOMENT =
            new Shape.Amount(List.of(Shape.Range.of(Dimension.DURATION, "0 s", "168 h")), "20 min");
    private static final Shape LENGTH =
            new Shape.Amount(List.of(Shape.Range.of(Dimension.DURATION, "10 s", "168 h")), "1 h");
    private static final Shape FEED =
            new Shape.Amount(List.of(Shape.Range.of(Dimension.RATIO, "1 %", "1000 %")), "100 %");
    private static final Shape FAULT =
            new Word(Stream.of(PlantFault.values()).map(PlantFault::id).toList());

    private RehearsalKeys() {}

    private static final Group ACT = group(
            "an act",
            Key.required("at", MOMENT, "When, from the beginning."),
            Key.optional("press", new Text(40), "Button that is pressed."),
            Key.optional("breaks", FAULT, "What goes wrong."),
            Key.optional("mended", FAULT, "What is mended."),
            Key.optional(
                    "users", new Word(List.of("begin", "end")), "Whether users take up their hoses or hang them up."));

    private static final Group MUST = group(
            "a demand",
            Key.optional("sometime", CONDITION, "Condition that must be true at some time."),
            Key.optional("never", CONDITION, "Condition that must never be true."),
            Key.optional("at the end", CONDITION, "Condition that must be true when it ends."));

    /** The whole file. */
    public static final Group TOP = group(
            "a rehearsal",
            Key.required("rehearsal", new Shape.Whole(VERSION, VERSION), "Version of this format."),
            Key.required("title", new Text(120), "What is rehearsed."),
            Key.required("begins", new Text(5), "Time of day at which it begins, such as `01:40`."),
            Key.required("lasts", LENGTH, "How long it lasts."),
            Key.optional(
                    "seed",
                    new Shape.Whole(0, 1_000_000_000),
                    "Number from which the times people take are drawn. Default: 1."),
            Key.optional("feed", FEED, "Dust picked up, as share of the plant's largest rate. Default: 100 %."),
            Key.optional(
                    "container full after",
                    MOMENT,
                    "The container begins as full as to be full after this time of that feed. Default: empty."),
            Key.optional(
                    "receiver high after", MOMENT, "Likewise the receiver, while nothing leaves it. Default: empty."),
            Key.optional(
                    "people come after", MOMENT, "Least time until somebody comes to a lamp; without it nobody comes."),
            Key.optional("people come by", MOMENT, "Greatest time until somebody comes to a lamp."),
            Key.required("acts", new ListOf(new Shape.Keys(ACT), 1), "What happens, in the order of time."),
            Key.optional("sees", new ListOf(WORDS, 0), "What the operator sees."),
            Key.optional("does", new ListOf(WORDS, 0), "What the operator should do."),
            Key.optional("must", new ListOf(new Shape.Keys(MUST), 0), "What must be so, over names of the sequence."));

    private static Group group(String words, Key... keys) {
        return new Group(words, Place.Kind.PLANT, List.of(keys), List.of());
    }
}
