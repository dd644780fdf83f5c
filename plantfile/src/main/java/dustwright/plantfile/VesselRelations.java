package dustwright.plantfile;

import dustwright.engine.quantity.Angle;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Units;
import dustwright.engine.quantity.Volume;
import dustwright.engine.receiver.Hopper;
import dustwright.engine.rotaryvalve.ValveLeakage;
import java.util.Locale;
import java.util.Optional;

/** What the measures of a receiver and of the rotary valve under it must fulfil together to be built at all. */
final class VesselRelations {
    /** Longest rotor over its diameter that is believed; common practice, no source: they are about as long as wide. */
    private static final double MOST_ROTOR_LENGTHS = 3;
    /** No rotor is shorter than this part of its diameter, hub and all. */
    private static final double LEAST_ROTOR_LENGTHS = 10;

    private static final double SHORTEST_ROTOR_m = 0.01;
    private static final double LONGEST_ROTOR_m = 3;

    private static final double SQUARE_FOOT_m2 = Units.FOOT_m * Units.FOOT_m;

    private final SourceMap lines;
    private final Faults faults;

    VesselRelations(SourceMap lines, Faults faults) {
        this.lines = lines;
        this.faults = faults;
    }

    void check(Section station) {
        station.section("receiver")
                .ifPresent(receiver -> receiver.find("diameter", Length.class).ifPresent(diameter -> {
                    freeArea(receiver, diameter);
                    shell(receiver, diameter);
                    receiver.section("hopper").ifPresent(hopper -> hopper(receiver, hopper, diameter));
                    receiver.section("explosion").ifPresent(explosion -> vents(receiver, explosion, diameter));
                    receiver.section("inlet").ifPresent(inlet -> inlet(receiver, inlet, diameter));
                }));
        station.section("rotary valve").ifPresent(this::valve);
    }

    private void freeArea(Section receiver, Length diameter) {
        double shell_m2 = section_m2(diameter);
        receiver.find("free area", Area.class)
                .filter(free -> free.squareMetres() > shell_m2)
                .ifPresent(free -> fault(
                        receiver,
                        "free area",
                        "more room between the filters than the whole shell has, " + area(shell_m2),
                        "the shell's cross-section less that of the filter elements, or the right \"diameter\""));
    }

    private void shell(Section receiver, Length diameter) {
        receiver.section("shell")
                .ifPresent(shell -> shell.find("thickness", Length.class)
                        .filter(thickness -> thickness.si() > diameter.si() / 20)
                        .ifPresent(thickness -> fault(
                                shell,
                                "thickness",
                                "a wall of more than a twentieth of the diameter, which is no thin shell",
                                "for example 3 mm")));
    }

    private void hopper(Section receiver, Section hopper, Length diameter) {
        Optional<Length> outlet = hopper.find("outlet", Length.class);
        Optional<Angle> half = hopper.find("half angle", Angle.class);
        if (outlet.isPresent() && outlet.get().compareTo(diameter) >= 0) {
            fault(hopper, "outlet", "an outlet as wide as the shell", "less than \"diameter\"");
        } else if (outlet.isPresent() && half.isPresent()) {
            Length cone = new Hopper(half.get(), outlet.get()).heightTo(diameter);
            receiver.find("straight side", Length.class).ifPresent(side -> {
                double top_m = cone.metres() + side.metres();
                receiver.section("level probe").ifPresent(probe -> within(probe, "height", "a probe", top_m));
                receiver.section("inlet").ifPresent(inlet -> within(inlet, "low edge", "an inlet", top_m));
                within(receiver, "elements down to", "filter elements that end", top_m);
            });
        }
    }

    /** Nothing is higher than the head. */
    private void within(Section part, String key, String what, double top_m) {
        part.find(key, Length.class)
                .filter(height -> height.metres() > top_m)
                .ifPresent(height -> fault(
                        part,
                        key,
                        what + " above the vessel: hopper and straight side end " + height(top_m) + " over the outlet",
                        key.equals("height")
                                ? "a height over the hopper's outlet, below inlet and filters"
                                : "a height over the hopper's outlet"));
    }

