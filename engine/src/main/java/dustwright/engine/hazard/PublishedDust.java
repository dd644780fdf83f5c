package dustwright.engine.hazard;

import dustwright.engine.finding.Confidence;
import dustwright.engine.finding.Source;
import dustwright.engine.hazard.DustCard.Stated;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.ExplosionConstant;
import dustwright.engine.quantity.GaugePressure;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.SparkEnergy;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.reference.ReferenceTable;
import dustwright.engine.reference.ReferenceTable.Row;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * A dust of a published table. How violently a dust explodes and how easily it ignites were measured by different people on different
 * samples: two tables, never one row. Both show what is plausible; only a test of the own dust counts.
 */
public final class PublishedDust {
    /** What stands behind every value taken from here. */
    public static final String WARNING =
            "a published value of another sample: plausible, no property of this dust, which has to be tested";

    /** Within this share of a published value a stated one agrees with it; repeats of one sample scatter by 10 to 20 %. */
    public static final double BAND = 0.2;

    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double BAR_Pa = 1e5;
    private static final double MICRO = 1e-6;
    private static final ReferenceTable SEVERITY = ReferenceTable.bundled("hazard/dust-severity.csv");
    private static final ReferenceTable SENSITIVITY = ReferenceTable.bundled("hazard/dust-sensitivity.csv");

    /** The Bureau of Mines tested what passed a No. 200 sieve: from memory. */
    private static final Length SIEVE = new Length(74 * MICRO);

    private final Row row;
    private final Optional<Length> size;

    private PublishedDust(Row row, Optional<Length> size) {
        this.row = row;
        this.size = size;
    }

    /** Dusts of which it is published how violently they explode: Kst, Pmax, MEC. */
    public static List<String> severities() {
        return names(SEVERITY);
    }

    /** Dusts of which it is published how easily they ignite: MIE, MIT, LIT, MEC. */
    public static List<String> sensitivities() {
        return names(SENSITIVITY);
    }

    private static List<String> names(ReferenceTable table) {
        return table.rows().stream().map(row -> row.text("dust")).toList();
    }

    /** The dust of this name in the table of severities. */
    public static PublishedDust severity(String name) {
        Row row = SEVERITY.row("dust", name);
        String digits = row.text("size_um").replace("<", "");
        return new PublishedDust(
                row, digits.isEmpty() ? Optional.empty() : Optional.of(new Length(Double.parseDouble(digits) * MICRO)));
    }

    /** The dust of this name in the table of sensitivities. */
    public static PublishedDust sensitivity(String name) {
        return new PublishedDust(SENSITIVITY.row("dust", name), Optional.of(SIEVE));
    }

    /** As its table calls it. */
    public String name() {
        return row.text("dust");
    }

    /** Group of Class II as its table prints it: E, F or G. */
    public String necGroup() {
        return row.text("nec_group");
    }

    /** Whether a dust of this family may burn like it: of its group, and of the same metal. */
    public boolean isOfKind(DustFamily family) {
        if (necGroup().equals("E")) {
            return metal() == family;
        }
        return family.necGroup()
                .filter(group -> group.endsWith(necGroup()) || family == DustFamily.FLYINGS)
                .isPresent();
    }

    private DustFamily metal() {
        String name = name();
        if (name.startsWith("Aluminum")) {
            return DustFamily.ALUMINIUM;
        }
        if (name.startsWith("Magnesium")) {
            return DustFamily.MAGNESIUM;
        }
        if (name.startsWith("Titanium")) {
            return DustFamily.TITANIUM;
        }
        return name.startsWith("Iron") ? DustFamily.IRON : DustFamily.OTHER_METAL;
    }

    /** Median size of the sample, at most: as printed, or the sieve it passed; empty where neither is known. */
    public Optional<Length> size() {
        return size;
    }

    /** Median size of the sample in µm, as printed: it may be "<10"; empty where not printed. */
    public String size_um() {
        return row.text("size_um");
    }

    public Optional<Stated<ExplosionConstant>> kst() {
        return value("kst", kst -> new ExplosionConstant(kst * BAR_Pa));
    }

    public Optional<Stated<GaugePressure>> greatest() {
        return value("pmax", p -> new GaugePressure(p * BAR_Pa));
    }

    public Optional<Stated<SparkEnergy>> ignition() {
        return value("mie", mie -> new SparkEnergy(mie / 1000));
    }

    public Optional<Stated<Temperature>> cloud() {
        return value("mit", t -> new Temperature(t + ZERO_CELSIUS_K));
    }

    public Optional<Stated<Temperature>> layer() {
        return value("lit", t -> new Temperature(t + ZERO_CELSIUS_K));
    }

    public Optional<Stated<Density>> explosible() {
        return value("mec", c -> new Density(c / 1000));
    }

    private <T extends Quantity> Optional<Stated<T>> value(String column, DoubleFunction<T> of) {
        return row.find(column).map(number -> new Stated<>(of.apply(number), source(column)));
    }

    /** A value that was read in a reprint is published, every other from memory. */
    private Source source(String column) {
        String read = row.text("read");
        boolean wasRead = read.equals("all") || read.equals(column);
        return new Source(row.text("source") + ", " + name(), wasRead ? Confidence.PUBLISHED : Confidence.FROM_MEMORY);
    }
}
