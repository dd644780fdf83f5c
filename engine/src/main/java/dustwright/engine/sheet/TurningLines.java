package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.electrical.Motor;
import dustwright.engine.electrical.MotorSpeed;
import dustwright.engine.electrical.Supply;
import dustwright.engine.finding.Derivation;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.producer.BeltDrive;
import dustwright.engine.producer.Coupling;
import dustwright.engine.producer.Drive;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.SupplyFrequency;
import dustwright.engine.quantity.Velocity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** How a producer is turned: its motor's speed on the supply, the belt or coupling between, the frequency of its drive. */
final class TurningLines {
    /** Slips of motor and belt are known no better: common practice. */
    private static final double GREATEST_DEPARTURE = 0.04;

    private static final Source DEFINITION = Source.published("definition");
    private static final Source GEOMETRY = Source.published("geometry");
    private static final Source SAME_SLIP = Source.published("speed follows the frequency at the same slip");
    private static final Source NEAREST = Source.ownReading("the poles whose speed comes nearest to the nameplate's");
    private static final Source RIM = Source.fromMemory("6500 ft/min (33 m/s) for ordinary cast-iron sheaves");

    private final VacuumProducer producer;
    private final Motor motor;
    private final Optional<Supply> supply;
    private final List<Entry> entries = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    TurningLines(VacuumProducer producer, Optional<Supply> supply) {
        this.producer = producer;
        this.motor = producer.motor();
        this.supply = supply;
    }

    List<Entry> entries() {
        return entries;
    }

    List<Finding> findings() {
        return findings;
    }

    void write() {
        Optional<RotationalSpeed> speed = motor.speedOn(supply);
        if (speed.isEmpty()) {
            entries.add(Entry.unknown(
                    id("motor-speed"),
                    "Speed of its motor",
                    supply.isEmpty()
                            ? "Enter the plant's \"supply\", and \"poles\" or \"motor speed\" of the producer."
                            : "Enter \"poles\", or \"motor speed\" of the motor's nameplate."));
            return;
        }
        motorSpeed(speed.get());
        Optional<Coupling> coupling = producer.coupling();
        coupling.ifPresent(c -> coupled(c, speed.get()));
        if (producer.driven()) {
            driven(speed.get());
        } else if (coupling.isPresent()) {
            against(coupling.get());
        } else if (producer.drive() instanceof Drive.Fixed fixed) {
            ratioAsked(fixed.speed(), speed.get());
        }
    }

    // ---- the motor

    private void motorSpeed(RotationalSpeed speed) {
        boolean asItStands = motor.turns()
                .filter(t -> t.frequency().isEmpty() || supply.isEmpty())
                .isPresent();
        entries.add(
                asItStands
                        ? Entry.given(
                                id("motor-speed"),
                                "Speed of its motor at full load",
                                speed,
                                producer.sourceOf("motor speed"))
                        : Entry.known(
                                id("motor-speed"),
                                "Speed of its motor at full load on this supply",
                                speed,
                                onSupply(supply.orElseThrow())));
    }

    /** Steps to the motor's speed by what the supply gives, whatever its nameplate says for another one. */
    private List<Step> onSupply(Supply on) {
        Optional<Motor.NameplateSpeed> plate = motor.turns();
        if (plate.flatMap(Motor.NameplateSpeed::frequency).isPresent()) {
            return List.of(carried(plate.get(), on));
        }
        int poles = motor.poles().orElseGet(() -> nearest(plate.orElseThrow().speed(), on.frequency()));
        RotationalSpeed field =
                new RotationalSpeed(MotorSpeed.synchronous_perS(on.frequency().hertz(), poles));
        RotationalSpeed full = motor.byPoles(poles, on.frequency());
        return List.of(
                step(
                        "ELE-27",
                        "n_s = 2 f / p",
                        motor.poles().isPresent() ? DEFINITION : NEAREST,
                        new Term("n_s", "speed of the rotating field", field),
                        new Term("f", "frequency of the supply", on.frequency()),
                        new Term("p", "poles", new Ratio(poles))),
                step(
                        "ELE-28",
                        "n = n_s (1 − s)",
                        DEFINITION,
                        new Term("n", "motor at full load", full),
                        new Term("n_s", "speed of the rotating field", field),
                        new Term("s", "slip at full load", new Ratio(motor.slip()))));
    }

