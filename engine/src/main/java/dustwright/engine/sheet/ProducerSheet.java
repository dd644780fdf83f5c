package dustwright.engine.sheet;

import dustwright.engine.air.SaturationPressure;
import dustwright.engine.electrical.MotorRating;
import dustwright.engine.electrical.Supply;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.ProducerResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.DisplacementWork;
import dustwright.engine.producer.Drive;
import dustwright.engine.producer.LiquidRing;
import dustwright.engine.producer.Machine;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Count;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.quantity.TemperatureRise;
import dustwright.engine.quantity.Units;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What a vacuum producer comes to over all sets of open inlets: load, heat, slip, turndown of its drive, belt. */
final class ProducerSheet {
    /** Spare asked of a motor above the load of the worst set: common practice, 10 to 15 %. */
    private static final double SPARE = 0.1;

    /** Published machine tables are good to 4 % (Jenkins, Blower and Vacuum Best Practices, 2022): less is not felt. */
    private static final double UNFELT = 0.04;

    private static final String RATING_ASKED = "Rated power asked of its motor, 10 % spare";
    private static final String MOTOR_ASKED = "Next standard motor, 10 % spare";

    private static final Source PARTIAL_PRESSURES = Source.fromMemory(
            "partial pressures, as in the performance standard for liquid-ring pumps of the Heat Exchange Institute");

    private static final Source DEFINITION = Source.published("definition");
    private static final Source FIRST_LAW = Source.published("first law: the work done on the air stays in it");
    private static final Source ISENTROPIC = Source.published("isentropic compression, γ = 1.4");
    private static final Source RATINGS = Source.published("standard ratings of NEMA MG 1 and IEC 60072-1");

    private final Plant plant;
    private final VacuumProducer producer;
    private final boolean pausesKnown;
    private final List<Entry> entries = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    private ProducerSheet(Plant plant, VacuumProducer producer, boolean pausesKnown) {
        this.plant = plant;
        this.producer = producer;
        this.pausesKnown = pausesKnown;
    }

    /** A producer's result in a set. */
    private record Run(String set, ProducerResult result, boolean asked, boolean vented) {
        String words() {
            return asked ? "set " + set : set;
        }
    }

    static Sheet of(Plant plant, VacuumProducer producer, Sheets.Solved solved) {
        List<DutyPoint> pauses =
                Stream.concat(solved.shut().stream(), solved.vented().stream()).toList();
        return new ProducerSheet(plant, producer, solved.pausesKnown())
                .sheet(runs(producer, solved.duties()), runs(producer, pauses));
    }

    private static List<Run> runs(VacuumProducer producer, List<DutyPoint> duties) {
        return duties.stream()
                .flatMap(duty -> duty.stations().stream()
                        .flatMap(station -> station.producers().stream())
                        .filter(p -> p.id().equals(producer.id()) && p.running())
                        .map(p -> new Run(
                                duty.state().name(),
                                p,
                                !duty.state().open().isEmpty()
                                        && duty.state().ventedStations().isEmpty(),
                                !duty.state().ventedStations().isEmpty())))
                .toList();
    }

    /**
     * @param runs in the sets asked
     * @param pauses with all inlets shut and with the vent valve open, which come every day
     */
    private Sheet sheet(List<Run> runs, List<Run> pauses) {
        producer.model()
                .ifPresent(model -> entries.add(Entry.words(
                        id("model"),
                        "Model",
                        model.name() + (model.invented() ? " (invented figures)" : ""),
                        List.of(),
                        model.source())));
        limits();
        curveTaken();
        TurningLines turning = new TurningLines(producer, plant.electrical().supply());
        turning.write();
        entries.addAll(turning.entries());
        findings.addAll(turning.findings());
        if (runs.isEmpty()) {
            entries.add(Entry.unknown(id("motor-load"), "Motor load", "It runs in none of the sets asked."));
        } else {
            List<Run> all = new ArrayList<>(runs);
            all.addAll(pauses);
            Run worst = greatest(all, r -> r.result().shaftPower().watts());
            motorLoad(worst);
            motorAsked(all, runs.stream().allMatch(r -> r.result().checkValveShut()));
            heat(all);
            sealWater(runs);
            torque(all);
            turndown(runs, turning);
        }
        return new Sheet(
                id("producer"), "Vacuum producer", new Place(Place.Kind.PRODUCER, producer.id()), entries, findings);
    }

