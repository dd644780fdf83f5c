package dustwright.engine.network;

import dustwright.engine.finding.Outcome;
import dustwright.engine.network.Network.BleedParts;
import dustwright.engine.network.Network.InletParts;
import dustwright.engine.network.Network.LegKind;
import dustwright.engine.network.Network.StationParts;
import dustwright.engine.tubing.Friction;
import dustwright.engine.tubing.JunctionLoss;
import dustwright.engine.tubing.Nozzle;
import dustwright.engine.tubing.ToolCurve;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * The tubing of one station as a rooted tree of laws, for whoever reasons about all sets of open inlets at once. Node 0 is the receiver,
 * a node comes after the one it joins, every branch is one block of numbers. Pressure is said as the place {@code u = √(1 − P/Pa²)},
 * 0 in still air.
 */
public final class TubingTree {
    /** No such node or inlet. */
    public static final int NONE = Network.NONE;

    private final Network network;
    private final StationParts station;
    private final List<List<Integer>> runsAt;
    private final State condition;
    private final List<Integer> node = new ArrayList<>();
    private final List<Integer> leg = new ArrayList<>();
    private final List<Integer> parent = new ArrayList<>();
    private final List<int[]> children = new ArrayList<>();
    private final List<Integer> inlet = new ArrayList<>();
    private final List<LegLaw> law = new ArrayList<>();
    private final List<Optional<Wye>> wye = new ArrayList<>();
    private final Map<Double, FrictionTable> friction = new TreeMap<>();
    private final DustLaws dustLaws;

    /**
     * A point where a branch joins a run and the losses depend on how the air splits (equation NET-5).
     *
     * @param branch node at the far end of the run that enters at an angle
     * @param run node at the far end of the run that goes straight through
     * @param branchC R T/A² of the branch; likewise of the run and of the common run
     */
    public record Wye(JunctionLoss loss, int branch, int run, double branchC, double runC, double commonC) {
        /** Loss charged to the branch, in pressure squared, for the flows that enter [Pa²]. */
        public double branchLoss_Pa2(double branch_kgPerS, double run_kgPerS) {
            double through = branch_kgPerS + run_kgPerS;
            double head = commonC * through * through;
            return share(branch_kgPerS, run_kgPerS)
                    * (loss.branch(split(branch_kgPerS, through)) * head
                            + Math.max(0, head - branchC * branch_kgPerS * branch_kgPerS));
        }

        /** Loss charged to the run, in pressure squared, for the flows that enter [Pa²]. */
        public double runLoss_Pa2(double branch_kgPerS, double run_kgPerS) {
            double through = branch_kgPerS + run_kgPerS;
            double head = commonC * through * through;
            return share(branch_kgPerS, run_kgPerS)
                    * (loss.run(split(branch_kgPerS, through)) * head
                            + Math.max(0, head - runC * run_kgPerS * run_kgPerS));
        }

        private static double split(double branch_kgPerS, double through) {
            return through > 0 ? Math.max(0, Math.min(1, branch_kgPerS / through)) : 0;
        }

        /** The loss fades to nothing where one of the streams does. */
        private static double share(double branch_kgPerS, double run_kgPerS) {
            double lesser = Math.min(branch_kgPerS, run_kgPerS);
            return lesser <= 0 ? 0 : Math.min(1, lesser / (JunctionLoss.FULL_FROM * (branch_kgPerS + run_kgPerS)));
        }
    }

    private TubingTree(Network network, StationParts station, List<List<Integer>> runsAt, State condition) {
        this.network = network;
        this.station = station;
        this.runsAt = runsAt;
        this.condition = condition;
        dustLaws = new DustLaws(network);
        number(station.receiver(), NONE, NONE);
        for (int n = 0; n < node.size(); n++) {
            wye.add(wyeAt(n));
        }
    }

