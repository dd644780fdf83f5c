package dustwright.engine;

import dustwright.engine.finding.Confidence;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.network.ProducerResult;
import dustwright.engine.producer.Drive;
import dustwright.engine.producer.Machine;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Ratio;
import java.util.List;

/** The calculation sheet of a vacuum producer's duty: flow, power, temperature rise. */
final class ProducerWorkings {
    private static final Source SLIP =
            Source.fromMemory("slip law of lobe-type pumps: slip speed grows with √(Δp/1 psi) and"
                    + " √(1.2041 kg/m³ / ρ); form confirmed in a public technical note, figure per machine");
    private static final Source HOLDING =
            Source.ownReading("the speed that holds the vacuum asked, else the nearer end of the range");
    private static final Source POWER =
            Source.published("rectangular indicator diagram of a displacement machine: displaced volume times"
                    + " pressure difference (CAGI handbook, blowers, 2022)");
    private static final Source ENERGY =
            Source.published("first law: the work done on the air stays in it, cp 1005 J/(kg K)");

    private static final Source BAROMETER = Source.published("the pressure ratio stays: Machine Design, Vacuum pumps");
    private static final Source SEAL = Source.fromMemory(
            "Ryans and Roper, Process Vacuum System Design and Operation; vapour pressure by IAPWS-IF97");
    private static final Source SERVICE_FACTOR = Source.published("NEMA MG 1, definition of service factor");

    private ProducerWorkings() {}

    static void add(Workings workings, VacuumProducer producer, ProducerResult result) {
        if (producer.machine() instanceof Machine.LobePump lobe) {
            flow(workings, lobe, result);
            power(workings, lobe, result);
        } else {
            workings.add(
                    "PRD-4",
                    "flow, vacuum and power from the machine's curve at its speed and inlet density",
                    List.of(
                            new Term("Q", "actual flow at its inlet", result.inletFlow()),
                            new Term("Δp", "pressure difference, silencer included", result.difference()),
                            new Term("n", "speed", result.speed())),
                    new Term("P", "shaft power", result.shaftPower()),
                    producer.sourceOf("curve"));
        }
        if (producer.machine().sealWaterTakesTheHeat()) {
            return;
        }
        workings.add(
                "PRD-3",
                producer.machine() instanceof Machine.LobePump ? "ΔT = D n Δp / (w cp)" : "ΔT = P / (w cp)",
                heating(producer, result),
                new Term("ΔT", "temperature rise of the air", result.rise()),
                ENERGY);
    }

    /** How a limit of vacuum comes about that is not simply stated: carried to the barometer, or left by the seal water. */
    static void vacuumLimit(Workings workings, VacuumProducer producer, AbsolutePressure barometer) {
        if (producer.sourceOf("deepest vacuum").confidence() == Confidence.CATALOGUE) {
            workings.add(
                    "PRD-6",
                    "v = v_0 p_a / 101 325 Pa",
                    List.of(
                            new Term("v_0", "stated limit at sea level", producer.deepestVacuum()),
                            new Term("p_a", "barometer", barometer)),
                    new Term("v", "limit at the site", producer.deepestVacuumAt(barometer)),
                    BAROMETER);
        }
        producer.sealVacuum(barometer)
                .ifPresent(seal -> workings.add(
                        "PRD-11",
                        "v = p_a − p_v",
                        List.of(
                                new Term("p_a", "barometer", barometer),
                                new Term("T", "seal water", producer.sealWater().orElseThrow())),
                        new Term("v", "deepest vacuum its seal water leaves", seal),
                        SEAL));
    }

    /** The motor's limit where its service factor raises it. */
    static void powerLimit(Workings workings, VacuumProducer producer, AbsolutePressure barometer) {
        if (producer.powerLimit(barometer).compareTo(producer.nameplate()) > 0) {
            workings.add(
                    "ELE-3",
                    "P = P_nameplate × service factor",
                    List.of(
                            new Term("P_nameplate", "nameplate", producer.nameplate()),
                            new Term(
                                    "sf",
                                    "service factor",
                                    new Ratio(producer.motor().serviceFactor()))),
                    new Term("P", "limit of the motor", producer.powerLimit(barometer)),
                    SERVICE_FACTOR);
        }
    }

    private static List<Term> heating(VacuumProducer producer, ProducerResult result) {
        Term air = new Term("w", "air through the producer", result.flow());
        if (producer.machine() instanceof Machine.LobePump lobe) {
            return List.of(
                    new Term("D", "displacement per turn", lobe.displacement()),
                    new Term("n", "speed", result.speed()),
                    new Term("Δp", "pressure difference, silencer included", result.difference()),
                    air);
        }
        return List.of(new Term("P", "shaft power", result.shaftPower()), air);
    }

    /** How its speed comes about: as stated, by its belt, or by the drive that holds a vacuum. */
    static void speed(Workings workings, VacuumProducer producer, ProducerResult result) {
        Term speed = new Term("n", "speed of the producer", result.speed());
        if (producer.drive() instanceof Drive.Holding holding) {
            boolean holds = holding.holds(result.vacuum());
            workings.add(
                    "PRD-28",
                    holds ? "n so that v = v_set" : "n = the end of its range nearer to v = v_set",
                    List.of(
                            new Term("v_set", "vacuum asked of the drive", holding.vacuum()),
                            new Term("n_least", "least speed of the drive", holding.least()),
                            new Term("n_greatest", "greatest speed of the drive", holding.greatest()),
                            new Term("v", "vacuum at the producer's inlet", result.vacuum())),
                    speed,
                    HOLDING);
            if (producer.machine() instanceof Machine.LobePump lobe && !result.checkValveShut()) {
                flow(workings, lobe, result);
            }
        } else {
            workings.add(
                    Step.STATED,
                    "n as stated, or by belt or coupling as its sheet shows",
                    List.of(),
                    speed,
                    producer.sourceOf("speed"));
        }
    }

    private static void flow(Workings workings, Machine.LobePump lobe, ProducerResult result) {
        Density inlet = workings.density(result.inletPressure(), "p_in", "ρ_in", "at the producer's inlet");
        workings.add(
                "PRD-1",
                "Q = D n − D n_s √(Δp/1 psi) √(1.2041 kg/m³ / ρ_in)",
                List.of(
                        new Term("D", "displacement per turn", lobe.displacement()),
                        new Term("n", "speed", result.speed()),
                        new Term("n_s", "slip speed at 1 psi", lobe.slipAtOnePsi()),
                        new Term("Δp", "pressure difference, silencer included", result.difference()),
                        new Term("ρ_in", "density at the producer's inlet", inlet)),
                new Term("Q", "actual flow at its inlet", result.inletFlow()),
                SLIP);
    }

    private static void power(Workings workings, Machine.LobePump lobe, ProducerResult result) {
        workings.add(
                "PRD-2",
                "P = D n Δp / η + P_idle",
                List.of(
                        new Term("D", "displacement per turn", lobe.displacement()),
                        new Term("n", "speed", result.speed()),
                        new Term("Δp", "pressure difference, silencer included", result.difference()),
                        new Term("η", "mechanical efficiency", new Ratio(lobe.mechanicalEfficiency())),
                        new Term("P_idle", "idle loss", lobe.idleLoss())),
                new Term("P", "shaft power", result.shaftPower()),
                POWER);
    }
}
