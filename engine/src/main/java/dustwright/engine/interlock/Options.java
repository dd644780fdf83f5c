package dustwright.engine.interlock;

import dustwright.engine.bagging.Container;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.Drive;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

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
 * @param shutOff a valve between receiver and producer shuts while the vent is open, so that the receiver stands still
 * @param purge STOP first lets air through the far-end bleed sweep the line for a time
 */
public record Options(
        boolean drum,
        boolean twoProducers,
        boolean drive,
        boolean isolation,
        boolean manualCleaning,
        boolean idle,
        Discharge discharge,
        boolean shutOff,
        boolean purge) {
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

    /** What no plant file says, and a person adds. */
    public enum Extra {
        /** An explosion isolation valve that reports whether it is ready. */
        ISOLATION,
        /** Filters are cleaned by hand. */
        MANUAL_CLEANING,
        /** Inlet switches. */
        IDLE,
        /** Double dump gates in place of a rotary valve. */
        DUMP_GATES,
        /** A suction shut-off valve. */
        SHUT_OFF,
        /** A purge at STOP. */
        PURGE
    }

    /** Every choice, numbered: one bit each, then the discharge; after those the same with a shut-off valve, with a purge, with both. */
    public static Options numbered(int number) {
        Discharge discharge = Discharge.values()[number % WITHOUT_EXTRAS >> 6];
        int extras = number / WITHOUT_EXTRAS;
        return new Options(
                (number & 1) != 0 || discharge == Discharge.STRAIGHT,
                (number & 2) != 0,
                (number & 4) != 0,
                (number & 8) != 0,
                (number & 16) != 0,
                (number & 32) != 0,
                discharge,
                (extras & 1) != 0,
                (extras & 2) != 0);
    }

    /** How many there are without shut-off valve and purge; those with a drum under vacuum come twice. */
    public static final int WITHOUT_EXTRAS = 192;

    /** How many there are. */
    public static final int COUNT = 4 * WITHOUT_EXTRAS;

    /** What a station of a plant file says, together with what it leaves open. */
    public static Options of(Station station, Set<Extra> extras) {
        boolean dumpGates = extras.contains(Extra.DUMP_GATES);
        boolean drum =
                station.container().filter(c -> c.kind() == Container.Kind.DRUM).isPresent();
        boolean straight = drum && station.rotaryValve().isEmpty() && !dumpGates;
        return new Options(
                drum,
                station.producers().size() > 1,
                station.producers().stream().anyMatch(p -> p.drive() instanceof Drive.Holding),
                extras.contains(Extra.ISOLATION),
                extras.contains(Extra.MANUAL_CLEANING),
                extras.contains(Extra.IDLE),
                straight ? Discharge.STRAIGHT : dumpGates ? Discharge.DUMP_GATES : Discharge.ROTARY_VALVE,
                extras.contains(Extra.SHUT_OFF),
                extras.contains(Extra.PURGE));
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
        if (shutOff) {
            words.put("suction valve", "shut while the vent is open");
        }
        if (purge) {
            words.put("purge", "through the far-end bleed, at STOP");
        }
        return words;
    }
}
