package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.air.Air;
import dustwright.engine.electrical.MotorRating;
import dustwright.engine.finding.Derivation;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.network.ProducerResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.Torque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a drive's motor gives below its rated speed: its rated torque, and so less than its nameplate power. A pump that works against one
 * vacuum asks nearly the same torque at every speed; the power falls with the speed and shows nothing of it.
 */
public final class DriveTorque {
    private static final Source RATIO = Source.published("belt and coupling keep their ratio");
    private static final Source POWER = Source.published("definition of power");
    private static final Source CONSTANT_TORQUE = Source.fromMemory(
            "NEMA MG 1 part 30: on a drive of constant volts per hertz a motor gives its rated torque up to its"
                    + " rated speed and its rated power above; at low speed its own fan cools it less, and the maker states how far down");

    private final VacuumProducer producer;
    private final ProducerResult result;
    private final RotationalSpeed rated;
    private final RotationalSpeed machineThere;

    private DriveTorque(
            VacuumProducer producer, ProducerResult result, RotationalSpeed rated, RotationalSpeed machineThere) {
        this.producer = producer;
        this.result = result;
        this.rated = rated;
        this.machineThere = machineThere;
    }

    /** Torque of the motor over its rated torque; empty where no drive turns it. */
    public static Optional<Finding> finding(Plant plant, VacuumProducer producer, String state, ProducerResult result) {
        if (!producer.driven()) {
            return Optional.empty();
        }
        Place place = new Place(Place.Kind.PRODUCER, producer.id());
        Ratio most = new Ratio(1);
        Optional<DriveTorque> known = of(plant, producer, result);
        if (known.isEmpty()) {
            return Optional.of(Finding.unjudged(
                    FindingCode.PRODUCER_TORQUE,
                    place,
                    state,
                    Side.AT_MOST,
                    most,
                    CONSTANT_TORQUE,
                    missing(plant, producer)));
        }
        DriveTorque torque = known.get();
        return Optional.of(Finding.of(
                FindingCode.PRODUCER_TORQUE,
                place,
                state,
                Side.AT_MOST,
                torque.ratio(),
                most,
                new Derivation(() -> torque.steps(plant.site().air()), CONSTANT_TORQUE)));
    }

    /** The rating that gives a state's power and its torque (ELE-46); empty where nobody knows how fast its motor runs. */
    static Optional<Power> ratingAsked(Plant plant, VacuumProducer producer, ProducerResult result) {
        return of(plant, producer, result).map(DriveTorque::rating);
    }

    /** Steps to that rating. */
    static List<Step> ratingSteps(Plant plant, VacuumProducer producer, ProducerResult result) {
        return of(plant, producer, result)
                .orElseThrow()
                .ratingSteps(plant.site().air());
    }

    private static Optional<DriveTorque> of(Plant plant, VacuumProducer producer, ProducerResult result) {
        return producer.motor()
                .ratedSpeed(plant.electrical().supply())
                .flatMap(rated -> producer.coupling()
                        .map(coupling -> new DriveTorque(producer, result, rated, coupling.machineSpeed(rated))));
    }

    /** What to enter where nobody knows how fast its motor runs. */
    static String missing(Plant plant, VacuumProducer producer) {
        boolean coupling = producer.coupling().isEmpty();
        boolean motor = producer.motor().ratedSpeed(plant.electrical().supply()).isEmpty();
        List<String> entries = new ArrayList<>();
        if (motor) {
            entries.add(
                    plant.electrical().supply().isPresent()
                            ? "\"motor speed\" of the nameplate or \"poles\""
                            : "\"motor speed\" of the nameplate, or \"poles\" and the plant's \"supply\"");
        }
        if (coupling) {
            entries.add("\"coupled: direct\" or \"belt\" with its sheaves");
        }
        return "How fast its motor runs is not known. Enter " + String.join(", and ", entries) + ".";
    }

    private RotationalSpeed motorSpeed() {
        return new RotationalSpeed(result.speed().revolutionsPerSecond()
                * rated.revolutionsPerSecond()
                / machineThere.revolutionsPerSecond());
    }

    private Torque asked() {
        return torque(result.shaftPower(), motorSpeed());
    }

    private Torque given() {
        return torque(producer.motor().rating(), rated);
    }

    private static Torque torque(Power power, RotationalSpeed speed) {
        return new Torque(MotorRating.torque_Nm(power.watts(), speed.revolutionsPerSecond()));
    }

    private Ratio ratio() {
        return new Ratio(asked().newtonMetres() / given().newtonMetres());
    }

    private Term ratedSpeedTerm() {
        return new Term("n_r", "rated speed of the motor", rated);
    }

    private Term motorSpeedTerm() {
        return new Term("n_m", "speed of the motor", motorSpeed());
    }

    /** Shaft power, then the speed its motor turns at. */
    private List<Step> turning(Air air) {
        List<Step> steps = new ArrayList<>(ProducerSteps.power(producer, air, result));
        steps.add(step(
                "ELE-41",
                "n_m = n n_r / n_f",
                RATIO,
                motorSpeedTerm(),
                new Term("n", "speed of the producer", result.speed()),
                ratedSpeedTerm(),
                new Term("n_f", "speed of the producer there, by belt or coupling", machineThere)));
        return steps;
    }

    private Power rating() {
        return new Power(MotorRating.onDrive_W(
                result.shaftPower().watts(),
                rated.revolutionsPerSecond(),
                motorSpeed().revolutionsPerSecond()));
    }

    private List<Step> ratingSteps(Air air) {
        List<Step> steps = turning(air);
        steps.add(step(
                "ELE-46",
                "P_r = P max(1, n_r / n_m)",
                CONSTANT_TORQUE,
                new Term("P_r", "rating that gives this power and its torque", rating()),
                new Term("P", "shaft power", result.shaftPower()),
                ratedSpeedTerm(),
                motorSpeedTerm()));
        return steps;
    }

    private List<Step> steps(Air air) {
        List<Step> steps = turning(air);
        Term ratedSpeed = ratedSpeedTerm();
        Term motorSpeed = motorSpeedTerm();
        Term asked = new Term("M", "torque asked of the motor", asked());
        Term given = new Term("M_n", "rated torque", given());
        steps.add(step(
                "ELE-40",
                "M = P / (2 π n_m)",
                POWER,
                asked,
                new Term("P", "shaft power", result.shaftPower()),
                motorSpeed));
        steps.add(step(
                "ELE-40",
                "M_n = P_n / (2 π n_r)",
                POWER,
                given,
                new Term(
                        "P_n",
                        producer.motor().atSite().isPresent() ? "what it gives at this site, as stated" : "nameplate",
                        producer.motor().rating()),
                ratedSpeed));
        steps.add(
                step("ELE-42", "M / M_n", POWER, new Term("M/M_n", "torque over rated torque", ratio()), asked, given));
        return steps;
    }
}
