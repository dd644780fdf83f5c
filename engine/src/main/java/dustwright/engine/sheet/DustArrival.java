package dustwright.engine.sheet;

import dustwright.engine.conveying.Dust;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.StationResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.tubing.Inlet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What one solved state brings to a receiver.
 *
 * @param station what the receiver's station does in it
 * @param inlets open ones whose air comes here
 * @param dusts in the order of the plant file, each with its rate
 */
record DustArrival(DutyPoint duty, StationResult station, List<Inlet> inlets, List<Share> dusts) {
    /** One dust and how much of it arrives. */
    record Share(Dust dust, MassFlow rate) {}

    /** What comes to a station of what its open inlets feed. */
    static DustArrival of(Plant plant, DutyPoint duty, String station) {
        Map<String, Double> shares = DustTrace.of(plant, duty).sharesTo(station);
        List<Inlet> inlets = duty.state().open().stream()
                .filter(shares::containsKey)
                .map(plant::inlet)
                .toList();
        Map<String, Double> rates = new LinkedHashMap<>();
        for (Inlet inlet : inlets) {
            double rate_kgPerS = inlet.feed().kgPerSecond() * shares.getOrDefault(inlet.id(), 0.0);
            inlet.dust()
                    .filter(dust -> duty.state().feeding().contains(inlet.id()))
                    .ifPresent(dust -> rates.merge(dust, rate_kgPerS, Double::sum));
        }
        List<Share> dusts = plant.dusts().stream()
                .filter(dust -> rates.containsKey(dust.id()))
                .map(dust -> new Share(dust, new MassFlow(rates.getOrDefault(dust.id(), 0.0))))
                .toList();
        return new DustArrival(duty, result(duty, station), inlets, dusts);
    }

    private static StationResult result(DutyPoint duty, String station) {
        return duty.stations().stream()
                .filter(s -> s.id().equals(station))
                .findFirst()
                .orElseThrow();
    }

    String state() {
        return duty.state().name();
    }

    /** All dust. */
    MassFlow total() {
        return new MassFlow(
                dusts.stream().mapToDouble(s -> s.rate().kgPerSecond()).sum());
    }

    boolean any() {
        return total().kgPerSecond() > 0;
    }

    /** What to enter where the volume of what arrives is not known. */
    String whyNoVolume() {
        return "The bulk density of " + String.join(", ", withoutDensity()) + " is not stated: enter \"bulk density\".";
    }

    /** Names of dusts that arrive without a loose bulk density: their volume is not known. */
    List<String> withoutDensity() {
        return dusts.stream()
                .map(Share::dust)
                .filter(dust -> dust.looseBulkDensity().isEmpty())
                .map(Dust::name)
                .toList();
    }

    /** Loose volume of the dust; absent where a bulk density is missing. */
    Optional<ActualVolumeFlow> volume() {
        if (!withoutDensity().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new ActualVolumeFlow(dusts.stream()
                .mapToDouble(s -> s.rate().kgPerSecond()
                        / s.dust()
                                .looseBulkDensity()
                                .map(Density::kgPerCubicMetre)
                                .orElse(1.0))
                .sum()));
    }

    /** Loose bulk density of the mixture; absent where one is missing. */
    Optional<Density> density() {
        return volume().map(volume -> new Density(total().kgPerSecond() / volume.cubicMetresPerSecond()));
    }
}
