package dustwright.plantfile;

import dustwright.engine.electrical.Motor;
import dustwright.engine.electrical.Supply;
import dustwright.engine.quantity.Angle;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.FilterResistance;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.SupplyFrequency;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.receiver.PowderFlow;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;

/** What several values together must fulfil. Each check looks only at values that are there. */
final class Relations {
    private static final double LEAST_BORE_m = 0.005;

    private final Section top;
    private final SourceMap lines;
    private final Faults faults;

    Relations(Section top, SourceMap lines, Faults faults) {
        this.top = top;
        this.lines = lines;
        this.faults = faults;
    }

    void check() {
        top.namedSections("dusts").forEach(this::dust);
        top.namedSections("tubes").forEach(this::tube);
        top.namedSections("tools").forEach(this::tool);
        top.namedSections("inlets").forEach(this::inlet);
        top.namedSections("runs").forEach(this::run);
        top.namedSections("stations").forEach(this::station);
        top.section("supply").ifPresent(this::supply);
        top.section("panel").ifPresent(this::panel);
        usage();
        new OperationRelations(top, lines, faults).check();
    }

    private void dust(Section dust) {
        Optional<Density> particle = dust.find("particle density", Density.class);
        for (String bulk : List.of("bulk density", "heaviest bulk density", "tapped density")) {
            Optional<Density> heap = dust.find(bulk, Density.class);
            if (heap.isPresent() && particle.isPresent() && heap.get().compareTo(particle.get()) > 0) {
                fault(dust, bulk, "a heap denser than its particles", "less than the particle density");
            }
        }
        Optional<Density> loose = dust.find("bulk density", Density.class);
        Optional<Density> heaviest = dust.find("heaviest bulk density", Density.class);
        if (heaviest.isPresent() && loose.isEmpty()) {
            fault(
                    dust,
                    "heaviest bulk density",
                    "the heavy end of a range without its light end",
                    "\"bulk density\" too");
        } else if (heaviest.isPresent() && heaviest.get().compareTo(loose.get()) < 0) {
            fault(dust, "heaviest bulk density", "heaviest lighter than lightest", "at least the bulk density");
        }
        Optional<Density> tapped = dust.find("tapped density", Density.class);
        Optional<Density> densest = heaviest.or(() -> loose);
        if (densest.isPresent() && tapped.isPresent() && tapped.get().compareTo(densest.get()) < 0) {
            fault(
                    dust,
                    "tapped density",
                    "settled dust lighter than loose dust",
                    heaviest.isPresent() ? "at least the heaviest bulk density" : "at least the bulk density");
        }
        if (loose.isPresent()
                && tapped.isPresent()
                && tapped.get().kgPerCubicMetre()
                        > PowderFlow.GREATEST_HAUSNER * loose.get().kgPerCubicMetre()) {
            fault(
                    dust,
                    "tapped density",
                    "more than ten times the bulk density: no powder settles so far",
                    "at most ten times the bulk density, or the right \"bulk density\"; is a decimal point out of place?");
        }
        for (String needed : List.of("particle size", "particle density")) {
            if (dust.has("level speed") && !written(dust, needed)) {
                fault(
                        dust,
                        "level speed",
                        "a speed in level tubes without the " + needed + ", so nothing uses it",
                        "\"" + needed + "\" beside it");
            }
        }
        Optional<Length> size = dust.find("particle size", Length.class);
        dust.section("in hopper").ifPresent(hopper -> {
            Optional<Length> lump = hopper.find("largest lump", Length.class);
            if (lump.isPresent() && size.isPresent() && lump.get().compareTo(size.get()) < 0) {
                fault(hopper, "largest lump", "a lump smaller than the particles", "at least the particle size");
            }
            ordered(hopper, "wall friction", "effective angle", Angle.class, (a, b) -> a.si() <= b.si());
            List<?> points = hopper.items("flow function");
            for (int i = 1; i < points.size(); i++) {
                if (!(part(points.get(i), 0).si() > part(points.get(i - 1), 0).si())) {
                    fault(
                            hopper,
                            "flow function[" + i + "]",
                            "the consolidating stress does not rise here",
                            "points in order of their consolidating stress");
                } else if (part(points.get(i), 1).si()
                        < part(points.get(i - 1), 1).si()) {
                    fault(
                            hopper,
                            "flow function[" + i + "]",
                            "the strength falls here, where more stress has consolidated the dust",
                            "a strength no less than that of the point before");
                }
            }
        });
    }

