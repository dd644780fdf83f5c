package dustwright.engine.network;

import dustwright.engine.conveying.AirLoss;
import dustwright.engine.conveying.Dust;
import dustwright.engine.conveying.Rise;
import dustwright.engine.conveying.RiserFoot;
import dustwright.engine.conveying.SolidsLoss;
import dustwright.engine.conveying.SolidsPath;
import dustwright.engine.network.Network.LegKind;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.Length;
import dustwright.engine.tubing.Run;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/** The law of every dust in every leg, either way, made when first asked for: a state touches few of them. */
final class DustLaws {
    private final Network net;
    /** By dust, twice by leg: forward, then against the drawn direction. */
    private final @Nullable SolidsLoss[][] laws;

    /** By dust, way and leg. */
    private final Map<Integer, Optional<RiserFoot>> feet = new ConcurrentHashMap<>();

    DustLaws(Network net) {
        this.net = net;
        laws = new SolidsLoss[net.plant.dusts().size()][2 * net.legCount];
    }

    /** Whether it is known what it costs to carry this dust. */
    boolean known(int dust) {
        return net.plant.dusts().get(dust).particle().isPresent();
    }

    SolidsLoss of(int dust, int leg, boolean forward) {
        int place = forward ? leg : net.legCount + leg;
        @Nullable SolidsLoss law = laws[dust][place];
        if (law == null) {
            law = make(net.plant.dusts().get(dust), leg, forward);
            laws[dust][place] = law;
        }
        return law;
    }

    /** The foot of the rise in a leg; empty where it lifts nothing. */
    Optional<RiserFoot> foot(int dust, int leg, boolean forward) {
        int side = forward ? leg : net.legCount + leg;
        return feet.computeIfAbsent(dust * 2 * net.legCount + side, place -> makeFoot(dust, leg, forward));
    }

    private Optional<RiserFoot> makeFoot(int dust, int leg, boolean forward) {
        if (net.legKind[leg] == LegKind.HOSE) {
            return Optional.empty();
        }
        Dust carried = net.plant.dusts().get(dust);
        return Rise.of(net.plant.run(net.legId[leg]), forward)
                .map(rise -> new RiserFoot(
                        rise,
                        new Length(net.bore_m[leg]),
                        carried.particle().orElseThrow(),
                        net.air,
                        airLoss(leg, 1 / net.bore_m[leg], 0),
                        carried.levelFriction()));
    }

    private SolidsLoss make(Dust dust, int leg, boolean forward) {
        return new SolidsLoss(
                path(leg, forward),
                new Length(net.bore_m[leg]),
                dust.particle().orElseThrow(),
                net.air,
                airLoss(leg, net.lengthOverBore[leg], net.k[leg]),
                dust.levelFriction());
    }

    /** Dust starts from rest in a hose, which counts as level; it enters a run moving. */
    private SolidsPath path(int leg, boolean forward) {
        Plant plant = net.plant;
        if (net.legKind[leg] == LegKind.HOSE) {
            Length length = plant.hose(plant.inlet(net.legId[leg]).hose()).length();
            return SolidsPath.level(length.metres(), true);
        }
        Run run = plant.run(net.legId[leg]);
        return SolidsPath.of(run, forward);
    }

    private AirLoss airLoss(int leg, double lengthOverBore, double k) {
        return net.fixedFriction[leg] >= 0
                ? AirLoss.fixed(net.fixedFriction[leg], lengthOverBore, k)
                : AirLoss.rough(net.relativeRoughness[leg], net.bore_m[leg], net.air, lengthOverBore, k);
    }
}
