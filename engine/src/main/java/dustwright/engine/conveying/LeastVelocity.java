package dustwright.engine.conveying;

import dustwright.engine.finding.Source;
import dustwright.engine.quantity.Range;
import dustwright.engine.quantity.Velocity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * The least gas velocity asked of a tube that carries dust (equation CON-25), with everything that was weighed and what binds.
 *
 * <pre>
 * v_least = v_class                                     the dust class governs (default)
 * v_least = max( v_class, margin · U_law, … )           the greatest governs; only laws inside their range count
 * </pre>
 *
 * @param least the velocity asked for
 * @param boundBy the dust class, or author and year of the law that binds
 * @param source where the binding figure comes from
 * @param margin factor on every law's velocity [-]
 * @param weighed every law that was asked, in the order of {@link VelocityLaw}
 */
public record LeastVelocity(Velocity least, String boundBy, Source source, double margin, List<Weighed> weighed) {
    private static final Range MARGIN = new Range("the margin on saltation and choking", "margin", "-", 1, 5);

    /** What decides. */
    public enum Governs {
        /** The velocity of the dust class; the laws are shown beside it. */
        DUST_CLASS,
        /** The greatest of the dust class and every law inside its range, times the margin. */
        GREATEST
    }

    /** One law and what it said. */
    public record Weighed(VelocityLaw law, LawAnswer answer) {}

    public LeastVelocity {
        weighed = List.copyOf(weighed);
    }

    /**
     * Asks the laws for the ways the tube lies.
     *
     * @param dust its class or stated velocity
     * @param conveyed the stream where air is slowest: at the upstream end
     * @param lies how parts of the tube lie
     * @param margin 1 to 5; Rhodes designs with 1.5
     */
    public static LeastVelocity of(
            Dust dust, Conveyed conveyed, Set<VelocityLaw.Orientation> lies, double margin, Governs governs) {
        MARGIN.check(margin);
        List<Weighed> weighed = new ArrayList<>();
        Arrays.stream(VelocityLaw.values())
                .filter(law -> lies.contains(law.orientation()))
                .forEach(law -> weighed.add(new Weighed(law, law.about(conveyed))));
        LeastVelocity found = new LeastVelocity(dust.minimumVelocity(), "dust class", dust.basis(), margin, weighed);
        if (governs == Governs.GREATEST) {
            for (Weighed one : weighed) {
                found = found.orAsked(one);
            }
        }
        return found;
    }

    private LeastVelocity orAsked(Weighed one) {
        return one.answer()
                .match(
                        velocity -> {
                            Velocity asked = new Velocity(margin * velocity.metresPerSecond());
                            return asked.compareTo(least) > 0
                                    ? new LeastVelocity(
                                            asked, one.law().words(), one.law().source(), margin, weighed)
                                    : this;
                        },
                        (extrapolated, why) -> this,
                        why -> this);
    }
}
