package dustwright.plantfile;

import dustwright.engine.interlock.Sequence;
import java.util.List;

/** What reading a sequence file came to. */
public sealed interface SequenceReading {
    /**
     * A sequence in which every name is known.
     *
     * @param lines where each value stands in the text
     */
    record Read(Sequence sequence, SourceMap lines) implements SequenceReading {}

    /** Everything that is wrong, in the order of the file. */
    record Faults(List<Fault> faults) implements SequenceReading {
        public Faults {
            faults = List.copyOf(faults);
        }
    }
}
