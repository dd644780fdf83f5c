package dustwright.bench;

import dustwright.engine.network.LegResult;
import dustwright.engine.network.Network;
import dustwright.engine.network.State;
import dustwright.engine.network.StateSweep;
import dustwright.engine.plant.Plant;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Every set of so many open inlets, one after another in one thread, each solved by the fastest route there is for many states of a tree
 * (folded tables), for the slowest run and the weakest tool of all: what coverage is measured against where that can end.
 */
final class PlainEnumeration {
    private final Plant plant;
    private final StateSweep sweep;
    private final int[] set;
    private final String[] runs;
    private int[] slowestSet = {};
    private int[] weakestSet = {};
    private String slowestRun = "";
    private double slowest_mPerS = Double.MAX_VALUE;
    private double weakest_kgPerS = Double.MAX_VALUE;
    private long sets;

    PlainEnumeration(Plant plant, State condition, int users) {
        this.plant = plant;
        sweep = new StateSweep(Network.compile(plant), condition);
        set = new int[users];
        runs = plant.runs().stream().map(r -> r.id()).sorted().toArray(String[]::new);
    }

    /** Goes through all sets; a line of figures. */
    String line() {
        long start_ns = cpu_ns();
        choose(0, 0);
        double seconds = (cpu_ns() - start_ns) / 1e9;
        return String.format(
                Locale.ROOT,
                "plain enumeration: sets=%d cpu_seconds=%.1f sets_per_s=%.0f slowest_mPerS=%.9f at=%s with=%s weakest_kgPerS=%.10f with=%s",
                sets,
                seconds,
                sets / seconds,
                slowest_mPerS,
                slowestRun,
                words(slowestSet),
                weakest_kgPerS,
                words(weakestSet));
    }

    private static long cpu_ns() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private String words(int[] of) {
        return Arrays.stream(of).mapToObj(n -> plant.inlets().get(n).id()).collect(Collectors.joining("+"));
    }

    private void choose(int chosen, int from) {
        if (chosen == set.length) {
            solve();
            return;
        }
        for (int inlet = from; inlet <= plant.inlets().size() - (set.length - chosen); inlet++) {
            set[chosen] = inlet;
            choose(chosen + 1, inlet + 1);
        }
    }

    private void solve() {
        sets++;
        sweep.solve(set).ifPresent(why -> {
            throw new IllegalStateException(words(set) + ": " + why);
        });
        for (int n = 0; n < set.length; n++) {
            if (sweep.inletFlow_kgPerS(n) < weakest_kgPerS) {
                weakest_kgPerS = sweep.inletFlow_kgPerS(n);
                weakestSet = set.clone();
            }
        }
        int pieces = sweep.pieces();
        for (int piece = 0; piece < pieces; piece++) {
            if (sweep.slowest_mPerS(piece) < slowest_mPerS
                    && sweep.kind(piece) == LegResult.Kind.RUN
                    && Arrays.binarySearch(runs, sweep.id(piece)) >= 0) {
                slowest_mPerS = sweep.slowest_mPerS(piece);
                slowestRun = sweep.id(piece);
                slowestSet = set.clone();
            }
        }
    }
}
