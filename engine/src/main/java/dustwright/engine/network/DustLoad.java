package dustwright.engine.network;

import dustwright.engine.conveying.RiserFoot;
import dustwright.engine.conveying.SolidsLoss.Found;
import dustwright.engine.network.Network.InletParts;
import dustwright.engine.network.Network.LegKind;
import dustwright.engine.quantity.MassFlow;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The dust in every leg of one state and what it adds to the leg laws (equation NET-12). A hose, and a run that alone leads out of a part
 * of the tubing, carries what is fed there, whatever the air does. Runs in loops carry their share of the air times the dust per air
 * at the point they leave; while Newton's method runs that ratio is held, then it is found anew from the flows ({@link DustSplit}),
 * until it no longer changes. All dusts are mixed as one, since each moves the air of the others. In a tree all is known after the first
 * round.
 */
final class DustLoad {
    /** Dust has settled when it changes by no more than this share of all that is fed [-]. */
    private static final double TOLERANCE = 1e-12;
    /** Less than this share of all that is fed is none: air that moves by rounding only carries nothing [-]. */
    private static final double TRACE = 1e-14;

    private final Network net;
    private final DustLaws laws;
    private final DustSplit split;
    private final int kinds;
    /** Number of the dust of every inlet; dust without a name comes last. */
    private final int[] kindOf;
    /** Whether a leg carries all that is fed on one side of it, be it nothing. */
    private final boolean[] carriesAll;

    /** Whether a dust is fed and its law known. */
    private final boolean[] counts;

    private final double[] feed_kgPerS;
    private final double[] fed_kgPerS;
    /** By dust and leg, for the flows last parted by. */
    private final double[][] flow_kgPerS;
    /** Dust per air leaving a point, by dust and point. */
    private final double[][] perAir;

    private final double[] wanted_kgPerS;
    private final double[] wantedPerAir;
    /** Points that runs in loops leave. */
    private final int[] mixing;

    /** Of all dusts together, as each moves the air of all: what is tried and found, per feed of its dust. */
    private final FixedPoint rounds;

    private final double[] tried;
    private final double[] wanted;
    private final Found found = new Found();
    private boolean adds;
    private boolean first;
    private int worstLeg;

    DustLoad(Network net) {
        this.net = net;
        laws = new DustLaws(net);
        split = new DustSplit(net);
        List<String> ids = net.plant.dusts().stream().map(dust -> dust.id()).toList();
        kinds = ids.size() + 1;
        kindOf = net.inlets.stream()
                .mapToInt(inlet -> inlet.dust().map(ids::indexOf).orElse(kinds - 1))
                .toArray();
        carriesAll = DeadEnds.of(net);
        for (int leg = 0; leg < net.legCount; leg++) {
            carriesAll[leg] |= net.legKind[leg] != LegKind.RUN;
        }
        counts = new boolean[kinds];
        feed_kgPerS = new double[net.inlets.size()];
        fed_kgPerS = new double[kinds];
        flow_kgPerS = new double[kinds][net.legCount];
        perAir = new double[kinds][net.nodeCount];
        wanted_kgPerS = new double[net.legCount];
        wantedPerAir = new double[net.nodeCount];
        mixing = IntStream.range(0, net.legCount)
                .filter(leg -> !carriesAll[leg])
                .flatMap(leg -> IntStream.of(net.from[leg], net.to[leg]))
                .filter(node -> !net.held[node])
                .distinct()
                .sorted()
                .toArray();
        tried = new double[(kinds - 1) * mixing.length];
        wanted = new double[tried.length];
        rounds = new FixedPoint(tried.length);
    }

    /** Starts a state: who feeds, and no dust in any leg yet. */
    void set(State state) {
        adds = false;
        first = true;
        rounds.clear();
        Arrays.fill(tried, 0);
        Arrays.fill(wanted, 0);
        Arrays.fill(fed_kgPerS, 0);
        for (int n = 0; n < feed_kgPerS.length; n++) {
            InletParts inlet = net.inlets.get(n);
            boolean feeds = state.open().contains(inlet.id()) && state.feeding().contains(inlet.id());
            feed_kgPerS[n] = feeds ? inlet.feed_kgPerS() : 0;
            fed_kgPerS[kindOf[n]] += feed_kgPerS[n];
        }
        for (int dust = 0; dust < kinds; dust++) {
            Arrays.fill(flow_kgPerS[dust], 0);
            Arrays.fill(perAir[dust], 0);
            counts[dust] = dust < kinds - 1 && fed_kgPerS[dust] > 0 && laws.known(dust);
            adds |= counts[dust];
        }
    }

    /** Forgets how the dust answered so far, not where it is. */
    void forget() {
        rounds.clear();
    }

    /** Whether the dust used in the laws agrees with the flows; it does for the next round. */
    boolean settled(NetworkState state) {
        boolean settled = true;
        for (int dust = 0; dust < kinds && adds; dust++) {
            if (counts[dust]) {
                part(dust, state);
                settled &= worstGap(dust, state) <= TOLERANCE * fed_kgPerS[dust];
                System.arraycopy(wanted_kgPerS, 0, flow_kgPerS[dust], 0, net.legCount);
                for (int n = 0; n < mixing.length; n++) {
                    wanted[dust * mixing.length + n] = wantedPerAir[mixing[n]] / fed_kgPerS[dust];
                }
            }
        }
        mix();
        first = false;
        return settled;
    }

