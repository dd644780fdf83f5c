package dustwright.engine.sheet;

import dustwright.engine.bagging.BulkBag;
import dustwright.engine.bagging.Container;
import dustwright.engine.electrical.ControlSupply.Load;
import dustwright.engine.electrical.Instrument;
import dustwright.engine.finding.Confidence;
import dustwright.engine.finding.Source;
import dustwright.engine.hazard.BagType;
import dustwright.engine.hazard.Protection;
import dustwright.engine.interlock.DefaultSequence;
import dustwright.engine.interlock.Options;
import dustwright.engine.interlock.Sequence;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.Drive;
import dustwright.engine.producer.VacuumProducer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Instruments and signals of a station: what its default sequence wires, by the tags of that sequence, then what it measures and what a
 * bag's stand, further producers and bleeds bring. What the sequence wires for a device that the plant file could describe and does not
 * stands in the list, is said to be so, and counts for nothing.
 */
final class Instruments {
    private static final Source SEQUENCE = new Source(
            "as the station's default sequence wires it; common practice, no source", Confidence.COMMON_PRACTICE);
    /** Producers a default sequence knows; their loops are 120 and 130. */
    private static final int IN_SEQUENCE = 2;

    private final List<Tagged> list = new ArrayList<>();
    private final Station station;

    private Instruments(Station station) {
        this.station = station;
    }

    /**
     * One instrument or signal.
     *
     * @param service where it sits and what for
     * @param source the plant file where it describes this very thing; practice where the trade fits it to what is described
     * @param load what it puts on the control supply; none where no wire leads to it
     * @param missing the device it belongs to, where the plant does not describe one
     */
    record Tagged(
            Instrument instrument,
            String tag,
            String service,
            Source source,
            Optional<Load> load,
            Optional<String> missing) {
        Instrument.Signal signal() {
            return instrument.signal();
        }
    }

    /** All of the plant, station by station; tags count within a station. */
    static List<Tagged> of(Plant plant) {
        List<Tagged> all = new ArrayList<>();
        for (int n = 0; n < plant.stations().size(); n++) {
            all.addAll(of(plant, n));
        }
        return all;
    }

    /** Those of one station, by its place among the stations; far-end bleeds go with the first. */
    static List<Tagged> of(Plant plant, int index) {
        Station station = plant.stations().get(index);
        Instruments instruments = new Instruments(station);
        instruments.sequence(DefaultSequence.of(station.id(), Options.of(station, Set.of())));
        instruments.receiver();
        instruments.producers();
        station.container().ifPresent(instruments::container);
        if (index == 0) {
            for (int n = 0; n < plant.bleeds().size(); n++) {
                String id = plant.bleeds().get(n).id();
                instruments.described("HV-" + (140 + n), "far-end bleed " + id + ", by hand");
            }
        }
        return List.copyOf(instruments.list);
    }

    private void sequence(Sequence sequence) {
        sequence.inputs().forEach(i -> add(i.tag(), i.words() + ": " + i.good() + " or " + i.bad(), SEQUENCE));
        sequence.buttons().forEach(b -> add(b.tag(), "push button " + b.words(), SEQUENCE));
        sequence.outputs().forEach(o -> add(o.tag(), o.words() + ": " + o.on() + " or " + o.off(), SEQUENCE));
        sequence.lamps().forEach(l -> add(l.tag(), "lamp " + l.words(), SEQUENCE));
    }

    private void receiver() {
        usual("PDIT-101", "filter differential, shown and kept");
        usual("PT-106", "header vacuum, shown and kept");
        usual("PI-106", "vacuum gauge at the suction");
        if (list.stream().noneMatch(t -> t.tag().equals("LSH-101"))) {
            station.receiver().probe().ifPresent(p -> described("LSH-101", "receiver level probe"));
        }
        station.relief().ifPresent(r -> described("PSV-108", "vacuum relief valve"));
    }

    private void producers() {
        for (int p = 0; p < station.producers().size(); p++) {
            VacuumProducer producer = station.producers().get(p);
            boolean sequenced = p < IN_SEQUENCE;
            int loop = sequenced ? 120 + 10 * p : 300 + 10 * p;
            String of = "producer " + producer.id();
            if (!sequenced) {
                usual("XY-" + loop, of + " motor");
                usual("ISH-" + loop, of + " motor overload");
                usual("TSH-" + (loop + 1), of + " motor winding");
                usual("TSH-" + (loop + 2), of + " discharge air");
            }
            usual("II-" + loop, of + " motor current");
            if (producer.driven() && list.stream().noneMatch(t -> t.tag().equals("YS-" + (loop + 3)))) {
                usual("YS-" + (loop + 3), of + " drive: healthy or fault");
            }
            if (producer.drive() instanceof Drive.Holding) {
                described("ST-" + (loop + 3), of + " speed of the drive");
            }
        }
    }

