package dustwright.engine.audit;

import dustwright.engine.air.Air;
import dustwright.engine.finding.Place;
import dustwright.engine.network.BleedResult;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.InletResult;
import dustwright.engine.network.ProducerResult;
import dustwright.engine.network.StationResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.Machine;
import dustwright.engine.producer.ReliefValve;
import dustwright.engine.producer.StatedLoss;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.tubing.Bleed;
import dustwright.engine.tubing.Tool;
import java.util.List;
import java.util.Map;

/** Re-checks what passes leaks, openings, filters, valves and producers, from the pressures beside them. */
final class DeviceAudit {
    /** A flow may miss its law by this share of the greatest flow of the state [-]. */
    private static final double FLOW_SHARE = 1e-9;

    private static final double PASCALS_PER_PSI = 6894.757293168;
    private static final double SLIP_DENSITY_kgPerM3 = 1.2041;
    private final Plant plant;
    private final DutyPoint duty;
    private final Map<String, Double> pressure_Pa;
    private final Air air;
    private final double ambient_Pa;
    private final double scale_kgPerS;

    DeviceAudit(Plant plant, DutyPoint duty, Map<String, Double> pressure_Pa) {
        this.plant = plant;
        this.duty = duty;
        this.pressure_Pa = pressure_Pa;
        this.air = plant.site().air();
        this.ambient_Pa = air.ambient().pascals();
        double legs = duty.legs().stream()
                .mapToDouble(l -> Math.abs(l.flow().kgPerSecond()))
                .max()
                .orElse(0);
        double stations = duty.stations().stream()
                .mapToDouble(s -> s.vent().kgPerSecond() + s.relief().kgPerSecond())
                .max()
                .orElse(0);
        this.scale_kgPerS = Math.max(1e-4, Math.max(legs, stations));
    }

    void check(List<Discrepancy> found) {
        duty.inlets().forEach(inlet -> inlet(inlet, found));
        for (BleedResult bleed : duty.bleeds()) {
            Bleed valve = plant.bleeds().stream()
                    .filter(b -> b.id().equals(bleed.id()))
                    .findFirst()
                    .orElseThrow();
            double expected = bleed.open()
                    ? nozzle(valve.area().squareMetres() * valve.dischargeCoefficient(), at(bleed.point()))
                    : 0;
            report(
                    Place.Kind.BLEED,
                    bleed.id(),
                    "air through the opening",
                    bleed.flow().kgPerSecond() - expected,
                    found);
        }
        duty.stations().forEach(station -> station(station, found));
    }

    private double at(String node) {
        return pressure_Pa.getOrDefault(node, ambient_Pa);
    }

    private void inlet(InletResult result, List<Discrepancy> found) {
        if (!result.open()) {
            double squares = ambient_Pa * ambient_Pa - at(result.id()) * at(result.id());
            double leak = plant.inlet(result.id()).leak().kgPerSecondPascal();
            double expected = Math.signum(squares) * leak * Math.sqrt(Math.abs(squares));
            // near the barometer the leak is the root of a small difference: its own rounding is larger there
            double rounding = leak * ambient_Pa * 1e-6;
            double off = result.flow().kgPerSecond() - expected;
            report(
                    Place.Kind.INLET,
                    result.id(),
                    "leak of the closed valve",
                    Math.abs(off) <= rounding ? 0 : off,
                    found);
            return;
        }
        Tool.Law law = plant.tool(plant.inlet(result.id()).tool()).law();
        double into_Pa = at(result.id() + "/tool");
        if (law instanceof Tool.Law.Opening opening) {
            double bore_m = plant.hose(plant.inlet(result.id()).hose()).bore().metres();
            double effective_m2 = Math.min(
                    opening.area().squareMetres() * opening.dischargeCoefficient(), Math.PI * bore_m * bore_m / 4);
            double expected = nozzle(effective_m2, into_Pa);
            report(
                    Place.Kind.INLET,
                    result.id(),
                    "air through the tool",
                    result.flow().kgPerSecond() - expected,
                    found);
        } else if (law instanceof Tool.Law.Curve curve) {
            report(
                    Place.Kind.INLET,
                    result.id(),
                    "air through the tool",
                    outside(curve, ambient_Pa - into_Pa, result),
                    found);
        }
    }

