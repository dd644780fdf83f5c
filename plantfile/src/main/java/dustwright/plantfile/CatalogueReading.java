package dustwright.plantfile;

import java.util.List;

/** What came of reading a catalogue: the machines, or all that is wrong with its files. */
public sealed interface CatalogueReading {
    /** A catalogue without fault. */
    record Read(Catalogue catalogue) implements CatalogueReading {}

    /** Everything that is wrong, file by file. */
    record Faults(List<InFile> faults) implements CatalogueReading {
        public Faults {
            faults = List.copyOf(faults);
        }
    }

    /** A fault with the file it stands in; no file when the folder itself is at fault. */
    record InFile(String file, Fault fault) {
        /** All of it in one line, for people. */
        public String text() {
            return file.isEmpty() ? fault.text() : file + ", " + fault.text();
        }
    }
}
