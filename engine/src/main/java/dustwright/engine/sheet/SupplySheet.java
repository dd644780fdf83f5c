package dustwright.engine.sheet;

import dustwright.engine.electrical.MotorCircuit;
import dustwright.engine.electrical.MotorCircuit.Device;
import dustwright.engine.electrical.MotorCircuit.MotorType;
import dustwright.engine.electrical.MotorCurrent;
import dustwright.engine.electrical.Supply;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.ElectricCurrent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What all motors together ask of the supply. Every motor counts as running, those that stand by included. */
final class SupplySheet {
    private static final Source FEEDER = Source.published("NEC 430.24");
    private static final Source FEEDER_DEVICE = Source.published("NEC 430.62");
    private static final Source DISCONNECT = Source.fromMemory("NEC 430.110(C)");

    private final Plant plant;
    private final Supply supply;
    private final List<Entry> entries = new ArrayList<>();

    private SupplySheet(Plant plant, Supply supply) {
        this.plant = plant;
        this.supply = supply;
    }

    static Sheet of(Plant plant) {
        return plant.electrical()
                .supply()
                .map(supply -> new SupplySheet(plant, supply).sheet())
                .orElseGet(
                        () -> sheet(
                                List.of(
                                        Entry.unknown(
                                                "supply-volts",
                                                "Electrical supply",
                                                "Not stated: enter \"supply: {volts: 480 V, hertz: 60 Hz, fault current: 22 kA}\" or what there is."))));
    }

    private static Sheet sheet(List<Entry> entries) {
        return new Sheet("supply", "Electrical supply", new Place(Place.Kind.PANEL, ""), entries, List.of());
    }

    private Sheet sheet() {
        entries.add(Entry.given("supply-volts", "Voltage between lines", supply.volts(), Source.entered()));
        entries.add(Entry.given("supply-hertz", "Frequency", supply.frequency(), Source.entered()));
        entries.add(Entry.words(
                "supply-basis",
                "Rules that govern",
                supply.basis() == Supply.Basis.NEC
                        ? "National Electrical Code, with the local amendments"
                        : "IEC 60204-1 and 60947-4-1, with the national rules",
                List.of(),
                Source.ownReading("by the frequency of the supply, or as the plant file says")));
        loads();
        entries.add(Entry.words(
                "supply-limits",
                "Left to a licensed person",
                supply.basis() == Supply.Basis.NEC
                        ? "ambient over 30 °C, more than three conductors together, terminals not marked for 75 °C, voltage drop, the"
                                + " coordination of devices, the edition adopted and its local amendments; the authority having"
                                + " jurisdiction decides"
                        : "method of installation, ambient, grouping, voltage drop, disconnection time, the coordination of devices, the"
                                + " national rules; the authority in charge decides",
                List.of(),
                Source.commonPractice()));
        return sheet(entries);
    }

    private void loads() {
        List<MotorUse> motors = MotorUse.all(plant);
        List<Term> terms = new ArrayList<>();
        List<String> fans = MotorUse.fansWithoutMotor(plant);
        if (!fans.isEmpty()) {
            notKnown("The inflation fan of " + String.join(", ", fans)
                    + " hangs on it too: enter \"motor\" of its \"inflation\", or \"by: compressed air\".");
            return;
        }
        for (MotorUse use : motors) {
            Optional<ElectricCurrent> input = use.driven() ? use.motor().driveInput() : Optional.empty();
            Optional<ElectricCurrent> current =
                    use.driven() ? input : FullLoad.of(use, Optional.of(supply)).current();
            if (current.isEmpty()) {
                notKnown(
                        use.driven()
                                ? "Of " + use.turned()
                                        + " the supply sees the drive: enter its \"drive input current\"."
                                : "The full-load current of " + use.turned() + " is not known.");
                return;
            }
            terms.add(new Term(
                    "I(" + use.id() + ")",
                    (input.isPresent() ? "rated input current of the drive of " : "full-load current of ")
                            + use.turned(),
                    current.get()));
        }
        if (terms.isEmpty()) {
            return;
        }
        double sum_A = terms.stream().mapToDouble(t -> t.value().si()).sum();
        ElectricCurrent sum = new ElectricCurrent(sum_A);
        Step adding =
                new Step("ELE-25", "I = Σ I", terms, new Term("I", "all motors", sum), Source.published("definition"));
        entries.add(Entry.known("connected-current", "All motors together", sum, List.of(adding)));
        if (supply.basis() == Supply.Basis.NEC) {
            feeder(terms, adding);
        } else {
            disconnector(terms);
        }
    }

