package dustwright.engine.sheet;

import dustwright.engine.bagging.Container;
import dustwright.engine.finding.Source;
import dustwright.engine.plant.Station;
import dustwright.engine.rotaryvalve.ValveBuild;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What hangs below a receiver, and whether its rotary valve keeps flame from it: without that, both are one vessel. */
final class BelowReceiver {
    static final Source BUILD =
            Source.fromMemory("NFPA 69; EN 15089: at least six vanes, gap at the tips 0.2 mm at most");
    private static final int LEAST_VANES = 6;
    private static final double MOST_GAP_m = 0.2e-3;

    private final Station station;

    BelowReceiver(Station station) {
        this.station = station;
    }

    /** The container that flame reaches from the receiver. */
    Optional<Container> joined() {
        return station.container().filter(c -> !isolates());
    }

    /** Stated as tested, and built as a valve must be that isolates. */
    boolean isolates() {
        return stated().orElse(false) && against().isEmpty() && open().isEmpty();
    }

    /** As stated, where a valve is there. */
    Optional<Boolean> stated() {
        return station.rotaryValve()
                .flatMap(v -> station.receiver().protection().valveIsolates());
    }

    /** What is stated of the valve and speaks against it. */
    List<String> against() {
        List<String> against = new ArrayList<>();
        build().vanes().filter(n -> n < LEAST_VANES).ifPresent(n -> against.add(n + " vanes, at least six are usual"));
        build().tipGap()
                .filter(gap -> gap.metres() > MOST_GAP_m * (1 + 1e-9))
                .ifPresent(gap -> against.add("a gap at its tips above 0.2 mm (0.0079 in)"));
        return against;
    }

    /** What would have to be known of the valve. */
    List<String> open() {
        List<String> open = new ArrayList<>();
        if (build().vanes().isEmpty()) {
            open.add("\"vanes\"");
        }
        if (build().tipGap().isEmpty()) {
            open.add("\"tip gap\"");
        }
        return open;
    }

    private ValveBuild build() {
        return station.rotaryValve().map(v -> v.build()).orElse(ValveBuild.UNKNOWN);
    }
}