    private void tube(Section tube) {
        Optional<Length> outside = tube.find("outside", Length.class);
        Optional<Length> wall = tube.find("wall", Length.class);
        if (outside.isPresent() && wall.isPresent()) {
            double bore_m = outside.get().metres() - 2 * wall.get().metres();
            if (!(bore_m >= LEAST_BORE_m)) {
                fault(tube, "wall", "walls that leave no bore", "an outside diameter of more than twice the wall");
            }
        }
    }

    private void tool(Section tool) {
        if (tool.has("discharge coefficient") && !written(tool, "opening")) {
            fault(tool, "discharge coefficient", "a discharge coefficient without an opening", "\"opening\" beside it");
        }
        List<?> points = tool.items("curve");
        for (int i = 1; i < points.size(); i++) {
            for (int part = 0; part < 2; part++) {
                if (!(part(points.get(i), part).si()
                        > part(points.get(i - 1), part).si())) {
                    fault(
                            tool,
                            "curve[" + i + "]",
                            "the curve does not rise here",
                            "vacuum and flow that both rise from point to point");
                }
            }
        }
    }

    private static Quantity part(Object point, int part) {
        return (Quantity) ((List<?>) point).get(part);
    }

    private void inlet(Section inlet) {
        if (inlet.has("feed") && !written(inlet, "dust")) {
            fault(inlet, "feed", "a feed of dust without the dust", "\"dust\" beside it");
        }
    }

    private void run(Section run) {
        if (run.has("k") && !written(run, "length")) {
            fault(
                    run,
                    "k",
                    "a summed k on a run that is drawn in space",
                    "\"length\" beside it, or \"fittings\" for single parts");
        }
        Optional<Length> rise = run.find("rise", Length.class);
        Optional<Length> length = run.find("length", Length.class);
        if (rise.isPresent() && !written(run, "length")) {
            fault(run, "rise", "a rise of a run that is drawn in space", "\"length\" beside it");
        }
        if (rise.isPresent()
                && length.isPresent()
                && Math.abs(rise.get().metres()) > length.get().metres()) {
            fault(run, "rise", "a rise of more than the run's length", "at most its length, up or down");
        }
    }

    /** Whether a key stands in the file, be its value right or not: a wrong value is reported once, not as a missing one too. */
    private boolean written(Section section, String key) {
        return section.has(key) || lines.key(section.path() + "." + key).isPresent();
    }

    private void usage() {
        Optional<Section> usage = top.section("usage");
        int inlets = top.named("inlets").size();
        if (usage.isEmpty() && inlets > 0) {
            faults.add(
                    lines.key("inlets").orElse(top.span()),
                    "",
                    "inlets without \"usage\"",
                    "\"usage: {simultaneous users: 3}\": how many vacuum at once is asked, never inferred");
        }
        usage.ifPresent(u -> {
            u.find("simultaneous users", Integer.class)
                    .filter(users -> users > inlets)
                    .ifPresent(users -> fault(
                            u,
                            "simultaneous users",
                            users + " users at " + inlets + " inlets",
                            "at most one per inlet"));
            u.named("design sets").forEach((name, set) -> {
                List<?> open = (List<?>) set;
                if (open.stream().distinct().count() < open.size()) {
                    fault(u, "design sets." + name, "an inlet named twice", "each inlet once");
                }
                u.find("simultaneous users", Integer.class)
                        .filter(users -> open.size() > users)
                        .ifPresent(users -> fault(
                                u,
                                "design sets." + name,
                                open.size() + " inlets open at once where " + users + " users are stated",
                                "at most as many inlets as \"simultaneous users\""));
                u.namedSections("zones").forEach(zone -> withinZone(u, (String) name, open, zone));
            });
        });
    }

    /** A design set opens no more inlets of a zone than the zone has users. */
    private void withinZone(Section usage, String set, List<?> open, Section zone) {
        String id = zone.path().substring("usage.zones.".length());
        Map<?, ?> inlets = top.named("inlets");
        long inZone = open.stream()
                .filter(inlet -> inlets.get(inlet) instanceof Section s
                        && s.find("zone", String.class).filter(id::equals).isPresent())
                .count();
        zone.find("users", Integer.class)
                .filter(users -> inZone > users)
                .ifPresent(users -> fault(
                        usage,
                        "design sets." + set,
                        inZone + " inlets of zone " + id + " open at once where it has " + users
                                + (users == 1 ? " user" : " users"),
                        "at most as many inlets of a zone as its \"users\""));
    }

