package dustwright.engine.sheet;

import dustwright.engine.air.Air;
import dustwright.engine.air.StandardAtmosphere;
import dustwright.engine.electrical.Motor;
import dustwright.engine.electrical.MotorCircuit;
import dustwright.engine.electrical.MotorCircuit.MotorType;
import dustwright.engine.electrical.MotorCurrent;
import dustwright.engine.electrical.MotorRating;
import dustwright.engine.electrical.Supply;
import dustwright.engine.finding.Confidence;
import dustwright.engine.finding.Derivation;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.plant.Plant;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.ElectricCurrent;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.quantity.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The branch circuit of one motor, a screening on the basis of the supply: the two sets of rules are never mixed. */
final class MotorSheet {
    private static final Source OVERLOAD = Source.fromMemory("NEC 430.32(A)(1)");
    private static final Source DISCONNECT = Source.fromMemory("NEC 430.109, 430.110(A): rated in horsepower");
    private static final Source AMPACITY = Source.published("NEC 430.22");
    private static final Source STAR = new Source(
            "a third of a direct start by the three-phase connection; six times full load is practice, no source",
            Confidence.COMMON_PRACTICE);
    private static final Source RATED_UP_TO =
            Source.fromMemory("IEC 60034-1 and NEMA MG 1: 40 °C and 1000 m, 1 K less for each further 100 m (ELE-43)");
    private static final double USUAL_SCATTER = 1.25;
    private static final String CONDUCTOR = "Branch conductor";
    private static final String LEAST_DISCONNECT = "Disconnect, least rating";

    private final MotorUse use;
    private final Optional<Supply> supply;
    private final FullLoad load;
    private final List<Entry> entries = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    private MotorSheet(Plant plant, MotorUse use) {
        this.use = use;
        this.supply = plant.electrical().supply();
        this.load = FullLoad.of(use, supply);
    }

    static Sheet of(Plant plant, MotorUse use) {
        MotorSheet sheet = new MotorSheet(plant, use);
        sheet.nameplate();
        if (use.turnsProducer()) {
            sheet.atSite(plant.site().air());
        }
        if (sheet.supply.isPresent()) {
            sheet.starting();
            sheet.branch();
            sheet.stated(FindingCode.NAMEPLATE_CURRENT, "nameplate", use.motor().nameplateCurrent());
            sheet.stated(
                    FindingCode.DRIVE_INPUT_CURRENT, "drive input", use.motor().driveInput());
            sheet.excess();
        }
        String title = use.turnsProducer()
                ? "Motor circuit"
                : use.blowsBagOpen() ? "Motor circuit of inflation fan" : "Motor circuit of rotary valve";
        return new Sheet("motor/" + use.id(), title, use.place(), sheet.entries, sheet.findings);
    }

    private void nameplate() {
        Motor motor = use.motor();
        entries.add(Entry.given(id("motor-power"), "Nameplate power", motor.nameplate(), use.power()));
        entries.add(
                Entry.given(id("service-factor"), "Service factor", new Ratio(motor.serviceFactor()), use.factor()));
        load.lookedUp()
                .ifPresent(step -> entries.add(Entry.known(
                        id("table-rating"),
                        "Not a listed rating: looked up as",
                        step.result().value(),
                        List.of(step))));
        entries.add(load.current()
                .map(i -> Entry.known(id("full-load-current"), "Full-load current", i, load.steps()))
                .orElseGet(() -> Entry.unknown(id("full-load-current"), "Full-load current", load.why())));
    }

    /** Hotter or higher than motors are rated for, its nameplate holds only as far as its maker says; the motor stands in the site's air. */
    private void atSite(Air site) {
        Optional<Power> stated = use.motor().atSite();
        if (stated.isPresent()) {
            entries.add(Entry.given(id("motor-at-site"), "What it gives at this site", stated.get(), Source.entered()));
            return;
        }
        if (VacuumProducer.nameplateHolds(site)) {
            return;
        }
        Temperature most = hottest(site);
        String why = nameplateUpTo(site) + " enter \"motor at site\", what its maker says it gives here.";
        entries.add(Entry.unknown(id("motor-at-site"), "What it gives at this site", why));
        findings.add(Finding.unjudged(
                FindingCode.MOTOR_AT_SITE, use.place(), Sheet.ANY_SET, Side.AT_MOST, most, RATED_UP_TO, why));
    }

