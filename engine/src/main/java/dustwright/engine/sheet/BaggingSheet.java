package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.bagging.BagFill;
import dustwright.engine.bagging.Container;
import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.plant.Limit;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Mass;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Volume;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What one bulk bag or drum takes: by level or by load, loose and settled; then its air, and what holds it. */
final class BaggingSheet {
    private static final Source MASS_BALANCE = Source.published("mass balance");
    private static final Source LOAD_GOVERNS = Source.published("ISO 21898: the marked load governs");

    private static final String NO_LOAD =
            "Not stated, so nothing is said of the load of a full container: enter \"safe working load\".";

    private final Plant plant;
    private final Station station;
    private final Container container;
    private final Writing writing;

    private BaggingSheet(Plant plant, Station station, Container container) {
        this.plant = plant;
        this.station = station;
        this.container = container;
        this.writing = new Writing(station.id());
    }

    static Optional<Sheet> of(Plant plant, Station station, DustWays ways, List<DutyPoint> duties) {
        return station.container()
                .map(container -> new BaggingSheet(plant, station, container).sheet(ways.to(station), duties));
    }

    private Sheet sheet(StationDust load, List<DutyPoint> duties) {
        takes();
        List<Dust> dusts = load.shiftMix().keySet().stream().map(plant::dust).toList();
        dusts.forEach(this::fill);
        overload(dusts);
        overloadOnceSettled(dusts);
        overfill(dusts);
        drums();
        new ContainerAirLines(plant, station, container, writing).write(load, duties);
        container.bag().ifPresent(bag -> new StandLines(container, bag, writing).write(fullest(dusts)));
        String title = container.kind() == Container.Kind.DRUM ? "Drum" : "Bulk bag";
        return writing.sheet("bagging", title, Place.Kind.CONTAINER);
    }

    private void takes() {
        writing.given("volume", "Volume to the level probe", container.volume());
        writing.words("stop", "Filling is stopped by", container.stop().words(), List.of(), Source.entered());
        container.bag().flatMap(bag -> bag.filledShort()).ifPresent(share -> {
            Term result = new Term("V_short", "volume that fills without inflation", container.fills());
            writing.known(
                    "fills-short",
                    "Volume that fills, not inflated",
                    container.fills(),
                    List.of(step(
                            "BAG-7",
                            "V_short = share V",
                            Source.ownReading("a stated share; no published figure"),
                            result,
                            new Term("share", "stated share that fills", share),
                            new Term("V", "volume to the level probe", container.volume()))));
        });
        Optional<Mass> load = container.safeWorkingLoad();
        if (load.isEmpty()) {
            writing.unknown("load", "Safe working load", NO_LOAD);
            writing.notSaid(FindingCode.CONTAINER_LOAD, Place.Kind.CONTAINER, LOAD_GOVERNS, NO_LOAD);
            return;
        }
        writing.given("load", "Safe working load", load.get());
        Density turning = new Density(load.get().kilograms() / container.fills().cubicMetres());
        writing.known(
                "load-first-above",
                "Bulk density above which load comes first",
                turning,
                List.of(step(
                        "BAG-19",
                        "ρ = SWL / V",
                        MASS_BALANCE,
                        new Term("ρ", "bulk density at which level and load come together", turning),
                        new Term("SWL", "safe working load", load.get()),
                        new Term("V", "volume that fills", container.fills()))));
    }

    // ---- each dust

    private void fill(Dust dust) {
        String name = "One fill of " + dust.name();
        if (dust.looseBulkDensity().isEmpty()) {
            writing.unknown("fill-" + dust.id(), name, "Enter the \"bulk density\" of " + dust.name() + ".");
            return;
        }
        Density loose = dust.looseBulkDensity().get();
        String end = dust.heaviestBulkDensity().isPresent() ? " at its lightest, " : ", ";
        writing.tried("fill-" + dust.id(), name + end + firstLimit(loose), () -> List.of(filled(loose)));
        dust.heaviestBulkDensity()
                .ifPresent(heaviest -> writing.tried(
                        "fill-heaviest-" + dust.id(),
                        name + " at its heaviest, " + firstLimit(heaviest),
                        () -> List.of(filled(heaviest))));
        dust.tappedBulkDensity().filter(tapped -> tapped.compareTo(loose) >= 0).ifPresent(tapped -> {
            writing.tried(
                    "settled-" + dust.id(),
                    dust.name() + " of one fill, once settled",
                    () -> List.of(filled(loose), settled(loose, tapped)));
            settlingWhileFilling(dust, tapped);
        });
    }

