package dustwright.engine.network;

import dustwright.engine.air.Air;
import dustwright.engine.network.Network.LegKind;
import dustwright.engine.quantity.Length;
import dustwright.engine.tubing.CorrugatedHose;
import dustwright.engine.tubing.ToolCurve;
import dustwright.engine.tubing.Wall;
import org.jspecify.annotations.Nullable;

/** One leg while the network is being compiled: what its law needs, by name. */
final class NetworkLeg {
    final String id;
    final LegKind kind;
    final int from;
    final int to;
    int index = Network.NONE;
    double linear;
    double quadratic;
    double c;
    double bore_m;
    double reynoldsPerFlow;
    double lengthOverBore;
    double k;
    double relativeRoughness;
    double fixedFriction = Network.BY_ROUGHNESS;
    double wye_rad;
    double effectiveArea_m2;

    @Nullable
    ToolCurve toolCurve;

    NetworkLeg(String id, LegKind kind, int from, int to) {
        this.id = id;
        this.kind = kind;
        this.from = from;
        this.to = to;
    }

    /** Makes this a tube of one bore. */
    NetworkLeg tube(Air air, Length bore, Wall wall, double lengthOverBore, double k) {
        bore_m = bore.metres();
        double area_m2 = Math.PI * bore_m * bore_m / 4;
        c = air.rt() / (area_m2 * area_m2);
        reynoldsPerFlow = 4 / (Math.PI * bore_m * air.viscosity_PaS());
        this.lengthOverBore = lengthOverBore;
        this.k = k;
        if (wall instanceof Wall.Rough rough) {
            relativeRoughness = rough.roughness().metres() / bore_m;
        } else if (wall instanceof Wall.FixedFactor fixed) {
            fixedFriction = fixed.darcy();
        } else if (wall instanceof Wall.Corrugated corrugated) {
            fixedFriction = CorrugatedHose.hawthorne(bore_m, corrugated.pitch().metres());
        }
        return this;
    }

    /** Makes this a short opening. */
    NetworkLeg opening(double area_m2, double dischargeCoefficient) {
        effectiveArea_m2 = area_m2 * dischargeCoefficient;
        return this;
    }
}
