package dustwright.bench;

import dustwright.engine.network.Network;
import dustwright.engine.network.StateSweep;
import dustwright.engine.plant.Plant;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.lang.management.ManagementFactory;
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
    /** So many times the states of the peers, all different: the same few over and over would find their table rows in the cache. */
    private static final int MORE_STATES = 50;

    private static final int WARM_UP = 12;
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
        int[][] more = TreePlants.states(
                MORE_STATES * SolveBenchmark.STATES, plant.inlets().size(), SolveBenchmark.USERS, SolveBenchmark.SEED);
        Path input = out.resolve("tree-" + tree + ".json");
        Files.writeString(input, new PeerInput(plant).json(states));
        StateSweep sweep = new StateSweep(Network.compile(plant), TreePlants.state(plant));
        for (int n = 0; n < WARM_UP; n++) {
            foldedSeconds(sweep, more);
            slowestSeconds(sweep, more);
        }
        Path compiled = peers.resolve("tree_numba.py");
        try (Peer numba = new Peer(python, compiled, input, ROUNDS, "own");
                Peer lent = new Peer(python, compiled, input, ROUNDS, "lent");
                Peer slowest = new Peer(python, compiled, input, ROUNDS, "own-slowest");
                Peer lentSlowest = new Peer(python, compiled, input, ROUNDS, "lent-slowest");
                Peer scipy = new Peer(python, peers.resolve("tree_scipy.py"), input, ROUNDS, "own")) {
            for (int round = 1; round <= ROUNDS; round++) {
                row(tree, round, "folded", more.length, foldedSeconds(sweep, more));
                row(tree, round, "numba", states.length, numba.nextSeconds());
                row(tree, round, "numba-lent", states.length, lent.nextSeconds());
                row(tree, round, "folded-slowest", more.length, slowestSeconds(sweep, more));
                row(tree, round, "numba-slowest", states.length, slowest.nextSeconds());
                row(tree, round, "numba-lent-slowest", states.length, lentSlowest.nextSeconds());
                row(tree, round, "scipy", SCIPY_STATES, scipy.nextSeconds());
            }
        }
    }

    private static void row(String tree, int round, String route, int states, double seconds) {
        System.out.printf(
                Locale.ROOT, "%s,%d,%s,%d,%.6f,%.4f%n", tree, round, route, states, seconds, 1e6 * seconds / states);
    }

    private static double foldedSeconds(StateSweep sweep, int[][] states) {
        long begin = cpuTime_ns();
        double sum = 0;
        for (int[] open : states) {
            sum += solveAndRead(sweep, open);
        }
        return seconds(begin, sum);
    }

    private static double slowestSeconds(StateSweep sweep, int[][] states) {
        long begin = cpuTime_ns();
        double sum = 0;
        for (int[] open : states) {
            sum += solveAndReadSlowest(sweep, open);
        }
        return seconds(begin, sum);
    }

    private static long cpuTime_ns() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static double seconds(long begin, double sum) {
        double seconds = (cpuTime_ns() - begin) / 1e9;
        if (!(sum > 0)) {
            throw new IllegalStateException("no flow was found");
        }
        return seconds;
    }

    /** Solves a state and reads what the peers give: pressure in the receiver, flow of the station and of every open inlet. */
    static double solveAndRead(StateSweep sweep, int[] open) {
        solve(sweep, open);
        double sum = sweep.receiver_Pa() + sweep.drawn_kgPerS();
        for (int n = 0; n < open.length; n++) {
            sum += sweep.inletFlow_kgPerS(n);
        }
        return sum;
    }

    /** The same with the slowest velocity of all pieces on open paths. */
    static double solveAndReadSlowest(StateSweep sweep, int[] open) {
        double sum = solveAndRead(sweep, open);
        double least = Double.MAX_VALUE;
        int pieces = sweep.pieces();
        for (int piece = 0; piece < pieces; piece++) {
            least = Math.min(least, sweep.slowest_mPerS(piece));
        }
        return sum + least;
    }

    private static void solve(StateSweep sweep, int[] open) {
        if (sweep.solve(open).isPresent() || !sweep.folded()) {
            throw new IllegalStateException("a state was not solved folded");
        }
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
