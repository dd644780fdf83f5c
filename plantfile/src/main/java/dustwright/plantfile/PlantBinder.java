package dustwright.plantfile;

import dustwright.engine.air.Air;
import dustwright.engine.air.MoistAir;
import dustwright.engine.air.StandardAtmosphere;
import dustwright.engine.electrical.Electrical;
import dustwright.engine.finding.Source;
import dustwright.engine.plant.DesignSet;
import dustwright.engine.plant.Held;
import dustwright.engine.plant.Limit;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.ReasonedOverride;
import dustwright.engine.plant.ReceiverLimits;
import dustwright.engine.plant.Requirements;
import dustwright.engine.plant.Site;
import dustwright.engine.plant.Station;
import dustwright.engine.plant.Usage;
import dustwright.engine.plant.Zone;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Duration;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.quantity.UnitSystem;
import dustwright.engine.quantity.Units;
import dustwright.engine.quantity.Velocity;
import dustwright.engine.tubing.Run;
import dustwright.plantfile.keys.PlantKeys;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Makes the plant from sections that are free of faults. */
final class PlantBinder {
    private final Section top;
    private final SourceMap lines;
    private final Faults faults;
    private final UnitSystem units;

    PlantBinder(Section top, SourceMap lines, Faults faults) {
        this.top = top;
        this.lines = lines;
        this.faults = faults;
        this.units = plantKeys().get("units", String.class).equals("us") ? UnitSystem.US : UnitSystem.SI;
    }

    UnitSystem units() {
        return units;
    }

    Plant plant(List<ReasonedOverride> overrides, Taken taken) {
        TubingBinder tubing = new TubingBinder(top, faults);
        Site site = site(top.section("site").orElseThrow(), tubing);
        Section plant = plantKeys();
        Electrical electrical = ElectricalBinder.electrical(top);
        List<Run> runs = tubing.runs();
        List<Held> held =
                top.namedSections("held").stream().map(h -> held(h, site.air())).toList();
        top.namedSections("stations").forEach(station -> reachable(station, site.air()));
        Simplifications.record(tubing, runs, held, taken);
        List<Station> stations = top.namedSections("stations").stream()
                .map(s -> StationBinder.station(s, tubing, electrical.supply(), site.air()))
                .toList();
        stations.forEach(station -> Simplifications.curves(station, taken));
        return new Plant(
                plant.get("name", String.class),
                plant.find("note", String.class).orElse(""),
                site,
                new DustBinder(top).dusts(),
                tubing.tubes(),
                tubing.hoses(),
                tubing.tools(),
                tubing.points(),
                runs,
                tubing.inlets(),
                tubing.bleeds(),
                held,
                stations,
                usage(),
                requirements(taken),
                electrical,
                OperationBinder.operation(top, asked(taken)),
                overrides,
                taken.assumptions());
    }

    private Section plantKeys() {
        return top.section("plant").orElseThrow();
    }

    private static Site site(Section site, TubingBinder tubing) {
        Temperature temperature = site.get("temperature", Temperature.class);
        double humidity = site.number("humidity");
        Optional<Length> altitude = site.find("altitude", Length.class);
        AbsolutePressure barometer = altitude.map(StandardAtmosphere::pressure)
                .orElseGet(() -> site.get("barometer", AbsolutePressure.class));
        Air air = MoistAir.atBarometer(barometer, temperature, humidity);
        return new Site(air, altitude, humidity, tubing.walls(), tubing.panel());
    }

    /** No valve opens at a vacuum that cannot be, and no drive holds it. */
    private void reachable(Section station, Air air) {
        station.section("relief valve").ifPresent(valve -> reachable(valve, "set", air));
        station.namedSections("producers").forEach(producer -> reachable(producer, "hold", air));
    }

    private void reachable(Section section, String key, Air air) {
        section.find(key, PressureDifference.class)
                .filter(vacuum -> !(vacuum.pascals() < air.ambient().pascals()))
                .ifPresent(vacuum -> beyondBarometer(section, key, air));
    }

