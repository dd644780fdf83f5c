package dustwright.plantfile;

import dustwright.engine.hazard.DustCard;
import dustwright.engine.hazard.DustFamily;
import dustwright.engine.hazard.Protection;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.ExplosionConstant;
import dustwright.engine.quantity.GaugePressure;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.SparkEnergy;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.quantity.Volume;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;

/** Makes the explosion card of a dust and the protection of a receiver. */
final class HazardBinder {
    private HazardBinder() {}

    static DustCard card(Section card) {
        return new DustCard(
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
                of(DustCard.Sample.values(), DustCard.Sample::words, card.get("sample", String.class)),
                card.find("report", String.class));
    }

    static Protection protection(Section p) {
        return new Protection(
                word(p, "method", Protection.Method.values(), Protection.Method::words),
                word(p, "standing", Protection.Standing.values(), Protection.Standing::words),
                p.find("volume", Volume.class),
                p.find("length to diameter", Ratio.class),
                p.find("reduced pressure", GaugePressure.class),
                p.find("opens", GaugePressure.class),
                p.find("vent area", Area.class),
                p.get("vents", Integer.class),
                p.find("vent duct", Length.class),
                word(p, "inlet isolation", Protection.Isolation.values(), Protection.Isolation::words),
                word(p, "exhaust", Protection.Exhaust.values(), Protection.Exhaust::words),
                p.find("rotary valve isolates", Boolean.class));
    }

    private static <T extends Quantity> Optional<DustCard.Stated<T>> stated(Section card, String key, Class<T> type) {
        return card.find(key, Checker.Stated.class).map(s -> new DustCard.Stated<>(type.cast(s.value()), s.source()));
    }

    private static <T> Optional<T> word(Section section, String key, T[] values, Function<T, String> words) {
        return section.find(key, String.class).map(said -> of(values, words, said));
    }

    private static <T> T of(T[] values, Function<T, String> words, String said) {
        return Arrays.stream(values)
                .filter(value -> words.apply(value).equals(said))
                .findFirst()
                .orElseThrow();
    }
}
