package dustwright.plantfile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Faults found so far. */
final class Faults {
    private final List<Fault> faults = new ArrayList<>();

    void add(Fault fault) {
        faults.add(fault);
    }

    void add(Span span, String path, String message, String expected) {
        add(new Fault(span.line(), span.column(), path, message, expected, Optional.empty()));
    }

    /** So many that looking for the nearest name for each would take longer than anybody reads. */
    boolean many() {
        return faults.size() > 200;
    }

    boolean none() {
        return faults.isEmpty();
    }

    List<Fault> inOrderOfTheFile() {
        return faults.stream()
                .distinct()
                .sorted(Comparator.comparingInt(Fault::line).thenComparingInt(Fault::column))
                .toList();
    }
}
