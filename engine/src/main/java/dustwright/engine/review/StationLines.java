package dustwright.engine.review;

import dustwright.engine.finding.FindingCode;
import dustwright.engine.hazard.Protection;
import dustwright.engine.hazard.Protection.Method;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.sheet.Collecting;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Lines about receiver, filter, valve, container, producers and control of a station. */
final class StationLines {
    private final Collecting here;
    private final Station station;
    private final Asking asking;
    private final Set<String> place;
    private final String receiver;

    StationLines(Collecting here, Station station, Asking asking) {
        this.here = here;
        this.station = station;
        this.asking = asking;
        this.place = Set.of(station.id());
        this.receiver = "Receiver " + station.id();
    }

    List<Deviation> lines() {
        List<Line> lines = new ArrayList<>();
        if (!here.burning().isEmpty()) {
            lines.add(ignition());
            lines.add(smoulders());
        }
        lines.add(tooFull());
        lines.add(tooDeep());
        lines.add(torn());
        lines.add(blind());
        station.rotaryValve().ifPresent(valve -> {
            if (!here.burning().isEmpty()) {
                lines.add(passesFlame());
            }
            lines.add(stands());
            lines.add(hand());
        });
        if (station.container().isPresent()) {
            lines.add(overfilled());
            if (!here.burning().isEmpty()) {
                lines.add(bagCharge());
            }
            lines.add(change());
        }
        lines.add(hotProducer());
        lines.add(exhaust());
        lines.add(power());
        return lines.stream().map(Line::done).toList();
    }

    private Protection stated() {
        return station.receiver().protection();
    }

    // ---- receiver and filter

    private Line ignition() {
        return asking.line(
                        "receiver ignition",
                        receiver,
                        "the cloud on the dirty side is lit",
                        "ember, static spark, hot surface, metal on metal; pulses stir up what lies on the elements",
                        "explosion: the vessel bursts or vents, flame through main, valve and filter, people near it killed")
                .checked(place, FindingCode.EXPLOSION_PROTECTION, FindingCode.VENT_AREA)
                .values(here.burning())
                .checked(place, FindingCode.FILTER_STATIC)
                .byDetector("fire", "no signal of fire or explosion stops producers and valve")
                .toSee(near() + "; fire plan and fire service know the dust");
    }

    private String near() {
        return switch (stated().method().orElse(Method.NONE)) {
            case FLAMELESS_VENTING -> "nobody within the distance that the listing of the flameless device names";
            case SUPPRESSION, CONTAINMENT -> "nobody works beside the vessel longer than needed";
            case VENTING, NONE -> "nobody within reach of vent and fireball";
        };
    }

    private Line smoulders() {
        return asking.line(
                        "receiver smoulders",
                        receiver,
                        "dust smoulders on elements or in the hopper",
                        "an ember, self-heating of fat or damp dust left lying, a hot producer drawing through it",
                        "carbon monoxide; fire or explosion when somebody opens the vessel or a pulse stirs it")
                .byDetector("fire", "no signal of fire or explosion stops producers and valve")
                .toSee("emptied at the end of each shift; temperature or CO watched where the dust heats itself")
                .toSee("nobody opens a hot receiver; extinguishing agent fits the dust");
    }

    private Line tooFull() {
        return asking.line(
                        "receiver too-full",
                        receiver,
                        "dust stands too high",
                        "discharge stopped or too slow, bridge in the hopper, level probe failed or caked",
                        "dust reaches the filter, tears elements, goes to the producer; the load on the frame grows")
                .checked(
                        place,
                        FindingCode.LEVEL_PROBE_HEIGHT,
                        FindingCode.HOLD_UP,
                        FindingCode.HOPPER_OUTLET,
                        FindingCode.VALVE_CAPACITY)
                .interlock("receiver", "no stop by the receiver's high level")
                .interlock("blocked", "no alarm for a receiver that stays high")
                .design(station.receiver().probe().isPresent(), "level probe is drawn", "no level probe is drawn");
    }

