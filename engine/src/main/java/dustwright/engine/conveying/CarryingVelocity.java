package dustwright.engine.conveying;

import dustwright.engine.conveying.VelocityLaw.Orientation;
import dustwright.engine.finding.Source;
import dustwright.engine.quantity.Velocity;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the published laws say a stream of dust needs to stay in motion (equation CON-25): saltation where the tube lies level, choking
 * where it rises. They differ by factors of 2 to 4 for fine dust, so all are shown; the greatest inside its range binds.
 *
 * @param dust id of the dust whose particle was asked about
 * @param stated measured for this dust: where present it binds, whatever the laws say
 * @param weighed every law that was asked, in the order of {@link VelocityLaw}
 */
public record CarryingVelocity(String dust, Optional<Velocity> stated, List<Weighed> weighed) {
    /** One law and what it said. */
    public record Weighed(VelocityLaw law, LawAnswer answer) {
        /** The velocity, where the law may be asked. */
        public Optional<Velocity> inside() {
            return answer.match(Optional::of, outside -> Optional.empty(), why -> Optional.empty());
        }

        /** Why the law may not be asked; empty where it may. */
        List<String> whyNot() {
            return answer.match(inside -> List.of(), LawAnswer.OutsideRange::why, List::of);
        }
    }

    /**
     * What binds.
     *
     * @param dust id of the dust it binds for
     * @param law empty where the velocity is stated for the dust
     * @param velocity what it asks, without any margin
     */
    public record Binding(String dust, Optional<VelocityLaw> law, Velocity velocity) {
        /** Author and year, or that it is stated. */
        public String words() {
            return law.map(VelocityLaw::words).orElse("stated");
        }

        /** Where the velocity comes from. */
        public Source source() {
            return law.map(VelocityLaw::source).orElseGet(Source::entered);
        }
    }

    /**
     * A way the tube lies for which the dust has no law inside its range.
     *
     * @param why one sentence for each limit broken by any law for it
     */
    public record NotJudged(Orientation lies, List<String> why) {}

    public CarryingVelocity {
        weighed = List.copyOf(weighed);
    }

    /**
     * Asks the laws for the ways the tube lies.
     *
     * @param conveyed the stream where air is slowest: at the upstream end
     * @param lies how parts of the tube lie
     */
    public static CarryingVelocity of(Dust dust, Conveyed conveyed, Set<Orientation> lies) {
        return new CarryingVelocity(
                dust.id(),
                dust.carryingVelocity().filter(stated -> !lies.isEmpty()),
                Arrays.stream(VelocityLaw.values())
                        .filter(law -> lies.contains(law.orientation()))
                        .map(law -> new Weighed(law, law.about(conveyed)))
                        .toList());
    }

    /** What is stated, else the law that asks most of those inside their range; empty where none is. */
    public Optional<Binding> binding() {
        return stated.map(velocity -> new Binding(dust, Optional.empty(), velocity))
                .or(() -> weighed.stream()
                        .flatMap(one -> one.inside().map(v -> new Binding(dust, Optional.of(one.law()), v)).stream())
                        .max(Comparator.comparing(Binding::velocity)));
    }

    /** The ways the tube lies of which nobody can say what they ask: a law for rising tubes says nothing of level ones. */
    public List<NotJudged> notJudged() {
        return stated.isPresent()
                ? List.of()
                : Arrays.stream(Orientation.values())
                        .flatMap(lies -> notJudged(lies).stream())
                        .toList();
    }

    private Optional<NotJudged> notJudged(Orientation lies) {
        List<Weighed> asked =
                weighed.stream().filter(one -> one.law().orientation() == lies).toList();
        return asked.isEmpty() || asked.stream().anyMatch(one -> one.inside().isPresent())
                ? Optional.empty()
                : Optional.of(new NotJudged(
                        lies,
                        asked.stream()
                                .flatMap(one -> one.whyNot().stream())
                                .distinct()
                                .toList()));
    }
}
