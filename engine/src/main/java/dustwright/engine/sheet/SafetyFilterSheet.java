package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.air.Air;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Term;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.StationResult;
import dustwright.engine.plant.Limit;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.StatedLoss;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.receiver.AfterFilter;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** How hard the filter ahead of the producer is loaded, and what passes it. */
final class SafetyFilterSheet {
    private static final Source CLASSES = Source.published(
            "EN 1822-1 and ISO 29463-1: efficiency at the most penetrating size, integral and local apart");

    private SafetyFilterSheet() {}

    static Optional<Sheet> of(Plant plant, Station station, List<DutyPoint> duties) {
        Air air = plant.site().air();
        return station.safetyFilter().map(loss -> sheet(station, loss, air, duties));
    }

    private static Sheet sheet(Station station, StatedLoss loss, Air air, List<DutyPoint> duties) {
        Writing writing = new Writing(station.id());
        String state = loss.state() == StatedLoss.State.STANDARD
                ? "standard air, 101 325 Pa, 20 °C, dry"
                : "the site's own air";
        writing.given("safety-loss", "Stated pressure drop, for " + state, loss.loss());
        writing.given("safety-loss-at", "Free air at which it holds", loss.at());
        duties.stream()
                .max(Comparator.comparing(d -> result(d, station).throughFilter()))
                .ifPresent(duty -> load(writing, station, loss, air, duty));
        station.safetyRating()
                .efficiencyClass()
                .ifPresentOrElse(
                        name -> passing(writing, name),
                        () -> writing.unknown(
                                "safety-passing",
                                "Share that passes",
                                "No class is stated: enter \"class\" of the safety filter."));
        return writing.sheet("safety-filter", "Safety filter", Place.Kind.SAFETY_FILTER);
    }

    private static void load(Writing writing, Station station, StatedLoss loss, Air air, DutyPoint duty) {
        AbsolutePressure barometer = air.ambient();
        StationResult result = result(duty, station);
        FreeAirFlow through = FreeAirFlow.of(result.throughFilter());
        writing.known(
                "safety-flow",
                "Air through it, " + duty.state().name(),
                through,
                List.of(step(
                        "AIR-2",
                        "Q = w / ρ_ref, ρ_ref at 101 325 Pa, 20 °C, dry",
                        Source.ownReading("reference state of free air: 101 325 Pa, 20 °C, dry"),
                        new Term("Q", "free air through the safety filter", through),
                        new Term("w", "air through the filters", result.throughFilter()),
                        new Term("ρ_ref", "density of free air", new Density(FreeAirFlow.REFERENCE_DENSITY_kgPerM3)))));
        writing.known(
                "safety-drop",
                "Pressure drop over it then",
                result.safetyFilterLoss(),
                List.of(step(
                        "VLV-2",
                        "p1 − p2 = √(p2² + 2 p_a Δp (ρ_at/ρ_a) (w/w_at)²) − p2",
                        Source.commonPractice(),
                        new Term("p1 − p2", "pressure drop over the safety filter", result.safetyFilterLoss()),
                        new Term("p_a", "barometer", barometer),
                        new Term("Δp", "stated pressure drop", loss.loss()),
                        new Term("ρ_at", "density of the air it is stated for", loss.density(air)),
                        new Term(
                                "ρ_a",
                                "density of the site's air at the barometer",
                                new Density(air.density_kgPerM3(barometer.pascals()))),
                        new Term("w", "air through the filters", result.throughFilter()),
                        new Term(
                                "w_at",
                                "air at which the stated drop holds",
                                loss.at().mass()),
                        new Term("p2", "pressure behind it", result.suction()))));
        station.safetyRating()
                .greatest()
                .ifPresentOrElse(
                        greatest -> writing.asked(
                                FindingCode.SAFETY_FILTER_FLOW,
                                Place.Kind.SAFETY_FILTER,
                                duty.state().name(),
                                Side.AT_MOST,
                                through,
                                new Limit<>(greatest, Source.entered())),
                        () -> writing.notSaid(
                                FindingCode.SAFETY_FILTER_FLOW,
                                Place.Kind.SAFETY_FILTER,
                                Source.entered(),
                                "How much air its maker allows is not stated: enter \"greatest\" of the safety filter."));
    }

    private static void passing(Writing writing, String name) {
        AfterFilter filter = AfterFilter.ofClass(name);
        Ratio passing = new Ratio(AfterFilter.penetration(filter.integral()));
        writing.known(
                "safety-passing",
                "Share that passes, class " + name,
                passing,
                List.of(step(
                        "FLT-15",
                        "P = 1 − E",
                        CLASSES,
                        new Term("P", "share of the most penetrating size that passes", passing),
                        new Term("E", "integral efficiency of class " + name, new Ratio(filter.integral())))));
        filter.local()
                .ifPresent(local -> writing.known(
                        "safety-local",
                        "Share that may pass at its leakiest point",
                        new Ratio(1 - local),
                        List.of(step(
                                "FLT-15",
                                "P = 1 − E",
                                CLASSES,
                                new Term("P", "share that passes at one point", new Ratio(1 - local)),
                                new Term("E", "local efficiency of class " + name, new Ratio(local))))));
    }

    private static StationResult result(DutyPoint duty, Station station) {
        return duty.stations().stream()
                .filter(s -> s.id().equals(station.id()))
                .findFirst()
                .orElseThrow();
    }
}
