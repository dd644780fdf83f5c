package dustwright.documents.answers;

import dustwright.engine.Carrying;
import dustwright.engine.StateAnswer;
import dustwright.engine.conveying.CarryingVelocity;
import dustwright.engine.conveying.LawAnswer;
import dustwright.engine.finding.Outcome;
import dustwright.engine.network.DustStream;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.LegResult;
import dustwright.engine.network.ProducerResult;
import dustwright.engine.network.State;
import dustwright.engine.network.StationResult;
import dustwright.engine.plant.Plant;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;

/** One state: what was asked, and every pressure, flow and velocity of the answer. */
final class StateJson {
    private StateJson() {}

    static void state(JsonText json, Plant plant, StateAnswer answer) {
        asked(json, answer.state());
        solvedOrWhy(json, answer);
        if (answer.duty() instanceof Outcome.Solved<DutyPoint> solved) {
            duty(json, plant, solved.value());
        }
    }

    static void asked(JsonText json, State state) {
        json.text("name", state.name());
        json.texts("open", state.open());
        json.texts(
                "feeding",
                state.open().stream().filter(state.feeding()::contains).toList());
        json.text("filter", state.filter().name().toLowerCase(Locale.ROOT));
        json.texts("openBleeds", new TreeSet<>(state.openBleeds()));
        json.texts("ventedStations", new TreeSet<>(state.ventedStations()));
        json.texts("runningProducers", new TreeSet<>(state.runningProducers()));
    }

    static void solvedOrWhy(JsonText json, StateAnswer answer) {
        json.bool("solved", answer.duty() instanceof Outcome.Solved);
        if (answer.duty() instanceof Outcome.NotSolved<DutyPoint> not) {
            json.text("why", not.why());
        }
    }

    private static void duty(JsonText json, Plant plant, DutyPoint duty) {
        json.bool("unchoked", duty.unchoked());
        json.bool("dilute", duty.dilute());
        json.object("convergence", () -> {
            json.text("method", duty.convergence().method());
            json.count("iterations", duty.convergence().iterations());
            json.si("worstBalance_kgPerS", duty.convergence().worstBalance());
            json.number("worstLegError", duty.convergence().worstLegError());
        });
        json.list("nodes", duty.nodes(), node -> {
            json.text("id", node.id());
            json.si("pressure_Pa", node.pressure());
            json.si("vacuum_Pa", node.vacuum());
        });
        json.list("legs", duty.legs(), leg -> leg(json, plant, leg));
        json.list("inlets", duty.inlets(), inlet -> {
            json.text("id", inlet.id());
            json.bool("open", inlet.open());
            json.si("flow_kgPerS", inlet.flow());
            json.si("vacuumAtValve_Pa", inlet.vacuumAtValve());
            json.bool("choked", inlet.choked());
        });
        json.list("bleeds", duty.bleeds(), bleed -> {
            json.text("id", bleed.id());
            json.bool("open", bleed.open());
            json.si("flow_kgPerS", bleed.flow());
        });
        json.list("stations", duty.stations(), station -> station(json, station));
    }

    private static void leg(JsonText json, Plant plant, LegResult leg) {
        json.text("id", leg.id());
        json.text("kind", leg.kind().name().toLowerCase(Locale.ROOT));
        json.text("from", leg.from());
        json.text("to", leg.to());
        json.si("bore_m", leg.bore());
        json.si("flow_kgPerS", leg.flow());
        json.si("pressureFrom_Pa", leg.pressureFrom());
        json.si("pressureTo_Pa", leg.pressureTo());
        json.si("velocityFrom_mPerS", leg.velocityFrom());
        json.si("velocityTo_mPerS", leg.velocityTo());
        json.number("reynolds", leg.reynolds());
        json.number("frictionFactor", leg.frictionFactor());
        json.number("frictionLength", leg.frictionLength());
        json.number("k", leg.k());
        json.si("junctionLoss_Pa", leg.junctionLoss());
        json.si("dust_kgPerS", leg.dust());
        json.number("loading", leg.loading());
        json.si("solidsDrop_Pa", leg.solidsDrop());
        json.list("streams", leg.streams(), stream -> stream(json, stream));
        json.list("carrying", Carrying.of(plant, leg), laws -> {
            json.text("dust", laws.dust());
            json.list("laws", laws.weighed(), one -> law(json, one));
        });
        json.bool("choked", leg.choked());
    }

