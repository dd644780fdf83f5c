package dustwright.engine.sheet;

import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.Step;
import dustwright.engine.hazard.VentMethod;
import dustwright.engine.quantity.Area;
import java.util.List;
import java.util.Optional;

/**
 * What one method says of the vent for one dust: smaller than {@code least} it is too small, from {@code enough} on it is not; between them, and
 * where one is absent, nobody knows.
 *
 * @param least its last step's result is an area that this dust asks at least
 * @param enough its last step's result is an area that is enough for this dust without any credit
 * @param why the method itself gives no number; empty where it does
 * @param inRange whether {@code least} is of this very dust; else it is of a weaker one at the edge of the range, and this one asks more
 * @param stronger whether {@code enough} is of a stronger dust at the edge of the range, this one being outside it: it decides, and is no figure of
 *     this dust
 * @param noneIsEnough whether no area is enough behind the duct, by what is known of the dust or of a weaker one
 */
record VentSay(
        VentMethod by,
        Dust dust,
        List<Step> least,
        List<Step> enough,
        Optional<String> why,
        boolean inRange,
        boolean stronger,
        boolean noneIsEnough) {
    VentSay {
        least = List.copyOf(least);
        enough = List.copyOf(enough);
    }

    static Area area(List<Step> steps) {
        return (Area) steps.get(steps.size() - 1).result().value();
    }

    boolean tooSmall(Area fitted) {
        return !least.isEmpty() && fitted.compareTo(area(least)) < 0;
    }

    boolean suffices(Area fitted) {
        return !enough.isEmpty() && fitted.compareTo(area(enough)) >= 0;
    }
}