    private Line tooDeep() {
        return asking.line(
                        "receiver too-deep",
                        receiver,
                        "vacuum deeper than the shell bears",
                        "all inlets shut, tubing blocked, relief valve stuck, iced up or set wrong",
                        "the shell folds in; the frame is pulled about; fragments")
                .design(station.relief().isPresent(), "vacuum relief valve is drawn", "no vacuum relief valve is drawn")
                .checked(place, FindingCode.SHELL_VACUUM, FindingCode.RELIEF_CAPACITY)
                .interlock("too_deep", "nothing unloads the producer while the relief valve blows")
                .toSee("relief valve tested at commissioning and at a set interval");
    }

    private Line torn() {
        return asking.line(
                        "filter torn",
                        "Filter " + station.id(),
                        "an element tears or sits loose",
                        "abrasion, wrong fitting, a shock of pressure, heat",
                        "dust in producer and exhaust air; a cloud on the clean side, where equipment is not made for it")
                .design(
                        station.safetyFilter().isPresent(),
                        "safety filter before the producers",
                        "no safety filter before the producers")
                .design(
                        stated().watched().orElse(false),
                        "dust in the exhaust air is watched, as stated",
                        "nothing is stated to tell dust in the exhaust air at once")
                .late("dust_behind_filter", "once the safety filter has loaded")
                .interlock("filter_torn", "no alarm for a filter drop that is too low");
    }

    private Line blind() {
        return asking.line(
                        "filter blind",
                        "Filter " + station.id(),
                        "elements blinded",
                        "damp, fat or fine dust; compressed air lost; too much air for the cloth",
                        "air too slow in the tubing; elements collapse; the producer gets hot")
                .checked(
                        place,
                        FindingCode.AIR_TO_CLOTH,
                        FindingCode.CAN_VELOCITY,
                        FindingCode.CLEANING_INTERVAL,
                        FindingCode.FILTER_TEMPERATURE,
                        FindingCode.FIBRE_UNFIT)
                .interlock("filter_due", "no alarm for a filter that is due")
                .interlock("air_warning", "no alarm for low compressed air");
    }

    // ---- discharge

    private Line passesFlame() {
        return asking.line(
                        "valve flame",
                        "Rotary valve " + station.id(),
                        "flame or burning dust passes the valve",
                        "gap too wide, too few vanes, valve turns on after an explosion",
                        "explosion or fire in bag or drum, beside the person who changes it")
                .checked(place, FindingCode.VALVE_ISOLATION)
                .byDetector("fire", "no signal of fire or explosion stops the valve");
    }

    private Line stands() {
        return asking.line(
                        "valve stands",
                        "Rotary valve " + station.id(),
                        "the valve stands, or turns empty",
                        "lump in the throat, broken chain, overload, worn tips",
                        "the receiver fills up; air leaks in; a jammed rotor rubs and gets hot")
                .checked(place, FindingCode.VALVE_THROAT, FindingCode.VALVE_TORQUE, FindingCode.VALVE_DIFFERENCE)
                .interlock("rotor_stands", "no stop when the valve does not turn")
                .interlock("rotor_drive", "no stop by overload of its motor");
    }

    private Line hand() {
        return asking.line(
                        "valve hand",
                        "Rotary valve " + station.id(),
                        "a hand reaches the rotor",
                        "clearing a jam from the bag spout or an open flange; the valve starts by itself",
                        "fingers cut off")
                .interlock("guard", "no stop by an open guard")
                .interlock("rotor_undriven", "no alarm for a valve that does not stop")
                .toSee("lockable isolator within reach; nobody clears a jam without it");
    }

    private Line overfilled() {
        return asking.line(
                        "container overfilled",
                        "Bag or drum " + station.id(),
                        "overfilled or overloaded",
                        "level probe or scale fails, bag not inflated, denser dust than meant",
                        "dust spills; a bag bursts or a loop tears when lifted; a truck tips")
                .checked(
                        place,
                        FindingCode.CONTAINER_LOAD,
                        FindingCode.SCALE_TOO_LATE,
                        FindingCode.ARMS_LOAD,
                        FindingCode.HEADROOM,
                        FindingCode.SPOUT_REACH)
                .interlock("container", "no stop by a full container");
    }

