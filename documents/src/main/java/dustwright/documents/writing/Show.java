package dustwright.documents.writing;

import dustwright.documents.drawing.MarginClass;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.quantity.Count;
import dustwright.engine.quantity.Dimension;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.TemperatureRise;
import dustwright.engine.quantity.Unit;
import dustwright.engine.quantity.UnitSystem;
import dustwright.engine.sheet.ProducerSteps;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/** Quantities in the reader's units. Units and rounding are chosen here and nowhere else. */
public final class Show {
    /** No-break space between a number and its unit. */
    /** Farther from zero a margin that no rounding leaves in its class stands on the bound of a class. */
    private static final double BESIDE_ZERO = 1e-3;

    private static final String SPACE = "\u00A0";

    /** From this margin on a percentage tells nobody anything [-]. */
    private static final double MANY_TIMES = 10;

    private static final int MOST_EXTRA_DECIMALS = 6;
    private static final int FIGURES_WITHOUT_ROW = 4;
    private static final int BUILT_TO = 2;
    private static final Length SOME_BORE = new Length(0.05);
    private static final PressureDifference SOME_LOSS = new PressureDifference(100);
    private static final double LARGE_si = 1e9;

    private final UnitSystem system;
    private final Map<Dimension, Scale> columns = new EnumMap<>(Dimension.class);
    private final Map<Dimension, Scale> across;
    private final Scale bore;
    private final Scale loss;

    public Show(UnitSystem system) {
        this(system, Map.of());
    }

    private Show(UnitSystem system, Map<Dimension, Scale> across) {
        this.system = system;
        this.across = across;
        for (Dimension dimension : Dimension.values()) {
            columns.put(dimension, scale(dimension.of(LARGE_si)));
        }
        this.bore = scale(SOME_BORE);
        this.loss = scale(SOME_LOSS);
    }

    /** The same units, with what pieces take of the vacuum in Pa or inches of water however much it is. */
    public Show losses() {
        return new Show(system, Map.of(Dimension.PRESSURE_DIFFERENCE, loss));
    }

    /** What a finding and the steps to it are shown in: a filter's drops as losses, like its sheet. */
    public Show of(Finding finding) {
        return finding.where().kind() == Place.Kind.FILTER ? losses() : this;
    }

    /** The same units, with every pressure difference as a vacuum: in kPa or inches of mercury however small it is. */
    public Show vacua() {
        return new Show(system, Map.of(Dimension.PRESSURE_DIFFERENCE, column(Dimension.PRESSURE_DIFFERENCE)));
    }

    /**
     * One unit with the places it is printed to.
     *
     * @param decimals places behind the point; negative for four significant figures
     */
    public record Scale(Unit unit, String symbol, int decimals) {
        public double number(Quantity quantity) {
            return unit.fromSi(quantity.si());
        }

        /** The number as printed. */
        public String text(double number) {
            return text(number, Math.max(0, decimals));
        }

        String text(double number, int places) {
            return decimals < 0
                    ? Figures.significant(number, FIGURES_WITHOUT_ROW + places)
                    : Figures.fixed(number, places);
        }
    }

    private Scale scale(Quantity quantity) {
        Scale common = across.get(quantity.dimension());
        if (common != null) {
            return common;
        }
        UnitSystem.Display display = system.display(quantity);
        return new Scale(display.unit(), system.format(quantity).unit(), display.decimals());
    }

    public boolean isUs() {
        return system == UnitSystem.US;
    }

    /** "US" or "SI". */
    public String unitsName() {
        return system.name();
    }

    /** The unit of a column or of a chart's axis: one for the kind, however small a number in it is. */
    public Scale column(Dimension dimension) {
        return Objects.requireNonNull(columns.get(dimension));
    }

    /** The unit of an axis for quantities of about this size. */
    public Scale axis(Quantity about) {
        return scale(about);
    }

    /** The number alone, for a column whose head says the unit. */
    public String number(Quantity quantity) {
        Scale scale = column(quantity.dimension());
        return scale.text(scale.number(quantity));
    }

    /** Symbol of the unit of a column, with its reference where it has one. */
    public String unit(Dimension dimension) {
        return column(dimension).symbol();
    }

    /** Number and unit, the unit chosen by size. */
    public String full(Quantity quantity) {
        Scale scale = scale(quantity);
        return joined(scale.text(scale.number(quantity)), scale.symbol());
    }

    /** The least that is needed, rounded up to places somebody builds to. */
    public String least(Quantity quantity) {
        Scale scale = scale(quantity);
        return joined(Figures.up(scale.number(quantity), builtTo(scale)), scale.symbol());
    }