    private void mix() {
        if (first) {
            System.arraycopy(wanted, 0, tried, 0, tried.length); // of clean air: no start for mixing
        } else {
            rounds.next(tried, wanted);
        }
        for (int dust = 0; dust < kinds - 1; dust++) {
            for (int n = 0; n < mixing.length; n++) {
                perAir[dust][mixing[n]] = tried[dust * mixing.length + n] * fed_kgPerS[dust];
            }
        }
    }

    private void part(int dust, NetworkState state) {
        split.along(state, inlet -> kindOf[inlet] == dust ? feed_kgPerS[inlet] : 0, wantedPerAir, wanted_kgPerS);
    }

    private double worstGap(int dust, NetworkState state) {
        double worst = 0;
        for (int leg = 0; leg < net.legCount; leg++) {
            double used = used_kgPerS(dust, leg, state.flow[leg] >= 0, Math.abs(state.flow[leg]));
            double gap = Math.abs(wanted_kgPerS[leg] - used);
            if (gap > worst) {
                worst = gap;
                worstLeg = leg;
            }
        }
        return worst;
    }

    private double used_kgPerS(int dust, int leg, boolean forward, double air_kgPerS) {
        return carriesAll[leg]
                ? flow_kgPerS[dust][leg]
                : perAir[dust][forward ? net.from[leg] : net.to[leg]] * air_kgPerS;
    }

    /** Whether dust adds to the law of any leg. */
    boolean any() {
        return adds;
    }

    /** All dust of known law in a leg at a flow in the direction it is carried; 0 where it adds nothing to the leg's law. */
    double carried_kgPerS(int leg, boolean forward, double air_kgPerS) {
        if (!adds) {
            return 0;
        }
        double all_kgPerS = 0;
        for (int dust = 0; dust < kinds - 1; dust++) {
            all_kgPerS += counts[dust] ? used_kgPerS(dust, leg, forward, air_kgPerS) : 0;
        }
        return all_kgPerS;
    }

    /**
     * Adds up what all dusts cost in a leg at a flow in the direction it is carried; slope by the flow with the dust it brings along.
     *
     * @param all_kgPerS what the leg carries
     */
    void evaluate(int leg, boolean forward, double air_kgPerS, double density_kgPerM3, double all_kgPerS, Found into) {
        into.clear();
        for (int dust = 0; dust < kinds - 1; dust++) {
            double solids_kgPerS = counts[dust] ? used_kgPerS(dust, leg, forward, air_kgPerS) : 0;
            if (solids_kgPerS > 0) {
                laws.of(dust, leg, forward).evaluate(air_kgPerS, density_kgPerM3, solids_kgPerS, all_kgPerS, found);
                into.add(found);
            }
        }
        into.perFlow_PaSPerKg += carriesAll[leg] ? 0 : into.perFeed_Pa / air_kgPerS;
    }

    /** Parts every dust by the flows of the answer, those of unknown law too. */
    void partAll(NetworkState state) {
        for (int dust = 0; dust < kinds; dust++) {
            if (fed_kgPerS[dust] > 0) {
                part(dust, state);
                for (int leg = 0; leg < net.legCount; leg++) {
                    boolean some = wanted_kgPerS[leg] > TRACE * fed_kgPerS[dust];
                    flow_kgPerS[dust][leg] = some ? wanted_kgPerS[leg] : 0;
                }
            }
        }
    }

    /** Every named dust in a leg, as results; to be asked after {@link #partAll}. */
    List<DustStream> streams(int leg, double air_kgPerS, double from_Pa, double to_Pa) {
        boolean forward = air_kgPerS >= 0;
        double density_kgPerM3 = (from_Pa + to_Pa) / 2 / net.rt_JPerKg;
        List<DustStream> streams = new ArrayList<>();
        double known_kgPerS = 0;
        for (int dust = 0; dust < kinds - 1; dust++) {
            known_kgPerS += counts[dust] ? flow_kgPerS[dust][leg] : 0;
        }
        for (int dust = 0; dust < kinds - 1; dust++) {
            double solids_kgPerS = flow_kgPerS[dust][leg];
            if (solids_kgPerS > 0) {
                streams.add(new DustStream(
                        net.plant.dusts().get(dust).id(),
                        new MassFlow(solids_kgPerS),
                        counts[dust]
                                ? Optional.of(laws.of(dust, leg, forward)
                                        .at(Math.abs(air_kgPerS), density_kgPerM3, solids_kgPerS, known_kgPerS))
                                : Optional.empty(),
                        counts[dust]
                                ? foot(
                                        dust,
                                        leg,
                                        air_kgPerS,
                                        forward ? from_Pa : to_Pa,
                                        forward ? to_Pa : from_Pa,
                                        known_kgPerS)
                                : Optional.empty()));
            }
        }
        return streams;
    }

    private Optional<RiserFoot.Found> foot(
            int dust, int leg, double air_kgPerS, double upstream_Pa, double downstream_Pa, double known_kgPerS) {
        return laws.foot(dust, leg, air_kgPerS >= 0)
                .map(foot -> foot.at(
                        Math.abs(air_kgPerS), upstream_Pa, downstream_Pa, flow_kgPerS[dust][leg], known_kgPerS));
    }

    /** All dust in a leg, named or not [kg/s]. */
    double total_kgPerS(int leg) {
        double total = 0;
        for (int dust = 0; dust < kinds; dust++) {
            total += flow_kgPerS[dust][leg];
        }
        return total;
    }

    String worst() {
        return "dust last moving in " + net.legId[worstLeg]
                + ", where it has more than one way to go and more of it than the air carries well: feed less dust at once, or take the loop"
                + " apart";
    }
}