    /** A curve read as it was not taken shows neither flow nor power. */
    private void curveTaken() {
        if (producer.machine() instanceof Machine.CurveMachine curve && curve.readingOpen()) {
            findings.add(
                    Finding.unjudged(
                            FindingCode.CURVE_TAKEN,
                            new Place(Place.Kind.PRODUCER, producer.id()),
                            Sheet.ANY_SET,
                            Side.AT_MOST,
                            new Count(0),
                            DEFINITION,
                            "Its points are read as taken with air of the rated density at the inlet; a curve printed over the vacuum at its inlet is"
                                    + " mostly taken under that vacuum, and then flow and power are greater: enter \"curve taken\"."));
        }
    }

    private static Run greatest(List<Run> runs, java.util.function.ToDoubleFunction<Run> figure) {
        return runs.stream().max(Comparator.comparingDouble(figure)).orElseThrow();
    }

    private void limits() {
        AbsolutePressure barometer = plant.site().air().ambient();
        entries.add(vacuumLimit(barometer));
        producer.sealVacuum(barometer)
                .ifPresent(seal -> entries.add(Entry.known(
                        id("seal-vacuum"),
                        "Deepest vacuum its seal water leaves",
                        seal,
                        List.of(new Step(
                                "PRD-11",
                                "v = p_a − p_v",
                                List.of(
                                        new Term("p_a", "barometer", barometer),
                                        new Term(
                                                "T",
                                                "seal water",
                                                producer.sealWater().orElseThrow())),
                                new Term("v", "vacuum at which the water boils", seal),
                                Source.fromMemory("Ryans and Roper, Process Vacuum System Design and Operation"))))));
        if (producer.machine().sealWaterTakesTheHeat() && producer.sealWater().isEmpty()) {
            entries.add(Entry.unknown(
                    id("seal-vacuum"),
                    "Deepest vacuum its seal water leaves",
                    "Enter \"seal water\", its temperature at the hottest."));
        }
    }

    /** By the steps that carry it to the site. */
    private Entry vacuumLimit(AbsolutePressure barometer) {
        String name = "Deepest vacuum at this site";
        List<Step> steps =
                ProducerSteps.bindingVacuumLimit(producer, plant.site().air());
        return Entry.known(id("vacuum-limit"), name, producer.vacuumLimit(barometer), steps);
    }

    /** A liquid ring's curve holds for its seal water; what warmer water takes from the flow is told, and nothing rests on the curve then. */
    private void sealWater(List<Run> runs) {
        if (!producer.machine().sealWaterTakesTheHeat()) {
            return;
        }
        if (producer.sealWater().isEmpty()) {
            sealWaterOpen("Enter \"seal water\", its temperature at the hottest.");
            return;
        }
        Temperature water = producer.sealWater().get();
        Temperature curve = new Temperature(LiquidRing.CURVE_WATER_K);
        Run deepest = greatest(runs, r -> -r.result().inletPressure().pascals());
        AbsolutePressure inlet = deepest.result().inletPressure();
        if (water.compareTo(curve) <= 0 || inlet.pascals() <= SaturationPressure.of_Pa(curve.kelvin())) {
            return;
        }
        Ratio share = new Ratio(LiquidRing.flowShare(
                inlet.pascals(), SaturationPressure.of_Pa(water.kelvin()), SaturationPressure.of_Pa(curve.kelvin())));
        entries.add(Entry.known(
                id("seal-water-flow"),
                "Share of its flow that its seal water leaves, not counted, set " + deepest.set(),
                share,
                List.of(new Step(
                        "PRD-36",
                        "s = (p_in − p_v) / (p_in − p_v0)",
                        List.of(
                                new Term("p_in", "static pressure at its inlet", inlet),
                                new Term("T", "seal water, its vapour pressure p_v", water),
                                new Term("T_0", "seal water of its curve, p_v0", curve)),
                        new Term("s", "share of the flow of its curve", share),
                        PARTIAL_PRESSURES))));
        if (share.value() < 1 - UNFELT) {
            sealWaterOpen(
                    "Its seal water is warmer than the 15 °C its curve is taken with (common practice, no source), and its flow is"
                            + " computed by the curve: it takes less, by its sheet as much as "
                            + Math.round(100 * (1 - share.value())) + " % less.");
        }
    }