    private Step settled(Density loose, Density tapped) {
        double loose_m3 = taken_kg(container, loose.kgPerCubicMetre()) / loose.kgPerCubicMetre();
        Volume settled = new Volume(BagFill.settled_m3(loose_m3, loose.kgPerCubicMetre(), tapped.kgPerCubicMetre()));
        return step(
                "BAG-6",
                "V_settled = V_loose ρ_loose/ρ_settled",
                MASS_BALANCE,
                new Term("V_settled", "volume once settled", settled),
                new Term("V_loose", "volume as filled", new Volume(loose_m3)),
                new Term("ρ_loose", "loose bulk density", loose),
                new Term("ρ_settled", "bulk density after settling", tapped));
    }

    /** A container that fills over days settles meanwhile, and a level probe lets more in. */
    private void settlingWhileFilling(Dust dust, Density tapped) {
        if (container.stop() == Container.Stop.SCALE) {
            return;
        }
        Mass most = new Mass(byLevel_kg(tapped));
        List<Step> steps = List.of(step(
                "BAG-4",
                "m = V ρ_settled",
                MASS_BALANCE,
                new Term("m", "most the level probe lets in", most),
                new Term("V", "volume that fills", container.fills()),
                new Term("ρ_settled", "bulk density after settling", tapped)));
        writing.known(
                "settled-load-" + dust.id(),
                "Most the level probe lets in if " + dust.name() + " settles",
                most,
                steps);
    }

    /** The heaviest dust once settled decides: what fills over days settles meanwhile. */
    private void overloadOnceSettled(List<Dust> dusts) {
        Optional<Mass> load = container.safeWorkingLoad();
        if (load.isEmpty() || container.stop() == Container.Stop.SCALE) {
            return;
        }
        Limit<Mass> limit = new Limit<>(load.get(), LOAD_GOVERNS);
        Optional<Mass> most = dusts.stream()
                .flatMap(dust -> dust.tappedBulkDensity().stream())
                .max(Comparator.naturalOrder())
                .map(tapped -> new Mass(byLevel_kg(tapped)));
        List<String> untold = dusts.stream()
                .filter(dust -> dust.tappedBulkDensity().isEmpty())
                .map(Dust::name)
                .toList();
        if (!untold.isEmpty() && most.filter(m -> m.compareTo(load.get()) > 0).isEmpty()) {
            writing.unjudged(
                    FindingCode.SETTLED_LOAD,
                    Place.Kind.CONTAINER,
                    Side.AT_MOST,
                    limit,
                    "How dense " + String.join(" and ", untold) + " settles is not stated: enter \"tapped density\".");
            return;
        }
        most.ifPresent(m ->
                writing.asked(FindingCode.SETTLED_LOAD, Place.Kind.CONTAINER, Sheet.ANY_SET, Side.AT_MOST, m, limit));
    }

    private String firstLimit(Density loose) {
        if (container.safeWorkingLoad().isEmpty()) {
            return "to the level";
        }
        if (byLevel_kg(loose) <= container.safeWorkingLoad().get().kilograms()) {
            return "level first";
        }
        return container.stop() == Container.Stop.SCALE ? "load first" : "to the level, above its safe working load";
    }

    private double byLevel_kg(Density loose) {
        return container.fills().cubicMetres() * loose.kgPerCubicMetre();
    }

    private Step filled(Density loose) {
        Term volume = new Term("V", "volume that fills", container.fills());
        Term density = new Term("ρ_B", "loose bulk density", loose);
        Optional<Mass> load = container.safeWorkingLoad();
        if (load.isEmpty() || container.stop() == Container.Stop.LEVEL_PROBE) {
            return step(
                    "BAG-4",
                    "m = V ρ_B at the level probe",
                    MASS_BALANCE,
                    new Term("m", "dust in one fill", mass(loose)),
                    volume,
                    density);
        }
        return step(
                "BAG-4",
                "m = min(V ρ_B, SWL)",
                LOAD_GOVERNS,
                new Term("m", "dust in one fill", mass(loose)),
                volume,
                density,
                new Term("SWL", "safe working load", load.get()));
    }

