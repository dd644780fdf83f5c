package dustwright.plantfile;

import dustwright.engine.hazard.DustCard;
import dustwright.engine.hazard.DustFamily;
import dustwright.engine.hazard.Protection;
import dustwright.engine.hazard.PublishedDust;
import dustwright.engine.hazard.VentMethod;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.ClothLoad;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.ExplosionConstant;
import dustwright.engine.quantity.GaugePressure;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.SparkEnergy;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.quantity.UnitSystem;
import dustwright.engine.quantity.Velocity;
import dustwright.engine.quantity.Volume;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Makes the explosion card of a dust and the protection of a receiver. */
final class HazardBinder {
    private HazardBinder() {}

    static DustCard card(Section card) {
        Optional<PublishedDust> severity =
                card.find("explodes like", String.class).map(PublishedDust::severity);
        Optional<PublishedDust> sensitivity =
                card.find("ignites like", String.class).map(PublishedDust::sensitivity);
        Taking from = new Taking(card);
        return new DustCard(
                word(card, "family", DustFamily.values(), DustFamily::words),
                from.taken("kst", ExplosionConstant.class, severity.flatMap(PublishedDust::kst)),
                from.taken("pmax", GaugePressure.class, severity.flatMap(PublishedDust::greatest)),
                from.taken("mie", SparkEnergy.class, sensitivity.flatMap(PublishedDust::ignition)),
                from.taken("mit", Temperature.class, sensitivity.flatMap(PublishedDust::cloud)),
                from.taken("lit", Temperature.class, sensitivity.flatMap(PublishedDust::layer)),
                from.taken("mec", Density.class, lower(severity, sensitivity)),
                card.find("conductive", Boolean.class),
                card.find("food", Boolean.class),
                card.find("toxic", Boolean.class),
                card.find("hygiene", String.class).map(DustCard.Hygiene::valueOf),
                card.find("sample size", Length.class),
                card.find("sample moisture", Ratio.class),
                Worded.of(DustCard.Sample.values(), DustCard.Sample::words, card.get("sample", String.class)),
                severity,
                sensitivity,
                card.find("report", String.class));
    }

    /** Of two published least explosible concentrations the lower one. */
    private static Optional<DustCard.Stated<Density>> lower(
            Optional<PublishedDust> severity, Optional<PublishedDust> sensitivity) {
        return Stream.of(severity, sensitivity)
                .flatMap(Optional::stream)
                .flatMap(d -> d.explosible().stream())
                .min(Comparator.comparingDouble(
                        (DustCard.Stated<Density> mec) -> mec.value().kgPerCubicMetre()));
    }

    /** A value as stated, else that of the published dust, which is then on record. */
    private record Taking(Section card) {
        <T extends Quantity> Optional<DustCard.Stated<T>> taken(
                String key, Class<T> type, Optional<DustCard.Stated<T>> published) {
            Optional<DustCard.Stated<T>> stated = card.find(key, Checker.Stated.class)
                    .map(s -> new DustCard.Stated<>(type.cast(s.value()), s.source()));
            if (stated.isPresent()) {
                return stated;
            }
            published.ifPresent(p -> card.taken()
                    .record(
                            card.group(),
                            card.id(),
                            key + " " + UnitSystem.SI.format(p.value()) + ", " + PublishedDust.WARNING,
                            p.source()));
            return published;
        }
    }

    static Protection protection(Section p) {
        return new Protection(
                word(p, "method", Protection.Method.values(), Protection.Method::words),
                word(p, "standing", Protection.Standing.values(), Protection.Standing::words),
                p.find("volume", Volume.class),
                p.find("length to diameter", Ratio.class),
                p.find("reduced pressure", GaugePressure.class),
                p.find("opens", GaugePressure.class),
                new Protection.Vent(
                        p.find("vent area", Area.class),
                        p.get("vents", Integer.class),
                        p.find("vent duct", Length.class),
                        p.find("air in vessel", Velocity.class),
                        p.find("panel", ClothLoad.class),
                        p.find("hinged", Boolean.class),
                        p.find("cloud share", Ratio.class),
                        word(p, "vent standard", VentMethod.values(), VentMethod::words),
                        p.find("vent efficiency", Ratio.class)),
                word(p, "inlet isolation", Protection.Isolation.values(), Protection.Isolation::words),
                p.items("isolated mains").stream().map(String.class::cast).toList(),
                word(p, "return isolation", Protection.Isolation.values(), Protection.Isolation::words),
                word(p, "exhaust", Protection.Exhaust.values(), Protection.Exhaust::words),
                p.find("exhaust watched", Boolean.class),
                p.find("rotary valve isolates", Boolean.class),
                p.find("container stands", GaugePressure.class),
                new Protection.Producers(
                        p.find("producers in area", Boolean.class),
                        p.find("producers marked", Boolean.class),
                        p.find("producers surface", Temperature.class)));
    }

    private static <T> Optional<T> word(Section section, String key, T[] values, Function<T, String> words) {
        return section.find(key, String.class).map(said -> Worded.of(values, words, said));
    }
}
