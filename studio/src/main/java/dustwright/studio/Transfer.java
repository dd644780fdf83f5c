package dustwright.studio;

import java.util.Collections;
import java.util.List;

/** Carries all that is kept from one database to another that is empty, of whichever kind the two are. */
final class Transfer {
    private static final List<String> TABLES = List.of(
            "plant",
            "step",
            "leftstep",
            "revision",
            "alternative",
            "floor",
            "floorpicture",
            "signed",
            "person",
            "control");

    private Transfer() {}

    /** All as it stands at one moment; who is signed in, and tries to, is left behind. */
    static void all(Store from, Store to) {
        from.together(there -> {
            if (from.server()) {
                there.change("SET TRANSACTION ISOLATION LEVEL REPEATABLE READ");
            }
            return to.together(here -> {
                for (String table : TABLES) {
                    List<String> columns = here.columns(table);
                    String names = String.join(", ", columns);
                    String insert = "INSERT INTO " + table + "(" + names + ") VALUES("
                            + String.join(",", Collections.nCopies(columns.size(), "?")) + ")";
                    there.each("SELECT " + names + " FROM " + table, columns.size(), row -> here.change(insert, row));
                }
                return TABLES.size();
            });
        });
    }

    static boolean holdsAnything(Store store) {
        return store.one("SELECT 1 FROM plant UNION ALL SELECT 1 FROM person LIMIT 1", row -> row.getInt(1))
                .isPresent();
    }
}
