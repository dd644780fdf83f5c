package dustwright.engine.sheet;

import dustwright.engine.bagging.Container;
import dustwright.engine.electrical.Instrument;
import dustwright.engine.finding.Source;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.Drive;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.tubing.Bleed;
import java.util.ArrayList;
import java.util.List;

/** Instruments that go with what a plant really has, numbered by station in hundreds. */
final class Instruments {
    private static final int LOOPS_PER_STATION = 100;

    private final List<Tagged> list = new ArrayList<>();
    private int loop;

    private Instruments(int station) {
        this.loop = LOOPS_PER_STATION * station;
    }

    /**
     * One instrument.
     *
     * @param service where it sits and what for
     * @param source the plant file where it describes this very thing; practice where the trade fits it to what is described
     */
    record Tagged(Instrument instrument, String tag, String service, Source source) {
        Instrument.Signal signal() {
            return instrument.signal();
        }
    }

    /** All of the plant, station by station. */
    static List<Tagged> of(Plant plant) {
        List<Tagged> all = new ArrayList<>();
        for (int n = 0; n < plant.stations().size(); n++) {
            all.addAll(of(plant, n));
        }
        return all;
    }

    /** Those of one station, by its place among the stations; far-end bleeds go with the first. */
    static List<Tagged> of(Plant plant, int index) {
        Instruments instruments = new Instruments(index + 1);
        Station station = plant.stations().get(index);
        instruments.receiver(station);
        station.producers().forEach(instruments::producer);
        if (index == 0) {
            plant.bleeds().forEach(instruments::bleed);
        }
        return List.copyOf(instruments.list);
    }

    private void receiver(Station station) {
        String at = "receiver " + station.id();
        usual(at + ": filter differential", "PDIT");
        String level = at + ": hopper high level";
        station.receiver().probe().ifPresentOrElse(probe -> described(level, "LSH"), () -> usual(level, "LSH"));
        station.safetyFilter()
                .ifPresent(f -> usual("safety filter of " + station.id() + ": dust behind the filter", "PDSH"));
        usual("suction of " + station.id() + ": header vacuum", "PT");
        usual("suction of " + station.id() + ": vacuum gauge", "PI");
        station.relief().ifPresent(r -> described("suction of " + station.id() + ": vacuum relief valve", "PSV"));
        station.vent().ifPresent(v -> {
            described("vent valve of " + station.id() + ", spring-open", "XV");
            same("vent valve of " + station.id() + " proved open", "ZSO");
        });
        station.rotaryValve()
                .ifPresent(v -> usual("rotary valve of " + station.id() + ": rotor turns, on the rotor", "SSL"));
        station.container().ifPresent(c -> {
            boolean scale = c.stop() == Container.Stop.SCALE;
            usual("container of " + station.id() + ": full, by " + c.stop().words(), scale ? "WSH" : "LSH");
        });
        usual("panel, " + station.id() + ": start and stop", "HS");
        usual("panel, " + station.id() + ": running lamp", "YL");
        usual("pulse air of " + station.id() + ": supply lost", "PSL");
    }

    private void producer(VacuumProducer producer) {
        usual("discharge of " + producer.id() + ": too hot", "TSH");
        usual("motor of " + producer.id() + ": current", "II");
        if (producer.drive() instanceof Drive.Holding) {
            described("drive of " + producer.id() + ": speed", "ST");
        }
    }

    private void bleed(Bleed bleed) {
        described("far-end bleed " + bleed.id() + ", by hand", "HV");
    }

    private void usual(String service, String letters) {
        loop++;
        add(service, letters, Source.commonPractice());
    }

    private void described(String service, String letters) {
        loop++;
        add(service, letters, Source.entered());
    }

    /** A further instrument of the loop before. */
    private void same(String service, String letters) {
        add(service, letters, Source.commonPractice());
    }

    private void add(String service, String letters, Source source) {
        Instrument instrument = Instrument.of(letters);
        list.add(new Tagged(instrument, instrument.tag(loop), service, source));
    }
}
