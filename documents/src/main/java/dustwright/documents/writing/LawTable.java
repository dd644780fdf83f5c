package dustwright.documents.writing;

import dustwright.engine.conveying.CarryingVelocity;
import dustwright.engine.conveying.VelocityLaw;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * What the published laws of saltation and choking ask, a row per piece and dust, a column per law; laws that nowhere stand inside
 * their range have no column and are named below.
 */
public final class LawTable {
    private static final String OUTSIDE = "–";

    private final Show show;
    private final List<VelocityLaw> laws;
    private final List<VelocityLaw> nowhere;
    private final List<List<String>> rows = new ArrayList<>();

    /** What the laws ask of the dusts in one piece. */
    public record Asked(String piece, List<CarryingVelocity> dusts) {}

    public LawTable(List<Asked> asked, Show show) {
        this.show = show;
        laws = Stream.of(VelocityLaw.values())
                .filter(law ->
                        all(asked).anyMatch(w -> w.law() == law && w.inside().isPresent()))
                .toList();
        nowhere = Stream.of(VelocityLaw.values())
                .filter(law -> !laws.contains(law) && all(asked).anyMatch(w -> w.law() == law))
                .toList();
        for (Asked piece : asked) {
            piece.dusts().forEach(dust -> rows.add(row(piece.piece(), dust)));
        }
    }

    private static Stream<CarryingVelocity.Weighed> all(List<Asked> asked) {
        return asked.stream().flatMap(a -> a.dusts().stream()).flatMap(d -> d.weighed().stream());
    }

    private List<String> row(String piece, CarryingVelocity dust) {
        List<String> row = new ArrayList<>(List.of(
                piece,
                dust.dust(),
                dust.binding().map(b -> b.words()).orElse("none"),
                dust.binding().map(b -> show.number(b.velocity())).orElse(OUTSIDE)));
        for (VelocityLaw law : laws) {
            row.add(dust.weighed().stream()
                    .filter(w -> w.law() == law)
                    .flatMap(w -> w.inside().stream())
                    .map(show::number)
                    .findFirst()
                    .orElse(OUTSIDE));
        }
        return row;
    }

    /** Heads of the columns of the laws; piece, dust, the law that asks most and what it asks stand before them. */
    public List<String> heads() {
        return laws.stream().map(VelocityLaw::words).toList();
    }

    public List<List<String>> rows() {
        return rows;
    }

    /** What the dash means, and the laws without a column. */
    public String note() {
        String dash = "Asked at the slowest point of the piece. " + OUTSIDE
                + " outside the range of the law, or not for a tube that lies so.";
        return nowhere.isEmpty()
                ? dash
                : dash + " Outside their range everywhere: "
                        + String.join(
                                ", ", nowhere.stream().map(VelocityLaw::words).toList()) + ".";
    }
}
