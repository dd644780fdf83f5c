package dustwright.documents.writing;

import dustwright.engine.finding.Finding;
import java.util.List;

/** Sentences about what the sheets leave open, beside an answer that goes through sets of open inlets and does not read them. */
public final class SheetWording {
    /** Head of the list of what they leave open. */
    public static final String HEAD = "In the sheets: what does not hold or is not known";

    private SheetWording() {}

    /** Whether the sheets agree with an answer about states. */
    public static String beside(List<Finding> open) {
        long failing = open.stream().filter(Finding::fails).count();
        long unknown = open.size() - failing;
        if (open.isEmpty()) {
            return "The sheets of the equipment, for the sets of the plant file with so many users, leave nothing open.";
        }
        if (failing == 0) {
            return "Whether the plant holds is not known: " + notKnown(unknown)
                    + " in the sheets of the equipment, for the sets of the plant file with so many users.";
        }
        return "The plant does not hold: " + Wording.counted(failing, "requirement", "requirements")
                + (failing == 1 ? " fails" : " fail")
                + " in the sheets of the equipment, for the sets of the plant file with so many users"
                + (unknown == 0 ? "." : ", and " + notKnown(unknown) + ".");
    }

    private static String notKnown(long unknown) {
        return Wording.counted(unknown, "requirement", "requirements") + (unknown == 1 ? " is" : " are") + " not known";
    }
}