    private static Temperature hottest(Air site) {
        return new Temperature(MotorRating.greatestAmbient_K(Math.min(altitude_m(site), MotorRating.HIGHEST_m)));
    }

    private static double altitude_m(Air site) {
        return StandardAtmosphere.altitude_m(site.ambient().pascals());
    }

    /** How far motors give their nameplate at the height of a site, for what to do then. */
    static String nameplateUpTo(Air site) {
        return String.format(
                Locale.ROOT,
                "Motors give their nameplate up to %.0f °C (%.0f °F) at this altitude of %.0f m (%.0f ft), and none above 4000 m (13 120 ft):",
                hottest(site).kelvin() - 273.15,
                hottest(site).kelvin() * 1.8 - 459.67,
                altitude_m(site),
                altitude_m(site) / Units.FOOT_m);
    }

    /** A stated current against the least that its power takes from this supply without any loss. */
    private void stated(FindingCode code, String what, Optional<ElectricCurrent> current) {
        if (current.isEmpty()) {
            return;
        }
        Motor motor = use.motor();
        boolean three = supply.orElseThrow().phases() == 3;
        ElectricCurrent least = new ElectricCurrent(MotorCurrent.least_A(
                motor.nameplate().watts(),
                supply.get().volts().volts(),
                supply.get().phases()));
        Step step = new Step(
                "ELE-36",
                three ? "I_least = P / (√3 U)" : "I_least = P / U",
                List.of(
                        new Term("P", "nameplate", motor.nameplate()),
                        new Term("U", "voltage between lines", supply.get().volts())),
                new Term("I_least", "without any loss, cos φ = η = 1", least),
                Source.published("conservation of energy"));
        Step asStated = Writing.stated("I", what + " current", current.get(), Source.entered());
        findings.add(Finding.of(
                code,
                use.place(),
                Sheet.ANY_SET,
                Side.AT_LEAST,
                current.get(),
                least,
                new Derivation(List.of(step, asStated), Source.published("conservation of energy"))));
    }

    /** A nameplate current against what the motor's power takes, by a NEC table what the circuit carries that is sized by it. */
    private void excess() {
        Optional<ElectricCurrent> nameplate = use.motor().nameplateCurrent();
        FullLoad byPower = FullLoad.byPower(use, supply);
        if (nameplate.isEmpty() || byPower.current().isEmpty()) {
            return;
        }
        Step most = supply.orElseThrow().basis() == Supply.Basis.NEC && !use.driven()
                ? byConductor(byPower.current().get())
                : byUsualScatter(byPower.current().get());
        findings.add(Finding.of(
                FindingCode.NAMEPLATE_EXCESS,
                use.place(),
                Sheet.ANY_SET,
                Side.AT_MOST,
                nameplate.get(),
                most.result().value(),
                new Derivation(
                        Writing.statedThen(
                                Writing.stated("I", "nameplate current", nameplate.get(), Source.entered()),
                                with(byPower, most)),
                        most.source())));
    }

    /** The overload guards the conductors too, so its highest trip may not pass what they carry. */
    private Step byConductor(ElectricCurrent fullLoad) {
        MotorCircuit nec = MotorCircuit.ofFullLoad(fullLoad.amperes(), MotorType.DESIGN_B);
        ElectricCurrent carried = new ElectricCurrent(
                nec.conductor().map(MotorCircuit.Conductor::ampacity_A).orElse(nec.leastAmpacity_A()));
        double trip = MotorCircuit.overloadTrip_A(1, use.motor().serviceFactor(), Optional.empty(), false);
        return new Step(
                "ELE-38",
                "I_most = I_z / trip",
                List.of(
                        new Term("I_z", "ampacity of the branch conductor (ELE-10)", carried),
                        new Term("trip", "highest trip of the overload over the nameplate (ELE-13)", new Ratio(trip))),
                new Term(
                        "I_most",
                        "nameplate current whose overload still guards the conductor",
                        new ElectricCurrent(carried.amperes() / trip)),
                Source.fromMemory("NEC 430.31 and 430.32(A)(1): the overload guards motor, controller and conductors"));
    }

