package dustwright.engine.sheet;

import dustwright.engine.electrical.Instrument.Signal;
import dustwright.engine.finding.Place;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import java.util.List;

/** The instrument list of a station, by ISA-5.1 letters, with the signal each has to the controller. */
final class InstrumentSheet {
    private InstrumentSheet() {}

    /** The list of a station, by its place among the stations. */
    static Sheet of(Plant plant, int index) {
        Station station = plant.stations().get(index);
        List<Entry> entries = Instruments.of(plant, index).stream()
                .map(tagged -> Entry.words(
                        "instrument-" + tagged.tag() + "/" + station.id(),
                        tagged.tag() + ", " + tagged.service(),
                        words(tagged.signal())
                                + tagged.missing()
                                        .map(device -> "; not counted: this plant describes no " + device)
                                        .orElse(""),
                        List.of(),
                        tagged.source()))
                .toList();
        return new Sheet(
                "instruments/" + station.id(),
                "Instruments",
                new Place(Place.Kind.STATION, station.id()),
                entries,
                List.of());
    }

    static String words(Signal signal) {
        return switch (signal) {
            case DIGITAL_INPUT -> "digital input";
            case ANALOGUE_INPUT -> "analogue input";
            case DIGITAL_OUTPUT -> "digital output";
            case NO_WIRE -> "no wire";
        };
    }
}
