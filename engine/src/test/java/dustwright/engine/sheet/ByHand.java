package dustwright.engine.sheet;

import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Steps of the hazard sheets reckoned once more as a reader would: from the terms that stand in the step and nothing else. */
final class ByHand {
    private static final double BAR_Pa = 1e5;

    private final Map<String, Double> terms = new TreeMap<>();

    private ByHand(Step step) {
        for (Term term : step.inputs()) {
            terms.put(term.symbol(), term.value().si());
        }
    }

    /** The result by hand; empty where a step is no hazard equation, or counts what nobody reckons. */
    static Optional<Double> of(Step step) {
        return Optional.ofNullable(new ByHand(step).reckoned(step));
    }

    private @Nullable Double reckoned(Step step) {
        return switch (step.equation() + " " + step.result().symbol()) {
            case "HAZ-1 A" -> en();
            case "HAZ-2 A" -> nfpa();
            case "HAZ-2 A_NFPA/A_EN" -> at("A_NFPA") / at("A_EN");
            case "HAZ-3 F" -> 1.19 * at("A") * at("Pred");
            case "HAZ-4 D" -> (step.formula().contains("10 (V/n)") ? 10 : 8) * Math.cbrt(at("V") / at("n"));
            case "HAZ-5 L" -> Math.min(30, 10 * Math.cbrt(at("V")));
            case "HAZ-6 p" -> 0.2 * at("Pred") * Math.pow(at("A"), 0.1) * Math.pow(at("V"), 0.18);
            case "HAZ-7 k_turb" -> 1 + 0.7 * Math.max(0, at("v") - 20) / 36;
            case "HAZ-8 k_mass" -> mass();
            case "HAZ-8 M_T" ->
                Math.min(
                        40,
                        Math.pow(
                                6.67
                                        * Math.pow(bar("Pred"), 0.2)
                                        * Math.pow(at("n"), 0.3)
                                        * at("V")
                                        / Math.sqrt(bar("Kst")),
                                1.67));
            case "HAZ-9 k_part" -> part();
            case "HAZ-10 A_f" -> duct(step.result().value().si());
            case "HAZ-14 t" -> at("Pmax") * Math.cbrt(at("V")) / at("Kst");
            case "HAZ-16 W" -> at("C") * at("U") * at("U") / 2;
            case "HAZ-17 τ" -> at("R") * at("C");
            case "HAZ-18 C" -> at("w") / at("Q");
            case "HAZ-18 Q" -> at("w") / (at("share") * at("MEC"));
            case "HAZ-19 V" ->
                Math.PI / 4 * at("D") * at("D") * at("H")
                        + Math.PI / 12 * at("h") * (at("D") * at("D") + at("D") * at("d") + at("d") * at("d"))
                        + at("V_c");
            case "HAZ-19 L/D" -> Math.max(1, (at("H") + at("h") + at("H_c")) / at("D"));
            case "HAZ-20 N" ->
                terms.containsKey("runs")
                        ? 2 * at("runs") + 2 * at("bends") + at("further") + 2 * at("fittings")
                        : at("inlets") + at("machines");
            case "HAZ-22 A_c" -> terms.values().stream().reduce(1.0, (a, b) -> a * b);
            case "HAZ-24 A_eff" -> at("η") * at("A_v");
            default -> null;
        };
    }

    private double en() {
        double red = bar("Pred");
        double base = 3.264e-5 * bar("Pmax") * bar("Kst") * Math.pow(red, -0.569)
                + 0.27 * (bar("Pstat") - 0.1) * Math.pow(red, -0.5);
        return base * Math.pow(at("V"), 0.753) * (1 + (0.758 - 4.305 * Math.log10(red)) * Math.log10(at("L/D")));
    }

    private double nfpa() {
        double red = bar("Pred");
        double slender = at("L/D");
        double k = slender <= 2 ? 1 : 1 + 0.6 * Math.pow(slender - 2, 0.75) * Math.exp(-0.95 * red * red);
        return 1e-4 * opening() * bar("Kst") * Math.pow(at("V"), 0.75) * Math.sqrt(bar("Pmax") / red - 1) * k;
    }

    private double opening() {
        return 1 + 1.54 * Math.pow(bar("Pstat"), 4.0 / 3);
    }

    private double mass() {
        double kst = Math.max(75, bar("Kst"));
        double term = 0.0075
                * Math.pow(at("M"), 0.6)
                * Math.sqrt(kst)
                / (Math.pow(at("n"), 0.3) * at("V") * Math.pow(bar("Pred"), 0.2));
        return at("M") > at("M_T") ? at("F_sh") * (1 + term) : 1;
    }

    private double part() {
        double ratio = at("Pred") / at("Pmax");
        return at("X") <= ratio ? 0 : Math.sqrt((at("X") - ratio) / (1 - ratio)) / Math.cbrt(at("X"));
    }

    /** The area stands on both sides: put in, it must come out. */
    private double duct(double area) {
        double e1 = area * at("L_d") / at("V");
        double e2 = 1e4 * area / (opening() * bar("Kst") * Math.pow(at("V"), 0.75));
        return at("A") * (1 + 1.18 * Math.pow(e1, 0.8) * Math.pow(e2, 0.4)) * Math.sqrt(at("K") / 1.5);
    }

    private double at(String symbol) {
        return Objects.requireNonNull(terms.get(symbol), () -> symbol + " is not among " + terms.keySet());
    }

    private double bar(String symbol) {
        return at(symbol) / BAR_Pa;
    }
}