    /** Vents sit in head and cylinder. */
    private void vents(Section receiver, Section explosion, Length diameter) {
        receiver.find("straight side", Length.class).ifPresent(side -> {
            double walls_m2 = section_m2(diameter) + Math.PI * diameter.metres() * side.metres();
            explosion
                    .find("vent area", Area.class)
                    .filter(vent -> vent.squareMetres() > walls_m2)
                    .ifPresent(vent -> fault(
                            explosion,
                            "vent area",
                            "vents that do not fit: head and cylinder together have " + area(walls_m2),
                            "the area of the vents that are fitted or offered"));
        });
    }

    private void inlet(Section receiver, Section inlet, Length diameter) {
        inlet.find("width", Length.class)
                .filter(width -> width.metres() > diameter.metres() / 2)
                .ifPresent(width -> fault(
                        inlet,
                        "width",
                        "a tangential inlet that is wider than half the shell",
                        "at most half of \"diameter\""));
        Optional<Length> side = receiver.find("straight side", Length.class);
        inlet.find("height", Length.class)
                .filter(height -> side.filter(s -> height.compareTo(s) > 0).isPresent())
                .ifPresent(height -> fault(
                        inlet, "height", "an inlet higher than the cylinder it enters", "at most \"straight side\""));
    }

    private void valve(Section valve) {
        Optional<Length> rotor = valve.find("rotor", Length.class);
        valve.find("throat", Length.class)
                .filter(throat -> rotor.filter(r -> throat.compareTo(r) > 0).isPresent())
                .ifPresent(throat -> fault(
                        valve,
                        "throat",
                        "a throat wider than the rotor under it: air would pass beside the rotor",
                        "at most \"rotor\", the diameter over the blade tips"));
        rotor.ifPresent(diameter -> pockets(valve, diameter));
    }

    /** Pockets fill no more than the rotor's cylinder: that gives its least length, and both blade tips leak along it (RTV-12). */
    private void pockets(Section valve, Length rotor) {
        Optional<Volume> swept = valve.find("swept", Volume.class);
        if (swept.isEmpty()) {
            return;
        }
        double length_m = swept.get().cubicMetres() / section_m2(rotor);
        if (length_m > MOST_ROTOR_LENGTHS * rotor.metres()) {
            fault(
                    valve,
                    "swept",
                    "more than a rotor of this diameter has: it would be at least " + height(length_m)
                            + " long, and rotors are about as long as wide",
                    "the volume of all pockets in one turn, or the right \"rotor\"");
            return;
        }
        if (LEAST_ROTOR_LENGTHS * length_m < rotor.metres()) {
            fault(
                    valve,
                    "swept",
                    "less than a rotor of this diameter has: filled to its tips it would be " + height(length_m)
                            + " long, and rotors are about as long as wide",
                    "the volume of all pockets in one turn, or the right \"rotor\"");
            return;
        }
        Optional<Area> clearance = valve.find("clearance", Area.class);
        valve.find("tip gap", Length.class)
                .filter(gap -> length_m >= SHORTEST_ROTOR_m && length_m <= LONGEST_ROTOR_m)
                .map(gap -> ValveLeakage.tipArea_m2(length_m, gap.metres()))
                .filter(tips_m2 ->
                        clearance.filter(c -> c.squareMetres() < tips_m2).isPresent())
                .ifPresent(tips_m2 -> fault(
                        valve,
                        "clearance",
                        "less than the two tip gaps alone leak through, at least " + area(tips_m2)
                                + " for this \"swept\", \"rotor\" and \"tip gap\"",
                        "the area of all gaps, those at the ends of the rotor too, or the right \"tip gap\""));
    }

    private static double section_m2(Length diameter) {
        return Math.PI / 4 * diameter.metres() * diameter.metres();
    }

    private static String area(double area_m2) {
        return String.format(Locale.ROOT, "%.3g m2 (%.3g ft2)", area_m2, area_m2 / SQUARE_FOOT_m2);
    }

    private static String height(double height_m) {
        return String.format(Locale.ROOT, "%.3g m (%.3g ft)", height_m, height_m / Units.FOOT_m);
    }

    private void fault(Section section, String key, String message, String expected) {
        String path = Names.path(section.path(), key);
        faults.add(lines.value(path).orElse(section.span()), path, message, expected);
    }
}