    private void sealWaterOpen(String why) {
        findings.add(Finding.unjudged(
                FindingCode.SEAL_WATER,
                new Place(Place.Kind.PRODUCER, producer.id()),
                Sheet.ANY_SET,
                Side.AT_LEAST,
                new Ratio(1 - UNFELT),
                PARTIAL_PRESSURES,
                why));
    }

    private static String beyond(Run run) {
        return run.result().beyondPoints() ? " beyond its measured points, not measured" : "";
    }

    private void motorLoad(Run worst) {
        Power shaft = worst.result().shaftPower();
        entries.add(Entry.known(
                id("worst-power"),
                "Shaft power" + beyond(worst) + ", " + worst.words(),
                shaft,
                ProducerSteps.power(producer, plant.site().air(), worst.result())));
        Ratio load =
                new Ratio(MotorRating.load(shaft.watts(), producer.nameplate().watts()));
        Step step = new Step(
                "ELE-2",
                "load = P_shaft / P_nameplate",
                List.of(
                        new Term("P_shaft", "shaft power, " + worst.words(), shaft),
                        new Term("P_nameplate", "nameplate", producer.nameplate())),
                new Term("load", "load of the motor", load),
                DEFINITION);
        entries.add(Entry.known(id("motor-load"), "Motor load over nameplate", load, List.of(step)));
        if (load.value() > 1) {
            boolean counts = producer.serviceFactorCounts(plant.site().air());
            entries.add(Entry.words(
                    id("service-factor-use"),
                    "Above its nameplate",
                    counts && load.value() <= producer.motor().serviceFactor()
                            ? "draws on its service factor, a reserve and no rating to live on"
                            : counts
                                    ? "beyond its service factor"
                                    : "no service factor counts on a drive, above 1000 m or above 40 °C",
                    List.of(step),
                    Source.published("NEMA MG 1, definition of service factor")));
        }
    }

    /** A rating by power and, on a drive, by torque; then the next standard motor, where those give their nameplate here. */
    private void motorAsked(List<Run> all, boolean shutInEverySet) {
        Optional<String> open = ratingOpen(all, shutInEverySet);
        if (open.isPresent()) {
            entries.add(Entry.unknown(id("rating-asked"), RATING_ASKED, open.get()));
            entries.add(Entry.unknown(id("motor-asked"), MOTOR_ASKED, open.get()));
            return;
        }
        Run most = greatest(all, run -> rating(run).orElseThrow().watts());
        List<Step> steps = new ArrayList<>(
                producer.driven()
                        ? DriveTorque.ratingSteps(plant, producer, most.result())
                        : ProducerSteps.power(producer, plant.site().air(), most.result()));
        Power alone = rating(most).orElseThrow();
        Power asked = new Power(alone.watts() * (1 + SPARE));
        Step spare = new Step(
                "ELE-1",
                "P_asked = P_r (1 + spare)",
                List.of(
                        new Term(
                                "P_r",
                                "power" + (producer.driven() ? " or torque" : "") + " asked, " + most.words(),
                                alone),
                        new Term("spare", "10 to 15 % is usual", new Ratio(SPARE))),
                new Term("P_asked", "rated power asked", asked),
                Source.commonPractice());
        steps.add(spare);
        entries.add(Entry.known(id("rating-asked"), RATING_ASKED + beyond(most) + ", " + most.words(), asked, steps));
        standardMotor(asked, beyond(most), steps);
    }

