package dustwright.engine.network;

import dustwright.engine.network.Network.InletParts;
import dustwright.engine.network.Network.StationParts;
import dustwright.engine.plant.Point;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.TemperatureRise;
import dustwright.engine.quantity.Velocity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Writes the solved unknowns as result records, in the order of the plant file. */
final class DutyReport {
    private final Network net;
    private final NetworkState unknowns;
    private final NetworkEquations equations;
    private final int steps;
    private final List<StationEnd> ends;
    private final DustLoad dust;

    DutyReport(Network net, NetworkState unknowns, NewtonSolver newton, List<StationEnd> ends, DustLoad dust) {
        this.net = net;
        this.unknowns = unknowns;
        this.equations = newton.equations();
        this.steps = newton.steps();
        this.ends = ends;
        this.dust = dust;
        dust.partAll(unknowns);
    }

    DutyPoint of(State state) {
        List<StationResult> stations = new ArrayList<>();
        for (int s = 0; s < net.stations.size(); s++) {
            stations.add(station(net.stations.get(s), ends.get(s)));
        }
        return new DutyPoint(
                state,
                nodes(),
                legs(),
                net.inlets.stream().map(this::inlet).toList(),
                net.bleeds.stream()
                        .map(b ->
                                new BleedResult(b.id(), net.nodeId[b.node()], unknowns.active[b.leg()], flow(b.leg())))
                        .toList(),
                stations,
                new Convergence(
                        "Newton on pressure squared and flow, sparse elimination",
                        steps,
                        new MassFlow(equations.worstBalance_kgPerS()),
                        equations.worstLegError()));
    }

    private List<NodeResult> nodes() {
        List<Integer> order = new ArrayList<>();
        net.plant.points().stream().map(Point::id).forEach(id -> order.add(numberOf(id)));
        for (InletParts inlet : net.inlets) {
            order.add(inlet.node());
            if (inlet.toolLeg() != Network.NONE && unknowns.active[inlet.toolLeg()]) {
                order.add(net.to[inlet.toolLeg()]);
            }
        }
        for (StationParts station : net.stations) {
            order.add(station.receiver());
            order.add(station.clean());
            if (station.suction() != station.clean()) {
                order.add(station.suction());
            }
        }
        return order.stream()
                .map(n -> new NodeResult(net.nodeId[n], pressure(n), vacuum(n)))
                .toList();
    }

    private int numberOf(String id) {
        return 1 + Arrays.binarySearch(Arrays.copyOfRange(net.nodeId, 1, net.nodeCount), id);
    }

    private List<LegResult> legs() {
        List<LegResult> legs = new ArrayList<>();
        for (int leg : net.runLeg) {
            legs.add(leg(leg, LegResult.Kind.RUN));
        }
        for (InletParts inlet : net.inlets) {
            if (unknowns.active[inlet.hoseLeg()]) {
                legs.add(leg(inlet.hoseLeg(), LegResult.Kind.HOSE));
            }
        }
        return legs;
    }

    private LegResult leg(int leg, LegResult.Kind kind) {
        LegLaws law = equations.lawOf(leg);
        double w = unknowns.flow[leg];
        double kinetic = net.c[leg] * w * w;
        double from = unknowns.squared[net.from[leg]];
        double into = unknowns.squared[net.to[leg]];
        double to = into + unknowns.junction[leg];
        double from_Pa = Math.sqrt(w < 0 ? Math.max(from, kinetic) : from);
        double to_Pa = Math.sqrt(w >= 0 ? Math.max(to, kinetic) : to);
        double perPressure = Math.abs(w) * Math.sqrt(net.c[leg] * net.rt_JPerKg);
        return new LegResult(
                net.legId[leg],
                kind,
                net.nodeId[net.from[leg]],
                net.nodeId[net.to[leg]],
                new Length(net.bore_m[leg]),
                new MassFlow(w),
                new AbsolutePressure(from_Pa),
                new AbsolutePressure(to_Pa),
                new Velocity(perPressure / from_Pa),
                new Velocity(perPressure / to_Pa),
                net.reynoldsPerFlow[leg] * Math.abs(w),
                law.friction,
                net.lengthOverBore[leg],
                net.k[leg],
                new PressureDifference(unknowns.junction[leg] / (2 * Math.sqrt(into))),
                new MassFlow(dust.total_kgPerS(leg)),
                dust.streams(leg, w, from_Pa, to_Pa),
                law.choked);
    }

