package dustwright.engine.interlock;

import dustwright.engine.bagging.Container;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.Drive;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a plant has, as far as its sequence cares.
 *
 * @param drum a drum takes the dust, else a bulk bag
 * @param twoProducers two vacuum producers, else one
 * @param drive a variable-speed drive, else direct on line
 * @param isolation an explosion isolation valve reports whether it is ready
 * @param manualCleaning filters are cleaned when an operator asks, else by themselves; with the producer off load in both cases
 * @param idle inlets have switches, and vacuuming that nobody uses ends by itself
 * @param discharge what empties the receiver
 */
public record Options(
        boolean drum,
        boolean twoProducers,
        boolean drive,
        boolean isolation,
        boolean manualCleaning,
        boolean idle,
        Discharge discharge) {
    /** Bulk bag under a rotary valve, one producer direct on line, no isolation valve, cleaning by itself, no inlet switches. */
    public static final Options USUAL = numbered(0);

    /** What empties the receiver. */
    public enum Discharge {
        /** A rotary valve that turns while users vacuum. */
        ROTARY_VALVE("rotary valve"),
        /** Two gates on one cam drive, which keeps one of them shut at any time. */
        DUMP_GATES("double dump gates on one cam drive"),
        /** Nothing: dust falls straight into a drum under vacuum. */
        STRAIGHT("none, drum under vacuum");

        private final String words;

        Discharge(String words) {
            this.words = words;
        }
    }

    /** Every choice, numbered: one bit each, then the discharge. */
    public static Options numbered(int number) {
        Discharge discharge = Discharge.values()[number >> 6];
        return new Options(
                (number & 1) != 0 || discharge == Discharge.STRAIGHT,
                (number & 2) != 0,
                (number & 4) != 0,
                (number & 8) != 0,
                (number & 16) != 0,
                (number & 32) != 0,
                discharge);
    }

    /** How many there are; those with a drum under vacuum come twice. */
    public static final int COUNT = 192;

    /** What a station of a plant file says, together with what it leaves open. */
    public static Options of(
            Station station, boolean isolation, boolean manualCleaning, boolean idle, boolean dumpGates) {
        boolean drum =
                station.container().filter(c -> c.kind() == Container.Kind.DRUM).isPresent();
        boolean straight = drum && station.rotaryValve().isEmpty() && !dumpGates;
        return new Options(
                drum,
                station.producers().size() > 1,
                station.producers().stream().anyMatch(p -> p.drive() instanceof Drive.Holding),
                isolation,
                manualCleaning,
                idle,
                straight ? Discharge.STRAIGHT : dumpGates ? Discharge.DUMP_GATES : Discharge.ROTARY_VALVE);
    }

    /** What takes the dust. */
    public String container() {
        return drum ? "drum" : "bag";
    }

    /** As a sequence file says them. */
    public Map<String, String> words() {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("container", drum ? "drum" : "bulk bag");
        words.put("producers", twoProducers ? "two" : "one");
        words.put("drive", drive ? "variable speed" : "direct on line");
        words.put("isolation valve", isolation ? "yes" : "no");
        words.put("filter cleaning", manualCleaning ? "by hand, off load" : "by itself, off load");
        if (discharge != Discharge.ROTARY_VALVE) {
            words.put("discharge", discharge.words);
        }
        if (idle) {
            words.put("inlet switches", "idle when nobody vacuums");
        }
        return words;
    }
}
