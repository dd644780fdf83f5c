package dustwright.bench;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dustwright.engine.air.Air;
import dustwright.engine.conveying.LevelFriction;
import dustwright.engine.network.State;
import dustwright.engine.plant.Held;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.Drive;
import dustwright.engine.producer.Machine;
import dustwright.engine.producer.StatedLoss;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.tubing.Bleed;
import dustwright.engine.tubing.Hose;
import dustwright.engine.tubing.Inlet;
import dustwright.engine.tubing.Run;
import dustwright.engine.tubing.Tool;
import dustwright.engine.tubing.Wall;
import java.util.Map;
import java.util.TreeMap;

/** Writes a plant of measured runs, in one state, as primary data in SI for the independent peer. Knows nothing of the engine's network. */
final class PeerNetwork {
    private final ObjectMapper json = new ObjectMapper();
    private final Plant plant;
    private final State state;
    private final ObjectNode out = json.createObjectNode();
    private final Map<String, Double> supplies = new TreeMap<>();

    private PeerNetwork(Plant plant, State state) {
        this.plant = plant;
        this.state = state;
    }

    static ObjectNode of(String name, Plant plant, State state) {
        PeerNetwork network = new PeerNetwork(plant, state);
        network.out.put("name", name);
        network.write();
        return network.out;
    }

    private void write() {
        Air air = plant.site().air();
        ObjectNode airNode = out.putObject("air");
        airNode.put("ambient", air.ambient().pascals());
        airNode.put("rt", air.rt());
        airNode.put("viscosity", air.viscosity_PaS());
        ObjectNode dusts = out.putObject("dusts");
        plant.dusts()
                .forEach(dust -> dust.particle()
                        .ifPresent(particle -> dusts.putObject(dust.id())
                                .put("size", particle.size().metres())
                                .put("density", particle.density().kgPerCubicMetre())
                                .put("hinkle", dust.levelFriction() == LevelFriction.HINKLE)));
        ArrayNode legs = out.putArray("legs");
        ArrayNode leaks = out.putArray("leaks");
        ArrayNode nozzles = out.putArray("nozzles");
        ObjectNode held = out.putObject("held");
        ArrayNode stations = out.putArray("stations");
        plant.runs().forEach(run -> run(run, legs.addObject()));
        plant.inlets().forEach(inlet -> inlet(inlet, legs, leaks, nozzles));
        for (Bleed bleed : plant.bleeds()) {
            if (state.openBleeds().contains(bleed.id())) {
                nozzle(nozzles, bleed.point(), bleed.area().squareMetres() * bleed.dischargeCoefficient());
            }
        }
        for (Held each : plant.held()) {
            if (each instanceof Held.Pressure pressure) {
                held.put(pressure.point(), pressure.pressure().pascals());
            } else if (each instanceof Held.Supply supply) {
                supplies.merge(supply.point(), supply.into().kgPerSecond(), Double::sum);
            }
        }
        plant.stations().forEach(station -> station(station, stations.addObject(), nozzles));
        ObjectNode supplyNode = out.putObject("supplies");
        supplies.forEach(supplyNode::put);
    }

    private void run(Run run, ObjectNode leg) {
        Run.Route.Measured route = (Run.Route.Measured) run.route();
        double head = run.from().equals(Run.STILL_AIR) ? 1 : 0;
        double fittings =
                run.fittings().stream().mapToDouble(f -> f.k() * f.count()).sum();
        leg.put("id", run.id()).put("from", run.from()).put("to", run.to());
        leg.put("bore", plant.tube(run.tube()).bore().metres());
        leg.put("length", route.length().metres()).put("k", route.k() + fittings + head);
        leg.put("rise", route.rise().metres());
        wall(leg, plant.tube(run.tube()).wall());
        run.wye().ifPresent(angle -> leg.put("wye_degrees", Math.toDegrees(angle.radians())));
    }

    private static void wall(ObjectNode leg, Wall wall) {
        if (wall instanceof Wall.Rough rough) {
            leg.put("roughness", rough.roughness().metres());
        } else if (wall instanceof Wall.FixedFactor fixed) {
            leg.put("friction", fixed.darcy());
        } else {
            throw new IllegalArgumentException("the peer does not know " + wall);
        }
    }

