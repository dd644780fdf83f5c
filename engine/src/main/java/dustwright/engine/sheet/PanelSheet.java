package dustwright.engine.sheet;

import dustwright.engine.electrical.ControlSupply;
import dustwright.engine.electrical.ControlSupply.Load;
import dustwright.engine.electrical.Instrument.Signal;
import dustwright.engine.electrical.Panel;
import dustwright.engine.electrical.Supply;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.ElectricCurrent;
import dustwright.engine.quantity.ElectricPower;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Voltage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The panel: signals, control supply, enclosure by area class, heat. A starting point; the owner classifies, a licensed person designs. */
final class PanelSheet {
    private static final double SPARE = 0.25;

    private final Plant plant;
    private final Panel panel;
    private final List<Entry> entries = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    private PanelSheet(Plant plant, Panel panel) {
        this.plant = plant;
        this.panel = panel;
    }

    static Sheet of(Plant plant) {
        return plant.electrical()
                .panel()
                .map(panel -> new PanelSheet(plant, panel).sheet())
                .orElseGet(() -> PanelEnclosure.notDescribed(plant));
    }

    private Sheet sheet() {
        ratings();
        Sheet enclosure = new PanelEnclosure(plant, panel).sheet();
        entries.addAll(enclosure.entries());
        findings.addAll(enclosure.findings());
        Sheet heat = PanelCooling.of(plant, panel, control());
        entries.addAll(heat.entries());
        findings.addAll(heat.findings());
        return new Sheet("panel", "Panel", new Place(Place.Kind.PANEL, ""), entries, findings);
    }

    private void ratings() {
        Optional<Supply> supply = plant.electrical().supply();
        String name = "Short-circuit rating asked of the panel";
        entries.add(supply.flatMap(Supply::faultCurrent)
                .map(fault -> Entry.given("short-circuit-rating", name, fault, Source.entered()))
                .orElseGet(() -> Entry.unknown(
                        "short-circuit-rating",
                        name,
                        "At least the available fault current at its terminals: ask whoever feeds it and enter"
                                + " \"fault current\" of the supply.")));
    }

    private record Count(Load load, int number) {}

    /** What hangs on the control supply: the signals of all stations, and the controller. */
    private static List<Count> counts(List<Instruments.Tagged> instruments) {
        return Arrays.stream(Load.values())
                .map(load -> new Count(
                        load,
                        load == Load.CONTROLLER
                                ? 1
                                : (int) instruments.stream()
                                        .filter(i ->
                                                i.load().filter(load::equals).isPresent())
                                        .count()))
                .toList();
    }

    private static String numbers(List<Instruments.Tagged> instruments) {
        return numbers(instruments, 0);
    }

    /** The same without what there is none of. */
    private static String some(List<Instruments.Tagged> instruments) {
        return numbers(instruments, 1);
    }

    private static String numbers(List<Instruments.Tagged> instruments, long least) {
        Map<String, Signal> kinds = new LinkedHashMap<>();
        kinds.put(" digital in", Signal.DIGITAL_INPUT);
        kinds.put(" analogue in", Signal.ANALOGUE_INPUT);
        kinds.put(" digital out", Signal.DIGITAL_OUTPUT);
        return kinds.entrySet().stream()
                .filter(kind -> number(instruments, kind.getValue()) >= least)
                .map(kind -> number(instruments, kind.getValue()) + kind.getKey())
                .collect(Collectors.joining(", "));
    }

    private static long number(List<Instruments.Tagged> instruments, Signal signal) {
        return instruments.stream().filter(i -> i.signal() == signal).count();
    }

    private ElectricPower control() {
        List<Instruments.Tagged> all = Instruments.of(plant);
        List<Instruments.Tagged> instruments =
                all.stream().filter(i -> i.missing().isEmpty()).toList();
        List<Instruments.Tagged> missing =
                all.stream().filter(i -> i.missing().isPresent()).toList();
        List<Count> counts = counts(instruments);
        entries.add(Entry.words(
                "signals",
                "Signals of all stations, as their lists of instruments",
                numbers(instruments) + "; spare not counted"
                        + (missing.isEmpty()
                                ? ""
                                : ", nor " + some(missing)
                                        + " that the default sequence wires to what this plant does not describe"),
                List.of(),
                Source.commonPractice()));
        List<Term> terms = counts.stream()
                .map(c -> new Term(
                        "P(" + c.load().words() + ")",
                        c.number() + " at "
                                + String.format(Locale.ROOT, "%.1f", c.load().each_W()) + " W",
                        new ElectricPower(c.number() * c.load().each_W())))
                .toList();
        ElectricPower load = new ElectricPower(
                terms.stream().mapToDouble(t -> t.value().si()).sum());
        Step sum = new Step("ELE-23", "P = Σ P", terms, new Term("P", "control load", load), ControlSupply.source());
        ElectricCurrent current = new ElectricCurrent(
                ControlSupply.current_A(load.watts(), SPARE, panel.control().volts()));
        Step step = new Step(
                "ELE-23",
                "I = P (1 + spare) / U",
                List.of(
                        new Term("P", "control load", load),
                        new Term("spare", "kept free", new Ratio(SPARE)),
                        new Term(
                                "U",
                                "control voltage",
                                new Voltage(panel.control().volts()))),
                new Term("I", "control supply, least", current),
                ControlSupply.source());
        entries.add(Entry.known("control-load", "Control load, everything on", load, List.of(sum)));
        entries.add(Entry.known(
                "control-supply",
                "Control supply, " + panel.control().words() + ", least",
                current,
                List.of(sum, step)));
        return load;
    }
}
