package dustwright.engine.electrical;

import dustwright.engine.finding.Source;
import dustwright.engine.reference.ReferenceTable;
import dustwright.engine.reference.ReferenceTable.Row;
import java.util.List;

/**
 * An instrument of the plant by its ISA-5.1 letters, for the instrument list.
 *
 * @param letters identification letters, for example PDIT
 * @param reading the letters in words
 * @param use what it does in a vacuum-cleaning system
 */
public record Instrument(String letters, String reading, String use) {
    private static final ReferenceTable TABLE = ReferenceTable.bundled("electrical/instrument-letters.csv");

    /** How an instrument meets the controller. */
    public enum Signal {
        DIGITAL_INPUT,
        ANALOGUE_INPUT,
        DIGITAL_OUTPUT,
        /** A gauge, a mechanical valve or an alarm made inside the controller. */
        NO_WIRE
    }

    /** The instrument with these letters; refused where the table does not hold them. */
    public static Instrument of(String letters) {
        return of(TABLE.row("letters", letters));
    }

    /** Where the letters come from. */
    public static Source source() {
        return TABLE.source();
    }

    /** All instruments of the table, in its order. */
    public static List<Instrument> all() {
        return TABLE.rows().stream().map(Instrument::of).toList();
    }

    private static Instrument of(Row row) {
        return new Instrument(row.text("letters"), row.text("reading"), row.text("use"));
    }

    /** Tag of one of them, for example PDIT-101. */
    public String tag(int loop) {
        if (loop < 1) {
            throw new IllegalArgumentException("loop numbers start at 1, not " + loop);
        }
        return letters + "-" + loop;
    }

    /** How it meets the controller, by its last function letter. */
    public Signal signal() {
        String functions = letters.substring(letters.startsWith("PD") ? 2 : 1);
        if (functions.startsWith("A") || functions.equals("SV") || letters.equals("HV")) {
            return Signal.NO_WIRE;
        }
        if (functions.startsWith("S")) {
            return Signal.DIGITAL_INPUT;
        }
        if (functions.endsWith("T")) {
            return Signal.ANALOGUE_INPUT;
        }
        return List.of("V", "L", "Y").contains(functions) ? Signal.DIGITAL_OUTPUT : Signal.NO_WIRE;
    }
}
