package dustwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.plant.Plant;
import dustwright.engine.sheet.Answer;
import dustwright.engine.sheet.Entry;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is printed with a figure is enough to compute it again by hand: the published formula from the printed numbers alone. */
class HandCheckTest {
    private static final Map<String, Study> STUDIES = new HashMap<>();

    private static Study study(String plant) {
        return STUDIES.computeIfAbsent(plant, p -> {
            Reading reading = PlantReader.read(Path.of("..", "examples", p, "plant.yaml"));
            Plant read = ((Reading.Read) reading).plant();
            return Study.of(read, States.usual(read).subList(0, 2)).withSheets();
        });
    }

    private static Entry entry(String plant, String id) {
        return study(plant).sheets().stream()
                .flatMap(s -> s.entries().stream())
                .filter(e -> e.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + id));
    }

    private static double value(Entry entry) {
        return ((Answer.Known) entry.answer()).value().si();
    }

    private static List<Step> steps(Entry entry) {
        return entry.derivation().steps();
    }

    private static Step last(Entry entry) {
        return steps(entry).get(steps(entry).size() - 1);
    }

    private static double term(Step step, String symbol) {
        return step.inputs().stream()
                .filter(t -> t.symbol().equals(symbol))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + symbol + " in " + step.formula()))
                .value()
                .si();
    }

    private static double sum(Step step) {
        return step.inputs().stream().map(Term::value).mapToDouble(q -> q.si()).sum();
    }

    private static void same(double byHand, double printed) {
        assertThat(byHand).isCloseTo(printed, within(1e-9 * Math.abs(printed)));
    }

    /** NIST Handbook 135: UPV* = (1+e)/(d−e) [1 − ((1+e)/(1+d))^n], UPV = (1 − (1+d)^−n)/d, SPV = (1+d)^−n. */
    @ParameterizedTest
    @ValueSource(strings = {"bakery", "plastics", "cement-packing", "furniture"})
    void the_life_cycle_cost_adds_up_from_its_printed_factors(String plant) {
        Entry cost = entry(plant, "life-cycle-cost");
        same(sum(last(cost)), value(cost));
        for (Step step : steps(cost)) {
            double printed = step.result().value().si();
            switch (step.equation()) {
                case "CST-19" -> same(Math.pow(1 + term(step, "d"), -term(step, "n")), printed);
                case "CST-20" -> same((1 - Math.pow(1 + term(step, "d"), -term(step, "n"))) / term(step, "d"), printed);
                case "CST-21" -> {
                    double d = term(step, "d");
                    double e = term(step, "e");
                    same((1 + e) / (d - e) * (1 - Math.pow((1 + e) / (1 + d), term(step, "n"))), printed);
                }
                case "CST-23" -> {
                    if (step.result().symbol().equals("PV")) {
                        same(
                                step.inputs().get(0).value().si()
                                        * step.inputs().get(1).value().si(),
                                printed);
                    }
                }
                default -> throw new AssertionError(step.equation());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"bakery", "plastics", "cement-packing"})
    void containers_work_and_seals_are_counts_times_what_each_takes(String plant) {
        Entry containers = entry(plant, "container-cost");
        same(term(last(containers), "N") * term(last(containers), "price"), value(containers));
        same(sum(steps(containers).get(0)), term(last(containers), "N"));
        Entry labour = entry(plant, "labour-cost");
        same(term(last(labour), "N") * term(last(labour), "t") * term(last(labour), "rate"), value(labour));
        Entry seal = entry(plant, "seal-air-week/REC");
        same(term(last(seal), "N") * term(last(seal), "V_free"), value(seal));
        Entry air = entry(plant, "air-cost");
        same(term(steps(air).get(0), "V(REC)") * term(steps(air).get(0), "n"), term(last(air), "V"));
        same(term(last(air), "V") * term(last(air), "price"), value(air));
        Entry energy = entry(plant, "energy-cost");
        same(term(last(energy), "E") * term(last(energy), "price"), value(energy));
    }

    /** E = P h/(η_motor η_drive), P the mean of the printed sets, h the printed weeks. */
    @ParameterizedTest
    @ValueSource(strings = {"bakery", "cement-packing"})
    void the_energy_of_a_year_comes_from_the_printed_powers_and_hours(String plant) {
        List<Step> steps = steps(entry(plant, "energy-REC"));
        double mean_W = sum(steps.get(0)) / steps.get(0).inputs().size();
        double hours_s = term(steps.get(1), "n") * term(steps.get(1), "t");
        Step energy = steps.get(2);
        same(mean_W, term(energy, "P"));
        same(hours_s, term(energy, "h"));
        same(
                mean_W * hours_s / (term(energy, "η_motor") * term(energy, "η_drive")),
                energy.result().value().si());
    }

    @ParameterizedTest
    @ValueSource(strings = {"bakery", "plastics"})
    void heat_of_the_panel_is_the_sum_of_what_is_printed_and_its_cooler_carries_the_rest(String plant) {
        Entry heat = entry(plant, "panel-heat");
        same(sum(last(heat)), value(heat));
        Entry cooler = entry(plant, "panel-cooler");
        same(Math.max(0, term(last(cooler), "P") - term(last(cooler), "P_walls")), value(cooler));
    }

    /** The law of a stated loss, isothermal: p1² − p2² = 2 p_a Δp (w/w_at)². */
    @ParameterizedTest
    @ValueSource(strings = {"bakery", "plastics", "furniture"})
    void the_drop_of_the_safety_filter_comes_from_its_printed_terms(String plant) {
        Entry drop = entry(plant, "safety-drop/" + (plant.equals("furniture") ? "WEST" : "REC"));
        Step step = last(drop);
        double ratio = term(step, "w") / term(step, "w_at");
        double after = term(step, "p2");
        double before = Math.sqrt(after * after + 2 * term(step, "p_a") * term(step, "Δp") * ratio * ratio);
        assertThat(before - after).isCloseTo(value(drop), within(1e-6 * value(drop)));
    }
}
