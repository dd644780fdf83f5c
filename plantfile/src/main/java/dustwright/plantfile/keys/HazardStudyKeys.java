package dustwright.plantfile.keys;

import dustwright.engine.finding.Place;
import dustwright.plantfile.keys.Shape.ListOf;
import dustwright.plantfile.keys.Shape.Named;
import dustwright.plantfile.keys.Shape.Text;
import java.util.List;

/** The keys of a hazard study: what a team writes to the lines of a plant. */
public final class HazardStudyKeys {
    /** Version of the format that this program reads. */
    public static final int VERSION = 1;

    private static final Shape WORD = new Text(60);
    private static final Shape SENTENCE = new Text(1000);

    private HazardStudyKeys() {}

    private static final Group RISK = group(
            "a risk matrix",
            Key.required("severity", new ListOf(WORD, 2), "Severities, from mild to grave."),
            Key.required("likelihood", new ListOf(WORD, 2), "Likelihoods, from rare to frequent."),
            Key.required(
                    "risk",
                    new Named("severity", new ListOf(WORD, 2), true),
                    "For each severity the risks, one for each likelihood."),
            Key.required("accepted", new ListOf(WORD, 0), "Risks that need no action."));

    private static final Group ROW = group(
            "a row of a hazard study",
            Key.optional("severity", WORD, "A severity of the matrix."),
            Key.optional("likelihood", WORD, "A likelihood of the matrix, with the safeguards that are there."),
            Key.optional("action", SENTENCE, "What is to be done."),
            Key.optional("who", new Text(120), "Who does it."),
            Key.optional("by", new Text(60), "When it is to be done."),
            Key.optional("status", new Text(60), "Where it stands."),
            Key.optional("note", SENTENCE, "Anything else."),
            Key.optional("node", new Text(120), "Part of the plant; for a row of your own, or in place of ours."),
            Key.optional("deviation", SENTENCE, "What is other than meant; a row of your own has it."),
            Key.optional("cause", SENTENCE, "Why it could be."),
            Key.optional("consequence", SENTENCE, "What it could do before any safeguard."),
            Key.optional("safeguards", new ListOf(SENTENCE, 0), "What guards against it, in place of what was found."),
            Key.optional("missing", new ListOf(SENTENCE, 0), "What is missing, in place of what was found."));

    /** The whole file. */
    public static final Group TOP = group(
            "a hazard study",
            Key.required("hazard study", new Shape.Whole(VERSION, VERSION), "Version of this format."),
            Key.optional("team", new ListOf(new Text(120), 0), "Who sat together, with their trade."),
            Key.optional("date", new Text(60), "Of the last sitting."),
            Key.required("risk matrix", new Shape.Keys(RISK), "The matrix of the site."),
            Key.required("rows", new Named("row", new Shape.Keys(ROW), true), "By the name of the line."));

    private static Group group(String words, Key... keys) {
        return new Group(words, Place.Kind.PLANT, List.of(keys), List.of());
    }
}
