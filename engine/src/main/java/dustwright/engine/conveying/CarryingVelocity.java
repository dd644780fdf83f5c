package dustwright.engine.conveying;

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
 * @param weighed every law that was asked, in the order of {@link VelocityLaw}
 */
public record CarryingVelocity(String dust, List<Weighed> weighed) {
    /** One law and what it said. */
    public record Weighed(VelocityLaw law, LawAnswer answer) {
        /** The velocity, where the law may be asked. */
        public Optional<Velocity> inside() {
            return answer.match(Optional::of, (extrapolated, why) -> Optional.empty(), why -> Optional.empty());
        }
    }

    /**
     * A law that binds.
     *
     * @param dust id of the dust it binds for
     * @param velocity what it asks, without any margin
     */
    public record Binding(String dust, VelocityLaw law, Velocity velocity) {}

    public CarryingVelocity {
        weighed = List.copyOf(weighed);
    }

    /**
     * Asks the laws for the ways the tube lies.
     *
     * @param conveyed the stream where air is slowest: at the upstream end
     * @param lies how parts of the tube lie
     */
    public static CarryingVelocity of(String dust, Conveyed conveyed, Set<VelocityLaw.Orientation> lies) {
        return new CarryingVelocity(
                dust,
                Arrays.stream(VelocityLaw.values())
                        .filter(law -> lies.contains(law.orientation()))
                        .map(law -> new Weighed(law, law.about(conveyed)))
                        .toList());
    }

    /** The law that asks most of those inside their range; empty where none is. */
    public Optional<Binding> binding() {
        return weighed.stream()
                .flatMap(one -> one.inside().map(v -> new Binding(dust, one.law(), v)).stream())
                .max(Comparator.comparing(Binding::velocity));
    }
}