    /**
     * One tree per station; or why the network is none, in words that follow "because". Dead ends carry no air and are left out.
     *
     * @param condition which far-end bleeds are open; what it says of inlets does not matter
     */
    public static Outcome<List<TubingTree>> forest(Network network, State condition) {
        List<List<Integer>> runsAt = new ArrayList<>();
        for (int n = 0; n < network.nodeCount; n++) {
            runsAt.add(new ArrayList<>());
        }
        for (int run : network.runLeg) {
            if (network.from[run] == Network.STILL_AIR || network.to[run] == Network.STILL_AIR) {
                return new Outcome.NotSolved<>(network.legId[run] + " stands open to still air");
            }
            if (network.k[run] < 0) {
                return new Outcome.NotSolved<>("the loss coefficient of " + network.legId[run] + " is below zero");
            }
            runsAt.get(network.from[run]).add(run);
            runsAt.get(network.to[run]).add(run);
        }
        for (int n = 1; n < network.nodeCount; n++) {
            int here = n;
            boolean receiver = network.stations.stream().anyMatch(s -> s.receiver() == here);
            if (network.held[n] || (!receiver && network.supply_kgPerS[n] != 0)) {
                return new Outcome.NotSolved<>("pressure or supply of " + network.nodeId[n] + " is held from outside");
            }
        }
        List<TubingTree> trees = new ArrayList<>();
        int[] owner = new int[network.nodeCount];
        Arrays.fill(owner, NONE);
        for (StationParts station : network.stations) {
            Optional<String> loop = claim(network, runsAt, station.receiver(), trees.size(), owner);
            if (loop.isPresent()) {
                return new Outcome.NotSolved<>(loop.get());
            }
            TubingTree tree = new TubingTree(network, station, runsAt, condition);
            Optional<String> changing = tree.changingJunction();
            if (changing.isPresent()) {
                return new Outcome.NotSolved<>(changing.get());
            }
            trees.add(tree);
        }
        for (InletParts inlet : network.inlets) {
            if (owner[inlet.node()] == NONE) {
                return new Outcome.NotSolved<>("no tubing leads from " + inlet.id() + " to a receiver");
            }
        }
        return new Outcome.Solved<>(trees);
    }

    /** Marks everything that hangs on a receiver; says so where the tubing closes a ring or reaches a second receiver. */
    private static Optional<String> claim(
            Network network, List<List<Integer>> runsAt, int receiver, int number, int[] owner) {
        List<int[]> open = new ArrayList<>(List.of(new int[] {receiver, NONE}));
        while (!open.isEmpty()) {
            int[] last = open.remove(open.size() - 1);
            if (owner[last[0]] != NONE) {
                return Optional.of(
                        owner[last[0]] == number
                                ? "its tubing closes a ring at " + network.nodeId[last[0]]
                                : "its stations are joined by tubing");
            }
            owner[last[0]] = number;
            for (int run : runsAt.get(last[0])) {
                if (run != last[1]) {
                    int other = network.from[run] == last[0] ? network.to[run] : network.from[run];
                    open.add(new int[] {other, run});
                }
            }
        }
        return Optional.empty();
    }

    private int number(int networkNode, int run, int above) {
        int here = node.size();
        node.add(networkNode);
        leg.add(run);
        parent.add(above);
        if (run != NONE) {
            law.add(lawOf(run));
        }
        int found = NONE;
        for (int n = 0; n < network.inlets.size(); n++) {
            found = network.inlets.get(n).node() == networkNode ? n : found;
        }
        inlet.add(found);
        children.add(new int[0]);
        List<Integer> below = new ArrayList<>();
        for (int further : runsAt.get(networkNode)) {
            if (further != run) {
                int next = network.from[further] == networkNode ? network.to[further] : network.from[further];
                if (bringsAir(next, further, false)) {
                    below.add(number(next, further, here));
                }
            }
        }
        children.set(here, below.stream().mapToInt(Integer::intValue).toArray());
        return here;
    }

