package dustwright.engine.quantity;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a number with its unit, {@code 12 inHg}, {@code 1 1/2 in}, {@code 100 scfm}, as a quantity of an expected kind. */
public final class QuantityText {
    private static final Pattern NUMBER_THEN_UNIT = Pattern.compile(
            "\\s*(?:([0-9]{1,4})[ -])?\\s*([0-9]{1,4})/([0-9]{1,4})(?![0-9.])\\s*(.*)|\\s*([-+]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][-+]?[0-9]{1,3})?)\\s*(.*)",
            Pattern.DOTALL);
    private static final int LONGEST = 80;
    private static final double STANDARD_BAROMETER_Pa = 101_325;

    private static final List<Dimension> NEVER_NEGATIVE = List.of(
            Dimension.ABSOLUTE_PRESSURE,
            Dimension.GAUGE_PRESSURE,
            Dimension.TEMPERATURE,
            Dimension.DENSITY,
            Dimension.LEAK_COEFFICIENT,
            Dimension.FILTER_RESISTANCE,
            Dimension.CAKE_RESISTANCE,
            Dimension.CLOTH_LOAD,
            Dimension.EXPLOSION_CONSTANT,
            Dimension.SPARK_ENERGY,
            Dimension.RESISTANCE,
            Dimension.CAPACITANCE,
            Dimension.FORCE,
            Dimension.VISCOSITY,
            Dimension.GAS_CONSTANT,
            Dimension.STRESS,
            Dimension.TORQUE);

    /** Three capitals as in ISO 4217, alone or with what the money is for. */
    private static final Pattern CURRENCY = Pattern.compile("([A-Z]{3})((?:/.*)?)", Pattern.DOTALL);

    private static final Unit PURE_NUMBER = Units.find("-", Dimension.RATIO).orElseThrow();

    private static final int MOST_KEPT = 8192;

    /** What was read of a text stands for every later one that is the same: a plant is read anew at each edit, and most of it is as before. */
    private static final Map<Asked, Read> KEPT = new ConcurrentHashMap<>();

    private record Asked(String text, List<Dimension> expected) {}

    private QuantityText() {}

    /** A quantity, or what is wrong with the text. */
    public sealed interface Read {
        /** The text is a quantity of an expected kind. */
        record Good(Quantity quantity, Unit unit) implements Read {}

        /**
         * The text is not.
         *
         * @param message what is wrong, one sentence
         * @param suggestion what to write instead, where that can be said
         */
        record Bad(String message, Optional<String> suggestion) implements Read {}
    }

    /**
     * Reads a text.
     *
     * @param expected kinds allowed here, the usual one first
     */
    public static Read read(String text, List<Dimension> expected) {
        if (text.length() > LONGEST) {
            return bad("a quantity of " + text.length() + " characters");
        }
        if (KEPT.size() >= MOST_KEPT) {
            KEPT.clear();
        }
        return KEPT.computeIfAbsent(new Asked(text, List.copyOf(expected)), asked -> anew(text, asked.expected()));
    }

    private static Read anew(String text, List<Dimension> expected) {
        Matcher m = NUMBER_THEN_UNIT.matcher(text);
        if (!m.matches()) {
            return bad("\"" + text.strip() + "\" does not start with a number");
        }
        boolean fraction = m.group(2) != null;
        double number = fraction ? fraction(m) : Double.parseDouble(m.group(5));
        String unitText = (fraction ? m.group(4) : m.group(6)).strip();
        if (!(Math.abs(number) <= Double.MAX_VALUE)) {
            return bad("\"" + text.strip() + "\" is not a finite number");
        }
        if (unitText.startsWith(",")) {
            return bad("a comma in a number: write 1200 for twelve hundred and 1.2 for one and a fifth");
        }
        return unitText.isEmpty() ? withoutUnit(number, expected) : withUnit(number, unitText, expected);
    }

    private static double fraction(Matcher m) {
        double whole = m.group(1) == null ? 0 : Double.parseDouble(m.group(1));
        return whole + Double.parseDouble(m.group(2)) / Double.parseDouble(m.group(3));
    }

