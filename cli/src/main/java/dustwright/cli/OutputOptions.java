package dustwright.cli;

import dustwright.engine.quantity.UnitSystem;
import dustwright.plantfile.Reading;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How an answer is written. */
final class OutputOptions {
    /** Form of an answer. */
    enum Format {
        TEXT,
        JSON
    }

    @Option(
            names = "--units",
            paramLabel = "us|si",
            description = "Units of the answer. Default: what the plant file asks for. JSON is always SI.")
    private @Nullable String units;

    @Option(
            names = "--format",
            paramLabel = "text|json",
            defaultValue = "text",
            description = "Form of the answer. Default: text. JSON follows docs/json.md.")
    private Format format = Format.TEXT;

    boolean json() {
        return format == Format.JSON;
    }

    UnitSystem units(Reading.Read reading) {
        if (units == null) {
            return reading.units();
        }
        return units(units);
    }

    /** Units asked for, where no plant file says any. */
    UnitSystem unitsOr(UnitSystem usual) {
        return units == null ? usual : units(units);
    }

    static UnitSystem units(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "us" -> UnitSystem.US;
            case "si" -> UnitSystem.SI;
            default -> throw new BadInput("--units " + text + ": say us or si.");
        };
    }
}