    private void supply(Section supply) {
        supply.find("phases", Integer.class)
                .filter(phases -> phases == 2)
                .ifPresent(phases -> fault(supply, "phases", "a supply of 2 phases", "3 or 1"));
        boolean nec = supply.find("basis", String.class).filter("NEC"::equals).isPresent();
        supply.find("hertz", SupplyFrequency.class)
                .filter(hertz -> hertz.si() != 50 && hertz.si() != 60)
                .ifPresent(hertz -> fault(supply, "hertz", "a supply that no grid has", "50 Hz or 60 Hz"));
        supply.find("hertz", SupplyFrequency.class)
                .filter(hertz -> nec && ElectricalBinder.usualBasis(hertz) != Supply.Basis.NEC)
                .ifPresent(hertz -> fault(
                        supply,
                        "basis",
                        "the tables of the National Electrical Code hold at 60 Hz",
                        "\"basis: IEC\", or none"));
    }

    private void panel(Section panel) {
        Optional<Temperature> ambient = panel.find("ambient", Temperature.class);
        Optional<Temperature> inside = panel.find("inside", Temperature.class);
        if (ambient.isPresent()
                && inside.isPresent()
                && panel.find("cooler", Power.class).isEmpty()
                && !(ambient.get().kelvin() < inside.get().kelvin())) {
            fault(
                    panel,
                    "inside",
                    "a panel that may not get warmer than the air around it, and no cooler",
                    "\"inside\" above \"ambient\", or \"cooler\"");
        }
        panel.find("area class", String.class)
                .filter(area -> area.startsWith("unclassified"))
                .ifPresent(area -> sameSideOfTheWall(panel, area));
    }

    /** A type for indoors does not stand outdoors, nor does rain fall indoors. */
    private void sameSideOfTheWall(Section panel, String area) {
        boolean outdoors = area.endsWith("outdoor");
        panel.find("exposure", String.class)
                .filter(exposure -> outdoors ? exposure.contains("indoor") : exposure.contains("outdoor"))
                .ifPresent(exposure -> fault(
                        panel,
                        "exposure",
                        "an exposure \"" + exposure + "\" in an area \"" + area + "\"",
                        outdoors ? "outdoor, outdoor dusty or hosed down" : "dusty indoor or hosed down"));
    }

    private void station(Section station) {
        station.section("filter").ifPresent(this::filter);
        new VesselRelations(lines, faults).check(station);
        station.section("relief valve")
                .ifPresent(r -> ordered(r, "set", "full", PressureDifference.class, (a, b) -> a.si() < b.si()));
        if (station.has("producers") && station.named("producers").isEmpty()) {
            fault(station, "producers", "a station without a vacuum producer", "at least one");
        }
        ProducerRelations producers = new ProducerRelations(lines, faults);
        boolean supplied = top.section("supply").isPresent();
        boolean onePhase = top.section("supply")
                .flatMap(supply -> supply.find("phases", Integer.class))
                .filter(phases -> phases == 1)
                .isPresent();
        for (Section producer : station.namedSections("producers")) {
            producers.check(producer, supplied);
            if (onePhase
                    && producer.find("start", String.class)
                            .filter(Motor.Starting.STAR_DELTA.words()::equals)
                            .isPresent()) {
                fault(producer, "start", "star and delta on a supply of one phase", "another start, or \"phases: 3\"");
            }
        }
    }

    private void filter(Section filter) {
        ordered(filter, "temperature", "surge temperature", Temperature.class, (a, b) -> a.si() <= b.si());
        Optional<Section> drop = filter.section("pressure drop");
        drop.ifPresent(d -> ordered(d, "clean", "normal", PressureDifference.class, (a, b) -> a.si() <= b.si()));
        drop.ifPresent(d -> ordered(d, "normal", "dirty", PressureDifference.class, (a, b) -> a.si() <= b.si()));
        Optional<Section> resistance = filter.section("resistance");
        resistance.ifPresent(r -> ordered(r, "clean", "normal", FilterResistance.class, (a, b) -> a.si() <= b.si()));
        resistance.ifPresent(r -> ordered(r, "normal", "dirty", FilterResistance.class, (a, b) -> a.si() <= b.si()));
    }

    private <T extends Quantity> void ordered(
            Section section, String less, String more, Class<T> type, BiPredicate<T, T> holds) {
        Optional<T> a = section.find(less, type);
        Optional<T> b = section.find(more, type);
        if (a.isPresent() && b.isPresent() && !holds.test(a.get(), b.get())) {
            fault(section, more, "\"" + more + "\" does not lie above \"" + less + "\"", less + " below " + more);
        }
    }

    private void fault(Section section, String key, String message, String expected) {
        String path = Names.path(section.path(), key);
        faults.add(lines.value(path).orElse(section.span()), path, message, expected);
    }
}
