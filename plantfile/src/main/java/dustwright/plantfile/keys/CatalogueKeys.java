package dustwright.plantfile.keys;

import dustwright.engine.finding.Place;
import dustwright.plantfile.keys.Shape.Keys;
import dustwright.plantfile.keys.Shape.Named;
import java.util.List;

/**
 * All keys of a catalogue file, schema version 1. Each kind of item is one more key of the file, entries by their models, and one more
 * group of keys; files without that key stay as they are.
 */
public final class CatalogueKeys {
    /** The schema version this declaration describes. */
    public static final int VERSION = 1;

    private CatalogueKeys() {}

    private static final Group HEAD = new Group(
            "the catalogue",
            Place.Kind.CATALOGUE,
            List.of(
                    Key.required(
                            "name", Amounts.TITLE, "What the catalogue is called wherever its figures are printed."),
                    Key.required(
                            "source",
                            Amounts.NOTE,
                            "Where its figures come from: data sheets with date, own tests, or that they are invented."),
                    Key.required(
                            "invented", new Shape.YesNo(), "`yes` when its figures belong to no machine that exists."),
                    Key.optional("note", Amounts.NOTE, "Anything a reader should know first.")),
            List.of());

    /** The whole file. */
    public static final Group TOP = new Group(
            "a catalogue file",
            Place.Kind.CATALOGUE,
            List.of(
                    Key.required(
                            "dustwright catalogue",
                            new Shape.Whole(VERSION, VERSION),
                            "Schema version of this file; it stands first."),
                    Key.required("catalogue", new Keys(HEAD), "Name and source of the figures."),
                    Key.optional(
                            "producers",
                            new Named("model", ProducerKeys.CATALOGUE_PRODUCER),
                            "Vacuum producers by their models.")),
            List.of());
}
