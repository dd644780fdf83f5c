package dustwright.engine.network;

import dustwright.engine.air.Air;
import dustwright.engine.network.Network.LegKind;
import dustwright.engine.plant.Held;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Point;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.StatedLoss;
import dustwright.engine.rotaryvalve.RotaryValve;
import dustwright.engine.tubing.Bleed;
import dustwright.engine.tubing.Hose;
import dustwright.engine.tubing.Inlet;
import dustwright.engine.tubing.Run;
import dustwright.engine.tubing.RunGeometry;
import dustwright.engine.tubing.Tool;
import dustwright.engine.tubing.ToolCurve;
import dustwright.engine.tubing.Tube;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Turns a plant's parts into nodes and legs, numbered in the order of their ids. */
final class NetworkCompiler {
    /** Velocity head that air gains on leaving still air [-]. */
    private static final double STILL_AIR_HEAD = 1;

    final Plant plant;
    final Air air;
    final List<String> nodes = new ArrayList<>();
    final Map<Integer, Double> heldPressure_Pa = new TreeMap<>();
    final double[] supply_kgPerS;
    final List<NetworkLeg> legs;
    final List<NetworkLeg> runs = new ArrayList<>();
    final List<Network.InletParts> inlets = new ArrayList<>();
    final List<Network.BleedParts> bleeds = new ArrayList<>();
    final List<Network.StationParts> stations = new ArrayList<>();

    private final Map<String, Integer> nodeNumber = new TreeMap<>();
    private final List<NetworkLeg> drawn = new ArrayList<>();
    private final List<Runnable> afterNumbering = new ArrayList<>();

    NetworkCompiler(Plant plant) {
        this.plant = plant;
        this.air = plant.site().air();
        numberNodes();
        supply_kgPerS = new double[nodes.size()];
        plant.runs().forEach(this::addRun);
        plant.inlets().forEach(this::addInlet);
        plant.bleeds().forEach(this::addBleed);
        plant.stations().forEach(this::addStation);
        plant.held().forEach(this::hold);
        legs = drawn.stream()
                .sorted(Comparator.comparing((NetworkLeg leg) -> leg.id).thenComparing(leg -> leg.kind))
                .toList();
        for (int n = 0; n < legs.size(); n++) {
            legs.get(n).index = n;
        }
        afterNumbering.forEach(Runnable::run);
    }

    Network network() {
        return new Network(this);
    }

    private void numberNodes() {
        TreeSet<String> ids = new TreeSet<>();
        plant.points().stream().map(Point::id).forEach(ids::add);
        plant.inlets().stream()
                .flatMap(inlet -> hasToolNode(inlet) ? Stream.of(inlet.id(), toolNode(inlet)) : Stream.of(inlet.id()))
                .forEach(ids::add);
        for (Station station : plant.stations()) {
            ids.add(station.id());
            ids.add(cleanNode(station));
            ids.add(suctionNode(station));
        }
        nodes.add(Run.STILL_AIR);
        nodes.addAll(ids);
        for (int n = 0; n < nodes.size(); n++) {
            nodeNumber.put(nodes.get(n), n);
        }
    }

    private void addRun(Run run) {
        Tube tube = plant.tube(run.tube());
        RunGeometry geometry = RunGeometry.of(run, tube);
        NetworkLeg leg = leg(run.id(), LegKind.RUN, node(run.from()), node(run.to()));
        double k = geometry.k() + (leg.from == Network.STILL_AIR ? STILL_AIR_HEAD : 0);
        leg.tube(air, tube.bore(), tube.wall(), geometry.frictionLength(tube.bore()), k);
        run.wye().ifPresent(angle -> leg.wye_rad = angle.radians());
        runs.add(leg);
    }

    private void addInlet(Inlet inlet) {
        int valve = node(inlet.id());
        Hose hose = plant.hose(inlet.hose());
        Tool.Law law = plant.tool(inlet.tool()).law();
        @Nullable NetworkLeg tool = toolLeg(inlet, law, hose);
        double toolK = law instanceof Tool.Law.VelocityHeads heads ? heads.k() + STILL_AIR_HEAD : 0;
        int hoseEnd = tool == null ? Network.STILL_AIR : tool.to;
        double lengthOverBore = hose.length().metres() / hose.bore().metres();
        NetworkLeg hoseLeg = leg(inlet.id(), LegKind.HOSE, hoseEnd, valve)
                .tube(air, hose.bore(), hose.wall(), lengthOverBore, inlet.valveK() + toolK);
        double leak = inlet.leak().kgPerSecondPascal();
        @Nullable NetworkLeg leakLeg = leak > 0 ? leg(inlet.id(), LegKind.LEAK, Network.STILL_AIR, valve) : null;
        if (leakLeg != null) {
            leakLeg.quadratic = 1 / (leak * leak);
        }
        afterNumbering.add(() -> inlets.add(new Network.InletParts(
                inlet.id(),
                valve,
                hoseLeg.index,
                index(tool),
                index(leakLeg),
                inlet.dust(),
                inlet.feed().kgPerSecond())));
    }

