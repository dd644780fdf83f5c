package dustwright.engine.sheet;

import dustwright.engine.electrical.Motor;
import dustwright.engine.electrical.MotorCurrent;
import dustwright.engine.electrical.MotorRating;
import dustwright.engine.electrical.Supply;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.quantity.ElectricCurrent;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Full-load current of a motor on the basis of its supply: by table where the table holds its rating, by its own efficiency and power
 * factor on IEC supplies of another voltage, else unknown with what to enter. On an IEC basis conductor and contactor stand behind an
 * overload set to the nameplate current, so no circuit goes by less than that (equation ELE-47); a NEC circuit goes by the table.
 *
 * @param current absent where it is not known
 * @param why it is not known; empty where it is
 */
record FullLoad(Optional<ElectricCurrent> current, List<Step> steps, String why) {
    private static final Source BEHIND_OVERLOAD =
            Source.fromMemory("IEC 60364-4-43: I_B ≤ I_n ≤ I_z, the overload set to the nameplate current");
    private static final Source THREE_PHASES = Source.published("definition of three-phase power");
    private static final double GUIDE_V = 400;
    private static final String LISTED = "ELE-31";

    /** A rating as its nameplate writes it: 15 hp is 11 185.498 W and reads back as 15. */
    private static final double AS_WRITTEN = 1e-4;

    static FullLoad of(MotorUse use, Optional<Supply> supply) {
        FullLoad byPower = byPower(use, supply);
        return supply.filter(s -> s.basis() == Supply.Basis.IEC)
                .flatMap(s -> use.motor().nameplateCurrent())
                .map(byPower::orNameplate)
                .orElse(byPower);
    }

    /** The greater of both; the nameplate's alone where nothing tells another. */
    private FullLoad orNameplate(ElectricCurrent nameplate) {
        Term plate = new Term("I_n", "nameplate current", nameplate);
        List<Step> all = new ArrayList<>(steps);
        ElectricCurrent greater =
                current.filter(i -> i.compareTo(nameplate) > 0).orElse(nameplate);
        all.add(new Step(
                "ELE-47",
                current.isPresent() ? "I = max(I_P, I_n)" : "I = I_n",
                current.map(i -> List.of(new Term("I_P", "by the motor's power", i), plate))
                        .orElseGet(() -> List.of(plate)),
                new Term("I", "full-load current", greater),
                BEHIND_OVERLOAD));
        return new FullLoad(Optional.of(greater), all, "");
    }

    /** By the motor's power alone, whatever current its nameplate states. */
    static FullLoad byPower(MotorUse use, Optional<Supply> supply) {
        if (supply.isEmpty()) {
            return unknown("No supply is stated: enter \"supply: {volts: 480 V, hertz: 60 Hz}\" or what there is.");
        }
        if (supply.get().phases() != 3) {
            return onePhase(use, supply.get());
        }
        try {
            return supply.get().basis() == Supply.Basis.NEC ? nec(use, supply.get()) : iec(use, supply.get());
        } catch (IllegalArgumentException notInTable) {
            return unknown("Not in the table: " + notInTable.getMessage());
        }
    }

    private static FullLoad nec(MotorUse use, Supply supply) {
        int volts = (int) Math.round(supply.volts().volts());
        Power nameplate = use.motor().nameplate();
        int motorVolts = MotorCurrent.Column.ofSystem(volts).motorVolts();
        double horsepower = MotorRating.listedHorsepower(nameplate.watts());
        Power listed = new Power(horsepower * Units.HORSEPOWER_W);
        Term looked = new Term("P", "rating in the table", listed);
        return known(
                        "ELE-4",
                        "I = table 430.250 at " + motorVolts + " V",
                        List.of(looked, new Term("U", "system voltage", supply.volts())),
                        MotorCurrent.tableFullLoad_A(horsepower, volts),
                        MotorCurrent.tableSource())
                .after(nameplate, looked);
    }