    private void inlet(Inlet inlet, ArrayNode legs, ArrayNode leaks, ArrayNode nozzles) {
        if (!state.open().contains(inlet.id())) {
            leaks.addObject().put("node", inlet.id()).put("c", inlet.leak().kgPerSecondPascal());
            return;
        }
        Hose hose = plant.hose(inlet.hose());
        ObjectNode leg = legs.addObject();
        leg.put("id", "hose " + inlet.id()).put("to", inlet.id());
        leg.put("bore", hose.bore().metres()).put("length", hose.length().metres());
        if (state.feeding().contains(inlet.id()) && inlet.feed().kgPerSecond() > 0) {
            leg.put("dust", inlet.dust().orElseThrow()).put("feed", inlet.feed().kgPerSecond());
        }
        wall(leg, hose.wall());
        Tool.Law law = plant.tool(inlet.tool()).law();
        if (law instanceof Tool.Law.VelocityHeads heads) {
            leg.put("from", Run.STILL_AIR).put("k", heads.k() + 1 + inlet.valveK());
        } else if (law instanceof Tool.Law.Opening opening) {
            leg.put("from", inlet.id() + "/tool").put("k", inlet.valveK());
            nozzle(nozzles, inlet.id() + "/tool", opening.area().squareMetres() * opening.dischargeCoefficient());
        } else {
            throw new IllegalArgumentException("the peer does not know " + law);
        }
    }

    private static void nozzle(ArrayNode nozzles, String node, double effectiveArea_m2) {
        nozzles.addObject().put("node", node).put("area", effectiveArea_m2);
    }

    private void station(Station station, ObjectNode node, ArrayNode nozzles) {
        String clean = station.id() + "/clean";
        String suction = station.safetyFilter().isPresent() ? station.id() + "/suction" : clean;
        node.put("receiver", station.id()).put("clean", clean).put("suction", suction);
        node.put("resistance", station.filter().resistance(state.filter()).pascalSecondsPerMetre());
        node.put("cloth", station.filter().cloth().squareMetres());
        station.safetyFilter().ifPresent(loss -> loss(node.putObject("safety"), loss));
        station.relief()
                .ifPresent(valve -> node.putObject("relief")
                        .put("set", valve.set().pascals())
                        .put("accumulation", valve.accumulation().pascals())
                        .put("rated", valve.rated().mass().kgPerSecond()));
        station.vent()
                .filter(v -> state.ventedStations().contains(station.id()))
                .ifPresent(v -> nozzle(nozzles, suction, v.area().squareMetres() * v.dischargeCoefficient()));
        station.rotaryValve().ifPresent(v -> {
            nozzle(nozzles, station.id(), v.clearance().squareMetres() * v.dischargeCoefficient());
            double ambientDensity =
                    plant.site().air().ambient().pascals() / plant.site().air().rt();
            double pockets = v.swept().cubicMetres() * v.speed().revolutionsPerSecond() * ambientDensity;
            supplies.merge(station.id(), pockets, Double::sum);
        });
        ArrayNode producers = node.putArray("producers");
        station.producers().stream()
                .filter(p -> state.runningProducers().contains(p.id()))
                .forEach(p -> producer(producers.addObject(), p));
    }

    private static void producer(ObjectNode node, VacuumProducer producer) {
        Machine.LobePump pump = (Machine.LobePump) producer.machine();
        node.put("id", producer.id());
        node.put("displacement", pump.displacement().cubicMetres());
        node.put("slip", pump.slipAtOnePsi().revolutionsPerSecond());
        if (producer.drive() instanceof Drive.Holding holding) {
            node.put("least", holding.least().revolutionsPerSecond());
            node.put("greatest", holding.greatest().revolutionsPerSecond());
            node.put("hold", holding.vacuum().pascals());
        } else {
            double speed = ((Drive.Fixed) producer.drive()).speed().revolutionsPerSecond();
            node.put("least", speed).put("greatest", speed);
        }
        producer.silencer().ifPresent(loss -> loss(node.putObject("silencer"), loss));
    }

    private static void loss(ObjectNode node, StatedLoss loss) {
        node.put("loss", loss.loss().pascals()).put("at", loss.at().mass().kgPerSecond());
    }
}