    /** By how much a flow lies outside the two measured points that enclose its vacuum: a rising curve cannot leave them. */
    private static double outside(Tool.Law.Curve curve, double vacuum_Pa, InletResult result) {
        double low = 0;
        double high = 0;
        double size_Pa = Math.abs(vacuum_Pa);
        double flow = Math.abs(result.flow().kgPerSecond());
        for (Tool.CurvePoint point : curve.points()) {
            high = point.flow().mass().kgPerSecond();
            if (point.vacuum().pascals() >= size_Pa) {
                return Math.max(0, low - flow) + Math.max(0, flow - high);
            }
            low = high;
        }
        Tool.CurvePoint last = curve.points().get(curve.points().size() - 1);
        return flow - high * Math.sqrt(size_Pa / last.vacuum().pascals());
    }

    private void station(StationResult result, List<Discrepancy> found) {
        Station station = plant.station(result.id());
        double receiver_Pa = result.receiver().pascals();
        double suction_Pa = result.suction().pascals();
        double clean_Pa = at(station.id() + "/clean");
        double through = result.throughFilter().kgPerSecond();
        double ambientSquared = ambient_Pa * ambient_Pa;

        double filtration = 2
                * station.filter().resistance(duty.state().filter()).pascalSecondsPerMetre()
                * air.gasConstant_JPerKgK()
                * station.filter().temperature(air.temperature()).kelvin()
                / station.filter().cloth().squareMetres();
        double filterMiss = (receiver_Pa - clean_Pa) * (receiver_Pa + clean_Pa) - filtration * through;
        reportLaw(Place.Kind.FILTER, station.id(), "filter law", filterMiss / ambientSquared, found);
        double safety = station.safetyFilter()
                .map(loss -> 2 * ambient_Pa * lossAt(loss, through))
                .orElse(0.0);
        double safetyMiss = (clean_Pa - suction_Pa) * (clean_Pa + suction_Pa) - Math.signum(through) * safety;
        reportLaw(Place.Kind.SAFETY_FILTER, station.id(), "safety filter law", safetyMiss / ambientSquared, found);

        double relief = station.relief()
                .map(valve -> relief(valve, ambient_Pa - suction_Pa))
                .orElse(0.0);
        report(
                Place.Kind.RELIEF_VALVE,
                station.id(),
                "air through the relief valve",
                result.relief().kgPerSecond() - relief,
                found);
        boolean vented = duty.state().ventedStations().contains(station.id());
        double vent = station.vent()
                .filter(v -> vented)
                .map(v -> nozzle(v.area().squareMetres() * v.dischargeCoefficient(), suction_Pa))
                .orElse(0.0);
        report(
                Place.Kind.VENT_VALVE,
                station.id(),
                "air through the vent valve",
                result.vent().kgPerSecond() - vent,
                found);
        double rotary = station.rotaryValve()
                .map(v -> nozzle(v.clearance().squareMetres() * v.dischargeCoefficient(), receiver_Pa)
                        + v.swept().cubicMetres() * v.speed().revolutionsPerSecond() * ambient_Pa / air.rt())
                .orElse(0.0);
        report(
                Place.Kind.ROTARY_VALVE,
                station.id(),
                "air through the rotary valve",
                result.rotaryValve().kgPerSecond() - rotary,
                found);
        for (int n = 0; n < station.producers().size(); n++) {
            producer(station.producers().get(n), result.producers().get(n), suction_Pa, found);
        }
    }

