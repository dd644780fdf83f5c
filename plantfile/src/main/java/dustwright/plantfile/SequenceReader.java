package dustwright.plantfile;

import dustwright.engine.interlock.Sequence;
import dustwright.plantfile.keys.SequenceKeys;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Reads a sequence file as strictly as a plant file: a {@link Sequence}, or all faults together, each with its line. Never an exception.
 */
public final class SequenceReader {
    private SequenceReader() {}

    /** Reads a file. */
    public static SequenceReading read(Path file) {
        FileText text = FileText.of(file);
        return text.text()
                .map(SequenceReader::read)
                .orElseGet(
                        () -> new SequenceReading.Faults(text.fault().stream().toList()));
    }

    /** Reads the text of a sequence file. */
    public static SequenceReading read(String text) {
        Faults faults = new Faults();
        Optional<Tree.Entries> tree = TreeReader.read(text, "sequence: 1", faults);
        if (tree.isEmpty()) {
            return new SequenceReading.Faults(faults.inOrderOfTheFile());
        }
        Section top = new Checker(faults, new Taken(), Optional::empty).group(tree.get(), SequenceKeys.TOP, "", "");
        SourceMap lines = new SourceMap(tree.get());
        if (!faults.none()) {
            return new SequenceReading.Faults(faults.inOrderOfTheFile());
        }
        Sequence sequence = new SequenceBinder(top, lines, faults).sequence();
        if (faults.none()) {
            new SequenceChecks(sequence, lines, faults).check();
        }
        return faults.none()
                ? new SequenceReading.Read(sequence, lines)
                : new SequenceReading.Faults(faults.inOrderOfTheFile());
    }
}
