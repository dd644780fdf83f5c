package dustwright.engine;

import dustwright.engine.finding.Derivation;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.ProducerResult;
import dustwright.engine.network.StationResult;
import dustwright.engine.plant.Limit;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.Drive;
import dustwright.engine.producer.Machine;
import dustwright.engine.producer.ProducerLaw;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.GasConstant;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.quantity.TemperatureRise;
import dustwright.engine.quantity.Velocity;
import dustwright.engine.sheet.CurveSteps;
import dustwright.engine.sheet.DriveTorque;
import dustwright.engine.sheet.ProducerSteps;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What is asked of receiver, filter and producers in one solved state. */
final class StationChecks {
    /** Less than this in absolute temperature is not felt: a producer's own figures are no better known. */
    private static final double UNFELT = 0.04;

    private static final Source PUMP_TABLES = Source.published(
            "published machine tables are good to 4 % (Jenkins, Blower and Vacuum Best Practices, 2022): as much absolute temperature");

    private final Plant plant;
    private final DutyPoint duty;
    private final List<Finding> findings = new ArrayList<>();

    private StationChecks(Plant plant, DutyPoint duty) {
        this.plant = plant;
        this.duty = duty;
    }

    static List<Finding> of(Plant plant, DutyPoint duty) {
        StationChecks checks = new StationChecks(plant, duty);
        for (StationResult result : duty.stations()) {
            Station station = plant.station(result.id());
            checks.filter(station, result);
            for (ProducerResult producer : result.producers()) {
                if (producer.running()) {
                    checks.producer(station, producer);
                }
            }
        }
        return List.copyOf(checks.findings);
    }

    private void filter(Station station, StationResult result) {
        heat(station);
        filtration(
                FindingCode.AIR_TO_CLOTH,
                new Place(Place.Kind.FILTER, station.id()),
                result,
                station.filter().cloth(),
                "cloth area",
                plant.requirements().airToCloth());
        station.receiver()
                .freeArea()
                .ifPresent(free -> filtration(
                        FindingCode.CAN_VELOCITY,
                        new Place(Place.Kind.RECEIVER, station.id()),
                        result,
                        free,
                        "free cross-section between the filter elements",
                        plant.requirements().canVelocity()));
    }

    /** Where the air is stated hotter at the cloth than all else is computed with, nothing behind the cloth is shown to hold. */
    private void heat(Station station) {
        Temperature site = plant.site().air().temperature();
        double hotter_K = station.filter().temperature(site).kelvin() - site.kelvin();
        if (hotter_K <= UNFELT * site.kelvin()) {
            return;
        }
        findings.add(Finding.unjudged(
                FindingCode.HOT_AIR,
                new Place(Place.Kind.FILTER, station.id()),
                duty.state().name(),
                Side.AT_MOST,
                new TemperatureRise(UNFELT * site.kelvin()),
                PUMP_TABLES,
                String.format(
                        Locale.ROOT,
                        "The filter's \"temperature\" is %.0f K above the site's, and tubing, safety filter and producers are computed at the"
                                + " site's: at the cloth's a producer takes %.0f %% less mass of air at the same vacuum.",
                        hotter_K,
                        100 * hotter_K / (site.kelvin() + hotter_K))));
    }

    private void filtration(
            FindingCode code,
            Place place,
            StationResult result,
            Area area,
            String areaWords,
            Optional<Limit<Velocity>> limit) {
        limit.ifPresent(most -> {
            Workings workings = new Workings(plant);
            workings.add(
                    "RCV-1",
                    "Q = w R T / p",
                    List.of(
                            new Term("w", "air through the filter", result.throughFilter()),
                            new Term(
                                    "R",
                                    "gas constant of the moist air",
                                    new GasConstant(plant.site().air().gasConstant_JPerKgK())),
                            new Term(
                                    "T",
                                    "air temperature at the cloth",
                                    plant.station(result.id())
                                            .filter()
                                            .temperature(plant.site().air().temperature())),
                            new Term("p", "static pressure in the receiver", result.receiver())),
                    new Term("Q", "actual flow in the receiver", result.receiverFlow()),
                    Workings.GAS_LAW);
            Velocity velocity = new Velocity(result.receiverFlow().cubicMetresPerSecond() / area.squareMetres());
            workings.add(
                    "RCV-2",
                    "v = Q / A",
                    List.of(
                            new Term("Q", "actual flow in the receiver", result.receiverFlow()),
                            new Term("A", areaWords, area)),
                    new Term("v", code.title(), velocity),
                    Workings.CONTINUITY);
            findings.add(finding(code, place, Side.AT_MOST, velocity, most.value(), workings, most.source()));
        });
    }