    private static int builtTo(Scale scale) {
        return scale.decimals() > BUILT_TO ? scale.decimals() - 1 : Math.max(0, scale.decimals());
    }

    /** A bore: in inches or millimetres, not in feet or metres. */
    public String bore(Length length) {
        return bore.text(bore.number(length));
    }

    public String boreUnit() {
        return bore.symbol();
    }

    /** What one piece takes of the vacuum: in Pa or inches of water, not in kPa or inches of mercury. */
    public String loss(PressureDifference difference) {
        return loss.text(loss.number(difference));
    }

    public String lossUnit() {
        return loss.symbol();
    }

    /** A mass flow of air as free air. */
    public String freeAir(MassFlow air) {
        return number(FreeAirFlow.of(air));
    }

    /** The same with its unit. */
    public String freeAirFull(MassFlow air) {
        return full(FreeAirFlow.of(air));
    }

    /** In SI with so many figures, as it stands in a calculation. */
    static String si(Quantity quantity, int figures) {
        if (quantity instanceof Count count) {
            return Figures.count((long) count.number());
        }
        return joined(Figures.significant(quantity.si(), figures), quantity.siSymbol());
    }

    /** A margin in per cent, signed, with as many decimals as it needs to fall in its class as printed. */
    public static String margin(double margin) {
        MarginClass right = MarginClass.of(margin);
        for (int decimals = 0; decimals < MOST_EXTRA_DECIMALS; decimals++) {
            double printed = Math.round(margin * 100 * Math.pow(10, decimals)) / Math.pow(10, decimals) / 100;
            if (MarginClass.of(printed) == right && (printed != 0 || margin == 0)) {
                String text = Figures.fixed(margin * 100, decimals);
                return (margin > 0 ? "+" + text : text) + SPACE + "%";
            }
        }
        if (Math.abs(margin) > BESIDE_ZERO) {
            return (margin > 0 ? "+" : "") + Figures.fixed(margin * 100, 0) + SPACE + "%";
        }
        return (margin < 0 ? "just below 0" : "just above 0") + SPACE + "%";
    }

    /**
     * The margin of a finding, or that it is not known; of conflicts that are counted, whether there are any; where nothing may be,
     * there is no share of it, and beyond ten times its limit a value is told as so many times.
     */
    public static String margin(Finding finding) {
        if (finding.counted() && finding.decided()) {
            return finding.holds() ? "none" : "found";
        }
        if (finding.decided() && finding.limit().si() == 0 && !finding.holds()) {
            return "any is too much";
        }
        if (finding.nothingByDesign()) {
            return "as meant";
        }
        if (finding.value() instanceof TemperatureRise rise && !ProducerSteps.tellsTemperature(rise)) {
            return "far too hot";
        }
        if (finding.decided()
                && Math.abs(finding.margin()) >= MANY_TIMES
                && finding.value().si() * finding.limit().si() > 0) {
            return Figures.significant(finding.value().si() / finding.limit().si(), 2) + SPACE + "times";
        }
        return finding.decided() ? margin(finding.margin()) : "not known";
    }

    /** Value and limit of a finding in one unit, with as many decimals as it needs to see on which side the value lies. */
    public Pair pair(Finding finding) {
        Scale scale = of(finding).scale(finding.limit().si() == 0 ? finding.value() : finding.limit());
        double value = scale.number(finding.value());
        double limit = scale.number(finding.limit());
        boolean up = finding.code() == FindingCode.VENT_AREA;
        int places = up ? builtTo(scale) : Math.max(0, scale.decimals());
        int most = places + MOST_EXTRA_DECIMALS;
        while (places < most && (merged(scale, places, value, limit) || merged(scale, places, value, 0))) {
            places++;
        }
        return new Pair(
                scale.text(value, places), up ? Figures.up(limit, places) : scale.text(limit, places), scale.symbol());
    }

    /** Whether two numbers that differ look alike with so many decimals. */
    private static boolean merged(Scale scale, int places, double value, double other) {
        return value != other && scale.text(value, places).equals(scale.text(other, places));
    }

    /** Two numbers in one unit. */
    public record Pair(String value, String limit, String unit) {
        public String valueFull() {
            return joined(value, unit);
        }

        public String limitFull() {
            return joined(limit, unit);
        }
    }

    private static String joined(String number, String unit) {
        return unit.isEmpty() ? number : number + SPACE + unit;
    }
}
