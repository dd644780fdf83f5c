package dustwright.documents.answers;

import dustwright.documents.writing.Figures;
import dustwright.engine.sizing.Design;
import dustwright.engine.sizing.Sizing;
import dustwright.engine.sizing.Sizing.Basis;
import java.util.ArrayList;
import java.util.List;

/** Words about chosen sizes that stand alike at the terminal and in the report. */
public final class SizeWords {
    private SizeWords() {}

    /** What the bound rests on, and which part of it is proven. */
    public static String ground(Basis basis) {
        if (!basis.tree()) {
            return "The tubing is no tree, so designs were tried one by one, cheapest first; every one that is cheaper fails in a state"
                    + " that was solved.";
        }
        String order =
                "That nothing cheaper holds is shown by states in which cheaper designs fail, and by the order of a tree:"
                        + " wider tubes on a tool's way and narrower ones elsewhere favour it. ";
        if (basis.proven()) {
            return order + "For air in a tree without wyes that order is proven (decision record 0065).";
        }
        String where = basis.wyes() && basis.dust() ? "At wyes and with dust" : basis.wyes() ? "At wyes" : "With dust";
        return order + where + " it is not proven but looked at: of " + Figures.count(basis.compared())
                + " margins of single designs "
                + (basis.departure() == 0
                        ? "none passed the bound it rests under"
                        : "the worst passed the bound it rests under by " + Figures.fixed(100 * basis.departure(), 2)
                                + " % of its limit")
                + ", and every bound was widened by " + Figures.fixed(100 * basis.pad(), 2)
                + " %. Proven without it: the design named holds for every set asked, and each neighbour listed with a set fails in"
                + " it.";
    }

    /** Choices in which two designs differ. */
    public static String difference(Sizing sizing, Design best, Design other) {
        List<String> parts = new ArrayList<>();
        for (int v = 0; v < best.options().size(); v++) {
            if (!best.options().get(v).equals(other.options().get(v))) {
                parts.add(sizing.choices().get(v).id() + " " + other.options().get(v) + " for "
                        + best.options().get(v));
            }
        }
        return String.join(", ", parts);
    }
}
