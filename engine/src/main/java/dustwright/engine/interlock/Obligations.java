package dustwright.engine.interlock;

import java.util.List;
import java.util.stream.Stream;

/**
 * What is demanded of every sequence; what speaks of devices a sequence does not have does not apply to it. {@code valve_off} is true where there is nothing to turn:
 * a demand that it stands is met, and so is one that it turns.
 */
final class Obligations {
    private Obligations() {}

    /** All properties, by what they protect. */
    static final List<Property> ALL = Stream.of(
                    StoppingProperties.ALL,
                    SurpriseProperties.ALL,
                    ServiceProperties.ALL,
                    HonestProperties.ALL,
                    EndingProperties.ALL)
            .flatMap(List::stream)
            .toList();
}