    private static Step carried(Motor.NameplateSpeed plate, Supply on) {
        SupplyFrequency at = plate.frequency().orElseThrow();
        double speed_perS = MotorSpeed.atFrequency_perS(
                plate.speed().revolutionsPerSecond(), at.hertz(), on.frequency().hertz());
        return step(
                "ELE-29",
                "n = n_0 f / f_0",
                SAME_SLIP,
                new Term("n", "motor at full load", new RotationalSpeed(speed_perS)),
                new Term("n_0", "speed on its nameplate", plate.speed()),
                new Term("f_0", "frequency on its nameplate", at),
                new Term("f", "frequency of the supply", on.frequency()));
    }

    private int nearest(RotationalSpeed plate, SupplyFrequency frequency) {
        return List.of(2, 4, 6, 8).stream()
                .min(Comparator.comparingDouble(
                        p -> Math.abs(motor.byPoles(p, frequency).si() - plate.si())))
                .orElseThrow();
    }

    // ---- belt or coupling

    private void coupled(Coupling coupling, RotationalSpeed motorSpeed) {
        Step step = between(coupling, motorSpeed);
        entries.add(Entry.known(
                id("coupled-speed"),
                coupling instanceof Coupling.Belt ? "Speed by its belt" : "Speed by its direct coupling",
                step.result().value(),
                List.of(step)));
        if (coupling instanceof Coupling.Belt belt) {
            rim(belt, motorSpeed);
        }
    }

    private static Step between(Coupling coupling, RotationalSpeed motorSpeed) {
        RotationalSpeed speed = coupling.machineSpeed(motorSpeed);
        Term motor = new Term("n_motor", "motor at full load", motorSpeed);
        if (coupling instanceof Coupling.Belt belt) {
            return step(
                    "PRD-20",
                    "n = n_motor d_motor/d_machine (1 − slip)",
                    GEOMETRY,
                    new Term("n", "speed of the producer", speed),
                    motor,
                    new Term("d_motor", "sheave on the motor", belt.motorSheave()),
                    new Term("d_machine", "sheave on the producer", belt.machineSheave()),
                    new Term("slip", "slip of the belt", belt.slip()));
        }
        return step("PRD-25", "n = n_motor", GEOMETRY, new Term("n", "speed of the producer", speed), motor);
    }

    private void rim(Coupling.Belt belt, RotationalSpeed motorSpeed) {
        Velocity rim =
                new Velocity(BeltDrive.belt_mPerS(belt.motorSheave().metres(), motorSpeed.revolutionsPerSecond()));
        Step runs = step(
                "PRD-21",
                "v = π d n",
                GEOMETRY,
                new Term("v", "speed of the belt", rim),
                new Term("d", "sheave on the motor", belt.motorSheave()),
                new Term("n", "motor at full load", motorSpeed));
        entries.add(Entry.known(id("belt-speed"), "Speed of the belt", rim, List.of(runs)));
        asked(FindingCode.BELT_SPEED, rim, new Velocity(BeltDrive.GREATEST_BELT_mPerS), List.of(runs), RIM);
    }

    /** The speed that was computed with against the one the supply gives. */
    private void against(Coupling coupling) {
        if (supply.isEmpty() || !(producer.drive() instanceof Drive.Fixed fixed)) {
            return;
        }
        List<Step> steps = new ArrayList<>(onSupply(supply.get()));
        RotationalSpeed motorSpeed =
                (RotationalSpeed) steps.get(steps.size() - 1).result().value();
        Step given = between(coupling, motorSpeed);
        steps.add(given);
        Ratio departure =
                new Ratio(Math.abs(fixed.speed().si() / given.result().value().si() - 1));
        steps.add(step(
                "PRD-26",
                "e = |n / n_supply − 1|",
                DEFINITION,
                new Term("e", "departure", departure),
                new Term("n", "speed computed with", fixed.speed()),
                new Term("n_supply", "speed on this supply", given.result().value())));
        asked(
                FindingCode.SPEED_ON_SUPPLY,
                departure,
                new Ratio(GREATEST_DEPARTURE),
                steps,
                new Source(
                        "slips of motor and belt are known no better than 4 % together",
                        Source.commonPractice().confidence()));
    }

