package dustwright.documents.writing;

import dustwright.engine.conveying.CarryingVelocity;
import dustwright.engine.conveying.LawAnswer;
import dustwright.engine.conveying.SolidsDrop;
import dustwright.engine.network.LegResult;
import dustwright.engine.quantity.PressureDifference;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/** What dust does in one piece, in words and figures for tables. */
public final class DustWords {
    private static final String UNKNOWN = "unknown";

    private final List<SolidsDrop> drops;
    private final Show show;

    public DustWords(LegResult leg, Show show) {
        this.show = show;
        drops = leg.streams().stream().flatMap(stream -> stream.drop().stream()).toList();
    }

    public String total() {
        return sum(SolidsDrop::total);
    }

    public String acceleration() {
        return sum(SolidsDrop::acceleration);
    }

    public String friction() {
        return sum(SolidsDrop::friction);
    }

    public String lift() {
        return sum(SolidsDrop::lift);
    }

    public String bends() {
        return sum(SolidsDrop::bends);
    }

    private String sum(Function<SolidsDrop, PressureDifference> part) {
        return drops.isEmpty()
                ? UNKNOWN
                : show.full(new PressureDifference(drops.stream()
                        .mapToDouble(drop -> part.apply(drop).pascals())
                        .sum()));
    }

    /** How far the air is above the velocity of least drop; empty where nothing is lifted. */
    public String aboveLeastDrop() {
        OptionalDouble least = drops.stream()
                .flatMap(drop -> drop.distanceToLeastDrop().stream())
                .mapToDouble(Double::doubleValue)
                .min();
        return least.isPresent() ? Show.margin(least.getAsDouble()) : "";
    }

    /** One sentence for each dust: which law asks most, the others, and which may not be asked here. */
    public static List<String> laws(List<CarryingVelocity> laws, Show show) {
        return laws.stream().map(each -> sentence(each, show)).toList();
    }

    private static String sentence(CarryingVelocity laws, Show show) {
        List<String> others = new ArrayList<>();
        List<String> outside = new ArrayList<>();
        String binding = laws.binding().map(b -> b.law().words()).orElse("");
        for (CarryingVelocity.Weighed one : laws.weighed()) {
            if (!(one.answer() instanceof LawAnswer.Inside inside)) {
                outside.add(one.law().words());
            } else if (!one.law().words().equals(binding)) {
                others.add(one.law().words() + " " + show.number(inside.velocity()));
            }
        }
        String most = laws.binding()
                .map(b -> b.law().words() + " asks most, " + show.full(b.velocity()))
                .orElse("no published law is inside its range");
        return laws.dust() + ": " + most + (others.isEmpty() ? "" : "; " + String.join(", ", others))
                + (outside.isEmpty() ? "" : "; outside its range: " + String.join(", ", outside)) + ".";
    }
}