    /** The same, looked up under another rating than the nameplate's where the table does not list that one. */
    private FullLoad after(Power nameplate, Term looked) {
        double ratio = looked.value().si() / nameplate.watts();
        if (Math.abs(ratio - 1) < AS_WRITTEN) {
            return this;
        }
        List<Step> all = new ArrayList<>();
        all.add(new Step(
                LISTED,
                "P = next listed rating, 2 % less counts as the same size",
                List.of(new Term("P_n", "nameplate", nameplate)),
                looked,
                Source.ownReading("the table does not list this rating; currents rise with the rating")));
        all.addAll(steps);
        return new FullLoad(current, all, why);
    }

    /** Rating under which the motor was looked up, where its table does not list the nameplate's. */
    Optional<Step> lookedUp() {
        return steps.stream().filter(step -> step.equation().equals(LISTED)).findFirst();
    }

    /** By its own plate on an IEC basis; the table of the National Electrical Code for one phase is not held here. */
    private static FullLoad onePhase(MotorUse use, Supply supply) {
        Motor motor = use.motor();
        if (supply.basis() == Supply.Basis.NEC) {
            return unknown(
                    "Single-phase motors are not screened here: NEC table 430.248 gives the full-load current, and a"
                            + " licensed person sizes conductor, overload, device and disconnect by it.");
        }
        if (motor.efficiency().isEmpty() || motor.powerFactor().isEmpty()) {
            return unknown(
                    "Single-phase: enter \"motor efficiency\" and \"power factor\"; a licensed person checks them"
                            + " against the nameplate.");
        }
        return known(
                "ELE-37",
                "I = P / (U cos φ η)",
                List.of(
                        new Term("P", "nameplate", motor.nameplate()),
                        new Term("U", "voltage", supply.volts()),
                        cosine(motor),
                        efficiency(motor)),
                MotorCurrent.onePhase_A(
                        motor.nameplate().watts(),
                        supply.volts().volts(),
                        motor.powerFactor().get(),
                        motor.efficiency().get()),
                Source.published("definition of power factor"));
    }

    private static Term cosine(Motor motor) {
        return new Term("cos φ", "power factor", new Ratio(motor.powerFactor().orElseThrow()));
    }

    private static Term efficiency(Motor motor) {
        return new Term("η", "motor efficiency", new Ratio(motor.efficiency().orElseThrow()));
    }

    private static FullLoad iec(MotorUse use, Supply supply) {
        Motor motor = use.motor();
        Term power = new Term("P", "nameplate", motor.nameplate());
        if (motor.efficiency().isPresent() && motor.powerFactor().isPresent()) {
            return known(
                    "ELE-6",
                    "I = P / (√3 U cos φ η)",
                    List.of(
                            power,
                            new Term("U", "voltage between lines", supply.volts()),
                            cosine(motor),
                            efficiency(motor)),
                    MotorCurrent.fromPower_A(
                            motor.nameplate().watts(),
                            supply.volts().volts(),
                            motor.powerFactor().get(),
                            motor.efficiency().get()),
                    THREE_PHASES);
        }
        if (supply.volts().volts() != GUIDE_V) {
            return unknown("The guide currents hold at 400 V: enter \"motor efficiency\" and \"power factor\".");
        }
        double kilowatts = MotorRating.listedKilowatts(motor.nameplate().watts());
        Term looked = new Term("P", "rating in the table", new Power(1000 * kilowatts));
        return known(
                        "ELE-5",
                        "I = guide current at 400 V",
                        List.of(looked),
                        MotorCurrent.guideAt400V_A(kilowatts),
                        MotorCurrent.guideSource())
                .after(motor.nameplate(), looked);
    }

    private static FullLoad known(String equation, String formula, List<Term> terms, double current_A, Source source) {
        ElectricCurrent current = new ElectricCurrent(current_A);
        Step step = new Step(equation, formula, terms, new Term("I", "full-load current", current), source);
        return new FullLoad(Optional.of(current), List.of(step), "");
    }

    private static FullLoad unknown(String why) {
        return new FullLoad(Optional.empty(), List.of(), why);
    }
}
