package dustwright.engine.sheet;

import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Place;
import java.util.List;

/**
 * One piece of equipment, or one question about the plant, figure by figure.
 *
 * @param id stable and unique within the plant, what and where: {@code container/REC}
 * @param title what it is, as a heading: "Bulk bag"
 * @param entries in the order in which they are read
 * @param findings requirements that do not belong to one set of open inlets; their state says which set governs, or {@link #ANY_SET}
 */
public record Sheet(String id, String title, Place about, List<Entry> entries, List<Finding> findings) {
    /** State of a finding that does not depend on which inlets are open. */
    public static final String ANY_SET = "any set";

    public Sheet {
        entries = List.copyOf(entries);
        findings = List.copyOf(findings);
    }
}
