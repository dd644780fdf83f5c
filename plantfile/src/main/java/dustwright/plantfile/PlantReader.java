package dustwright.plantfile;

import dustwright.engine.plant.Plant;
import dustwright.plantfile.keys.PlantKeys;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Reads a plant file strictly: either a {@link Plant} in which every name resolves and every default taken is listed, or all faults of
 * the file together, each with line, column, what was expected and the nearest valid name. Never an exception.
 *
 * <p>Models of vacuum producers are looked up in the catalogue named by the caller, else in the folder the file names, else in the
 * bundled demo catalogue. A folder the file names must be there and be right, be a model named or not.
 */
public final class PlantReader {
    /** Largest file read, bytes; a plant of 3000 runs takes less than a tenth of it. */
    public static final int LARGEST_bytes = FileText.LARGEST_bytes;

    private static final String CATALOGUE = "plant.catalogue";

    private PlantReader() {}

    /** Reads a file. */
    public static Reading read(Path file) {
        return read(file, Optional.empty());
    }

    /**
     * Reads a file.
     *
     * @param catalogue in which its models are looked up, whatever folder the file names
     */
    public static Reading read(Path file, Optional<Catalogue> catalogue) {
        FileText text = FileText.of(file);
        Path folder = Optional.ofNullable(file.toAbsolutePath().getParent()).orElse(file);
        return text.text()
                .map(t -> read(t, folder, catalogue))
                .orElseGet(() -> new Reading.Faults(text.fault().stream().toList()));
    }

    /** Reads the text of a plant file; a catalogue it names is looked for from the folder one is in. */
    public static Reading read(String text) {
        return read(text, Path.of(""), Optional.empty());
    }

    /** Reads the text of a plant file that lies, or will lie, in a folder. */
    public static Reading read(String text, Path folder) {
        return read(text, folder, Optional.empty());
    }

    private static Reading read(String text, Path folder, Optional<Catalogue> catalogue) {
        if (text.length() > LARGEST_bytes) {
            return new Reading.Faults(List.of(new Fault(0, 0, "", FileText.tooLarge(), "", Optional.empty())));
        }
        Faults faults = new Faults();
        Optional<Tree.Entries> written = TreeReader.read(text, faults);
        if (written.isEmpty() || !versionIsOurs(written.get(), faults)) {
            return new Reading.Faults(faults.inOrderOfTheFile());
        }
        Overrides overrides = new Overrides(faults);
        Tree.Entries tree = overrides.apply(written.get());
        Taken taken = new Taken();
        SourceMap lines = new SourceMap(tree);
        Supplier<Optional<Catalogue>> models = catalogue(tree, folder, catalogue, faults);
        Checker checker = new Checker(faults, taken, models);
        Section top = checker.group(tree, PlantKeys.TOP, "", "");
        if (!overrides.applied().isEmpty()) {
            overrides.checkReplaced(written.get());
        }
        new Links(top, lines, faults).check(checker.mentions());
        new Relations(top, lines, faults).check();
        new SizingRelations(top, lines, faults).check();
        boolean withoutCatalogue =
                Paths.find(tree, CATALOGUE).isPresent() && models.get().isEmpty();
        if (withoutCatalogue || !faults.none()) {
            return new Reading.Faults(faults.inOrderOfTheFile());
        }
        PlantBinder binder = new PlantBinder(top, lines, faults);
        Plant plant = binder.plant(overrides.applied(), taken);
        return faults.none()
                ? new Reading.Read(plant, new SourceMap(written.get()), binder.units(), SizingBinder.open(top), models)
                : new Reading.Faults(faults.inOrderOfTheFile());
    }

    /** The catalogue of a plant, read when it is first asked for. */
    private static Supplier<Optional<Catalogue>> catalogue(
            Tree.Entries top, Path folder, Optional<Catalogue> given, Faults faults) {
        return new Supplier<>() {
            private boolean asked;
            private Optional<Catalogue> found = given;

            @Override
            public Optional<Catalogue> get() {
                if (!asked && found.isEmpty()) {
                    found = named(top, folder, faults);
                }
                asked = true;
                return found;
            }
        };
    }

    private static Optional<Catalogue> named(Tree.Entries top, Path folder, Faults faults) {
        Optional<Tree> said = Paths.find(top, CATALOGUE).map(Paths.Found::value);
        if (!(said.orElse(null) instanceof Tree.Scalar scalar)) {
            return Optional.of(CatalogueReader.demo());
        }
        CatalogueReading reading;
        try {
            reading = CatalogueReader.read(folder.resolve(scalar.text()));
        } catch (InvalidPathException e) {
            faults.add(scalar.span(), CATALOGUE, "this is no path of a folder", "a folder such as ../machines");
            return Optional.empty();
        }
        if (reading instanceof CatalogueReading.Faults wrong) {
            wrong.faults()
                    .forEach(fault -> faults.add(scalar.span(), CATALOGUE, "in the catalogue: " + fault.text(), ""));
            return Optional.empty();
        }
        return Optional.of(((CatalogueReading.Read) reading).catalogue());
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
}