    private static Step byUsualScatter(ElectricCurrent fullLoad) {
        return new Step(
                "ELE-39",
                "I_most = 1.25 I_P",
                List.of(new Term("I_P", "full-load current by the motor's power", fullLoad)),
                new Term(
                        "I_most",
                        "most that makes and pole numbers of one power usually differ by",
                        new ElectricCurrent(USUAL_SCATTER * fullLoad.amperes())),
                Source.commonPractice());
    }

    private void starting() {
        String id = id("start");
        String name = "Starting";
        if (use.driven()) {
            entries.add(Entry.words(
                    id, name, "by its drive, without a peak of current", List.of(), Source.commonPractice()));
            return;
        }
        Optional<Motor.Starting> starting = use.motor().starting();
        if (starting.isEmpty()) {
            entries.add(
                    Entry.unknown(
                            id,
                            name,
                            "Enter \"start\": direct, star-delta, soft starter or drive; whoever feeds the panel may limit it."));
            return;
        }
        entries.add(Entry.words(id, name, starting.get().words(), List.of(), use.starting()));
        startCurrent(starting.get());
    }

    private void startCurrent(Motor.Starting starting) {
        String id = id("start-current");
        String name = "Current at start";
        if (starting == Motor.Starting.SOFT_STARTER) {
            entries.add(Entry.unknown(
                    id, name, "Set on the soft starter: the load's torque and its maker's sheet decide."));
        } else if (load.current().isEmpty()) {
            entries.add(Entry.unknown(id, name, load.why()));
        } else {
            List<Step> steps = new ArrayList<>(load.steps());
            ElectricCurrent fullLoad = load.current().get();
            ElectricCurrent direct = new ElectricCurrent(MotorCurrent.directStart_A(fullLoad.amperes()));
            steps.add(new Step(
                    "ELE-22",
                    "I_start = 6 I",
                    List.of(new Term("I", "full-load current", fullLoad)),
                    new Term("I_start", "line current of a direct start", direct),
                    Source.commonPractice()));
            ElectricCurrent atStart = direct;
            if (starting == Motor.Starting.STAR_DELTA) {
                atStart = new ElectricCurrent(MotorCurrent.starStart_A(direct.amperes()));
                steps.add(new Step(
                        "ELE-8",
                        "I_star = I_start / 3",
                        List.of(new Term("I_start", "line current of a direct start", direct)),
                        new Term("I_star", "line current of a start in star", atStart),
                        STAR));
            }
            entries.add(Entry.known(id, name, atStart, steps));
        }
    }

    private void branch() {
        overload();
        if (load.current().isEmpty()) {
            entries.add(Entry.unknown(
                    id("branch-circuit"), "Branch conductor, short-circuit device, disconnect", load.why()));
        } else if (supply.orElseThrow().basis() == Supply.Basis.IEC) {
            entries.addAll(new IecBranch(use, load).entries());
        } else if (use.driven()) {
            driveBranch();
        } else {
            necBranch(load.current().get());
        }
    }

    private void necBranch(ElectricCurrent fullLoad) {
        MotorCircuit nec = MotorCircuit.ofFullLoad(fullLoad.amperes(), MotorType.DESIGN_B);
        conductor(nec, new Term("I", "full-load current", fullLoad), AMPACITY);
        device(
                new String[] {"dual-element-fuse", "Short circuit: largest dual-element fuse"},
                nec.dualElementFuse_A(),
                "175 % of I, next standard size",
                fullLoad);
        device(
                new String[] {"inverse-time-breaker", "Short circuit: largest inverse-time breaker"},
                nec.inverseTimeBreaker_A(),
                "250 % of I, next standard size",
                fullLoad);
        disconnect(nec.leastDisconnect_A(), new Term("I", "full-load current", fullLoad), DISCONNECT);
    }

    /** On the rated input current of the drive, never on the motor's. */
    private void driveBranch() {
        Optional<ElectricCurrent> input = use.motor().driveInput();
        if (input.isEmpty()) {
            String why =
                    "On a drive by its rated input current: enter \"drive input current\" from its maker's sheet (NEC"
                            + " 430.122, 430.128; from memory).";
            entries.add(Entry.unknown(id("conductor"), CONDUCTOR, why));
            entries.add(Entry.unknown(id("disconnect"), LEAST_DISCONNECT, why));
        } else {
            Term current = new Term("I", "rated input current of the drive", input.get());
            MotorCircuit nec = MotorCircuit.ofFullLoad(input.get().amperes(), MotorType.DESIGN_B);
            conductor(nec, current, Source.fromMemory("NEC 430.122(A)"));
            disconnect(nec.leastDisconnect_A(), current, Source.fromMemory("NEC 430.128"));
        }
        entries.add(Entry.unknown(
                id("short-circuit"),
                "Short circuit: largest device",
                "The list of devices in the manual of the drive's maker decides (NEC 430.130; from memory)."));
    }