    private Line bagCharge() {
        return asking.line(
                        "container charge",
                        "Bag or drum " + station.id(),
                        "charge builds up while filling",
                        "bag of a wrong type, ground clip left off, plain liner, insulated stand or person",
                        "a spark or brush discharge lights the cloud in the bag; burns at the stand")
                .checked(
                        place,
                        FindingCode.BAG_STATIC,
                        FindingCode.DRUM_STATIC,
                        FindingCode.LINER_STATIC,
                        FindingCode.CONE_DISCHARGE)
                .toSee("ground clip proved before filling, best interlocked; floor and shoes dissipative");
    }

    private Line change() {
        return asking.line(
                        "container change",
                        "Bag or drum " + station.id(),
                        "dust comes out while it is changed",
                        "vacuum or air pressure on the spout, seal torn, dust still falling, people in a hurry",
                        "a cloud where people stand, with whatever lights it; breathing toxic or sensitizing dust")
                .checked(
                        place,
                        FindingCode.RECEIVER_DURING_CHANGE,
                        FindingCode.NECK_SEAL,
                        FindingCode.NECK_SEAL_LOOSE,
                        FindingCode.SOCK_VELOCITY,
                        FindingCode.BAG_UNDER_VACUUM,
                        FindingCode.DRUM_VACUUM)
                .interlock("container", "no hold while the container is changed")
                .toSee("breathing protection by the dust's class; floor cleaned by vacuum, not by broom or air");
    }

    // ---- producers, air, power

    private Line hotProducer() {
        Set<String> ids = new HashSet<>();
        station.producers().forEach((VacuumProducer p) -> ids.add(p.id()));
        Line hot = asking.line(
                        "producer hot",
                        "Vacuum producers " + station.id(),
                        "a producer runs hot or seizes",
                        "too little air, too deep a vacuum, dust or no oil in it, belt slipping",
                        "fire at the machine; hot exhaust air; sparks behind the filter")
                .checked(
                        ids,
                        FindingCode.PRODUCER_TEMPERATURE,
                        FindingCode.PRODUCER_VACUUM,
                        FindingCode.PRODUCER_POWER,
                        FindingCode.HOT_SURFACE)
                .checked(place, FindingCode.PRODUCER_PLACE, FindingCode.MOTOR_SURFACE);
        return station.producers().size() > 1
                ? hot.interlock("producers", "no stop by overload or heat of a producer")
                : hot.interlock("overload", "no stop by overload of the producer")
                        .interlock("discharge", "no stop by heat of the producer");
    }

    private Line exhaust() {
        return asking.line(
                        "exhaust back",
                        "Exhaust air " + station.id(),
                        "dust, flame or smoke comes out with the air",
                        "torn element, fire in the receiver, explosion on the dirty side",
                        "people in the room or yard breathe it or are burnt; dust settles where it was clean")
                .checked(place, FindingCode.EXHAUST_INDOORS, FindingCode.RETURN_ISOLATION, FindingCode.AFTER_FILTER)
                .design(
                        stated().exhaust()
                                .filter(e -> e == Protection.Exhaust.OUTDOORS)
                                .isPresent(),
                        "air goes outdoors as stated",
                        "air is not stated to go outdoors")
                .late("dust_behind_filter", "once the safety filter has loaded");
    }

    private Line power() {
        return asking.line(
                        "control power",
                        "Control " + station.id(),
                        "power, air or controller fails and comes back",
                        "dip, storm, broken wire, somebody resets",
                        "machines start while people work on them; vacuum stands with valves in the wrong place")
                .interlock("power", "nothing keeps machines from starting when power comes back")
                .interlock("air_stop", "no stop when compressed air is lost")
                .interlock("estop", "no emergency stop");
    }
}