    private static void stream(JsonText json, DustStream stream) {
        json.text("dust", stream.dust());
        json.si("flow_kgPerS", stream.flow());
        stream.drop()
                .ifPresent(drop -> json.object("drop", () -> {
                    json.si("acceleration_Pa", drop.acceleration());
                    json.si("frictionLevel_Pa", drop.frictionLevel());
                    json.si("frictionUpright_Pa", drop.frictionUpright());
                    json.si("lift_Pa", drop.lift());
                    json.si("bends_Pa", drop.bends());
                    json.text("levelFriction", drop.levelFriction().words());
                    json.si("gasVelocity_mPerS", drop.gasVelocity());
                    json.si("particleLevel_mPerS", drop.particleLevel());
                    drop.particleRising().ifPresent(v -> json.si("particleRising_mPerS", v));
                    drop.leastDropVelocity().ifPresent(v -> json.si("leastDropVelocity_mPerS", v));
                    json.bool("held", drop.held());
                }));
        stream.foot()
                .ifPresent(foot -> json.object("riserFoot", () -> {
                    json.si("pressure_Pa", foot.pressure());
                    json.si("gasVelocity_mPerS", foot.gas());
                    json.si("leastDropVelocity_mPerS", foot.leastDrop());
                }));
    }

    private static void law(JsonText json, CarryingVelocity.Weighed one) {
        json.text("law", one.law().words());
        json.text("equation", one.law().equation());
        json.text("orientation", one.law().orientation().name().toLowerCase(Locale.ROOT));
        json.bool("inside", one.answer() instanceof LawAnswer.Inside);
        if (one.answer() instanceof LawAnswer.Inside inside) {
            json.si("velocity_mPerS", inside.velocity());
        } else if (one.answer() instanceof LawAnswer.OutsideRange outside) {
            json.texts("why", outside.why());
        } else if (one.answer() instanceof LawAnswer.NoAnswer none) {
            json.texts("why", List.of(none.why()));
        }
    }

    private static void station(JsonText json, StationResult station) {
        json.text("id", station.id());
        json.si("receiver_Pa", station.receiver());
        json.si("throughFilter_kgPerS", station.throughFilter());
        json.si("receiverFlow_m3PerS", station.receiverFlow());
        json.si("filterLoss_Pa", station.filterLoss());
        json.si("safetyFilterLoss_Pa", station.safetyFilterLoss());
        json.si("suction_Pa", station.suction());
        json.si("relief_kgPerS", station.relief());
        json.si("vent_kgPerS", station.vent());
        json.si("rotaryValve_kgPerS", station.rotaryValve());
        json.list("producers", station.producers(), producer -> producer(json, producer));
    }

    private static void producer(JsonText json, ProducerResult producer) {
        json.text("id", producer.id());
        json.bool("running", producer.running());
        json.bool("checkValveShut", producer.checkValveShut());
        json.bool("beyondPoints", producer.beyondPoints());
        json.si("speed_perS", producer.speed());
        json.si("flow_kgPerS", producer.flow());
        json.si("inletFlow_m3PerS", producer.inletFlow());
        json.si("inletPressure_Pa", producer.inletPressure());
        json.si("vacuum_Pa", producer.vacuum());
        json.si("difference_Pa", producer.difference());
        json.si("shaftPower_W", producer.shaftPower());
        json.si("rise_K", producer.rise());
    }
}
