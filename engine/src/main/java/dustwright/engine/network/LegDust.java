package dustwright.engine.network;

import dustwright.engine.air.Air;
import dustwright.engine.conveying.CarryingVelocity;
import dustwright.engine.conveying.Conveyed;
import dustwright.engine.conveying.Dust;
import dustwright.engine.conveying.RiserFoot;
import dustwright.engine.conveying.SolidsLoss;
import dustwright.engine.conveying.SolidsLoss.Found;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.Viscosity;
import java.util.List;
import java.util.Optional;

/**
 * What a given load of dusts adds to the law of one leg (equation NET-12), for sweeps that carry whole curves through it. In pressure
 * squared, at the mean p̄ of both end pressures:
 *
 * <pre>
 * extra = 2 p̄ Σ Δp_s(w, p̄/(R T))
 * </pre>
 *
 * Mutable; each thread has its own.
 */
public final class LegDust {
    /** What is added [Pa²], and its slopes by the flow and by the mean pressure. */
    public double extra_Pa2;

    public double byFlow;
    public double byMean;

    private final List<Part> parts;
    private final double all_kgPerS;
    private final double rt_JPerKg;
    private final Air air;
    private final double bore_m;
    private final Found sum = new Found();
    private final Found found = new Found();

    /** One dust of known particles in the leg. */
    record Part(Dust dust, SolidsLoss law, Optional<RiserFoot> foot, double solids_kgPerS) {}

    LegDust(List<Part> parts, Air air, double bore_m) {
        this.parts = List.copyOf(parts);
        this.air = air;
        this.bore_m = bore_m;
        rt_JPerKg = air.rt();
        all_kgPerS = parts.stream().mapToDouble(Part::solids_kgPerS).sum();
    }

    /** Whether the load adds anything. */
    public boolean adds() {
        return !parts.isEmpty();
    }

    /** Finds what is added at a flow toward the receiver. */
    public void evaluate(double air_kgPerS, double mean_Pa) {
        if (parts.isEmpty() || air_kgPerS <= 0) {
            extra_Pa2 = 0;
            byFlow = 0;
            byMean = 0;
            return;
        }
        double density_kgPerM3 = mean_Pa / rt_JPerKg;
        sum.clear();
        for (int n = 0; n < parts.size(); n++) {
            Part part = parts.get(n);
            part.law().evaluate(air_kgPerS, density_kgPerM3, part.solids_kgPerS(), all_kgPerS, found);
            sum.add(found);
        }
        extra_Pa2 = 2 * mean_Pa * sum.drop_Pa;
        byFlow = 2 * mean_Pa * sum.perFlow_PaSPerKg;
        byMean = 2 * (sum.drop_Pa + density_kgPerM3 * sum.perDensity_PaM3PerKg);
    }

    /** Pressure at the foot of the rise here; upstream where nothing rises. */
    public double foot_Pa(double upstream_Pa, double downstream_Pa) {
        return parts.stream()
                .flatMap(part -> part.foot().stream())
                .findFirst()
                .map(foot -> foot.rise().foot_Pa(upstream_Pa, downstream_Pa))
                .orElse(upstream_Pa);
    }

    /** Greatest velocity of least drop of the dusts that are lifted here, at a pressure of the foot [m/s]; 0 where none is. */
    public double leastDropVelocity_mPerS(double foot_Pa) {
        double greatest = 0;
        for (Part part : parts) {
            if (part.foot().isPresent()) {
                greatest = Math.max(
                        greatest, part.foot().get().leastDropVelocity_mPerS(foot_Pa, part.solids_kgPerS(), all_kgPerS));
            }
        }
        return greatest;
    }

    /** What the published laws ask at most of the dusts here, at the pressure upstream [m/s]; 0 where none is inside its range. */
    public double carryingVelocity_mPerS(double upstream_Pa) {
        double greatest = 0;
        for (Part part : parts) {
            greatest = Math.max(
                    greatest,
                    carrying(part, upstream_Pa)
                            .binding()
                            .map(b -> b.velocity().metresPerSecond())
                            .orElse(0.0));
        }
        return greatest;
    }

    /** Whether some law may be asked of every dust here for every way the tube lies, at the pressure upstream. */
    public boolean carryingKnown(double upstream_Pa) {
        return parts.stream()
                .allMatch(part -> carrying(part, upstream_Pa).notJudged().isEmpty());
    }

    private CarryingVelocity carrying(Part part, double upstream_Pa) {
        Conveyed conveyed = Conveyed.of(
                new MassFlow(all_kgPerS),
                part.dust().particle().orElseThrow(),
                new Density(air.density_kgPerM3(upstream_Pa)),
                new Viscosity(air.viscosity_PaS()),
                new Length(bore_m));
        return CarryingVelocity.of(part.dust(), conveyed, part.law().path().lies());
    }
}
