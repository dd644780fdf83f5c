package dustwright.engine.network;

import dustwright.engine.tubing.Friction;
import java.util.Map;
import java.util.TreeMap;

/** Laws of a network's legs for the folded kernel; legs of one relative roughness share one friction table. */
final class LawBook {
    private final Network network;
    private final Map<Double, FrictionTable> friction = new TreeMap<>();

    LawBook(Network network) {
        this.network = network;
    }

    LegLaw of(int leg) {
        double fixed = network.fixedFriction[leg];
        boolean byRoughness = fixed == Network.BY_ROUGHNESS;
        double roughness = byRoughness ? network.relativeRoughness[leg] : 0;
        FrictionTable table =
                friction.computeIfAbsent(roughness, e -> new FrictionTable(reynolds -> Friction.darcy(reynolds, e)));
        double lengthOverBore = network.lengthOverBore[leg];
        return new LegLaw(
                network.c[leg],
                byRoughness ? lengthOverBore : 0,
                network.k[leg] + (byRoughness ? 0 : fixed * lengthOverBore),
                network.reynoldsPerFlow[leg] / FrictionTable.REYNOLDS_UNIT,
                64 / network.reynoldsPerFlow[leg],
                table);
    }
}