    private void notKnown(String why) {
        entries.add(Entry.unknown("connected-current", "All motors together", why));
        entries.add(Entry.unknown(
                "main-disconnect",
                supply.basis() == Supply.Basis.NEC ? "Main disconnect, least rating" : "Supply disconnector",
                why));
        entries.add(Entry.unknown("feeder", "Feeder and its device", why));
    }

    /** On an IEC basis: what the disconnector must break; what it and the feeder must be, their tables decide. */
    private void disconnector(List<Term> terms) {
        double[] currents_A = terms.stream().mapToDouble(t -> t.value().si()).toArray();
        ElectricCurrent stalled = new ElectricCurrent(MotorCurrent.stalled_A(currents_A));
        entries.add(Entry.known(
                "main-disconnect",
                "Supply disconnector, least breaking capacity",
                stalled,
                List.of(new Step(
                        "ELE-34",
                        "I = 6 I_max + Σ I of the others",
                        terms,
                        new Term("I", "largest motor stalled, the others running", stalled),
                        Source.fromMemory("IEC 60204-1, 5.3; six times full load is practice, no source")))));
        entries.add(Entry.unknown(
                "feeder",
                "Feeder and its device",
                "Not screened here: the tables of IEC 60364-5-52 Annex B decide by method of installation, ambient and grouping, its device by"
                        + " IEC 60364-4-43; it must carry all motors together."));
    }

    private void feeder(List<Term> terms, Step adding) {
        double[] currents_A = terms.stream().mapToDouble(t -> t.value().si()).toArray();
        ElectricCurrent ampacity = new ElectricCurrent(MotorCircuit.feederAmpacity_A(currents_A));
        entries.add(Entry.known(
                "feeder-ampacity",
                "Feeder, least ampacity, motors alone: control supply and other loads come on top",
                ampacity,
                List.of(new Step(
                        "ELE-14",
                        "I_z ≥ Σ I + 0.25 max I",
                        terms,
                        new Term("I_z", "least ampacity", ampacity),
                        FEEDER))));
        feederDevice(terms);
        ElectricCurrent disconnect =
                new ElectricCurrent(1.15 * adding.result().value().si());
        entries.add(Entry.known(
                "main-disconnect",
                "Main disconnect, least rating",
                disconnect,
                List.of(
                        adding,
                        new Step(
                                "ELE-12",
                                "I_disconnect ≥ 1.15 Σ I, rated in horsepower",
                                List.of(adding.result()),
                                new Term("I_disconnect", "least rating", disconnect),
                                DISCONNECT))));
    }

    /** With dual-element fuses in every branch; the largest branch device and the other motors, rounded down. */
    private void feederDevice(List<Term> terms) {
        if (MotorUse.all(plant).stream().anyMatch(MotorUse::driven)) {
            entries.add(Entry.unknown(
                    "feeder-device",
                    "Feeder fuse, at most",
                    "A drive's branch device is what its maker lists: with the largest branch device enter it in NEC 430.62 by"
                            + " hand."));
            return;
        }
        List<Term> largestFirst = terms.stream()
                .sorted(Comparator.comparingDouble((Term t) -> -t.value().si()))
                .toList();
        List<Term> others = largestFirst.subList(1, largestFirst.size());
        double branch_A = MotorCircuit.ofFullLoad(largestFirst.get(0).value().si(), MotorType.DESIGN_B)
                .dualElementFuse_A();
        double[] others_A = others.stream().mapToDouble(t -> t.value().si()).toArray();
        ElectricCurrent device = new ElectricCurrent(MotorCircuit.feederDevice_A(branch_A, Device.FUSE, others_A));
        List<Term> inputs = new ArrayList<>();
        inputs.add(new Term("I_branch", "dual-element fuse of the largest branch", new ElectricCurrent(branch_A)));
        inputs.addAll(others);
        entries.add(Entry.known(
                "feeder-device",
                "Feeder fuse, at most",
                device,
                List.of(new Step(
                        "ELE-15",
                        "I_r ≤ I_branch + Σ I of the others, rounded down",
                        inputs,
                        new Term("I_r", "rating", device),
                        FEEDER_DEVICE))));
    }
}
