package dustwright.engine.audit;

import dustwright.engine.finding.Place;
import dustwright.engine.network.BleedResult;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.InletResult;
import dustwright.engine.network.LegResult;
import dustwright.engine.network.NodeResult;
import dustwright.engine.network.StationResult;
import dustwright.engine.plant.Held;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.tubing.Run;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Re-checks a solved state from its result records alone, with code that shares nothing with the solver: mass balance at every
 * point, the law of every leg, inlet, valve, filter and producer. Cheap enough to run after every solve.
 */
public final class Audit {
    /** A balance may miss by this share of the greatest flow of the state [-]. */
    static final double BALANCE_SHARE = 1e-10;

    private final Plant plant;
    private final DutyPoint duty;
    private final Map<String, Double> pressure_Pa = new HashMap<>();
    private final Map<String, Double> inflow_kgPerS = new LinkedHashMap<>();
    private double greatest_kgPerS;

    private Audit(Plant plant, DutyPoint duty) {
        this.plant = plant;
        this.duty = duty;
        pressure_Pa.put(Run.STILL_AIR, plant.site().air().ambient().pascals());
        for (NodeResult node : duty.nodes()) {
            pressure_Pa.put(node.id(), node.pressure().pascals());
            inflow_kgPerS.put(node.id(), 0.0);
        }
    }

    /** Everything in a solved state that does not agree with balances and laws; empty when all agree. */
    public static List<Discrepancy> of(Plant plant, DutyPoint duty) {
        Audit audit = new Audit(plant, duty);
        List<Discrepancy> found = new ArrayList<>();
        audit.balances(found);
        Map<String, Double> junction = new JunctionAudit(plant, duty).expected();
        LegAudit legs = new LegAudit(plant, audit.pressure_Pa, junction);
        duty.legs().forEach(leg -> legs.check(leg, found));
        DeviceAudit devices = new DeviceAudit(plant, duty, audit.pressure_Pa);
        devices.check(found);
        return List.copyOf(found);
    }

    private void balances(List<Discrepancy> found) {
        for (LegResult leg : duty.legs()) {
            flow(leg.from(), leg.to(), leg.flow());
        }
        for (InletResult inlet : duty.inlets()) {
            if (!inlet.open()) {
                flow(Run.STILL_AIR, inlet.id(), inlet.flow());
            } else if (pressure_Pa.containsKey(inlet.id() + "/tool")) {
                flow(Run.STILL_AIR, inlet.id() + "/tool", inlet.flow());
            }
        }
        for (BleedResult bleed : duty.bleeds()) {
            flow(Run.STILL_AIR, bleed.point(), bleed.flow());
        }
        duty.stations().forEach(this::stationFlows);
        for (Held held : plant.held()) {
            if (held instanceof Held.Supply supply) {
                flow(Run.STILL_AIR, supply.point(), supply.into());
            }
        }
        MassFlow allowed = new MassFlow(BALANCE_SHARE * Math.max(greatest_kgPerS, 1e-3));
        inflow_kgPerS.forEach((node, sum) -> {
            boolean free = plant.held().stream()
                    .noneMatch(h -> h instanceof Held.Pressure && h.point().equals(node));
            if (free && Math.abs(sum) > allowed.kgPerSecond()) {
                found.add(
                        new Discrepancy(new Place(Place.Kind.POINT, node), "mass balance", new MassFlow(sum), allowed));
            }
        });
    }

    private void stationFlows(StationResult station) {
        String clean = station.id() + "/clean";
        String suction = pressure_Pa.containsKey(station.id() + "/suction") ? station.id() + "/suction" : clean;
        flow(station.id(), clean, station.throughFilter());
        if (!suction.equals(clean)) {
            flow(clean, suction, station.throughFilter());
        }
        flow(Run.STILL_AIR, station.id(), station.rotaryValve());
        flow(Run.STILL_AIR, suction, station.relief());
        flow(Run.STILL_AIR, suction, station.vent());
        station.producers().forEach(producer -> flow(suction, Run.STILL_AIR, producer.flow()));
    }

    private void flow(String from, String to, MassFlow flow) {
        inflow_kgPerS.computeIfPresent(from, (id, sum) -> sum - flow.kgPerSecond());
        inflow_kgPerS.computeIfPresent(to, (id, sum) -> sum + flow.kgPerSecond());
        greatest_kgPerS = Math.max(greatest_kgPerS, Math.abs(flow.kgPerSecond()));
    }
}
