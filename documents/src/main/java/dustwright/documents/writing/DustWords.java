package dustwright.documents.writing;

import dustwright.engine.conveying.RiserFoot;
import dustwright.engine.conveying.SolidsDrop;
import dustwright.engine.network.DustStream;
import dustwright.engine.network.LegResult;
import dustwright.engine.quantity.PressureDifference;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/** What dust does in one piece, in words and figures for tables; pressure in {@link Show#lossUnit()}. */
public final class DustWords {
    private static final String UNKNOWN = "unknown";

    private final List<SolidsDrop> drops;
    private final List<DustStream> streams;
    private final Show show;

    public DustWords(LegResult leg, Show show) {
        this.show = show;
        streams = leg.streams();
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
                : show.loss(new PressureDifference(drops.stream()
                        .mapToDouble(drop -> part.apply(drop).pascals())
                        .sum()));
    }

    /** How far the air at the foot of the rise is above the velocity of least drop; empty where nothing is lifted. */
    public String aboveLeastDrop() {
        OptionalDouble least = streams.stream()
                .flatMap(stream -> stream.foot().stream())
                .mapToDouble(RiserFoot.Found::distance)
                .min();
        return least.isPresent() ? Show.margin(least.getAsDouble()) : "";
    }
}