    /** Whether any inlet or open bleed lies on a branch; or whether air comes from there even while all inlets are closed. */
    private boolean bringsAir(int networkNode, int run, boolean always) {
        for (InletParts parts : network.inlets) {
            if (parts.node() == networkNode && (!always || parts.leakLeg() != NONE)) {
                return true;
            }
        }
        if (bleedsAt(networkNode)) {
            return true;
        }
        for (int further : runsAt.get(networkNode)) {
            if (further != run) {
                int next = network.from[further] == networkNode ? network.to[further] : network.from[further];
                if (bringsAir(next, further, always)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean bleedsAt(int networkNode) {
        return network.bleeds.stream()
                .anyMatch(b -> b.node() == networkNode && condition.openBleeds().contains(b.id()));
    }

    /** A point where three streams or more meet, one at an angle, has losses by the split only while all but two are shut off tight. */
    private Optional<String> changingJunction() {
        for (int here = 1; here < size(); here++) {
            boolean angled = false;
            boolean tight =
                    inlet(here) != NONE && network.inlets.get(inlet(here)).leakLeg() == NONE;
            for (int child : children(here)) {
                angled |= network.wye_rad[leg.get(child)] > 0;
                tight |= !bringsAir(node.get(child), leg.get(child), true);
            }
            if (angled && tight && wye(here).isEmpty() && children(here).length + (inlet(here) == NONE ? 0 : 1) > 2) {
                return Optional.of(
                        "which streams meet at " + point(here) + " depends on which inlets there are shut tight");
            }
        }
        return Optional.empty();
    }

    private Optional<Wye> wyeAt(int here) {
        if (here == 0 || bleedsAt(node.get(here)) || children(here).length != 2 || inlet(here) != NONE) {
            return Optional.empty();
        }
        int one = children(here)[0];
        int other = children(here)[1];
        int branch = network.wye_rad[leg.get(one)] > 0 ? one : other;
        int run = branch == one ? other : one;
        int common = leg.get(here);
        boolean drawn = network.to[leg.get(branch)] == node.get(here)
                && network.to[leg.get(run)] == node.get(here)
                && network.from[common] == node.get(here);
        double ratio = network.bore_m[leg.get(branch)] / network.bore_m[common];
        boolean joins = network.wye_rad[leg.get(branch)] > 0 && network.wye_rad[leg.get(run)] == 0;
        if (!drawn || !joins || ratio > Junctions.SAME_BORE) {
            return Optional.empty();
        }
        JunctionLoss loss = JunctionLoss.crane(network.wye_rad[leg.get(branch)], Math.min(1, ratio * ratio));
        return Optional.of(new Wye(
                loss, branch, run, law(branch).c(), law(run).c(), law(here).c()));
    }

    private LegLaw lawOf(int legNumber) {
        double fixed = network.fixedFriction[legNumber];
        boolean byRoughness = fixed == Network.BY_ROUGHNESS;
        double roughness = byRoughness ? network.relativeRoughness[legNumber] : 0;
        FrictionTable table =
                friction.computeIfAbsent(roughness, e -> new FrictionTable(reynolds -> Friction.darcy(reynolds, e)));
        double lengthOverBore = network.lengthOverBore[legNumber];
        return new LegLaw(
                network.c[legNumber],
                byRoughness ? lengthOverBore : 0,
                network.k[legNumber] + (byRoughness ? 0 : fixed * lengthOverBore),
                network.reynoldsPerFlow[legNumber] / FrictionTable.REYNOLDS_UNIT,
                64 / network.reynoldsPerFlow[legNumber],
                table);
    }

    /** Number of nodes. */
    public int size() {
        return node.size();
    }

    /** Id of the station. */
    public String station() {
        return station.id();
    }

    /** Node that a node's leg leads to; {@link #NONE} at the receiver. */
    public int parent(int here) {
        return parent.get(here);
    }

    /** Nodes whose legs lead here. */
    public int[] children(int here) {
        return children.get(here);
    }

    /** Inlets on the branch that ends in a node, as numbered in the plant, those nearer to it first. */
    public IntStream inletsBelow(int here) {
        IntStream.Builder found = IntStream.builder();
        ArrayDeque<Integer> next = new ArrayDeque<>(List.of(here));
        while (!next.isEmpty()) {
            int at = next.removeFirst();
            if (inlet(at) != NONE) {
                found.add(inlet(at));
            }
            Arrays.stream(children(at)).forEach(next::addLast);
        }
        return found.build();
    }

    /** Inlet at a node, as numbered in the plant, or {@link #NONE}. */
    public int inlet(int here) {
        return inlet.get(here);
    }

    /** Id of the run from a node toward the receiver. */
    public String run(int here) {
        return network.legId[leg.get(here)];
    }

    /** Id of a point of the plant. */
    public String point(int here) {
        return network.nodeId[node.get(here)];
    }

    /** Law of the run from a node toward the receiver. */
    public LegLaw law(int here) {
        return law.get(here - 1);
    }

    /** Law of an open inlet's hose. */
    public LegLaw hose(int inletNumber) {
        return lawOf(network.inlets.get(inletNumber).hoseLeg());
    }

    /**
     * What dust adds to the run from a node toward the receiver.
     *
     * @param load_kgPerS by dust of the plant; those of unknown particles add nothing
     */
    public LegDust dust(int here, double[] load_kgPerS) {
        int run = leg.get(here);
        return dustIn(run, network.from[run] == node.get(here), load_kgPerS);
    }

    /** What dust adds to the hose of an open inlet. */
    public LegDust hoseDust(int inletNumber, double[] load_kgPerS) {
        return dustIn(network.inlets.get(inletNumber).hoseLeg(), true, load_kgPerS);
    }

    private LegDust dustIn(int legNumber, boolean forward, double[] load_kgPerS) {
        List<LegDust.Part> parts = new ArrayList<>();
        for (int dust = 0; dust < load_kgPerS.length; dust++) {
            if (load_kgPerS[dust] > 0 && dustLaws.known(dust)) {
                parts.add(new LegDust.Part(
                        network.plant.dusts().get(dust),
                        dustLaws.of(dust, legNumber, forward),
                        dustLaws.foot(dust, legNumber, forward),
                        load_kgPerS[dust]));
            }
        }
        return new LegDust(parts, network.air, network.bore_m[legNumber]);
    }

    /** The junction at a node whose losses depend on the split, if it is one. */
    public Optional<Wye> wye(int here) {
        return wye.get(here);
    }

    /** Ambient pressure squared [Pa²]. */
    public double ambientSquared() {
        return network.ambientSquared;
    }

    /** R T of the site's air [J/kg]. */
    public double rt_JPerKg() {
        return network.rt_JPerKg;
    }

    /** Leak of a closed inlet, per place u [kg/s]. */
    public double leakPerPlace_kgPerS(int inletNumber) {
        int leak = network.inlets.get(inletNumber).leakLeg();
        return leak == NONE ? 0 : Math.sqrt(network.ambientSquared / network.quadratic[leak]);
    }

    /** Whether an inlet's tool has a law of its own, so that its hose does not start in still air. */
    public boolean hasTool(int inletNumber) {
        return network.inlets.get(inletNumber).toolLeg() != NONE;
    }

    /** Air a tool with a law of its own lets in at a place behind it [kg/s]. */
    public double tool_kgPerS(int inletNumber, double place) {
        return opening_kgPerS(network.inlets.get(inletNumber).toolLeg(), place);
    }

    /** Air that open far-end bleed valves let in at a node [kg/s]. */
    public double bleeds_kgPerS(int here, double place) {
        double sum = 0;
        for (BleedParts bleed : network.bleeds) {
            if (bleed.node() == node.get(here) && condition.openBleeds().contains(bleed.id())) {
                sum += opening_kgPerS(bleed.leg(), place);
            }
        }
        return sum;
    }

    /** Whether a far-end bleed valve is open at a node. */
    public boolean bleeds(int here) {
        return bleedsAt(node.get(here));
    }

    private double opening_kgPerS(int opening, double place) {
        double into_Pa = network.ambient_Pa * Math.sqrt(1 - place * place);
        if (network.legKind[opening] == LegKind.TOOL_CURVE) {
            ToolCurve curve = Objects.requireNonNull(network.toolCurve[opening]);
            return curve.massFlow_kgPerS(network.ambient_Pa - into_Pa);
        }
        return Nozzle.massFlow_kgPerS(
                network.effectiveArea_m2[opening], network.ambient_Pa, into_Pa, network.rt_JPerKg);
    }

    /** What the station draws in a condition of its filter, valves and producers; or why that is no function of one pressure. */
    public Outcome<Draw> draw(State running) {
        StationEnd end = new StationEnd(network, station);
        end.set(running);
        if (!end.anyRuns()) {
            return new Outcome.NotSolved<>("no producer of " + station.id() + " runs");
        }
        StationDraw draw = new StationDraw(network, station, end, running);
        if (draw.holdsReceiver()) {
            return new Outcome.NotSolved<>("a drive of " + station.id() + " holds the vacuum of the receiver itself");
        }
        return new Outcome.Solved<>(new Draw(station, draw));
    }

    /** A station's draw over the place in its receiver, falling to nothing at {@link #greatest}. */
    public static final class Draw {
        /** An interval this short holds a kink, if the slope changes by this share over it. */
        private static final double SLIVER = 1e-9;

        private static final double JUMP = 1e-3;

        private final List<String> producers;
        private final StationDraw exact;
        private final MachineEnd end;

        Draw(StationParts station, StationDraw exact) {
            producers = station.producers().stream().map(p -> p.id()).toList();
            this.exact = exact;
            end = new MachineEnd(exact);
        }

        /** Ids of the producers, in the order of the plant file. */
        public List<String> producers() {
            return producers;
        }

        /** What every producer does at a place in the receiver; from one thread. */
        public List<Working> working(double place) {
            exact.moveTo(place);
            return exact.producers();
        }

        /** Place at which nothing is drawn any more. */
        public double greatest() {
            return end.greatest();
        }

        /** Air drawn from the tubing at a place in the receiver [kg/s]; beyond the greatest place along the tangent. */
        public double flow_kgPerS(double place) {
            int last = end.knots() - 1;
            if (place > end.greatest()) {
                return end.flow_kgPerS(last) + end.slope(last) * (place - end.greatest());
            }
            int i = end.interval(place);
            double width = end.place(i + 1) - end.place(i);
            double t = (place - end.place(i)) / width;
            double rise = end.flow_kgPerS(i + 1) - end.flow_kgPerS(i);
            return end.flow_kgPerS(i)
                    + t * t * (3 - 2 * t) * rise
                    + t * (1 - t) * (1 - t) * width * end.slope(i)
                    + t * t * (t - 1) * width * end.slope(i + 1);
        }

        /** Places between two others at which the slope jumps: a valve opens or is full open, a machine shuts; in order. */
        public List<Double> kinks(double from, double to) {
            List<Double> kinks = new ArrayList<>();
            for (int i = 0; i + 1 < end.knots(); i++) {
                boolean jumps = Math.abs(end.slope(i + 1) - end.slope(i)) > JUMP * Math.abs(end.slope(i));
                if (jumps && end.place(i + 1) - end.place(i) < SLIVER && end.place(i) > from && end.place(i) < to) {
                    kinks.add(end.place(i));
                }
            }
            return kinks;
        }

        /** Least and greatest slope between two places [kg/s per u]. */
        public double[] slopes(double from, double to) {
            double least = Double.MAX_VALUE;
            double most = -Double.MAX_VALUE;
            int last = end.knots() - 2;
            for (int i = Math.min(last, end.interval(Math.min(from, end.greatest()))); i <= last; i++) {
                double width = end.place(i + 1) - end.place(i);
                double middle = width < SLIVER
                        ? end.slope(i) // within a sliver that holds a kink a difference of flows is rounding
                        : 3 * (end.flow_kgPerS(i + 1) - end.flow_kgPerS(i)) / width - end.slope(i) - end.slope(i + 1);
                least = Math.min(least, Math.min(middle, Math.min(end.slope(i), end.slope(i + 1))));
                most = Math.max(most, Math.max(middle, Math.max(end.slope(i), end.slope(i + 1))));
                if (end.place(i + 1) >= to) {
                    break;
                }
            }
            return new double[] {least, most};
        }

        /** d flow/du [kg/s]. */
        public double slope(double place) {
            if (place > end.greatest()) {
                return end.slope(end.knots() - 1);
            }
            int i = end.interval(place);
            double width = end.place(i + 1) - end.place(i);
            double t = (place - end.place(i)) / width;
            double rise = end.flow_kgPerS(i + 1) - end.flow_kgPerS(i);
            return 6 * t * (1 - t) * rise / width
                    + (1 + t * (3 * t - 4)) * end.slope(i)
                    + t * (3 * t - 2) * end.slope(i + 1);
        }
    }
}