    /** Loss at ambient density [Pa]. */
    private double lossAt(StatedLoss loss, double flow_kgPerS) {
        double share = flow_kgPerS / loss.at().mass().kgPerSecond();
        double siteDensity = ambient_Pa / air.rt();
        double thinner =
                loss.state() == StatedLoss.State.STANDARD ? FreeAirFlow.REFERENCE_DENSITY_kgPerM3 / siteDensity : 1;
        return loss.loss().pascals() * thinner * share * share;
    }

    /** With the nozzle above full opening in its own arithmetic: w² ~ r^1.4286 − r^1.7143 at γ = 1.4, no more below r = 0.528282. */
    private double relief(ReliefValve valve, double vacuum_Pa) {
        double rated = valve.rated().cubicMetresPerSecond() * FreeAirFlow.REFERENCE_DENSITY_kgPerM3;
        double full_Pa = valve.set().pascals() + valve.accumulation().pascals();
        if (vacuum_Pa > full_Pa) {
            return rated * Math.sqrt(opened(vacuum_Pa) / opened(full_Pa));
        }
        return rated
                * Math.max(0, vacuum_Pa - valve.set().pascals())
                / valve.accumulation().pascals();
    }

    private double opened(double vacuum_Pa) {
        double r = Math.max(1 - vacuum_Pa / ambient_Pa, 0.5282817877);
        return Math.pow(r, 10.0 / 7) - Math.pow(r, 12.0 / 7);
    }

    private void producer(VacuumProducer producer, ProducerResult result, double suction_Pa, List<Discrepancy> found) {
        if (!result.running() || !(producer.machine() instanceof Machine.LobePump pump)) {
            return;
        }
        double flow = result.flow().kgPerSecond();
        double density = suction_Pa / air.rt();
        double silencer_Pa = producer.silencer().map(s -> lossAt(s, flow)).orElse(0.0);
        double difference_Pa = ambient_Pa + silencer_Pa - suction_Pa;
        double slipTurns = pump.slipAtOnePsi().revolutionsPerSecond()
                * Math.sqrt(Math.abs(difference_Pa) / PASCALS_PER_PSI * SLIP_DENSITY_kgPerM3 / density)
                * Math.signum(difference_Pa);
        double turns = result.speed().revolutionsPerSecond() - slipTurns;
        double expected = Math.max(0, density * pump.displacement().cubicMetres() * turns);
        report(Place.Kind.PRODUCER, producer.id(), "air taken by the pump", flow - expected, found);
    }

    /** Isentropic nozzle from the velocity in its throat: w = Cd A ρ v with v² = 2 cp T (1 − T/T0). */
    private double nozzle(double effectiveArea_m2, double into_Pa) {
        double high_Pa = Math.max(ambient_Pa, into_Pa);
        double low_Pa = Math.min(ambient_Pa, into_Pa);
        double gamma = Air.GAMMA;
        double critical = Math.pow(2 / (gamma + 1), gamma / (gamma - 1));
        double ratio = Math.max(low_Pa / high_Pa, critical);
        double coldness = Math.pow(ratio, (gamma - 1) / gamma);
        double throat_mPerS = Math.sqrt(2 * gamma / (gamma - 1) * air.rt() * (1 - coldness));
        double density = high_Pa / air.rt() * Math.pow(ratio, 1 / gamma);
        return Math.signum(ambient_Pa - into_Pa) * effectiveArea_m2 * density * throat_mPerS;
    }

    private void report(Place.Kind kind, String id, String what, double off_kgPerS, List<Discrepancy> found) {
        reportLaw(kind, id, what, off_kgPerS / scale_kgPerS, found);
    }

    private void reportLaw(Place.Kind kind, String id, String what, double off, List<Discrepancy> found) {
        if (!(Math.abs(off) <= FLOW_SHARE)) {
            found.add(new Discrepancy(new Place(kind, id), what, new Ratio(off), new Ratio(FLOW_SHARE)));
        }
    }
}