    private Mass mass(Density loose) {
        return new Mass(taken_kg(container, loose.kgPerCubicMetre()));
    }

    /** Dust a container takes [kg] (equation BAG-4). */
    static double taken_kg(Container container, double loose_kgPerM3) {
        return taken_kg(container, container.fills().cubicMetres(), loose_kgPerM3);
    }

    /** The same of another volume: a scale stops at the load; a level probe lets in what the volume weighs, whatever that is. */
    static double taken_kg(Container container, double volume_m3, double loose_kgPerM3) {
        return container
                .safeWorkingLoad()
                .filter(load -> container.stop() == Container.Stop.SCALE)
                .map(load ->
                        BagFill.fill(volume_m3, loose_kgPerM3, load.kilograms()).mass_kg())
                .orElseGet(() -> volume_m3 * loose_kgPerM3);
    }

    /** The densest dust decides whether the stop comes in time. */
    private Optional<Density> fullest(List<Dust> dusts) {
        return dusts.stream().flatMap(d -> d.heaviest().stream()).max(Comparator.naturalOrder());
    }

    private void overload(List<Dust> dusts) {
        Optional<Density> densest = fullest(dusts);
        if (container.safeWorkingLoad().isEmpty()) {
            return;
        }
        Limit<Mass> load = new Limit<>(container.safeWorkingLoad().get(), LOAD_GOVERNS);
        List<String> unknown = dusts.stream()
                .filter(dust -> dust.looseBulkDensity().isEmpty())
                .map(Dust::name)
                .toList();
        boolean over = densest.filter(d -> mass(d).compareTo(load.value()) > 0).isPresent();
        if (!unknown.isEmpty() && !over && container.stop() != Container.Stop.SCALE) {
            writing.unjudged(
                    FindingCode.CONTAINER_LOAD,
                    Place.Kind.CONTAINER,
                    Side.AT_MOST,
                    load,
                    "The bulk density of " + String.join(", ", unknown) + " is not stated: enter \"bulk density\".");
            return;
        }
        densest.ifPresent(density -> writing.asked(
                FindingCode.CONTAINER_LOAD,
                Place.Kind.CONTAINER,
                Sheet.ANY_SET,
                Side.AT_MOST,
                mass(density),
                load,
                List.of(filled(density))));
    }

    /** A scale that is set above what the container holds never stops the filling: dust runs over, or stands up the spout. */
    private void overfill(List<Dust> dusts) {
        if (container.stop() != Container.Stop.SCALE
                || container.safeWorkingLoad().isEmpty()) {
            return;
        }
        Mass load = container.safeWorkingLoad().get();
        dusts.stream()
                .flatMap(dust -> dust.looseBulkDensity().stream())
                .min(Comparator.naturalOrder())
                .ifPresent(lightest -> {
                    Mass brim = new Mass(byLevel_kg(lightest));
                    writing.asked(
                            FindingCode.SCALE_TOO_LATE,
                            Place.Kind.CONTAINER,
                            Sheet.ANY_SET,
                            Side.AT_LEAST,
                            brim,
                            new Limit<>(load, Source.entered()),
                            List.of(step(
                                    "BAG-4",
                                    "m = V ρ_B",
                                    MASS_BALANCE,
                                    new Term("m", "lightest dust the full container holds", brim),
                                    new Term("V", "volume that fills", container.fills()),
                                    new Term("ρ_B", "loose bulk density", lightest))));
                });
    }

    private void drums() {
        if (container.kind() == Container.Kind.DRUM) {
            return;
        }
        Ratio drums = new Ratio(BagFill.drumsPerBag(container.fills().cubicMetres(), BagFill.DRUM_55_GALLON_m3));
        writing.known(
                "drums",
                "55-gallon drums it replaces",
                drums,
                List.of(step(
                        "BAG-11",
                        "N = V_bag / V_drum",
                        Source.published("geometry; a US gallon is 231 in³"),
                        new Term("N", "drums, as full as the bag", drums),
                        new Term("V_bag", "volume that fills", container.fills()),
                        new Term("V_drum", "55 US gallons", new Volume(BagFill.DRUM_55_GALLON_m3)))));
    }
}
