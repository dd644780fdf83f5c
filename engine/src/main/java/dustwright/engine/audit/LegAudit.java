package dustwright.engine.audit;

import dustwright.engine.air.Air;
import dustwright.engine.finding.Place;
import dustwright.engine.network.LegResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.tubing.Wall;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Re-checks the isothermal law of one leg in plain pressures, the direction of flow turned forward, with friction solved by
 * substitution instead of Newton's method.
 */
final class LegAudit {
    /** A law may miss by this share of the site's ambient pressure squared, a velocity by this share of itself [-]. */
    private static final double LAW_SHARE = 1e-9;

    private static final int SUBSTITUTIONS = 60;

    private final Plant plant;
    private final Air air;
    private final Map<String, Double> pressure_Pa;
    private final Map<String, Double> junction;
    private final Map<String, Wall> ofRun = new HashMap<>();
    private final Map<String, Wall> ofHose = new HashMap<>();

    LegAudit(Plant plant, Map<String, Double> pressure_Pa, Map<String, Double> junction) {
        this.plant = plant;
        this.air = plant.site().air();
        this.pressure_Pa = pressure_Pa;
        this.junction = junction;
        Map<String, Wall> wall = new HashMap<>();
        plant.tubes().forEach(tube -> wall.put(tube.id(), tube.wall()));
        plant.runs().forEach(run -> ofRun.put(run.id(), wall.get(run.tube())));
        plant.hoses().forEach(hose -> wall.put(hose.id(), hose.wall()));
        plant.inlets().forEach(inlet -> ofHose.put(inlet.id(), wall.get(inlet.hose())));
    }

    void check(LegResult leg, List<Discrepancy> found) {
        double ambient_Pa = air.ambient().pascals();
        double area_m2 = Math.PI * leg.bore().metres() * leg.bore().metres() / 4;
        double flux = leg.flow().kgPerSecond() / area_m2;
        double sonic_Pa = Math.abs(flux) * Math.sqrt(air.rt());
        double start_Pa = pressureAt(leg.from());
        double end_Pa = pressureAt(leg.to());
        double loss_Pa = leg.junctionLoss().pascals();
        double endInTube_Pa = Math.sqrt(end_Pa * end_Pa + 2 * end_Pa * loss_Pa);

        boolean forward = flux >= 0;
        double up_Pa = forward ? start_Pa : endInTube_Pa;
        double down_Pa = Math.max(forward ? endInTube_Pa : start_Pa, sonic_Pa);
        double resistance = friction(leg) * leg.frictionLength() + leg.k() + 2 * Math.log(up_Pa / down_Pa);
        double atRest = leg.reynolds() == 0 ? up_Pa * up_Pa - down_Pa * down_Pa : 0;
        double ofDust_Pa = new SolidsAudit(plant, leg, (up_Pa + down_Pa) / 2).drop_Pa();
        double missed = leg.reynolds() == 0
                ? atRest
                : up_Pa * up_Pa
                        - down_Pa * down_Pa
                        - flux * flux * air.rt() * resistance
                        - (up_Pa + down_Pa) * ofDust_Pa;
        report(leg, "leg law", missed / (ambient_Pa * ambient_Pa), found);
        report(leg, "drop by dust", (leg.solidsDrop().pascals() - ofDust_Pa) / ambient_Pa, found);
        report(
                leg,
                "pressure at the drawn start",
                relative(leg.pressureFrom().pascals(), forward ? up_Pa : down_Pa),
                found);
        report(
                leg,
                "pressure at the drawn end",
                relative(leg.pressureTo().pascals(), forward ? down_Pa : up_Pa),
                found);
        report(
                leg,
                "velocity at the drawn start",
                velocity(
                        leg.velocityFrom().metresPerSecond(),
                        flux,
                        leg.pressureFrom().pascals()),
                found);
        report(
                leg,
                "velocity at the drawn end",
                velocity(
                        leg.velocityTo().metresPerSecond(),
                        flux,
                        leg.pressureTo().pascals()),
                found);
        double expectedLoss = junction.getOrDefault(key(leg), 0.0);
        report(leg, "junction loss", (loss_Pa * 2 * end_Pa - expectedLoss) / (ambient_Pa * ambient_Pa), found);
        boolean sonic = sonic_Pa > (forward ? endInTube_Pa : start_Pa) * (1 + LAW_SHARE);
        report(leg, "choked or not", sonic && !leg.choked() ? 1 : 0, found);
    }

    static String key(LegResult leg) {
        return leg.kind() + " " + leg.id();
    }

    private double pressureAt(String node) {
        Double pressure = pressure_Pa.get(node);
        if (pressure == null) {
            throw new IllegalArgumentException("the result has no pressure for " + node);
        }
        return pressure;
    }

    private double velocity(double stated_mPerS, double flux, double pressure_Pa) {
        double expected_mPerS = Math.abs(flux) * air.rt() / pressure_Pa;
        return expected_mPerS == 0 ? stated_mPerS : relative(stated_mPerS, expected_mPerS);
    }

    private static double relative(double stated, double expected) {
        return (stated - expected) / expected;
    }

    private void report(LegResult leg, String what, double off, List<Discrepancy> found) {
        if (!(Math.abs(off) <= LAW_SHARE)) {
            Place.Kind kind = leg.kind() == LegResult.Kind.RUN ? Place.Kind.RUN : Place.Kind.INLET;
            Quantity allowed = new Ratio(LAW_SHARE);
            found.add(new Discrepancy(new Place(kind, leg.id()), what, new Ratio(off), allowed));
        }
    }

    /** Darcy factor of the leg from its own flow and wall. */
    private double friction(LegResult leg) {
        double reynolds =
                4 * Math.abs(leg.flow().kgPerSecond()) / (Math.PI * leg.bore().metres() * air.viscosity_PaS());
        Wall wall = wall(leg);
        if (wall instanceof Wall.FixedFactor fixed) {
            return fixed.darcy();
        }
        if (wall instanceof Wall.Corrugated corrugated) {
            return corrugated(leg.bore().metres(), corrugated.pitch().metres());
        }
        double roughness = ((Wall.Rough) wall).roughness().metres() / leg.bore().metres();
        double laminar = reynolds == 0 ? 0 : 64 / reynolds;
        double x = Math.min(1, Math.max(0, reynolds / 2000 - 1));
        double share = x * x * (3 - 2 * x);
        return share == 0 ? laminar : laminar + share * (colebrook(reynolds, roughness) - laminar);
    }

    /** One Borda-Carnot expansion to D + 0.438 S per pitch S. */
    private static double corrugated(double bore_m, double pitch_m) {
        double widening = 1 - Math.pow(1 + 0.438 * pitch_m / bore_m, -2);
        return widening * widening * bore_m / pitch_m;
    }

    /** 1/√f = −2 log10(ε/(3.7 D) + 2.51/(Re √f)), by substitution: every round brings about one digit. */
    private static double colebrook(double reynolds, double roughness) {
        double inverseRoot = 8;
        for (int n = 0; n < SUBSTITUTIONS; n++) {
            double next = -2 * Math.log10(roughness / 3.7 + 2.51 * inverseRoot / reynolds);
            if (Math.abs(next - inverseRoot) < 1e-13) {
                break;
            }
            inverseRoot = next;
        }
        return 1 / (inverseRoot * inverseRoot);
    }

    private Wall wall(LegResult leg) {
        return Objects.requireNonNull((leg.kind() == LegResult.Kind.RUN ? ofRun : ofHose).get(leg.id()));
    }
}
