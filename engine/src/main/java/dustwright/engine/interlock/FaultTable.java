package dustwright.engine.interlock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Which single device fault defeats which property. Each fault arises once, at any time, and stays; every state is visited for each. Contacts that the scan and whoever judges only meet together are
 * searched once, since what one of them defeats, the others do.
 *
 * @param rows one for each fault, in the order of {@link DeviceFault#of}
 */
public record FaultTable(List<Row> rows) {
    public FaultTable {
        rows = List.copyOf(rows);
    }

    /**
     * One fault.
     *
     * @param defeats ids of the properties that do not hold with it; one that is broken with healthy devices is among them
     */
    public record Row(DeviceFault fault, Set<String> defeats) {}

    /** The table of a sequence. */
    public static FaultTable of(Sequence sequence) {
        return of(sequence, row -> {});
    }

    /**
     * The table of a sequence, each row told as soon as it is known.
     *
     * @param told gets the rows one after another
     */
    public static FaultTable of(Sequence sequence, Consumer<Row> told) {
        Map<String, String> alike = World.alike(sequence);
        Map<String, Set<String>> known = new LinkedHashMap<>();
        List<Row> rows = new ArrayList<>();
        for (DeviceFault fault : DeviceFault.of(sequence)) {
            String same = alike.getOrDefault(fault.target(), fault.target()) + ": " + fault.is();
            Row row = new Row(fault, known.computeIfAbsent(same, s -> Proof.defeated(sequence, fault)));
            rows.add(row);
            told.accept(row);
        }
        return new FaultTable(rows);
    }
}
