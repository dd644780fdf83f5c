package dustwright.plantfile;

import dustwright.engine.finding.Source;
import dustwright.engine.hazard.Protection;
import dustwright.engine.producer.SafetyFilterRating;
import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.quantity.Angle;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.CakeResistance;
import dustwright.engine.quantity.FilterResistance;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.Stress;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.quantity.Torque;
import dustwright.engine.quantity.Volume;
import dustwright.engine.receiver.ClothDust;
import dustwright.engine.receiver.Filter;
import dustwright.engine.receiver.FilterService;
import dustwright.engine.receiver.FlowFunction;
import dustwright.engine.receiver.Hopper;
import dustwright.engine.receiver.HopperDust;
import dustwright.engine.receiver.LevelProbe;
import dustwright.engine.receiver.Receiver;
import dustwright.engine.receiver.ReceiverInlet;
import dustwright.engine.receiver.Shell;
import dustwright.engine.receiver.ShellMaterial;
import dustwright.engine.receiver.SidePlace;
import dustwright.engine.rotaryvalve.RotaryValve;
import dustwright.engine.rotaryvalve.ValveBuild;
import dustwright.engine.rotaryvalve.ValveCapacity;
import dustwright.plantfile.keys.ReceiverKeys;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes receivers, filters and rotary valves, and what a dust is like in them. */
final class ReceiverBinder {
    private ReceiverBinder() {}

    static Receiver receiver(Section station) {
        return described(station.section("receiver")
                .orElseGet(() -> new Section(
                        ReceiverKeys.RECEIVER,
                        station.id(),
                        station.path() + ".receiver",
                        station.span(),
                        Map.of(),
                        station.taken())));
    }

    private static Receiver described(Section receiver) {
        Optional<ReceiverInlet> inlet = receiver.section("inlet").map(ReceiverBinder::inlet);
        return new Receiver(
                receiver.find("diameter", Length.class),
                receiver.find("elements down to", Length.class),
                receiver.find("free area", Area.class),
                receiver.find("straight side", Length.class),
                receiver.section("shell").map(ReceiverBinder::shell),
                receiver.section("hopper")
                        .map(h -> new Hopper(h.get("half angle", Angle.class), h.get("outlet", Length.class))),
                inlet,
                receiver.section("level probe").map(p -> probe(p, inlet.flatMap(ReceiverInlet::place))),
                receiver.get("pre-separation", Ratio.class),
                receiver.section("explosion").map(HazardBinder::protection).orElse(Protection.UNKNOWN));
    }

    private static Shell shell(Section shell) {
        ShellMaterial material =
                Worded.of(ShellMaterial.values(), ShellMaterial::words, shell.get("material", String.class));
        return new Shell(
                shell.get("thickness", Length.class),
                material,
                shell.get("rings", Integer.class),
                shell.get("factor", Ratio.class));
    }

    private static ReceiverInlet inlet(Section inlet) {
        Optional<ReceiverInlet.Slot> slot = inlet.find("width", Length.class)
                .map(width -> new ReceiverInlet.Slot(width, inlet.get("height", Length.class)));
        return new ReceiverInlet(place(inlet), inlet.find("low edge", Length.class), slot);
    }

    private static LevelProbe probe(Section probe, Optional<SidePlace> inlet) {
        Optional<SidePlace> place = place(probe)
                .or(() -> inlet.map(SidePlace::ofProbe).map(usual -> {
                    probe.derive("place", usual.words());
                    return usual;
                }));
        return new LevelProbe(place, probe.find("height", Length.class));
    }

    private static Optional<SidePlace> place(Section part) {
        return part.find("place", String.class).map(words -> Worded.of(SidePlace.values(), SidePlace::words, words));
    }

    static Filter filter(Section filter) {
        Area cloth = filter.get("cloth", Area.class);
        FilterService service = new FilterService(
                filter.find("temperature", Temperature.class),
                filter.find("surge temperature", Temperature.class),
                filter.find("fibre", String.class),
                filter.get("hot and moist", Boolean.class),
                filter.find("application", String.class),
                filter.find("dissipative", Boolean.class),
                filter.find("food contact", Boolean.class),
                filter.find("greatest difference", PressureDifference.class));
        Optional<Section> resistance = filter.section("resistance");
        if (resistance.isPresent()) {
            Section r = resistance.get();
            return new Filter(
                    cloth,
                    r.get("clean", FilterResistance.class),
                    r.get("normal", FilterResistance.class),
                    r.get("dirty", FilterResistance.class),
                    service);
        }
        Section drop = filter.section("pressure drop").orElseThrow();
        double velocity_mPerS = drop.get("at", ActualVolumeFlow.class).cubicMetresPerSecond() / cloth.squareMetres();
        return new Filter(
                cloth,
                over(drop.get("clean", PressureDifference.class), velocity_mPerS),
                over(drop.get("normal", PressureDifference.class), velocity_mPerS),
                over(drop.get("dirty", PressureDifference.class), velocity_mPerS),
                service);
    }

    private static FilterResistance over(PressureDifference drop, double velocity_mPerS) {
        return new FilterResistance(drop.pascals() / velocity_mPerS);
    }

    static SafetyFilterRating rating(Section safety) {
        return new SafetyFilterRating(safety.find("class", String.class), safety.find("greatest", FreeAirFlow.class));
    }

    static RotaryValve rotaryValve(Section valve) {
        if (valve.number("fill") > ValveCapacity.USUAL_FILL) {
            valve.taken()
                    .record(
                            valve.group(),
                            valve.id(),
                            "its pockets are taken to fill as stated, more than the three quarters at which they usually do at most",
                            Source.commonPractice());
        }
        Optional<Power> motor = valve.find("motor", Power.class);
        ValveBuild build = new ValveBuild(
                valve.find("rotor", Length.class),
                valve.find("vanes", Integer.class),
                valve.find("throat", Length.class),
                valve.find("tip gap", Length.class),
                motor,
                motor.map(m -> valve.number("gear efficiency")),
                valve.find("torque", Torque.class),
                valve.find("greatest difference", PressureDifference.class));
        return new RotaryValve(
                valve.get("swept", Volume.class),
                valve.get("speed", RotationalSpeed.class),
                valve.number("fill"),
                valve.get("clearance", Area.class),
                valve.number("discharge coefficient"),
                build);
    }

    static ClothDust onCloth(Section dust) {
        return dust.section("on cloth")
                .map(c -> new ClothDust(
                        c.find("factor material", String.class),
                        c.find("ratio dust", String.class),
                        c.find("cake resistance", CakeResistance.class),
                        c.find("sticky", Boolean.class)))
                .orElse(ClothDust.UNKNOWN);
    }

    static HopperDust inHopper(Section dust) {
        return dust.section("in hopper")
                .map(h -> new HopperDust(
                        h.find("wall friction", Angle.class),
                        h.find("effective angle", Angle.class),
                        flowFunction(h),
                        h.find("repose", Angle.class),
                        h.find("largest lump", Length.class)))
                .orElse(HopperDust.UNKNOWN);
    }

    private static Optional<FlowFunction> flowFunction(Section hopper) {
        List<?> points = hopper.items("flow function");
        return points.isEmpty()
                ? Optional.empty()
                : Optional.of(new FlowFunction(points.stream()
                        .map(p -> (List<?>) p)
                        .map(p -> new FlowFunction.Point((Stress) p.get(0), (Stress) p.get(1)))
                        .toList()));
    }
}