    private void producer(Station station, ProducerResult result) {
        VacuumProducer producer = station.producers().stream()
                .filter(p -> p.id().equals(result.id()))
                .findFirst()
                .orElseThrow();
        Place place = new Place(Place.Kind.PRODUCER, producer.id());
        vacuum(producer, result, place);
        power(producer, result, place);
        DriveTorque.finding(plant, producer, duty.state().name(), result).ifPresent(findings::add);
        if (result.checkValveShut()) {
            shut(producer, result, place);
        } else if (!producer.machine().sealWaterTakesTheHeat()) {
            findings.add(finding(
                    FindingCode.PRODUCER_TEMPERATURE,
                    place,
                    Side.AT_MOST,
                    result.rise(),
                    producer.greatestRise(),
                    duty(producer, result),
                    producer.sourceOf("greatest rise")));
        }
        if (producer.machine() instanceof Machine.CurveMachine curve && !result.checkValveShut()) {
            measured(producer, curve, result, place);
        }
        speed(producer, result, place);
        if (producer.drive() instanceof Drive.Holding holding && !result.checkValveShut()) {
            held(producer, holding, result, place);
        }
    }

    /** Behind a shut check valve the machine's own inlet stands less deep than its station. */
    private void vacuum(VacuumProducer producer, ProducerResult result, Place place) {
        Workings workings = new Workings(plant);
        workings.addAll(ProducerSteps.vacuumLimit(producer, plant.site().air()));
        if (result.checkValveShut()) {
            workings.addAll(ProducerSteps.withoutFlow(producer, plant.site().air(), result));
        } else {
            workings.vacuum(result.inletPressure(), "at the producer's inlet");
        }
        findings.add(finding(
                FindingCode.PRODUCER_VACUUM,
                place,
                Side.AT_MOST,
                result.checkValveShut()
                        ? ProducerSteps.vacuumWithoutFlow(producer, plant.site().air(), result)
                        : result.vacuum(),
                producer.vacuumLimit(ambient()),
                workings,
                producer.sourceOf("deepest vacuum")));
    }

    private void power(VacuumProducer producer, ProducerResult result, Place place) {
        Derivation derivation = new Derivation(
                () -> {
                    List<Step> steps = new ArrayList<>(
                            ProducerSteps.powerLimit(producer, plant.site().air()));
                    steps.addAll(ProducerSteps.power(producer, plant.site().air(), result));
                    return steps;
                },
                producer.sourceOf("motor"));
        findings.add(Finding.of(
                FindingCode.PRODUCER_POWER,
                place,
                duty.state().name(),
                Side.AT_MOST,
                result.shaftPower(),
                producer.powerLimit(plant.site().air()),
                derivation));
    }

    /** Difference over the machine within the points its curve was measured at, both ends. */
    private void measured(VacuumProducer producer, Machine.CurveMachine curve, ProducerResult result, Place place) {
        ProducerLaw law = new ProducerLaw(producer, plant.site().air());
        double inlet_Pa = result.inletPressure().pascals();
        double speed_perS = result.speed().revolutionsPerSecond();
        PressureDifference from = new PressureDifference(law.measuredFrom_Pa(inlet_Pa, speed_perS));
        PressureDifference to = new PressureDifference(law.measuredTo_Pa(inlet_Pa, speed_perS));
        if (from.pascals() > 0) {
            end(FindingCode.CURVE_FREE_END, Side.AT_LEAST, from, producer, curve, result, place);
        }
        end(FindingCode.CURVE_DEEP_END, Side.AT_MOST, to, producer, curve, result, place);
    }

