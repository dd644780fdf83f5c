package dustwright.plantfile;

import dustwright.engine.producer.Model;
import dustwright.plantfile.keys.CatalogueKeys;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Reads a catalogue, a folder of YAML files, as strictly as a plant file: the machines, or all faults of all its files together. Never
 * an exception.
 */
public final class CatalogueReader {
    /** The files of the bundled demo catalogue. */
    static final List<String> DEMO =
            List.of("claw.yaml", "liquid-ring.yaml", "lobe.yaml", "multistage-centrifugal.yaml", "side-channel.yaml");

    private static final int MOST_FILES = 500;

    private final List<CatalogueReading.InFile> wrong = new ArrayList<>();
    private final Map<String, Section> producers = new LinkedHashMap<>();
    private final Map<String, String> first = new LinkedHashMap<>();

    private CatalogueReader() {}

    /** The generic catalogue bundled with the program; every figure in it is invented. */
    public static Catalogue demo() {
        return Bundled.CATALOGUE;
    }

    /** Read once: it never changes, and every plant that names no catalogue of its own looks its models up there. */
    private static final class Bundled {
        static final Catalogue CATALOGUE = bundled();
    }

    private static Catalogue bundled() {
        Map<String, String> files = new TreeMap<>();
        for (String name : DEMO) {
            try (InputStream in = CatalogueReader.class.getResourceAsStream("/catalogue/demo/" + name)) {
                if (in == null) {
                    throw new IllegalStateException(name + " is missing from the program");
                }
                files.put(name, new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        if (read(files) instanceof CatalogueReading.Read read) {
            return read.catalogue();
        }
        throw new IllegalStateException("the bundled catalogue has faults");
    }

    private static boolean isYaml(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        return name.endsWith(".yaml") || name.endsWith(".yml");
    }

    /** Reads every file of a folder whose name ends in .yaml or .yml, in the order of their names. */
    public static CatalogueReading read(Path folder) {
        if (!Files.isDirectory(folder)) {
            return whole(
                    Files.exists(folder)
                            ? folder + " is a file; a catalogue is a folder of files"
                            : "there is no folder " + folder);
        }
        Map<String, String> files = new TreeMap<>();
        CatalogueReader reader = new CatalogueReader();
        try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, CatalogueReader::isYaml)) {
            for (Path file : found) {
                if (files.size() == MOST_FILES) {
                    return whole(folder + " holds more than " + MOST_FILES + " files; is it the right folder?");
                }
                String name = String.valueOf(file.getFileName());
                FileText text = FileText.of(file);
                text.text().ifPresent(t -> files.put(name, t));
                text.fault().ifPresent(fault -> reader.wrong.add(new CatalogueReading.InFile(name, fault)));
            }
        } catch (IOException e) {
            return whole(folder + " cannot be read: " + e.getMessage());
        }
        if (files.isEmpty() && reader.wrong.isEmpty()) {
            return whole("there is no file ending in .yaml or .yml in " + folder);
        }
        files.forEach(reader::file);
        return reader.reading();
    }

    /** Reads the texts of files by their names. */
    static CatalogueReading read(Map<String, String> files) {
        CatalogueReader reader = new CatalogueReader();
        files.forEach(reader::file);
        return reader.reading();
    }

    private CatalogueReading reading() {
        return wrong.isEmpty()
                ? new CatalogueReading.Read(new Catalogue(producers))
                : new CatalogueReading.Faults(wrong);
    }

    private void file(String name, String text) {
        Faults faults = new Faults();
        TreeReader.read(text, "dustwright catalogue: " + CatalogueKeys.VERSION, faults)
                .ifPresent(tree -> items(name, tree, faults));
        faults.inOrderOfTheFile().forEach(fault -> wrong.add(new CatalogueReading.InFile(name, fault)));
    }

    private void items(String file, Tree.Entries tree, Faults faults) {
        Taken taken = new Taken();
        Section top = new Checker(faults, taken, Optional::empty).group(tree, CatalogueKeys.TOP, "", "");
        SourceMap lines = new SourceMap(tree);
        ProducerRelations relations = new ProducerRelations(lines, faults);
        for (Section item : top.namedSections("producers")) {
            relations.check(item);
            String at = file
                    + lines.key(item.path())
                            .map(span -> " on line " + span.line())
                            .orElse("");
            String earlier = first.putIfAbsent(item.id(), at);
            if (earlier != null) {
                faults.add(
                        lines.key(item.path()).orElse(item.span()),
                        item.path(),
                        "model \"" + Names.shortened(item.id()) + "\" stands already in " + earlier,
                        "each model once in all files of a catalogue");
            } else if (faults.none()) {
                item.values()
                        .put("model", model(item.id(), top.section("catalogue").orElseThrow()));
                producers.put(item.id(), item);
            }
        }
    }

    private static Model model(String name, Section catalogue) {
        return new Model(
                name,
                catalogue.get("name", String.class),
                catalogue.get("source", String.class),
                catalogue.get("invented", Boolean.class));
    }

    private static CatalogueReading whole(String message) {
        return new CatalogueReading.Faults(
                List.of(new CatalogueReading.InFile("", new Fault(0, 0, "", message, "", Optional.empty()))));
    }
}
