package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.air.Air;
import dustwright.engine.bagging.BulkBag;
import dustwright.engine.bagging.Container;
import dustwright.engine.cost.CompressedAir;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.StationResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.plant.StationAir;
import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.FreeAirVolume;
import dustwright.engine.quantity.Frequency;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Volume;
import dustwright.engine.quantity.WorkingTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Compressed air of a station as free air: pulses of its filter, the seal at a bag's neck, and the bag where it opens it. */
final class AirUseSheet {
    private static final Source DEFINITION = Source.published("definition");
    private static final Source EPA =
            Source.fromMemory("EPA Air Pollution Control Cost Manual, about 2 scfm for each 1000 cfm filtered");
    private static final Source BOYLE =
            Source.published("Boyle; the air that fills it at the barometer is counted too");

    private final Plant plant;
    private final Station station;
    private final Writing writing;
    private final StationDust load;
    private final Optional<DustWeek> week;

    private AirUseSheet(Plant plant, Station station, DustWays ways, List<DustWeek> weeks) {
        this.plant = plant;
        this.station = station;
        this.load = ways.to(station);
        this.week = DustWeek.at(station, weeks);
        this.writing = new Writing(station.id());
    }

    static Sheet of(Plant plant, Station station, List<DutyPoint> duties, DustWays ways, List<DustWeek> weeks) {
        return new AirUseSheet(plant, station, ways, weeks).sheet(duties);
    }

    /**
     * Free air a station takes in a week.
     *
     * @param known_m3 what is known of it [m³]
     * @param open what takes air and is not known, in words: then nobody knows the sum
     */
    record OfWeek(double known_m3, List<String> open) {}

    static OfWeek ofWeek(Plant plant, Station station, List<DutyPoint> duties, DustWays ways, List<DustWeek> weeks) {
        return new AirUseSheet(plant, station, ways, weeks).ofWeek(duties);
    }

    private OfWeek ofWeek(List<DutyPoint> duties) {
        Map<String, Optional<List<Step>>> parts = new LinkedHashMap<>();
        parts.put("pulses of its filter", pulses(duties).flatMap(this::pulsesOfWeek));
        neckSeal().ifPresent(seal -> parts.put("its neck seal", sealsOfWeek()));
        inflationOnce().ifPresent(once -> parts.put("opening its bags", inflationsOfWeek()));
        return new OfWeek(
                parts.values().stream()
                        .flatMap(Optional::stream)
                        .mapToDouble(AirUseSheet::result_m3)
                        .sum(),
                parts.entrySet().stream()
                        .filter(part -> part.getValue().isEmpty())
                        .map(Map.Entry::getKey)
                        .toList());
    }

    private Sheet sheet(List<DutyPoint> duties) {
        Optional<List<Step>> pulses = pulses(duties);
        if (pulses.isEmpty()) {
            writing.unknown(
                    "pulse-air",
                    "Pulses while vacuuming",
                    "Enter \"per pulse\" and \"pulses\" under \"compressed air\".");
        } else {
            boolean stated = pulses.get().get(0).equation().equals("CST-16");
            writing.known(
                    "pulse-air",
                    stated ? "Pulses while vacuuming" : "Pulses while vacuuming, usual share",
                    result(pulses.get()),
                    pulses.get());
            pulsesOfWeek(pulses.get())
                    .ifPresentOrElse(
                            steps -> writing.known("pulse-air-week", "Pulses, a week", result(steps), steps),
                            () -> writing.unknown(
                                    "pulse-air-week", "Pulses, a week", "Enter \"shifts\" of the usage."));
        }
        seal();
        inflation();
        return writing.sheet("compressed-air", "Compressed air", Place.Kind.STATION);
    }

    private static Quantity result(List<Step> steps) {
        return steps.get(steps.size() - 1).result().value();
    }

    private static double result_m3(List<Step> steps) {
        return result(steps).si();
    }

    // ---- pulses

    private Optional<List<Step>> pulses(List<DutyPoint> duties) {
        Optional<StationAir> air = plant.operation().airOf(station.id());
        if (air.isPresent()
                && air.get().perPulse().isPresent()
                && air.get().pulses().isPresent()) {
            return Optional.of(List.of(
                    stated(air.get().perPulse().get(), air.get().pulses().get())));
        }
        return duties.stream()
                .flatMap(duty -> duty.stations().stream())
                .filter(result -> result.id().equals(station.id()))
                .map(StationResult::receiverFlow)
                .max(Comparator.naturalOrder())
                .map(filtered -> List.of(usual(filtered)));
    }

    private static Step stated(FreeAirVolume perPulse, Frequency pulses) {
        double flow_m3PerS = CompressedAir.pulses_m3(pulses.perSecond(), perPulse.cubicMetres());
        return step(
                "CST-16",
                "Q = N V_pulse",
                DEFINITION,
                new Term("Q", "free air while vacuum is on", new FreeAirFlow(flow_m3PerS)),
                new Term("N", "pulses of all valves", pulses),
                new Term("V_pulse", "free air of one pulse", perPulse));
    }

    private static Step usual(ActualVolumeFlow filtered) {
        double flow_m3PerS = CompressedAir.usualPulseAir_m3PerS(filtered.cubicMetresPerSecond());
        return step(
                "CST-15",
                "Q = 0.002 Q_filter",
                EPA,
                new Term("Q", "free air while vacuum is on", new FreeAirFlow(flow_m3PerS)),
                new Term("Q_filter", "largest actual flow through the filter", filtered));
    }

