package dustwright.engine.review;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * All that a team has written.
 *
 * @param team who sat together
 * @param date of the last sitting, as written
 * @param byId in the order of the file
 */
public record Notes(List<String> team, String date, RiskMatrix matrix, Map<String, Note> byId) {
    /** Before any team has sat. */
    public static final Notes NONE = new Notes(List.of(), "", RiskMatrix.TO_BEGIN_WITH, Map.of());

    public Notes {
        team = List.copyOf(team);
        byId = Collections.unmodifiableMap(new LinkedHashMap<>(byId));
    }
}