    private void beyondBarometer(Section section, String key, Air air) {
        String path = Names.path(section.path(), key);
        faults.add(
                lines.value(path).orElse(section.span()),
                path,
                "a vacuum of the whole barometer or more: there is none so deep at this site",
                String.format(
                        Locale.ROOT,
                        "less than %.1f kPa (%.1f inHg)",
                        air.ambient().pascals() / 1000,
                        air.ambient().pascals() / Units.INCH_OF_MERCURY_Pa));
    }

    private Held held(Section held, Air air) {
        Optional<PressureDifference> vacuum = held.find("vacuum", PressureDifference.class);
        if (vacuum.isPresent() && !(vacuum.get().pascals() < air.ambient().pascals())) {
            beyondBarometer(held, "vacuum", air);
            return new Held.Pressure(held.id(), air.ambient());
        }
        if (held.has("pressure") || vacuum.isPresent()) {
            AbsolutePressure pressure = vacuum.map(v -> air.ambient().minus(v))
                    .orElseGet(() -> held.get("pressure", AbsolutePressure.class));
            return new Held.Pressure(held.id(), pressure);
        }
        return held.has("supply")
                ? new Held.Supply(held.id(), mass(held.get("supply", Quantity.class)))
                : new Held.Supply(
                        held.id(),
                        new MassFlow(-mass(held.get("draw", Quantity.class)).kgPerSecond()));
    }

    private static MassFlow mass(Quantity flow) {
        return flow instanceof FreeAirFlow freeAir ? freeAir.mass() : (MassFlow) flow;
    }

    private Usage usage() {
        Optional<Section> usage = top.section("usage");
        if (usage.isEmpty()) {
            return new Usage(0, List.of(), List.of());
        }
        List<DesignSet> sets = new ArrayList<>();
        for (Map.Entry<?, ?> set : usage.get().named("design sets").entrySet()) {
            List<String> open =
                    ((List<?>) set.getValue()).stream().map(String.class::cast).toList();
            sets.add(new DesignSet((String) set.getKey(), open));
        }
        List<Zone> zones = usage.get().namedSections("zones").stream()
                .map(z -> new Zone(z.id(), z.get("name", String.class), z.find("users", Integer.class)))
                .toList();
        return new Usage(usage.get().get("simultaneous users", Integer.class), zones, sets);
    }

    private Section asked(Taken taken) {
        return top.section("requirements")
                .orElseGet(() -> new Section(PlantKeys.REQUIREMENTS, "", "requirements", top.span(), Map.of(), taken));
    }

    private Requirements requirements(Taken taken) {
        Section asked = asked(taken);
        Limit<Ratio> factor = limit(asked, "transport factor", Ratio.class)
                .orElseGet(() -> new Limit<>(
                        asked.get("transport factor", Ratio.class),
                        Source.ownReading("the dust class's velocity as it is, no margin on top")));
        return new Requirements(
                limit(asked, "tool flow", FreeAirFlow.class),
                limit(asked, "inlet vacuum", PressureDifference.class),
                factor,
                limit(asked, "saltation factor", Ratio.class),
                limit(asked, "loading ratio", Ratio.class),
                limit(asked, "wear velocity", Velocity.class),
                limit(asked, "air to cloth", Velocity.class),
                limit(asked, "can velocity", Velocity.class),
                receiverLimits(asked));
    }

    private ReceiverLimits receiverLimits(Section asked) {
        boolean valves = top.namedSections("stations").stream().anyMatch(s -> s.has("rotary valve"));
        Optional<Limit<Ratio>> capacity = limit(asked, "valve capacity", Ratio.class);
        return new ReceiverLimits(
                limit(asked, "cleaning interval", Duration.class),
                limit(asked, "hold-up", Duration.class),
                valves
                        ? capacity.or(() -> Optional.of(
                                new Limit<>(asked.get("valve capacity", Ratio.class), Source.commonPractice())))
                        : capacity);
    }

    static <T> Optional<Limit<T>> limit(Section asked, String key, Class<T> type) {
        return asked.find(key, Checker.Stated.class)
                .map(stated -> new Limit<>(type.cast(stated.value()), stated.source()));
    }
}
