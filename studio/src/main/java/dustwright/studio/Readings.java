package dustwright.studio;

import dustwright.documents.writing.Show;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Place;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.InletResult;
import dustwright.engine.network.LegResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Velocity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a reader sees of a piece pointed at: air, velocity, vacuum and the tightest margin of one set.
 *
 * @param runs by id; runs through which hardly any air goes are left out
 * @param inlets by id
 */
record Readings(Map<String, String> runs, Map<String, String> inlets) {
    static final Readings NONE = new Readings(Map.of(), Map.of());

    /** Leaks of closed inlets make a little flow everywhere; below this share of the greatest flow nothing is said of it [-]. */
    private static final double HARDLY_ANY = 0.01;

    static Readings of(Plant plant, DutyPoint duty, List<Finding> findings, Show show) {
        AbsolutePressure ambient = plant.site().air().ambient();
        double greatest_kgPerS = duty.legs().stream()
                .mapToDouble(leg -> Math.abs(leg.flow().kgPerSecond()))
                .max()
                .orElse(0);
        Map<String, String> runs = new LinkedHashMap<>();
        Map<String, String> hoses = new LinkedHashMap<>();
        for (LegResult leg : duty.legs()) {
            boolean run = leg.kind() == LegResult.Kind.RUN;
            if (run && Math.abs(leg.flow().kgPerSecond()) < HARDLY_ANY * greatest_kgPerS) {
                continue;
            }
            String words = velocity(leg, show);
            if (run) {
                PressureDifference vacuum =
                        ambient.above(leg.flow().kgPerSecond() >= 0 ? leg.pressureTo() : leg.pressureFrom());
                runs.put(
                        leg.id(),
                        show.freeAirFull(leg.flow()) + ", " + words + ", " + show.full(vacuum)
                                + " below site at its end" + margin(findings, Place.Kind.RUN, leg.id()));
            } else {
                hoses.put(leg.id(), words);
            }
        }
        Map<String, String> inlets = new LinkedHashMap<>();
        for (InletResult inlet : duty.inlets()) {
            inlets.put(
                    inlet.id(),
                    inlet.open()
                            ? show.freeAirFull(inlet.flow()) + ", hose " + hoses.getOrDefault(inlet.id(), "") + ", "
                                    + show.full(inlet.vacuumAtValve()) + " below site behind its valve"
                                    + margin(findings, Place.Kind.INLET, inlet.id())
                            : "closed, " + show.full(inlet.vacuumAtValve()) + " below site behind its valve");
        }
        return new Readings(runs, inlets);
    }

    private static String velocity(LegResult leg, Show show) {
        double one_mPerS = leg.velocityFrom().metresPerSecond();
        double other_mPerS = leg.velocityTo().metresPerSecond();
        String slow = show.full(new Velocity(Math.min(one_mPerS, other_mPerS)));
        String fast = show.full(new Velocity(Math.max(one_mPerS, other_mPerS)));
        return slow.equals(fast) ? fast : slow + " to " + fast;
    }

    private static String margin(List<Finding> findings, Place.Kind kind, String id) {
        return findings.stream()
                .filter(f -> f.where().kind() == kind && f.where().id().equals(id))
                .findFirst()
                .map(worst -> ", margin " + Show.margin(worst))
                .orElse("");
    }
}