    /** Why nobody knows the rating asked; empty where it is known. */
    private Optional<String> ratingOpen(List<Run> all, boolean shutInEverySet) {
        if (shutInEverySet) {
            return Optional.of("It passes air in none of the sets asked.");
        }
        if (!pausesKnown) {
            return Optional.of(
                    "A pause has no solution, all inlets shut or the vent valve open, and nobody knows what it takes there.");
        }
        if (all.stream().anyMatch(run -> rating(run).isEmpty())) {
            return Optional.of(
                    "Its drive may ask more torque than its power shows. " + DriveTorque.missing(plant, producer));
        }
        return all.stream()
                .filter(run -> run.vented() && run.result().beyondPoints())
                .findFirst()
                .map(run -> "It runs before the first point of its curve, " + run.set()
                        + ", and its power there is not measured: enter points of the curve down to that vacuum.");
    }

    /** The rating a state asks; empty where the motor's speed on its drive is not known. */
    private Optional<Power> rating(Run run) {
        return producer.driven()
                ? DriveTorque.ratingAsked(plant, producer, run.result())
                : Optional.of(run.result().shaftPower());
    }

    private void standardMotor(Power asked, String beyond, List<Step> before) {
        Optional<Supply> supply = plant.electrical().supply();
        if (supply.filter(s -> s.phases() != 3).isPresent()) {
            entries.add(
                    Entry.unknown(
                            id("motor-asked"),
                            MOTOR_ASKED,
                            "The standard ratings here are of three-phase motors: ask a motor's maker for the rated power above on one phase."));
            return;
        }
        if (!VacuumProducer.nameplateHolds(plant.site().air())) {
            entries.add(
                    Entry.unknown(
                            id("motor-asked"),
                            MOTOR_ASKED,
                            MotorSheet.nameplateUpTo(plant.site().air())
                                    + " ask a motor's maker for one that gives the rated power above here, and enter it as \"motor at site\"."));
            return;
        }
        boolean sixty = supply.map(s -> s.basis() == Supply.Basis.NEC).orElse(true);
        try {
            Power motor = sixty
                    ? new Power(MotorRating.nextHorsepower(asked.watts(), 0) * Units.HORSEPOWER_W)
                    : new Power(1000 * MotorRating.nextKilowatts(asked.watts(), 0));
            List<Step> steps = new ArrayList<>(before);
            steps.add(new Step(
                    "ELE-1",
                    "P_motor ≥ P_asked",
                    List.of(new Term("P_asked", "rated power asked", asked)),
                    new Term(
                            "P_motor",
                            "next standard rating" + (producer.driven() ? ", of the same rated speed" : ""),
                            motor),
                    RATINGS));
            entries.add(Entry.known(id("motor-asked"), MOTOR_ASKED + beyond, motor, steps));
        } catch (IllegalArgumentException beyondTable) {
            entries.add(Entry.unknown(id("motor-asked"), MOTOR_ASKED, String.valueOf(beyondTable.getMessage())));
        }
    }

