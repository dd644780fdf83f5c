package dustwright.plantfile;

import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.UnitSystem;
import dustwright.engine.sizing.OpenSizes;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** What reading a plant file came to. */
public sealed interface Reading {
    /**
     * A plant, every name resolved.
     *
     * @param lines where each value stands in the text
     * @param units units the file asks for in reports
     * @param open what may be chosen
     * @param catalogue in which its models are looked up, read when it is first asked for
     */
    record Read(Plant plant, SourceMap lines, UnitSystem units, OpenSizes open, Supplier<Optional<Catalogue>> catalogue)
            implements Reading {}

    /** Everything that is wrong, in the order of the file. */
    record Faults(List<Fault> faults) implements Reading {
        public Faults {
            faults = List.copyOf(faults);
        }
    }
}
