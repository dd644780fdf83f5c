package dustwright.engine.plant;

import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.Assumption;
import dustwright.engine.tubing.Bleed;
import dustwright.engine.tubing.Hose;
import dustwright.engine.tubing.Inlet;
import dustwright.engine.tubing.Run;
import dustwright.engine.tubing.Tool;
import dustwright.engine.tubing.Tube;
import java.util.List;

/**
 * One plant as one immutable value; everything else is computed from it. The plant file reader guarantees that every name used
 * resolves.
 */
public record Plant(
        String name,
        String note,
        Site site,
        List<Dust> dusts,
        List<Tube> tubes,
        List<Hose> hoses,
        List<Tool> tools,
        List<Point> points,
        List<Run> runs,
        List<Inlet> inlets,
        List<Bleed> bleeds,
        List<Held> held,
        List<Station> stations,
        Usage usage,
        Requirements requirements,
        List<ReasonedOverride> overrides,
        List<Assumption> assumptions) {
    public Plant {
        dusts = List.copyOf(dusts);
        tubes = List.copyOf(tubes);
        hoses = List.copyOf(hoses);
        tools = List.copyOf(tools);
        points = List.copyOf(points);
        runs = List.copyOf(runs);
        inlets = List.copyOf(inlets);
        bleeds = List.copyOf(bleeds);
        held = List.copyOf(held);
        stations = List.copyOf(stations);
        overrides = List.copyOf(overrides);
        assumptions = List.copyOf(assumptions);
    }

    public Inlet inlet(String id) {
        return inlets.stream().filter(i -> i.id().equals(id)).findFirst().orElseThrow();
    }

    public Tube tube(String id) {
        return tubes.stream().filter(t -> t.id().equals(id)).findFirst().orElseThrow();
    }

    public Hose hose(String id) {
        return hoses.stream().filter(h -> h.id().equals(id)).findFirst().orElseThrow();
    }

    public Tool tool(String id) {
        return tools.stream().filter(t -> t.id().equals(id)).findFirst().orElseThrow();
    }

    public Dust dust(String id) {
        return dusts.stream().filter(d -> d.id().equals(id)).findFirst().orElseThrow();
    }

    public Run run(String id) {
        return runs.stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
    }

    public Station station(String id) {
        return stations.stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
    }
}
