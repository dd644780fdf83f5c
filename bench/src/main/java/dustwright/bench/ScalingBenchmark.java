package dustwright.bench;

import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.Network;
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

/** Time per state of the general solver against the number of runs: it should grow in proportion. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 4, time = 1)
@Fork(1)
@State(Scope.Thread)
public class ScalingBenchmark {
    /** Inlets per main; with three mains there are 3 + 6 times as many runs. */
    @Param({"5", "16", "50", "166", "500"})
    public int inletsPerMain;

    private Plant plant = TreePlants.plant(1, 1);
    private DutyPointSolver general = new DutyPointSolver(Network.compile(plant));

    /** Builds the plant. */
    @Setup
    public void build() {
        plant = TreePlants.plant(3, inletsPerMain);
        general = new DutyPointSolver(Network.compile(plant));
    }

    /** The nearest inlet of each main open. */
    @Benchmark
    public Object general() {
        return general.solve(TreePlants.state(plant, 0, inletsPerMain, 2 * inletsPerMain));
    }
}