    private void container(Container container) {
        if (container.stop() == Container.Stop.SCALE) {
            described("WSH-111", "container full, by scale");
        }
        container.bag().ifPresent(this::bag);
    }

    /** What a bag asks of its stand: ground for type C, and air for seal and inflation. */
    private void bag(BulkBag bag) {
        if (bag.type().filter(type -> type == BagType.C).isPresent()) {
            add("YS-113", "ground of the bag proved, before and while it fills", BagType.SOURCE);
        }
        bag.stand().seal().ifPresent(seal -> {
            described("XV-114", "air of the neck seal");
            usual("PSL-114", "neck seal: inflated or slack");
        });
        bag.stand().inflation().ifPresent(inflation -> {
            if (inflation.byCompressedAir()) {
                described("XV-115", "air that opens the bag");
            } else {
                described("XY-115", "fan that opens the bag");
                usual("ISH-115", "motor overload of the fan that opens the bag");
            }
        });
    }

    private void usual(String tag, String service) {
        add(tag, service, Source.commonPractice());
    }

    private void described(String tag, String service) {
        add(tag, service, Source.entered());
    }

    private void add(String tag, String service, Source source) {
        Instrument instrument = Instrument.of(tag.substring(0, tag.indexOf('-')));
        list.add(new Tagged(
                instrument,
                tag,
                service,
                source,
                load(instrument, tag),
                source.equals(SEQUENCE) ? missing(tag) : Optional.empty()));
    }

    /** What the plant file could describe for a tag of the sequence and does not. */
    private Optional<String> missing(String tag) {
        return switch (tag) {
            case "YS-100" ->
                unless(
                        station.receiver()
                                .protection()
                                .method()
                                .filter(m -> m == Protection.Method.SUPPRESSION)
                                .isPresent(),
                        "detector of fire or explosion");
            case "XV-121", "XV-131" -> Optional.of("line valves of its producers");
            case "PDSH-105" -> unless(station.safetyFilter().isPresent(), "safety filter");
            case "PSH-108", "YL-108" -> unless(station.relief().isPresent(), "relief valve");
            case "ZSO-106", "XV-106" -> unless(station.vent().isPresent(), "vent valve");
            case "YS-123", "SSH-123" -> withoutDrive(0);
            case "YS-133", "SSH-133" -> withoutDrive(1);
            case "SSL-110", "ISH-110", "ZSC-110", "XY-110", "YL-110" ->
                unless(station.rotaryValve().isPresent(), "rotary valve");
            case "LSH-101", "YL-101" -> unless(station.receiver().probe().isPresent(), "level probe of the receiver");
            case "LSH-111", "ZSC-111", "HS-203", "HS-204", "YL-111", "YL-112", "YL-113" ->
                unless(station.container().isPresent(), "container");
            default -> Optional.empty();
        };
    }

    private Optional<String> withoutDrive(int producer) {
        return unless(
                station.producers().get(producer).driven(),
                "drive of producer " + station.producers().get(producer).id());
    }

    private static Optional<String> unless(boolean described, String device) {
        return described ? Optional.empty() : Optional.of(device);
    }

    /** Pulse valves and automated valves are solenoids, other relays switch motors, and the horn is one with the lamps. */
    private static Optional<Load> load(Instrument instrument, String tag) {
        return switch (instrument.signal()) {
            case DIGITAL_INPUT -> Optional.of(Load.DIGITAL_INPUT);
            case ANALOGUE_INPUT -> Optional.of(Load.ANALOGUE_INPUT);
            case NO_WIRE -> Optional.empty();
            case DIGITAL_OUTPUT ->
                Optional.of(
                        instrument.letters().equals("YL") || tag.equals("XY-200")
                                ? Load.LAMP
                                : instrument.letters().equals("XV") || tag.equals("XY-101")
                                        ? Load.SOLENOID_VALVE
                                        : Load.MOTOR_RELAY);
        };
    }
}
