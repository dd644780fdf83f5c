package dustwright.engine.interlock;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What a station is fitted with, and the words all parts of its default sequence share. */
abstract class Fitted {
    final Options has;
    final String container;
    final List<String> pumps;

    /** What empties the receiver while it is under vacuum; nothing where dust falls straight into a drum. */
    final Optional<String> turner;

    Fitted(Options options) {
        has = options;
        container = options.container();
        pumps = options.twoProducers() ? List.of("pump_1", "pump_2") : List.of("pump");
        turner = switch (options.discharge()) {
            case ROTARY_VALVE -> Optional.of("rotary valve");
            case DUMP_GATES -> Optional.of("dump gates");
            case STRAIGHT -> Optional.empty();
        };
    }

    String turner() {
        return turner.orElseThrow();
    }

    boolean gates() {
        return has.discharge() == Options.Discharge.DUMP_GATES;
    }

    /** As a lamp or a message writes it. */
    static String big(String words) {
        return words.toUpperCase(Locale.ROOT);
    }

    /** Anything that takes a producer out, by the number its contacts end with. */
    String pumpBad(String number) {
        return Stream.of("overload_ok", "winding_cool", "discharge_cool", has.drive() ? "drive_ok" : "")
                .filter(n -> !n.isEmpty())
                .map(n -> "not " + n + number)
                .reduce((a, b) -> a + " or " + b)
                .orElseThrow();
    }

    static List<String> join(List<String> first, List<String> second) {
        return Stream.concat(first.stream(), second.stream()).toList();
    }
}