    private void ratioAsked(RotationalSpeed machine, RotationalSpeed motorSpeed) {
        Ratio ratio = new Ratio(machine.si() / motorSpeed.si());
        entries.add(Entry.known(
                id("ratio-asked"),
                "Speed asked over that of its motor, by belt or gear",
                ratio,
                List.of(step(
                        "PRD-27",
                        "i = n / n_motor",
                        DEFINITION,
                        new Term("i", "ratio of belt or gear", ratio),
                        new Term("n", "speed of the producer", machine),
                        new Term("n_motor", "motor at full load", motorSpeed)))));
    }

    // ---- the drive

    private void driven(RotationalSpeed motorSpeed) {
        Optional<Coupling> coupling = producer.coupling();
        if (coupling.isEmpty() || supply.isEmpty()) {
            entries.add(Entry.unknown(
                    id("drive-frequency"),
                    "Frequency of its drive",
                    coupling.isEmpty()
                            ? "Enter \"belt\" with its sheaves, or \"coupled: direct\"."
                            : "Enter the plant's \"supply\"."));
            return;
        }
        Step onSupply = between(coupling.get(), motorSpeed);
        if (producer.drive() instanceof Drive.Holding holding) {
            frequency("drive-frequency-least", "Frequency of its drive at its least speed", holding.least(), onSupply);
            frequency(
                    "drive-frequency-greatest",
                    "Frequency of its drive at its greatest speed",
                    holding.greatest(),
                    onSupply);
        } else if (producer.drive() instanceof Drive.Fixed fixed) {
            frequency("drive-frequency", "Frequency of its drive", fixed.speed(), onSupply);
        }
    }

    /** Frequency of its drive at a speed of the producer; empty where motor, coupling or supply are not known. */
    Optional<Entry> frequencyAt(String what, String name, RotationalSpeed machine) {
        Optional<RotationalSpeed> speed = motor.speedOn(supply);
        if (speed.isEmpty() || producer.coupling().isEmpty() || supply.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                frequencyEntry(what, name, machine, between(producer.coupling().get(), speed.get())));
    }

    private void frequency(String what, String name, RotationalSpeed machine, Step onSupply) {
        entries.add(frequencyEntry(what, name, machine, onSupply));
    }

    private Entry frequencyEntry(String what, String name, RotationalSpeed machine, Step onSupply) {
        SupplyFrequency supplied = supply.orElseThrow().frequency();
        Quantity atSupply = onSupply.result().value();
        SupplyFrequency drive = new SupplyFrequency(MotorSpeed.drive_Hz(machine.si(), atSupply.si(), supplied.hertz()));
        return Entry.known(
                id(what),
                name,
                drive,
                List.of(
                        onSupply,
                        step(
                                "ELE-30",
                                "f_drive = f n / n_f",
                                SAME_SLIP,
                                new Term("f_drive", "frequency of the drive", drive),
                                new Term("f", "frequency of the supply", supplied),
                                new Term("n", "speed of the producer", machine),
                                new Term("n_f", "its speed straight on the supply", atSupply))));
    }

    private void asked(FindingCode code, Quantity value, Quantity limit, List<Step> steps, Source source) {
        findings.add(Finding.of(
                code,
                new Place(Place.Kind.PRODUCER, producer.id()),
                Sheet.ANY_SET,
                Side.AT_MOST,
                value,
                limit,
                new Derivation(steps, source)));
    }

    private String id(String what) {
        return what + "/" + producer.id();
    }
}