    private void conductor(MotorCircuit nec, Term current, Source rule) {
        ElectricCurrent ampacity = new ElectricCurrent(nec.leastAmpacity_A());
        Step step = new Step(
                "ELE-10",
                "I_z ≥ 1.25 I",
                List.of(current),
                new Term("I_z", "least ampacity of the conductors", ampacity),
                rule);
        List<Step> steps = with(step);
        entries.add(nec.conductor()
                .map(c -> Entry.words(
                        id("conductor"),
                        CONDUCTOR,
                        "copper " + size(c.size()) + ", 75 °C",
                        steps,
                        MotorCircuit.conductorSource()))
                .orElseGet(() -> Entry.unknown(id("conductor"), CONDUCTOR, "Beyond 1000 kcmil: parallel sets.")));
    }

    private void disconnect(double rating_A, Term current, Source rule) {
        ElectricCurrent rating = new ElectricCurrent(rating_A);
        entries.add(Entry.known(
                id("disconnect"),
                LEAST_DISCONNECT,
                rating,
                with(new Step(
                        "ELE-12",
                        "I_disconnect ≥ 1.15 I, rated in horsepower",
                        List.of(current),
                        new Term("I_r", "rating", rating),
                        rule))));
    }

    private static String size(String size) {
        return size.length() > 2 && !size.contains("/") ? size + " kcmil" : size + " AWG";
    }

    private void device(String[] part, double rating_A, String rule, ElectricCurrent fullLoad) {
        ElectricCurrent rating = new ElectricCurrent(rating_A);
        entries.add(Entry.known(
                id(part[0]),
                part[1],
                rating,
                with(new Step(
                        "ELE-11",
                        rule,
                        List.of(new Term("I", "full-load current", fullLoad)),
                        new Term("I_r", "rating", rating),
                        MotorCircuit.percentSource()))));
    }

    /** On the nameplate current, never on the table's. */
    private void overload() {
        String id = id("overload");
        boolean iec = supply.filter(s -> s.basis() == Supply.Basis.IEC).isPresent();
        String name = iec ? "Overload, set to" : "Overload, highest trip";
        Optional<ElectricCurrent> nameplate = use.motor().nameplateCurrent();
        if (use.driven()) {
            entries.add(Entry.words(
                    id, name, "the drive's own, set to the nameplate current", List.of(), Source.commonPractice()));
        } else if (nameplate.isEmpty()) {
            entries.add(Entry.unknown(
                    id,
                    name,
                    (iec ? "Set to" : "Sized on") + " the nameplate current, not a table's: "
                            + (use.turnsProducer()
                                    ? "enter \"nameplate current\"."
                                    : "read it from the motor itself.")));
        } else if (iec) {
            entries.add(IecBranch.overload(id, nameplate.get()));
        } else {
            ElectricCurrent trip = new ElectricCurrent(MotorCircuit.overloadTrip_A(
                    nameplate.get().amperes(), use.motor().serviceFactor(), Optional.empty(), false));
            entries.add(Entry.known(
                    id,
                    name,
                    trip,
                    List.of(new Step(
                            "ELE-13",
                            "125 % of I with service factor 1.15 or more, else 115 %",
                            List.of(
                                    new Term("I", "nameplate current", nameplate.get()),
                                    new Term(
                                            "sf",
                                            "service factor",
                                            new Ratio(use.motor().serviceFactor()))),
                            new Term("I_r", "highest trip", trip),
                            OVERLOAD))));
        }
    }

    private List<Step> with(Step step) {
        return with(load, step);
    }

    private static List<Step> with(FullLoad load, Step step) {
        List<Step> steps = new ArrayList<>(load.steps());
        steps.add(step);
        return steps;
    }

    private String id(String what) {
        return what + "/" + use.id();
    }
}
