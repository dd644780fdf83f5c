package dustwright.plantfile;

import dustwright.engine.rehearsal.Script;
import java.util.List;

/** What reading a rehearsal script came to. */
public sealed interface RehearsalReading {
    /** A script. */
    record Read(Script script) implements RehearsalReading {}

    /** Everything that is wrong, in the order of the file. */
    record Faults(List<Fault> faults) implements RehearsalReading {
        public Faults {
            faults = List.copyOf(faults);
        }
    }
}