    private static Read withoutUnit(double number, List<Dimension> expected) {
        if (expected.contains(Dimension.RATIO)) {
            return new Read.Good(new Ratio(number), PURE_NUMBER);
        }
        return bad("a number without a unit");
    }

    private static Read withUnit(double number, String unitText, List<Dimension> expected) {
        Matcher money = CURRENCY.matcher(unitText);
        if (money.matches() && Units.named(unitText).isEmpty()) {
            String currency = money.group(1);
            Read read = withUnit(number, Money.UNNAMED + money.group(2), expected);
            return read instanceof Read.Good good
                    ? new Read.Good(in(currency, good.quantity()), good.unit())
                    : said((Read.Bad) read, currency);
        }
        for (Dimension dimension : expected) {
            Optional<Unit> unit = Units.find(unitText, dimension);
            if (unit.isPresent()) {
                return quantity(number, unit.get());
            }
        }
        Optional<Read.Bad> ambiguous = ambiguous(number, unitText, expected);
        if (ambiguous.isPresent()) {
            return ambiguous.get();
        }
        List<Unit> other = Units.named(unitText);
        return other.isEmpty() ? unknown(unitText, expected) : wrongKind(number, other.get(0), expected);
    }

    private static Read quantity(double number, Unit unit) {
        double si = unit.toSi(number);
        if (!(Math.abs(si) <= Double.MAX_VALUE)) {
            return bad(number + " " + unit.symbol() + " is beyond any number we can hold");
        }
        if (si < 0 && NEVER_NEGATIVE.contains(unit.dimension())) {
            return bad("a negative " + unit.dimension().words());
        }
        return new Read.Good(unit.dimension().of(si), unit);
    }

    /** In the currency that was typed. */
    private static Read.Bad said(Read.Bad bad, String currency) {
        return new Read.Bad(
                bad.message().replace(Money.UNNAMED, currency),
                bad.suggestion().map(unit -> unit.replace(Money.UNNAMED, currency)));
    }

    private static Quantity in(String currency, Quantity quantity) {
        if (quantity instanceof Money money) {
            return money.in(currency);
        }
        return quantity instanceof Price price ? price.in(currency) : quantity;
    }

    private static Optional<Read.Bad> ambiguous(double number, String unitText, List<Dimension> expected) {
        String plain = Units.spelling(unitText).toLowerCase(Locale.ROOT);
        return switch (plain) {
            case "cfm", "ft3/min", "[cft_i]/min" ->
                Optional.of(new Read.Bad(
                        unitText
                                + " does not say at what pressure: free air at 101 325 Pa and 20 °C, or actual flow at the place",
                        Optional.of("scfm for free air, acfm for actual flow")));
            case "psig", "barg", "kpag", "inhgg" ->
                Optional.of(new Read.Bad(
                        unitText + " is counted from the barometer upward"
                                + (expected.contains(Dimension.ABSOLUTE_PRESSURE)
                                        ? "; a pressure is entered from perfect vacuum"
                                        : "; a vacuum is written as a positive number below it"),
                        expected.contains(Dimension.ABSOLUTE_PRESSURE)
                                ? absolute(number, plain)
                                : Optional.of(
                                        "for example 12 inHg for a vacuum, 80 kPa abs for an absolute pressure")));
            default -> Optional.empty();
        };
    }

    /** The same pressure from perfect vacuum, at the standard barometer. */
    private static Optional<String> absolute(double number, String gauge) {
        String symbol =
                gauge.equals("kpag") ? "kPa" : gauge.equals("inhgg") ? "inHg" : gauge.substring(0, gauge.length() - 1);
        return Units.find(symbol, Dimension.PRESSURE_DIFFERENCE)
                .map(unit -> plain(Math.round((number + unit.fromSi(STANDARD_BAROMETER_Pa)) * 10) / 10.0) + " " + symbol
                        + " abs, with a barometer of 101.325 kPa; add the site's own");
    }