    private InletResult inlet(InletParts inlet) {
        boolean open = unknowns.active[inlet.hoseLeg()];
        if (open) {
            boolean toolChoked = inlet.toolLeg() != Network.NONE && equations.lawOf(inlet.toolLeg()).choked;
            boolean choked = equations.lawOf(inlet.hoseLeg()).choked || toolChoked;
            return new InletResult(inlet.id(), true, flow(inlet.hoseLeg()), vacuum(inlet.node()), choked);
        }
        MassFlow leak = inlet.leakLeg() == Network.NONE ? new MassFlow(0) : flow(inlet.leakLeg());
        return new InletResult(inlet.id(), false, leak, vacuum(inlet.node()), false);
    }

    private StationResult station(StationParts station, StationEnd end) {
        double receiver_Pa = Math.sqrt(unknowns.squared[station.receiver()]);
        double clean_Pa = Math.sqrt(unknowns.squared[station.clean()]);
        double suction_Pa = Math.sqrt(unknowns.squared[station.suction()]);
        double filter_kgPerS = unknowns.flow[station.filterLeg()];
        return new StationResult(
                station.id(),
                pressure(station.receiver()),
                new MassFlow(filter_kgPerS),
                new ActualVolumeFlow(filter_kgPerS * net.filterRt_JPerKg(station) / receiver_Pa),
                new PressureDifference(receiver_Pa - clean_Pa),
                new PressureDifference(clean_Pa - suction_Pa),
                pressure(station.suction()),
                new MassFlow(end.relief_kgPerS(suction_Pa)),
                optionalFlow(station.ventLeg()),
                new MassFlow(optionalFlow(station.rotaryLeg()).kgPerSecond() + station.rotaryPockets_kgPerS()),
                end.duties(station.producers(), suction_Pa, equations.imbalance_kgPerS(station.suction())).stream()
                        .map(duty -> producer(duty, suction_Pa))
                        .toList());
    }

    private ProducerResult producer(StationEnd.Duty duty, double inlet_Pa) {
        double flow_kgPerS = duty.flow_kgPerS();
        boolean passes = flow_kgPerS > 0;
        double difference_Pa = duty.unit().law().difference_Pa(inlet_Pa, flow_kgPerS);
        return new ProducerResult(
                duty.unit().producer().id(),
                duty.running(),
                duty.running() && !passes,
                passes && !duty.unit().law().covers(inlet_Pa, flow_kgPerS, duty.speed_perS()),
                new RotationalSpeed(duty.speed_perS()),
                new MassFlow(flow_kgPerS),
                new ActualVolumeFlow(flow_kgPerS * net.rt_JPerKg / inlet_Pa),
                new AbsolutePressure(inlet_Pa),
                new PressureDifference(net.ambient_Pa - inlet_Pa),
                new PressureDifference(difference_Pa),
                new Power(duty.power_W(inlet_Pa)),
                new TemperatureRise(duty.rise_K(inlet_Pa)));
    }

    private MassFlow optionalFlow(int leg) {
        return leg == Network.NONE ? new MassFlow(0) : flow(leg);
    }

    private MassFlow flow(int leg) {
        return new MassFlow(unknowns.flow[leg]);
    }

    private AbsolutePressure pressure(int node) {
        return new AbsolutePressure(Math.sqrt(unknowns.squared[node]));
    }

    private PressureDifference vacuum(int node) {
        return new PressureDifference(net.ambient_Pa - Math.sqrt(unknowns.squared[node]));
    }
}
