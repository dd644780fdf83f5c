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
 */
public record Options(boolean drum, boolean twoProducers, boolean drive, boolean isolation, boolean manualCleaning) {
    /** Bulk bag, one producer direct on line, no isolation valve, cleaning by itself. */
    public static final Options USUAL = new Options(false, false, false, false, false);

    /** Every choice, numbered by its bits. */
    public static Options numbered(int bits) {
        return new Options((bits & 1) != 0, (bits & 2) != 0, (bits & 4) != 0, (bits & 8) != 0, (bits & 16) != 0);
    }

    /** How many there are. */
    public static final int COUNT = 32;

    /** What a station of a plant file says, together with what it leaves open. */
    public static Options of(Station station, boolean isolation, boolean manualCleaning) {
        return new Options(
                station.container().filter(c -> c.kind() == Container.Kind.DRUM).isPresent(),
                station.producers().size() > 1,
                station.producers().stream().anyMatch(p -> p.drive() instanceof Drive.Holding),
                isolation,
                manualCleaning);
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
        return words;
    }
}
