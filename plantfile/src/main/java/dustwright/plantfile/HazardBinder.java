package dustwright.plantfile;

import dustwright.engine.hazard.ChargePath;
import dustwright.engine.hazard.DustCard;
import dustwright.engine.hazard.DustFamily;
import dustwright.engine.hazard.Listing;
import dustwright.engine.hazard.Protection;
import dustwright.engine.hazard.PublishedDust;
import dustwright.engine.hazard.VentMethod;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.ClothLoad;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.ElectricResistance;
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
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Makes the explosion card of a dust and the protection of a receiver. */
final class HazardBinder {
    private HazardBinder() {}

    /** The card as entered; what stands in for values that are not entered is on record. */
    static DustCard card(Section card, Optional<Length> particle) {
        DustCard entered = new DustCard(
                word(card, "family", DustFamily.values(), DustFamily::words),
                stated(card, "kst", ExplosionConstant.class),
                stated(card, "pmax", GaugePressure.class),
                stated(card, "mie", SparkEnergy.class),
                stated(card, "mit", Temperature.class),
                stated(card, "lit", Temperature.class),
                stated(card, "mec", Density.class),
                card.find("conductive", Boolean.class),
                card.find("food", Boolean.class),
                card.find("toxic", Boolean.class),
                card.find("sensitizing", Boolean.class),
                card.find("hygiene", String.class).map(DustCard.Hygiene::valueOf),
                card.find("sample size", Length.class),
                card.find("sample moisture", Ratio.class),
                Worded.of(DustCard.Sample.values(), DustCard.Sample::words, card.get("sample", String.class)),
                card.find("explodes like", String.class).map(PublishedDust::severity),
                card.find("ignites like", String.class).map(PublishedDust::sensitivity),
                card.find("like because", String.class),
                card.find("report", String.class).filter(report -> !report.isBlank()),
                card.find("insulating", Boolean.class),
                card.find("heap judged", String.class),
                List.of());
        DustCard relied = entered.relied(particle);
        standsIn(card, "kst", entered.kst(), relied.kst());
        standsIn(card, "pmax", entered.greatest(), relied.greatest());
        standsIn(card, "mie", entered.ignition(), relied.ignition());
        standsIn(card, "mit", entered.cloud(), relied.cloud());
        standsIn(card, "lit", entered.layer(), relied.layer());
        standsIn(card, "mec", entered.explosible(), relied.explosible());
        return entered;
    }

    private static <T extends Quantity> Optional<DustCard.Stated<T>> stated(Section card, String key, Class<T> type) {
        return card.find(key, Checker.Stated.class).map(s -> new DustCard.Stated<>(type.cast(s.value()), s.source()));
    }

    private static <T extends Quantity> void standsIn(
            Section card, String key, Optional<DustCard.Stated<T>> entered, Optional<DustCard.Stated<T>> relied) {
        relied.filter(value -> entered.isEmpty())
                .ifPresent(p -> card.taken()
                        .record(
                                card.group(),
                                card.id(),
                                key + " " + UnitSystem.SI.format(p.value()) + ", " + PublishedDust.WARNING,
                                p.source()));
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
                        p.find("producers surface", Temperature.class)),
                new Listing.Devices(
                        listing(p, "protection device", false),
                        listing(p, "inlet device", true),
                        listing(p, "return device", true),
                        listing(p, "valve device", false)));
    }

    private static Listing listing(Section protection, String key, boolean inDuct) {
        return protection
                .section(key)
                .map(d -> new Listing(
                        d.find("kst", ExplosionConstant.class),
                        d.find("pmax", GaugePressure.class),
                        key.equals("protection device")
                                ? d.find("suppressed pressure", GaugePressure.class)
                                : Optional.empty(),
                        inDuct ? d.find("nearest", Length.class) : Optional.empty(),
                        inDuct ? d.find("furthest", Length.class) : Optional.empty(),
                        inDuct ? d.find("stands at", Length.class) : Optional.empty(),
                        inDuct ? word(d, "stops", Listing.Flame.values(), Listing.Flame::words) : Optional.empty(),
                        inDuct ? d.find("dust laden", Boolean.class) : Optional.empty()))
                .orElse(Listing.UNKNOWN);
    }

    /** How charge leaves a tube, a tool or a drum. */
    static ChargePath charge(Section part) {
        return new ChargePath(
                word(part, "material", ChargePath.Material.values(), ChargePath.Material::words),
                part.find("resistance", ElectricResistance.class));
    }

    private static <T> Optional<T> word(Section section, String key, T[] values, Function<T, String> words) {
        return section.find(key, String.class).map(said -> Worded.of(values, words, said));
    }
}
