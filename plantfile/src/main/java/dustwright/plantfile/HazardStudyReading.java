package dustwright.plantfile;

import dustwright.engine.review.Notes;
import java.util.List;

/** What reading a hazard study came to. */
public sealed interface HazardStudyReading {
    /** What a team has written. */
    record Read(Notes notes) implements HazardStudyReading {}

    /** Everything that is wrong, in the order of the file. */
    record Faults(List<Fault> faults) implements HazardStudyReading {
        public Faults {
            faults = List.copyOf(faults);
        }
    }
}
