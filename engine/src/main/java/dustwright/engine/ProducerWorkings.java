package dustwright.engine;

import dustwright.engine.finding.Source;
import dustwright.engine.finding.Term;
import dustwright.engine.network.ProducerResult;
import dustwright.engine.producer.Machine;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.Ratio;
import java.util.List;

/** The calculation sheet of a vacuum producer's duty: flow, power, temperature rise. */
final class ProducerWorkings {
    private static final Source SLIP =
            Source.fromMemory("slip law of lobe-type pumps: slip speed grows with √(Δp/1 psi) and"
                    + " √(1.2041 kg/m³ / ρ); form confirmed in a public technical note, figure per machine");
    private static final Source POWER =
            Source.published("rectangular indicator diagram of a displacement machine: displaced volume times"
                    + " pressure difference (CAGI handbook, blowers, 2022)");
    private static final Source CURVE = Source.entered();
    private static final Source ENERGY =
            Source.published("first law: the work done on the air stays in it, cp 1005 J/(kg K)");

    private ProducerWorkings() {}

    static void add(Workings workings, VacuumProducer producer, ProducerResult result) {
        if (producer.machine() instanceof Machine.LobePump lobe) {
            lobe(workings, lobe, result);
        } else {
            workings.add(
                    "PRD-4",
                    "flow, vacuum and power from the machine's curve at its speed and inlet density",
                    List.of(
                            new Term("Q", "actual flow at its inlet", result.inletFlow()),
                            new Term("Δp", "pressure difference, silencer included", result.difference()),
                            new Term("n", "speed", result.speed())),
                    new Term("P", "shaft power", result.shaftPower()),
                    CURVE);
        }
        workings.add(
                "PRD-3",
                producer.machine() instanceof Machine.LobePump ? "ΔT = D n Δp / (w cp)" : "ΔT = P / (w cp)",
                heating(producer, result),
                new Term("ΔT", "temperature rise of the air", result.rise()),
                ENERGY);
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

    private static void lobe(Workings workings, Machine.LobePump lobe, ProducerResult result) {
        workings.add(
                "PRD-1",
                "Q = D n − D n_s √(Δp/1 psi) √(1.2041 kg/m³ / ρ_in)",
                List.of(
                        new Term("D", "displacement per turn", lobe.displacement()),
                        new Term("n", "speed", result.speed()),
                        new Term("n_s", "slip speed at 1 psi", lobe.slipAtOnePsi()),
                        new Term("Δp", "pressure difference, silencer included", result.difference()),
                        new Term("p_in", "static pressure at its inlet", result.inletPressure())),
                new Term("Q", "actual flow at its inlet", result.inletFlow()),
                SLIP);
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