    private static Read wrongKind(double number, Unit found, List<Dimension> expected) {
        String message = withArticle(found.dimension().words()) + " (" + found.symbol() + ") where "
                + withArticle(words(expected)) + " belongs";
        Optional<String> suggestion = Optional.empty();
        if (found.dimension() == Dimension.PRESSURE_DIFFERENCE && expected.contains(Dimension.ABSOLUTE_PRESSURE)) {
            suggestion =
                    Optional.of(plain(number) + " " + found.symbol() + " abs, if it is counted from perfect vacuum");
        } else if (found.dimension() == Dimension.ABSOLUTE_PRESSURE
                && expected.contains(Dimension.PRESSURE_DIFFERENCE)) {
            suggestion = Optional.of("how far below the barometer it is, without \"abs\"");
        } else if (found.dimension() == Dimension.ACTUAL_FLOW && expected.contains(Dimension.FREE_AIR_FLOW)) {
            suggestion = Optional.of("scfm or m3/h free, if it is free air");
        } else if (found.dimension() == Dimension.FREE_AIR_FLOW && expected.contains(Dimension.ACTUAL_FLOW)) {
            suggestion = Optional.of("acfm or m3/h, if it is the flow at the pressure of the place");
        } else if (found.dimension() == Dimension.TEMPERATURE && expected.contains(Dimension.TEMPERATURE_RISE)) {
            suggestion = Optional.of("K, or " + found.symbol() + " rise");
        }
        return new Read.Bad(message, suggestion);
    }

    private static Read unknown(String unitText, List<Dimension> expected) {
        List<String> spellings = expected.stream()
                .flatMap(d -> Units.of(d).stream())
                .map(Unit::symbol)
                .distinct()
                .toList();
        Optional<String> nearest = nearest(Units.spelling(unitText), spellings);
        return new Read.Bad("unknown unit \"" + unitText + "\"", nearest);
    }

    /** The kinds in words: "vacuum or pressure difference", "mass flow or free-air flow". */
    public static String words(List<Dimension> dimensions) {
        return String.join(" or ", dimensions.stream().map(Dimension::words).toList());
    }

    /** With "a" or "an" before it. */
    public static String withArticle(String words) {
        return ("aeiou".indexOf(words.charAt(0)) >= 0 ? "an " : "a ") + words;
    }

    private static Read bad(String message) {
        return new Read.Bad(message, Optional.empty());
    }

    private static String plain(double number) {
        return number == Math.rint(number) && Math.abs(number) < 1e9
                ? Long.toString((long) number)
                : Double.toString(number);
    }

    /**
     * The name most like the text, if any is like it at all: at most one letter in three changed, capitals disregarded, or all words
     * of the text among those of the name. Of names equally near, the one that begins alike.
     */
    public static Optional<String> nearest(String text, Collection<String> names) {
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        String low = text.toLowerCase(Locale.ROOT);
        int most = Math.max(1, text.length() / 3);
        return names.stream()
                .filter(n -> isLike(low, n.toLowerCase(Locale.ROOT), most))
                .min(Comparator.comparingInt((String n) -> edits(low, n.toLowerCase(Locale.ROOT)))
                        .thenComparingInt(n -> -sameBeginning(low, n.toLowerCase(Locale.ROOT))));
    }

    private static boolean isLike(String text, String name, int most) {
        List<String> words = List.of(text.split(" "));
        boolean wordsOfIt = words.size() > 1 && List.of(name.split(" ")).containsAll(words);
        return wordsOfIt || (Math.abs(name.length() - text.length()) <= most && edits(text, name) <= most);
    }

    private static int sameBeginning(String a, String b) {
        int same = 0;
        while (same < Math.min(a.length(), b.length()) && a.charAt(same) == b.charAt(same)) {
            same++;
        }
        return same;
    }

    /** Letters to insert, remove, replace or swap with a neighbour to make one text the other. */
    private static int edits(String a, String b) {
        int[] twoBack = new int[b.length() + 1];
        int[] back = new int[b.length() + 1];
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            back[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int replace = back[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(replace, Math.min(back[j], row[j - 1]) + 1);
                boolean swapped =
                        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                if (swapped) {
                    row[j] = Math.min(row[j], twoBack[j - 2] + 1);
                }
            }
            int[] spent = twoBack;
            twoBack = back;
            back = row;
            row = spent;
        }
        return back[b.length()];
    }
}
