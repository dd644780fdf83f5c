package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.electrical.Motor;
import dustwright.engine.electrical.MotorCurrent;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.quantity.ElectricCurrent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The branch of a motor on an IEC basis: what its current alone decides, and which table decides the rest. */
final class IecBranch {
    private static final Source CONTACTOR = Source.fromMemory("IEC 60947-4-1, utilization category AC-3");
    private static final Source CABLE = Source.fromMemory("IEC 60364-4-43: I_B ≤ I_n ≤ I_z");
    private static final Source OVERLOAD = Source.fromMemory("IEC 60947-4-1, class 10");

    private final MotorUse use;
    private final FullLoad load;
    private final ElectricCurrent fullLoad;
    private final List<Entry> entries = new ArrayList<>();

    IecBranch(MotorUse use, FullLoad load) {
        this.use = use;
        this.load = load;
        this.fullLoad = load.current().orElseThrow();
    }

    List<Entry> entries() {
        if (!use.driven()) {
            contactors();
        }
        cable();
        entries.add(
                Entry.unknown(
                        id("short-circuit"),
                        "Short-circuit device",
                        use.driven()
                                ? "The list of devices in the manual of the drive's maker decides."
                                : "The maker's table of type 2 coordination for this contactor and fault current decides (IEC 60947-4-1)."));
        return entries;
    }

    /** Set to the nameplate current. */
    static Entry overload(String id, ElectricCurrent nameplate) {
        return Entry.known(
                id,
                "Overload, set to",
                nameplate,
                List.of(step(
                        "ELE-35",
                        "I_r = I",
                        OVERLOAD,
                        new Term("I_r", "setting", nameplate),
                        new Term("I", "nameplate current", nameplate))));
    }

    private void contactors() {
        if (use.motor().starting().filter(Motor.Starting.STAR_DELTA::equals).isPresent()) {
            contactor(
                    "contactor",
                    "Main and delta contactor, AC-3, least rated current",
                    "I_e ≥ I / √3",
                    MotorCurrent.winding_A(fullLoad.amperes()));
            contactor(
                    "contactor-star",
                    "Star contactor, AC-3, least rated current",
                    "I_e ≥ I / 3",
                    MotorCurrent.starStart_A(fullLoad.amperes()));
        } else {
            contactor("contactor", "Contactor, AC-3, least rated current", "I_e ≥ I", fullLoad.amperes());
        }
    }

    private void contactor(String what, String name, String rule, double rated_A) {
        ElectricCurrent rated = new ElectricCurrent(rated_A);
        entries.add(Entry.known(
                id(what),
                name,
                rated,
                with(
                        load,
                        step(
                                "ELE-32",
                                rule,
                                CONTACTOR,
                                new Term("I_e", "rated operational current", rated),
                                new Term("I", "full-load current", fullLoad)))));
    }

    private void cable() {
        Optional<ElectricCurrent> carried = use.driven() ? use.motor().driveInput() : Optional.of(fullLoad);
        String name = "Branch conductor must carry, corrected for its place";
        entries.add(carried.map(current -> Entry.known(
                        id("conductor-current"),
                        name,
                        current,
                        with(
                                load,
                                step(
                                        "ELE-33",
                                        "I_z ≥ I_B",
                                        CABLE,
                                        new Term("I_z", "capacity where it is laid", current),
                                        new Term(
                                                "I_B",
                                                use.driven() ? "rated input current of the drive" : "full-load current",
                                                current)))))
                .orElseGet(() -> Entry.unknown(
                        id("conductor-current"), name, "Enter \"drive input current\" from the drive's maker.")));
        entries.add(Entry.unknown(
                id("conductor"),
                "Branch conductor, cross-section",
                "Not screened here: the tables of IEC 60364-5-52 Annex B, or of IEC 60204-1 for wiring on the machine, decide by"
                        + " method of installation, ambient and grouping. Have a licensed person choose it for the current above,"
                        + " then check voltage drop and disconnection time."));
    }

    private static List<Step> with(FullLoad load, Step last) {
        List<Step> steps = new ArrayList<>(load.steps());
        steps.add(last);
        return steps;
    }

    private String id(String what) {
        return what + "/" + use.id();
    }
}
