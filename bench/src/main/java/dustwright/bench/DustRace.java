package dustwright.bench;

import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.Network;
import dustwright.engine.plant.Plant;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Locale;

/**
 * What dust costs: processor time of one state of the general solver while four users pick up dust, and of the same state without, in
 * turn, so that other load on the machine hits both alike. Prints one row per round; the first rounds warm up.
 */
public final class DustRace {
    private static final int ROUNDS = 12;
    private static final int STATES_PER_ROUND = 600;

    private DustRace() {}

    /** Prints {@code tree,round,us_air,us_dust,ratio}. */
    public static void main(String[] arguments) {
        System.out.println("tree,round,us_air,us_dust,ratio");
        for (String tree : new String[] {"5x12", "8x15"}) {
            Plant plant = TreePlants.named(tree);
            DutyPointSolver solver = new DutyPointSolver(Network.compile(plant));
            int[][] states = TreePlants.states(
                    STATES_PER_ROUND, plant.inlets().size(), SolveBenchmark.USERS, SolveBenchmark.SEED);
            ThreadMXBean threads = ManagementFactory.getThreadMXBean();
            for (int round = 1; round <= ROUNDS; round++) {
                long start = threads.getCurrentThreadCpuTime();
                for (int[] open : states) {
                    solver.solve(TreePlants.state(plant, open));
                }
                long between = threads.getCurrentThreadCpuTime();
                for (int[] open : states) {
                    solver.solve(TreePlants.feeding(plant, open));
                }
                double air_us = (between - start) / 1e3 / STATES_PER_ROUND;
                double dust_us = (threads.getCurrentThreadCpuTime() - between) / 1e3 / STATES_PER_ROUND;
                System.out.printf(
                        Locale.ROOT, "%s,%d,%.1f,%.1f,%.2f%n", tree, round, air_us, dust_us, dust_us / air_us);
            }
        }
    }
}