    private Optional<List<Step>> pulsesOfWeek(List<Step> pulses) {
        return CleaningHours.ofWeek(plant, load, week).map(hours -> {
            List<Step> steps = new ArrayList<>(pulses);
            steps.add(step(
                    "CST-16",
                    "V = Q t",
                    DEFINITION,
                    new Term(
                            "V",
                            "free air of pulses in a week",
                            new FreeAirVolume(result(pulses).si() * hours.vacuuming_s())),
                    new Term("Q", "free air while vacuum is on", result(pulses)),
                    new Term("t", "vacuuming in a week, without waiting", new WorkingTime(hours.vacuuming_s()))));
            return steps;
        });
    }

    // ---- the neck seal

    private Optional<BulkBag.NeckSeal> neckSeal() {
        return station.container()
                .flatMap(Container::bag)
                .flatMap(bag -> bag.stand().seal());
    }

    private void seal() {
        if (neckSeal().isEmpty()) {
            return;
        }
        Optional<Step> once = sealOnce();
        if (once.isEmpty()) {
            writing.unknown("seal-air", "Neck seal, each time", "Enter \"volume\" of the neck seal.");
            return;
        }
        writing.known("seal-air", "Neck seal, each time", once.get().result().value(), List.of(once.get()));
        sealsOfWeek()
                .ifPresentOrElse(
                        steps -> writing.known("seal-air-week", "Neck seal, a week", result(steps), steps),
                        () -> writing.unknown(
                                "seal-air-week", "Neck seal, a week", "How often bags are changed is not known."));
    }

    private Optional<Step> sealOnce() {
        Air air = plant.site().air();
        return neckSeal()
                .flatMap(seal -> seal.volume().map((Volume volume) -> {
                    double atBarometer_m3 = CompressedAir.seal_m3(
                            volume.cubicMetres(),
                            seal.pressure().pascals(),
                            air.ambient().pascals());
                    double density_kgPerM3 = air.density_kgPerM3(air.ambient().pascals());
                    double free_m3 = atBarometer_m3 * density_kgPerM3 / FreeAirFlow.REFERENCE_DENSITY_kgPerM3;
                    return step(
                            "CST-17",
                            "V_free = V (1 + p/p_a) ρ_a/ρ_ref",
                            BOYLE,
                            new Term("V_free", "free air to inflate it once", new FreeAirVolume(free_m3)),
                            new Term("V", "volume of the inflated seal", volume),
                            new Term("p", "its pressure over the barometer", seal.pressure()),
                            new Term("p_a", "barometer", air.ambient()),
                            new Term("ρ_a", "density of the site's air", new Density(density_kgPerM3)),
                            new Term(
                                    "ρ_ref",
                                    "density of free air, 101 325 Pa, 20 °C, dry",
                                    new Density(FreeAirFlow.REFERENCE_DENSITY_kgPerM3)));
                }));
    }

    private Optional<List<Step>> sealsOfWeek() {
        if (week.isEmpty()) {
            return Optional.empty();
        }
        double changes = week.get().changesPerWeek();
        return sealOnce()
                .map(once -> List.of(
                        once,
                        step(
                                "CST-17",
                                "V = N V_free",
                                DEFINITION,
                                new Term(
                                        "V",
                                        "free air of the seal in a week",
                                        new FreeAirVolume(
                                                changes * once.result().value().si())),
                                new Term("N", "changes in a week (DIS-6)", new Ratio(changes)),
                                new Term(
                                        "V_free",
                                        "free air each time",
                                        once.result().value()))));
    }

    // ---- bags opened by compressed air

    private void inflation() {
        inflationOnce().ifPresent(once -> {
            writing.known(
                    "inflation-air", "Opening a bag, each time", once.result().value(), List.of(once));
            inflationsOfWeek()
                    .ifPresentOrElse(
                            steps -> writing.known("inflation-air-week", "Opening bags, a week", result(steps), steps),
                            () -> writing.unknown(
                                    "inflation-air-week",
                                    "Opening bags, a week",
                                    "How often bags are changed is not known."));
        });
    }

    /** The bag's volume at the barometer, where the plant's compressed air opens it. */
    private Optional<Step> inflationOnce() {
        return station.container()
                .filter(container -> container
                        .bag()
                        .flatMap(bag -> bag.stand().inflation())
                        .filter(BulkBag.Inflation::byCompressedAir)
                        .isPresent())
                .map(container -> {
                    Air air = plant.site().air();
                    double density_kgPerM3 = air.density_kgPerM3(air.ambient().pascals());
                    double free_m3 =
                            container.volume().cubicMetres() * density_kgPerM3 / FreeAirFlow.REFERENCE_DENSITY_kgPerM3;
                    return step(
                            "CST-29",
                            "V_free = V ρ_a/ρ_ref",
                            DEFINITION,
                            new Term("V_free", "free air to open a bag once", new FreeAirVolume(free_m3)),
                            new Term("V", "volume of the bag", container.volume()),
                            new Term("ρ_a", "density of the site's air", new Density(density_kgPerM3)),
                            new Term(
                                    "ρ_ref",
                                    "density of free air, 101 325 Pa, 20 °C, dry",
                                    new Density(FreeAirFlow.REFERENCE_DENSITY_kgPerM3)));
                });
    }

    private Optional<List<Step>> inflationsOfWeek() {
        return week.flatMap(w -> inflationOnce().map(once -> {
            double changes = w.changesPerWeek();
            return List.of(
                    once,
                    step(
                            "CST-29",
                            "V = N V_free",
                            DEFINITION,
                            new Term(
                                    "V",
                                    "free air that opens bags in a week",
                                    new FreeAirVolume(
                                            changes * once.result().value().si())),
                            new Term("N", "changes in a week (DIS-6)", new Ratio(changes)),
                            new Term(
                                    "V_free",
                                    "free air each time",
                                    once.result().value())));
        }));
    }
}
