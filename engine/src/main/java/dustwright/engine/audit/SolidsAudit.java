package dustwright.engine.audit;

import dustwright.engine.air.Air;
import dustwright.engine.conveying.Dust;
import dustwright.engine.conveying.LevelFriction;
import dustwright.engine.conveying.Particle;
import dustwright.engine.conveying.TerminalVelocity;
import dustwright.engine.network.DustStream;
import dustwright.engine.network.LegResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.tubing.Position;
import dustwright.engine.tubing.Run;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * What the dust in a leg costs, once more from plant and result, stretch by stretch along the way it takes. A stream that is held at its
 * least drop is taken at the gas velocity the result says.
 */
final class SolidsAudit {
    private static final double G = 9.80665;
    /** A drop below this is none: air next to rest carries next to nothing. */
    private static final double NOTHING_Pa = 1e-9;

    private final Plant plant;
    private final LegResult leg;
    private final Air air;
    private final double density;
    private final double area_m2;

    SolidsAudit(Plant plant, LegResult leg, double meanPressure_Pa) {
        this.plant = plant;
        this.leg = leg;
        this.air = plant.site().air();
        this.density = meanPressure_Pa / air.rt();
        this.area_m2 = Math.PI * leg.bore().metres() * leg.bore().metres() / 4;
    }

    double drop_Pa() {
        if (leg.solidsDrop().pascals() < NOTHING_Pa) {
            return 0;
        }
        double all = leg.streams().stream()
                .filter(stream -> stream.drop().isPresent())
                .mapToDouble(stream -> stream.flow().kgPerSecond())
                .sum();
        double sum_Pa = 0;
        for (DustStream stream : leg.streams()) {
            sum_Pa += stream.drop().isPresent() ? drop_Pa(stream, all / area_m2) : 0;
        }
        return sum_Pa;
    }

    private double drop_Pa(DustStream stream, double fluxOfAll) {
        Dust dust = plant.dust(stream.dust());
        Particle particle = dust.particle().orElseThrow();
        double flux = stream.flow().kgPerSecond() / area_m2;
        double actual = Math.abs(leg.flow().kgPerSecond()) / (density * area_m2);
        boolean held = stream.drop().orElseThrow().held();
        double gas = held
                ? stream.drop().orElseThrow().leastDropVelocity().orElseThrow().metresPerSecond()
                : actual;
        double byLaw = 1
                - Math.min(
                        0.75,
                        0.0638
                                * Math.pow(particle.size().metres(), 0.3)
                                * Math.pow(particle.density().kgPerCubicMetre(), 0.5));
        double level = gas * particle.levelSpeed().map(speed -> speed.value()).orElse(byLaw);
        double sum_Pa = 0;
        double rising = gas - falling_mPerS(particle);
        sum_Pa += leg.kind() == LegResult.Kind.HOSE ? flux * level : 0;
        for (Stretch stretch : stretches()) {
            double height_m = Math.abs(stretch.up_m);
            double flat_m = stretch.length_m - height_m;
            double climbing = Math.max(0, stretch.up_m) / stretch.length_m;
            double mean = rising * climbing + level * (1 - climbing);
            double kept = Math.exp(Math.log(0.75) * stretch.turn_rad / (Math.PI / 2));
            sum_Pa += flux * mean * (1 - kept);
            sum_Pa += stretch.up_m > 0 ? flux * G * stretch.up_m / rising : 0;
            sum_Pa += 0.057 * flux * height_m * Math.sqrt(G / leg.bore().metres());
            sum_Pa += levelFriction_Pa(dust.levelFriction(), particle, flux, fluxOfAll, gas, level) * flat_m;
        }
        return sum_Pa * Math.min(1, actual);
    }

    /** Per metre: Hinkle's by the drag on a lagging particle, Yang's by his factor on G²/(ρ_p c). */
    private double levelFriction_Pa(
            LevelFriction form, Particle particle, double flux, double fluxOfAll, double gas, double level) {
        double bore = leg.bore().metres();
        double heavy = particle.density().kgPerCubicMetre();
        double size = particle.size().metres();
        double fanning;
        if (form != LevelFriction.YANG && gas == level) {
            return 0;
        }
        if (form == LevelFriction.YANG) {
            // the share of dust is neglected against 1 and goes by all dusts of the leg, at this one's velocity
            double shareOfAll = fluxOfAll / (heavy * level);
            fanning = 0.117 / 4 * shareOfAll * Math.pow(shareOfAll * gas / Math.sqrt(G * bore), -1.15);
        } else {
            double slip = gas - level;
            double reynolds = density * slip * size / air.viscosity_PaS();
            double drag = Math.max(24 / reynolds, Math.max(18.5 / Math.pow(reynolds, 0.6), 0.44));
            fanning = 3.0 / 8 * density / heavy * bore / size * drag * slip * slip / (level * level);
        }
        return 2 * fanning * flux * level / bore;
    }

    /** Velocity of a sphere in still air, by a power through its values at all and half of the site's density. */
    private double falling_mPerS(Particle particle) {
        double site = air.ambient().pascals() / air.rt();
        double atSite =
                TerminalVelocity.ofSphere(particle, site, air.viscosity_PaS()).metresPerSecond();
        double atHalf = TerminalVelocity.ofSphere(particle, site / 2, air.viscosity_PaS())
                .metresPerSecond();
        return atSite * Math.pow(atHalf / atSite, Math.log(density / site) / Math.log(0.5));
    }

    /** A piece of the way: its length, by how much it rises, and the bend before it. */
    private record Stretch(double length_m, double up_m, double turn_rad) {}

    private List<Stretch> stretches() {
        if (leg.kind() == LegResult.Kind.HOSE) {
            double length_m = plant.hose(plant.inlet(leg.id()).hose()).length().metres();
            return List.of(new Stretch(length_m, 0, 0));
        }
        boolean forward = leg.flow().kgPerSecond() >= 0;
        Run.Route route = plant.run(leg.id()).route();
        if (route instanceof Run.Route.Measured measured) {
            double up_m = (forward ? 1 : -1) * measured.rise().metres();
            return List.of(new Stretch(measured.length().metres(), up_m, 0));
        }
        List<Position> corners = new ArrayList<>(((Run.Route.Drawn) route).corners());
        if (!forward) {
            Collections.reverse(corners);
        }
        List<Stretch> stretches = new ArrayList<>();
        for (int n = 1; n < corners.size(); n++) {
            double length_m = corners.get(n).distanceTo(corners.get(n - 1)).metres();
            double up_m = corners.get(n).z_m() - corners.get(n - 1).z_m();
            double turn_rad = n == 1 ? 0 : turn_rad(corners.get(n - 2), corners.get(n - 1), corners.get(n));
            stretches.add(new Stretch(length_m, up_m, turn_rad));
        }
        return stretches;
    }

    /** Angle between two stretches, from the lengths of the triangle they span. */
    private static double turn_rad(Position a, Position b, Position c) {
        double ab = a.distanceTo(b).metres();
        double bc = b.distanceTo(c).metres();
        double ac = a.distanceTo(c).metres();
        double cosine = (ac * ac - ab * ab - bc * bc) / (2 * ab * bc);
        return Math.acos(Math.max(-1, Math.min(1, cosine)));
    }
}