    private @Nullable NetworkLeg toolLeg(Inlet inlet, Tool.Law law, Hose hose) {
        if (law instanceof Tool.Law.Opening opening) {
            return leg(toolNode(inlet), LegKind.NOZZLE, Network.STILL_AIR, node(toolNode(inlet)))
                    .opening(opening.effective_m2(hose), 1);
        }
        if (law instanceof Tool.Law.Curve curve) {
            NetworkLeg leg = leg(toolNode(inlet), LegKind.TOOL_CURVE, Network.STILL_AIR, node(toolNode(inlet)));
            leg.toolCurve = new ToolCurve(curve);
            return leg;
        }
        return null;
    }

    private void addBleed(Bleed bleed) {
        NetworkLeg leg = leg(bleed.id(), LegKind.NOZZLE, Network.STILL_AIR, node(bleed.point()))
                .opening(bleed.area().squareMetres(), bleed.dischargeCoefficient());
        afterNumbering.add(() -> bleeds.add(new Network.BleedParts(bleed.id(), leg.to, leg.index)));
    }

    private void addStation(Station station) {
        int receiver = node(station.id());
        int clean = node(cleanNode(station));
        int suction = node(suctionNode(station));
        // Linear coefficient of the filter depends on its condition: the state sets it.
        NetworkLeg filter = leg(cleanNode(station), LegKind.FILTER, receiver, clean);
        @Nullable
        NetworkLeg safety = station.safetyFilter()
                .map(loss -> safetyFilter(station, loss, clean, suction))
                .orElse(null);
        @Nullable
        NetworkLeg vent = station.vent()
                .map(valve -> leg(station.id() + "/vent", LegKind.NOZZLE, Network.STILL_AIR, suction)
                        .opening(valve.area().squareMetres(), valve.dischargeCoefficient()))
                .orElse(null);
        @Nullable
        NetworkLeg rotary = station.rotaryValve()
                .filter(valve -> valve.clearance().squareMetres() > 0)
                .map(valve -> rotaryClearance(station, valve, receiver))
                .orElse(null);
        double pockets_kgPerS =
                station.rotaryValve().map(valve -> valve.pocketAir_kgPerS(air)).orElse(0.0);
        supply_kgPerS[receiver] += pockets_kgPerS;
        afterNumbering.add(() -> stations.add(new Network.StationParts(
                station.id(),
                receiver,
                clean,
                suction,
                filter.index,
                index(safety),
                index(vent),
                index(rotary),
                pockets_kgPerS,
                station.filter(),
                station.relief().orElse(null),
                station.producers())));
    }

    private NetworkLeg safetyFilter(Station station, StatedLoss loss, int clean, int suction) {
        NetworkLeg leg = leg(suctionNode(station), LegKind.SAFETY_FILTER, clean, suction);
        leg.quadratic = loss.squaredPressurePerSquareFlow(air);
        return leg;
    }

    private NetworkLeg rotaryClearance(Station station, RotaryValve valve, int receiver) {
        return leg(station.id() + "/rotary", LegKind.NOZZLE, Network.STILL_AIR, receiver)
                .opening(valve.clearance().squareMetres(), valve.dischargeCoefficient());
    }

    private void hold(Held held) {
        if (held instanceof Held.Pressure pressure) {
            heldPressure_Pa.put(node(pressure.point()), pressure.pressure().pascals());
        } else if (held instanceof Held.Supply supply) {
            supply_kgPerS[node(supply.point())] += supply.into().kgPerSecond();
        }
    }

    private NetworkLeg leg(String id, LegKind kind, int from, int to) {
        NetworkLeg leg = new NetworkLeg(id, kind, from, to);
        drawn.add(leg);
        return leg;
    }

    private int node(String id) {
        Integer number = nodeNumber.get(id);
        if (number == null) {
            throw new IllegalArgumentException("no point, inlet or station is called " + id);
        }
        return number;
    }

    private static int index(@Nullable NetworkLeg leg) {
        return leg == null ? Network.NONE : leg.index;
    }

    private boolean hasToolNode(Inlet inlet) {
        return !(plant.tool(inlet.tool()).law() instanceof Tool.Law.VelocityHeads);
    }

    private static String toolNode(Inlet inlet) {
        return inlet.id() + "/tool";
    }

    private static String cleanNode(Station station) {
        return station.id() + "/clean";
    }

    private static String suctionNode(Station station) {
        return station.safetyFilter().isPresent() ? station.id() + "/suction" : cleanNode(station);
    }
}
