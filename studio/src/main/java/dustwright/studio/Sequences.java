package dustwright.studio;

import dustwright.engine.finding.Outcome;
import dustwright.engine.interlock.DefaultSequence;
import dustwright.engine.interlock.Options;
import dustwright.engine.interlock.Sequence;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.plantfile.SequenceReader;
import dustwright.plantfile.SequenceReading;
import dustwright.plantfile.SequenceText;
import dustwright.studio.Kept.Edited;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * By what each station is controlled: the sequence its plant begins with, or that sequence as somebody edited it here. Edits are kept beside
 * the steps of the plant, all of them, and are no part of the plant file.
 */
final class Sequences {
    private final Kept kept;
    private final Clock clock;

    Sequences(Kept kept, Clock clock) {
        this.kept = kept;
        this.clock = clock;
    }

    /** The sequence a station begins with, with what no plant file says. */
    static Sequence plain(Plant plant, Station station, Set<Options.Extra> extras) {
        return DefaultSequence.of(plant.name() + ", station " + station.id(), Options.of(station, extras));
    }

    /** Why there is no sequence for so many producers; empty where there is one. */
    static Optional<String> unable(Station station) {
        int producers = station.producers().size();
        return producers > 2
                ? Optional.of("A sequence is made for one or two producers; station " + station.id() + " has "
                        + producers + ".")
                : Optional.empty();
    }

    /** The last edit; where its text is empty, or there is none, the plant's own counts. */
    Edited last(Station station) {
        return kept.lastEdited(station.id());
    }

    /** Newest first. */
    List<Edited> edits(Station station) {
        return kept.edited(station.id());
    }

    /** Edits of all stations: a number that grows with each. */
    int edition() {
        return kept.edits();
    }

    /**
     * What controls a station now, or why that cannot be read.
     *
     * @param edit its number; 0 where the plant's own counts
     */
    record Control(Outcome<Sequence> sequence, int edit) {}

    /** Both are read at one moment. */
    Control of(Plant plant, Station station) {
        Edited last = last(station);
        return new Control(sequence(plant, station, last), last.text().isEmpty() ? 0 : last.number());
    }

    private static Outcome<Sequence> sequence(Plant plant, Station station, Edited last) {
        Optional<String> unable = unable(station);
        if (unable.isPresent()) {
            return new Outcome.NotSolved<>(unable.get());
        }
        if (last.text().isEmpty()) {
            return new Outcome.Solved<>(plain(plant, station, Set.of()));
        }
        SequenceReading reading = SequenceReader.read(last.text());
        return reading instanceof SequenceReading.Read read
                ? new Outcome.Solved<>(read.sequence())
                : new Outcome.NotSolved<>("The sequence kept for station " + station.id() + " has faults: "
                        + ((SequenceReading.Faults) reading).faults().get(0).text());
    }

    /** The text that counts, where this is the last edit. */
    static String text(Plant plant, Station station, Edited last) {
        return last.text().isEmpty() ? SequenceText.of(plain(plant, station, Set.of())) : last.text();
    }

    /** Keeps an edit that was thought out on the edit before it; false where there is a later one by now. */
    boolean edit(Station station, int on, String author, String text) {
        String at = Instant.now(clock).truncatedTo(ChronoUnit.SECONDS).toString();
        return kept.edit(station.id(), new Edited(on + 1, at, author, text));
    }
}