    private void end(
            FindingCode code,
            Side side,
            PressureDifference limit,
            VacuumProducer producer,
            Machine.CurveMachine curve,
            ProducerResult result,
            Place place) {
        Derivation derivation = new Derivation(
                () -> CurveSteps.end(producer, curve, plant.site().air(), result, side, limit),
                producer.sourceOf("curve"));
        findings.add(Finding.of(code, place, duty.state().name(), side, result.difference(), limit, derivation));
    }

    private void shut(VacuumProducer producer, ProducerResult result, Place place) {
        PressureDifference reached =
                ProducerSteps.vacuumWithoutFlow(producer, plant.site().air(), result);
        Workings workings = new Workings(plant);
        workings.addAll(ProducerSteps.withoutFlow(producer, plant.site().air(), result));
        workings.vacuum(result.inletPressure(), "at the station's suction, behind which its check valve is shut");
        findings.add(finding(
                FindingCode.PRODUCER_SHUT,
                place,
                Side.AT_MOST,
                result.vacuum(),
                reached,
                workings,
                Source.ownReading(
                        "the vacuum it reaches at its speed without taking air" + beyondPoints(producer, result))));
    }

    private String beyondPoints(VacuumProducer producer, ProducerResult result) {
        return ProducerSteps.restsOnPoints(producer, plant.site().air(), result)
                ? ""
                : "; beyond the last point of its curve, carried on straight and not measured: it may reach more or less";
    }

    private AbsolutePressure ambient() {
        return plant.site().air().ambient();
    }

    /** Told only where the drive does not hold its set-point, as a machine that holds it has no margin to tell of. */
    private void held(VacuumProducer producer, Drive.Holding holding, ProducerResult result, Place place) {
        if (holding.holds(result.vacuum())) {
            return;
        }
        Workings workings = new Workings(plant);
        workings.addAll(ProducerSteps.speed(producer, plant.site().air(), result));
        workings.vacuum(result.inletPressure(), "at the producer's inlet");
        findings.add(finding(
                FindingCode.DRIVE_VACUUM,
                place,
                result.vacuum().compareTo(holding.vacuum()) > 0 ? Side.AT_MOST : Side.AT_LEAST,
                result.vacuum(),
                holding.vacuum(),
                workings,
                Source.entered()));
    }

    /** Speed against the nearer end of its range; a machine of one speed has no range to leave. */
    private void speed(VacuumProducer producer, ProducerResult result, Place place) {
        if (producer.leastSpeed().equals(producer.greatestSpeed())) {
            return;
        }
        double over = Side.AT_MOST.margin(
                result.speed().si(), producer.greatestSpeed().si());
        double under =
                Side.AT_LEAST.margin(result.speed().si(), producer.leastSpeed().si());
        Workings workings = new Workings(plant);
        workings.addAll(ProducerSteps.speed(producer, plant.site().air(), result));
        findings.add(finding(
                FindingCode.PRODUCER_SPEED,
                place,
                over <= under ? Side.AT_MOST : Side.AT_LEAST,
                result.speed(),
                over <= under ? producer.greatestSpeed() : producer.leastSpeed(),
                workings,
                producer.sourceOf("speed range")));
    }

    private Workings duty(VacuumProducer producer, ProducerResult result) {
        Workings workings = new Workings(plant);
        workings.addAll(ProducerSteps.duty(producer, plant.site().air(), result));
        return workings;
    }

    private Finding finding(
            FindingCode code,
            Place place,
            Side side,
            Quantity value,
            Quantity limit,
            Workings workings,
            Source limitSource) {
        return Finding.of(
                code, place, duty.state().name(), side, value, limit, new Derivation(workings.steps(), limitSource));
    }
}
