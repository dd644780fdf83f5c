package dustwright.plantfile;

import dustwright.engine.plant.Plant;
import dustwright.plantfile.keys.PlantKeys;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Reads a plant file strictly: either a {@link Plant} in which every name resolves and every default taken is listed, or all faults of
 * the file together, each with line, column, what was expected and the nearest valid name. Never an exception.
 */
public final class PlantReader {
    /** Largest file read, bytes; a plant of 3000 runs takes less than a tenth of it. */
    public static final int LARGEST_bytes = 4 * 1024 * 1024;

    private PlantReader() {}

    /** Reads a file. */
    public static Reading read(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(LARGEST_bytes + 1);
            return bytes.length > LARGEST_bytes ? whole(tooLarge()) : read(bytes);
        } catch (NoSuchFileException e) {
            return whole("there is no file " + file);
        } catch (AccessDeniedException e) {
            return whole(file + " cannot be read: this user may not read it");
        } catch (IOException e) {
            return whole(file + " cannot be read: " + e.getMessage());
        }
    }

    /** Reads the text of a plant file. */
    public static Reading read(String text) {
        if (text.length() > LARGEST_bytes) {
            return whole(tooLarge());
        }
        Faults faults = new Faults();
        Optional<Tree.Entries> written = TreeReader.read(text, faults);
        if (written.isEmpty() || !versionIsOurs(written.get(), faults)) {
            return new Reading.Faults(faults.inOrderOfTheFile());
        }
        Overrides overrides = new Overrides(faults);
        Tree.Entries tree = overrides.apply(written.get());
        Taken taken = new Taken();
        Checker checker = new Checker(faults, taken);
        Section top = checker.group(tree, PlantKeys.TOP, "", "");
        SourceMap lines = new SourceMap(tree);
        new Links(top, lines, faults).check(checker.mentions());
        new Relations(top, lines, faults).check();
        if (!faults.none()) {
            return new Reading.Faults(faults.inOrderOfTheFile());
        }
        PlantBinder binder = new PlantBinder(top, lines, faults);
        Plant plant = binder.plant(overrides.applied(), taken);
        return faults.none()
                ? new Reading.Read(plant, new SourceMap(written.get()), binder.units())
                : new Reading.Faults(faults.inOrderOfTheFile());
    }

    private static Reading read(byte[] bytes) {
        try {
            return read(StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString());
        } catch (CharacterCodingException e) {
            return notUtf8(bytes);
        }
    }

    private static Reading notUtf8(byte[] bytes) {
        String lenient = new String(bytes, StandardCharsets.UTF_8);
        String before = lenient.substring(0, Math.max(0, lenient.indexOf('\uFFFD')));
        int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
        int column = before.length() - before.lastIndexOf('\n');
        return new Reading.Faults(List.of(
                new Fault(line, column, "", "this is not UTF-8 text", "a file saved as UTF-8", Optional.empty())));
    }

    private static boolean versionIsOurs(Tree.Entries top, Faults faults) {
        Optional<Tree.Scalar> said = top.entry("dustwright")
                .map(Tree.Entry::value)
                .filter(Tree.Scalar.class::isInstance)
                .map(Tree.Scalar.class::cast);
        if (said.isEmpty() || !said.get().text().matches("[0-9]{1,6}")) {
            return true;
        }
        int version = Integer.parseInt(said.get().text());
        if (version > PlantKeys.VERSION) {
            faults.add(
                    said.get().span(),
                    "dustwright",
                    "schema version " + version + " is newer than this program, which reads version "
                            + PlantKeys.VERSION,
                    "a newer program, or a file of version " + PlantKeys.VERSION);
        }
        return version <= PlantKeys.VERSION;
    }

    private static String tooLarge() {
        return "the file is larger than " + LARGEST_bytes / (1024 * 1024)
                + " MiB and was not read: no plant needs that much; is it the right file?";
    }

    private static Reading whole(String message) {
        return new Reading.Faults(List.of(new Fault(0, 0, "", message, "", Optional.empty())));
    }
}