    private void heat(List<Run> runs) {
        String id = id("discharge-temperature");
        String name = "Air leaving it, at its hottest";
        if (producer.machine().sealWaterTakesTheHeat()) {
            entries.add(Entry.words(
                    id, name, "near its seal water, which takes the heat", List.of(), Source.commonPractice()));
            return;
        }
        List<Run> passing =
                runs.stream().filter(r -> !r.result().checkValveShut()).toList();
        if (passing.isEmpty()) {
            entries.add(Entry.unknown(id, name, "It passes air neither in the sets asked nor in a pause."));
            return;
        }
        Run hottest = greatest(passing, r -> r.result().rise().kelvin());
        if (!ProducerSteps.tellsTemperature(hottest.result().rise())) {
            entries.add(Entry.unknown(
                    id,
                    name,
                    "No temperature is worth telling of " + hottest.words()
                            + ": it passes too little air to carry its heat away, and the machine itself overheats. Let air in there, by a"
                            + " relief valve or a bleed, or stop it."));
            station(producer)
                    .flatMap(station -> DustHeat.at(plant, station)
                            .starved(
                                    producer,
                                    hottest.set(),
                                    hottest.result(),
                                    plant.site().air()))
                    .ifPresent(findings::add);
            return;
        }
        TemperatureRise rise = hottest.result().rise();
        Temperature leaving = new Temperature(plant.site().air().temperature().kelvin() + rise.kelvin());
        entries.add(Entry.known(
                id,
                name + ", " + hottest.words(),
                leaving,
                List.of(new Step(
                        "PRD-23",
                        "T_out = T + ΔT",
                        List.of(
                                new Term(
                                        "T",
                                        "air of the site",
                                        plant.site().air().temperature()),
                                new Term("ΔT", "rise, " + hottest.words(), rise)),
                        new Term("T_out", "air leaving the producer", leaving),
                        FIRST_LAW))));
        station(producer)
                .flatMap(station ->
                        DustHeat.at(plant, station).leaving(producer.id(), hottest.set(), leaving, stepsOf(id)))
                .ifPresent(findings::add);
        if (producer.machine() instanceof Machine.LobePump lobe) {
            allHeatInTheAir(lobe, hottest);
            slip(lobe, hottest);
        }
    }

    private Optional<Station> station(VacuumProducer producer) {
        return plant.stations().stream()
                .filter(s -> s.producers().contains(producer))
                .findFirst();
    }

    private List<Step> stepsOf(String entry) {
        return entries.stream()
                .filter(e -> e.id().equals(entry))
                .findFirst()
                .orElseThrow()
                .derivation()
                .steps();
    }

    /** The rise counts the work on the displaced air, slip included; loss of bearings and gears leaves by casing and oil. If none did. */
    private void allHeatInTheAir(Machine.LobePump lobe, Run run) {
        ProducerResult result = run.result();
        double onAir_W = lobe.displacement().cubicMetres()
                * result.speed().revolutionsPerSecond()
                * result.difference().pascals();
        TemperatureRise rise =
                new TemperatureRise(result.rise().kelvin() * result.shaftPower().watts() / onAir_W);
        Temperature site = plant.site().air().temperature();
        Temperature leaving = new Temperature(site.kelvin() + rise.kelvin());
        entries.add(Entry.known(
                id("discharge-temperature-most"),
                "If its mechanical loss heated the air too, in that state",
                leaving,
                List.of(
                        new Step(
                                "PRD-31",
                                "ΔT_most = ΔT P / (D n Δp)",
                                List.of(
                                        new Term(
                                                "ΔT",
                                                "rise by the work on the displaced air, slip included",
                                                result.rise()),
                                        new Term(
                                                "P",
                                                "shaft power, mechanical and idle loss included",
                                                result.shaftPower()),
                                        new Term("D", "displacement per turn", lobe.displacement()),
                                        new Term("n", "speed", result.speed()),
                                        new Term("Δp", "pressure difference, silencer included", result.difference())),
                                new Term("ΔT_most", "rise if no heat left by casing and oil", rise),
                                FIRST_LAW),
                        new Step(
                                "PRD-23",
                                "T_out = T + ΔT_most",
                                List.of(
                                        new Term("T", "air of the site", site),
                                        new Term("ΔT_most", "rise if no heat left by casing and oil", rise)),
                                new Term("T_out", "air leaving the producer, at most", leaving),
                                FIRST_LAW))));
    }

