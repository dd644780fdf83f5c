package dustwright.engine.audit;

import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.InletResult;
import dustwright.engine.network.LegResult;
import dustwright.engine.plant.Held;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.tubing.JunctionLoss;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What the converging junctions of a state should cost, found again from the flows of the result. */
final class JunctionAudit {
    private static final double NO_STREAM = 1e-9;
    private static final double FULL_LOSS_FROM = 1e-3;

    private final Plant plant;
    private final DutyPoint duty;
    private final double rt_JPerKg;
    /** Angle at which a run enters the run it joins [rad], by run. */
    private final Map<String, Double> wyes = new HashMap<>();

    JunctionAudit(Plant plant, DutyPoint duty) {
        this.plant = plant;
        this.duty = duty;
        this.rt_JPerKg = plant.site().air().rt();
        plant.runs().forEach(run -> run.wye().ifPresent(angle -> wyes.put(run.id(), angle.radians())));
    }

    /** Loss in pressure squared by {@link LegAudit#key}; legs without one are left out. */
    Map<String, Double> expected() {
        Map<String, List<LegResult>> around = new LinkedHashMap<>();
        for (LegResult leg : duty.legs()) {
            around.computeIfAbsent(leg.from(), id -> new ArrayList<>()).add(leg);
            around.computeIfAbsent(leg.to(), id -> new ArrayList<>()).add(leg);
        }
        Set<String> disturbed = otherStreams();
        Map<String, Double> losses = new HashMap<>();
        around.forEach((node, legs) -> {
            if (!disturbed.contains(node)) {
                join(node, legs, losses);
            }
        });
        return losses;
    }

    /** Points where something besides tubing lets air in or out, or holds the pressure. */
    private Set<String> otherStreams() {
        Set<String> nodes = new HashSet<>();
        plant.held().stream()
                .filter(h -> !(h instanceof Held.Supply s && s.into().kgPerSecond() == 0))
                .forEach(h -> nodes.add(h.point()));
        plant.stations().stream().map(Station::id).forEach(nodes::add);
        duty.bleeds().stream().filter(b -> b.flow().kgPerSecond() != 0).forEach(b -> nodes.add(b.point()));
        duty.inlets().stream()
                .filter(i -> !i.open() && i.flow().kgPerSecond() != 0)
                .map(InletResult::id)
                .forEach(nodes::add);
        return nodes;
    }

    private void join(String node, List<LegResult> legs, Map<String, Double> losses) {
        double greatest = legs.stream()
                .mapToDouble(l -> Math.abs(l.flow().kgPerSecond()))
                .max()
                .orElse(0);
        List<LegResult> in = new ArrayList<>();
        List<LegResult> out = new ArrayList<>();
        for (LegResult leg : legs) {
            double w = leg.flow().kgPerSecond();
            if (Math.abs(w) > NO_STREAM * greatest) {
                boolean arrives = leg.to().equals(node);
                if (w < 0) {
                    return;
                }
                (arrives ? in : out).add(leg);
            }
        }
        if (in.size() != 2
                || out.size() != 1
                || wye(in.get(0)).isPresent() == wye(in.get(1)).isPresent()) {
            return;
        }
        int branch = wye(in.get(0)).isPresent() ? 0 : 1;
        charge(in.get(branch), in.get(1 - branch), out.get(0), losses);
    }

    private void charge(LegResult branch, LegResult run, LegResult common, Map<String, Double> losses) {
        double ratio = area_m2(branch) / area_m2(common);
        if (ratio > 1 + 1e-8) {
            return;
        }
        JunctionLoss k = JunctionLoss.crane(wye(branch).orElseThrow(), Math.min(1, ratio));
        double split = branch.flow().kgPerSecond() / common.flow().kgPerSecond();
        double head = twiceHead(common);
        double lesser = Math.min(branch.flow().kgPerSecond(), run.flow().kgPerSecond());
        double faded = Math.min(1, lesser / common.flow().kgPerSecond() / FULL_LOSS_FROM);
        losses.put(LegAudit.key(branch), faded * (k.branch(split) * head + Math.max(0, head - twiceHead(branch))));
        losses.put(LegAudit.key(run), faded * (k.run(split) * head + Math.max(0, head - twiceHead(run))));
    }

    /** 2 p q, the velocity head in pressure squared. */
    private double twiceHead(LegResult leg) {
        double flux = leg.flow().kgPerSecond() / area_m2(leg);
        return flux * flux * rt_JPerKg;
    }

    private static double area_m2(LegResult leg) {
        return Math.PI / 4 * leg.bore().metres() * leg.bore().metres();
    }

    private Optional<Double> wye(LegResult leg) {
        return leg.kind() == LegResult.Kind.RUN ? Optional.ofNullable(wyes.get(leg.id())) : Optional.empty();
    }
}
