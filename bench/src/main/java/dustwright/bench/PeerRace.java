package dustwright.bench;

import dustwright.engine.network.Network;
import dustwright.engine.network.StateSweep;
import dustwright.engine.plant.Plant;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Times folded states and the peers in turn, one round of each after the other, so that whatever else the machine does hits all alike.
 * Times are processor time of the solving thread or process; one row per round.
 *
 * <p>Arguments: folder for the inputs and rows, folder of the peers, Python.
 */
public final class PeerRace {
    private static final int ROUNDS = 9;
    private static final int REPEATS = 10;
    private static final int WARM_UP = 60;
    private static final int SCIPY_STATES = 24;

    private PeerRace() {}

    /** Runs the race and prints its rows. */
    public static void main(String[] args) throws IOException {
        Path out = Path.of(args[0]);
        Path peers = Path.of(args[1]);
        System.out.println("tree,round,route,states,seconds,us_per_state");
        for (String tree : new String[] {"5x12", "8x15"}) {
            race(tree, out, peers, args[2]);
        }
    }

    private static void race(String tree, Path out, Path peers, String python) throws IOException {
        Plant plant = TreePlants.named(tree);
        int[][] states = TreePlants.states(
                SolveBenchmark.STATES, plant.inlets().size(), SolveBenchmark.USERS, SolveBenchmark.SEED);
        Path input = out.resolve("tree-" + tree + ".json");
        Files.writeString(input, new PeerInput(plant).json(states));
        StateSweep sweep = new StateSweep(Network.compile(plant), TreePlants.state(plant));
        for (int n = 0; n < WARM_UP; n++) {
            foldedSeconds(sweep, states);
        }
        try (Peer numba = new Peer(python, peers.resolve("tree_numba.py"), input, ROUNDS, "own");
                Peer lent = new Peer(python, peers.resolve("tree_numba.py"), input, ROUNDS, "lent");
                Peer scipy = new Peer(python, peers.resolve("tree_scipy.py"), input, ROUNDS, "own")) {
            for (int round = 1; round <= ROUNDS; round++) {
                row(tree, round, "folded", REPEATS * states.length, foldedSeconds(sweep, states));
                row(tree, round, "numba", states.length, numba.nextSeconds());
                row(tree, round, "numba-lent", states.length, lent.nextSeconds());
                row(tree, round, "scipy", SCIPY_STATES, scipy.nextSeconds());
            }
        }
    }

    private static void row(String tree, int round, String route, int states, double seconds) {
        System.out.printf(
                Locale.ROOT, "%s,%d,%s,%d,%.6f,%.4f%n", tree, round, route, states, seconds, 1e6 * seconds / states);
    }

    private static double foldedSeconds(StateSweep sweep, int[][] states) {
        ThreadMXBean thread = ManagementFactory.getThreadMXBean();
        long begin = thread.getCurrentThreadCpuTime();
        double sum = 0;
        for (int n = 0; n < REPEATS; n++) {
            for (int[] open : states) {
                sum += solveAndRead(sweep, open);
            }
        }
        double seconds = (thread.getCurrentThreadCpuTime() - begin) / 1e9;
        if (!(sum > 0)) {
            throw new IllegalStateException("no velocity was found");
        }
        return seconds;
    }

    /** Solves a state and reads the slowest velocity of all pieces on open paths. */
    static double solveAndRead(StateSweep sweep, int[] open) {
        if (sweep.solve(open).isPresent() || !sweep.folded()) {
            throw new IllegalStateException("a state was not solved folded");
        }
        double least = Double.MAX_VALUE;
        for (int piece = 0; piece < sweep.pieces(); piece++) {
            least = Math.min(least, sweep.slowest_mPerS(piece));
        }
        return least;
    }

    /** A peer that solves one round for every line it is sent and answers with its seconds. */
    private static final class Peer implements AutoCloseable {
        private final Process process;
        private final BufferedReader answers;

        Peer(String python, Path script, Path input, int rounds, String variant) throws IOException {
            process = new ProcessBuilder(python, script.toString(), input.toString(), Integer.toString(rounds), variant)
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start();
            answers = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
            readAnswer(); // compiled and ready
        }

        double nextSeconds() throws IOException {
            process.getOutputStream().write('\n');
            process.getOutputStream().flush();
            return Double.parseDouble(readAnswer());
        }

        private String readAnswer() throws IOException {
            String line = answers.readLine();
            if (line == null) {
                throw new IOException("the peer stopped");
            }
            return line;
        }

        @Override
        public void close() {
            process.destroy();
        }
    }
}