    /** Volumetric efficiency, and what an isentropic reckoning would wrongly say of the heat. */
    private void slip(Machine.LobePump lobe, Run run) {
        ProducerResult result = run.result();
        Ratio efficiency = new Ratio(result.inletFlow().cubicMetresPerSecond()
                / (lobe.displacement().cubicMetres() * result.speed().revolutionsPerSecond()));
        entries.add(Entry.known(
                id("volumetric-efficiency"),
                "Volumetric efficiency in that state",
                efficiency,
                List.of(new Step(
                        "PRD-24",
                        "η_v = Q / (D n)",
                        List.of(
                                new Term("Q", "actual flow at its inlet", result.inletFlow()),
                                new Term("D", "displacement per turn", lobe.displacement()),
                                new Term("n", "speed", result.speed())),
                        new Term("η_v", "volumetric efficiency", efficiency),
                        DEFINITION))));
        double ratio =
                1 + result.difference().pascals() / result.inletPressure().pascals();
        Temperature site = plant.site().air().temperature();
        if (ratio >= 1 && ratio <= 10) {
            TemperatureRise isentropic =
                    new TemperatureRise(DisplacementWork.isentropic_K(site.kelvin(), ratio) - site.kelvin());
            entries.add(Entry.known(
                    id("isentropic-rise"),
                    "An isentropic reckoning would say, too low",
                    isentropic,
                    List.of(new Step(
                            "PRD-18",
                            "ΔT = T [ (p_2/p_1)^((γ−1)/γ) − 1 ]",
                            List.of(
                                    new Term("T", "air of the site", site),
                                    new Term("p_2/p_1", "pressure ratio", new Ratio(ratio))),
                            new Term("ΔT", "isentropic rise", isentropic),
                            ISENTROPIC))));
        }
    }

    /** On a drive: the set that asks most torque, and that its own fan cools a slow motor less. */
    private void torque(List<Run> runs) {
        record Loaded(Run run, Finding finding) {}
        runs.stream()
                .flatMap(run -> DriveTorque.finding(plant, producer, run.set(), run.result()).stream()
                        .map(finding -> new Loaded(run, finding)))
                .min(Comparator.comparingDouble(loaded -> loaded.finding().margin()))
                .ifPresent(worst -> {
                    String name = "Motor torque over rated torque";
                    Finding finding = worst.finding();
                    entries.add(
                            finding.unjudged()
                                    ? Entry.unknown(id("motor-torque"), name, finding.why())
                                    : Entry.known(
                                            id("motor-torque"),
                                            name + ", at its greatest, "
                                                    + worst.run().words(),
                                            finding.value(),
                                            finding.derivation().steps()));
                    entries.add(Entry.unknown(
                            id("cooling-at-low-speed"),
                            "Least speed its motor may give that torque at all day",
                            "Its own fan turns slower with it. The motor's maker states the range of speed at constant torque, or fits"
                                    + " a fan of its own (common practice, no source)."));
                });
    }

    private void turndown(List<Run> runs, TurningLines turning) {
        if (!(producer.drive() instanceof Drive.Holding holding)) {
            return;
        }
        Run slowest = runs.stream()
                .min(Comparator.comparingDouble(r -> r.result().speed().si()))
                .orElseThrow();
        Run fastest = greatest(runs, r -> r.result().speed().si());
        entries.add(speed("least-speed", "Slowest of the sets asked, set " + slowest.set(), slowest));
        turning.frequencyAt(
                        "least-frequency",
                        "Frequency of its drive there",
                        slowest.result().speed())
                .ifPresent(entries::add);
        entries.add(speed("greatest-speed", "Fastest of the sets asked, set " + fastest.set(), fastest));
        turning.frequencyAt(
                        "greatest-frequency",
                        "Frequency of its drive there",
                        fastest.result().speed())
                .ifPresent(entries::add);
        Run farthest = greatest(
                runs,
                r -> Math.abs(r.result().vacuum().pascals() - holding.vacuum().pascals()));
        boolean held = runs.stream().allMatch(r -> holding.holds(r.result().vacuum()));
        entries.add(
                held
                        ? Entry.words(
                                id("held"),
                                "Vacuum asked of the drive",
                                "held in every set asked",
                                List.of(),
                                Source.entered())
                        : Entry.known(
                                id("held"),
                                "Not held in every set asked: farthest from it, set " + farthest.set(),
                                farthest.result().vacuum(),
                                List.of(ProducerSteps.vacuum(plant.site().air(), farthest.result()))));
    }

    private Entry speed(String what, String name, Run run) {
        return Entry.known(
                id(what),
                name,
                run.result().speed(),
                ProducerSteps.speedFromSolution(producer, plant.site().air(), run.result()));
    }

    private String id(String what) {
        return what + "/" + producer.id();
    }
}
