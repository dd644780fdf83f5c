package dustwright.engine.sheet;

import dustwright.engine.bagging.BagFill;
import dustwright.engine.bagging.Container;
import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What one bulk bag or drum takes of each dust, and whether level or load comes first. */
final class ContainerSheet {
    private static final Source LOAD_GOVERNS = Source.published("ISO 21898: the marked load governs");

    private final Station station;
    private final Container container;
    private final List<Entry> entries = new ArrayList<>();

    private ContainerSheet(Station station, Container container) {
        this.station = station;
        this.container = container;
    }

    static Optional<Sheet> of(Plant plant, Station station) {
        return station.container().map(container -> new ContainerSheet(station, container).sheet(plant));
    }

    private Sheet sheet(Plant plant) {
        entries.add(Entry.given(id("volume"), "Volume to the level probe", container.volume(), Source.entered()));
        entries.add(container
                .safeWorkingLoad()
                .map(load -> Entry.given(id("load"), "Safe working load", load, Source.entered()))
                .orElse(Entry.unknown(
                        id("load"), "Safe working load", "Not stated: enter \"safe working load\" of the container.")));
        plant.dusts().forEach(this::fill);
        String title = container.kind() == Container.Kind.DRUM ? "Drum" : "Bulk bag";
        return new Sheet(id("container"), title, new Place(Place.Kind.CONTAINER, station.id()), entries, List.of());
    }

    private void fill(Dust dust) {
        String id = "fill-" + dust.id() + "/" + station.id();
        String name = "One fill of " + dust.name();
        if (dust.looseBulkDensity().isEmpty()) {
            entries.add(Entry.unknown(id, name, "The bulk density of " + dust.name() + " is not stated."));
            return;
        }
        if (container.safeWorkingLoad().isEmpty()) {
            entries.add(Entry.unknown(id, name, "Without a safe working load no fill can be given."));
            return;
        }
        Mass load = container.safeWorkingLoad().get();
        BagFill.Filled filled = BagFill.fill(
                container.volume().cubicMetres(), dust.looseBulkDensity().get().kgPerCubicMetre(), load.kilograms());
        String first = filled.limit() == BagFill.Limit.VOLUME ? "level first" : "load first";
        Step step = new Step(
                "BAG-4",
                "m = min(V ρ_B, SWL)",
                List.of(
                        new Term("V", "volume to the level probe", container.volume()),
                        new Term(
                                "ρ_B",
                                "loose bulk density",
                                dust.looseBulkDensity().get()),
                        new Term("SWL", "safe working load", load)),
                new Term("m", "dust in one fill; " + first, new Mass(filled.mass_kg())),
                LOAD_GOVERNS);
        entries.add(Entry.known(id, name + ": " + first, new Mass(filled.mass_kg()), List.of(step)));
    }

    private String id(String what) {
        return what + "/" + station.id();
    }
}
