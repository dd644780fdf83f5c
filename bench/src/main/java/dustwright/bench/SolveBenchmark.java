package dustwright.bench;

import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.Network;
import dustwright.engine.network.StateSweep;
import dustwright.engine.plant.Plant;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time per cold state: four of 60 or 120 inlets open, closed ones leaking; the same states as the peers get. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 1)
@Fork(1)
@State(Scope.Thread)
public class SolveBenchmark {
    static final long SEED = 7;
    static final int USERS = 4;
    static final int STATES = 1024;

    /** Mains times inlets per main. */
    @Param({"5x12", "8x15"})
    public String tree = "";

    private Plant plant = TreePlants.plant(1, 1);
    private Network network = Network.compile(plant);
    private int[][] states = {};
    private StateSweep sweep = new StateSweep(network, TreePlants.state(plant));
    private DutyPointSolver general = new DutyPointSolver(network);
    private int next;

    /** Builds the plant and folds it. */
    @Setup
    public void build() {
        plant = TreePlants.named(tree);
        network = Network.compile(plant);
        states = TreePlants.states(STATES, plant.inlets().size(), USERS, SEED);
        sweep = new StateSweep(network, TreePlants.state(plant));
        general = new DutyPointSolver(network);
    }

    /** One state folded: pressure in the receiver, flow of the station and of the open inlets read. */
    @Benchmark
    public double folded() {
        next = (next + 1) % STATES;
        return PeerRace.solveAndRead(sweep, states[next]);
    }

    /** The same with the slowest velocity on open paths. */
    @Benchmark
    public double foldedSlowest() {
        next = (next + 1) % STATES;
        return PeerRace.solveAndReadSlowest(sweep, states[next]);
    }

    /** One state by the general solver, with all its results. */
    @Benchmark
    public Object general() {
        next = (next + 1) % STATES;
        return general.solve(TreePlants.state(plant, states[next]));
    }

    /** The same while all four users pick up dust. */
    @Benchmark
    public Object generalWithDust() {
        next = (next + 1) % STATES;
        return general.solve(TreePlants.feeding(plant, states[next]));
    }

    /** Folding itself. */
    @Benchmark
    public Object fold() {
        return new StateSweep(network, TreePlants.state(plant));
    }
}
