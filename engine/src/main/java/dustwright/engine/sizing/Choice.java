package dustwright.engine.sizing;

import dustwright.engine.quantity.Area;
import java.util.List;

/** Something left open in a plant, and what it may be. Prices are first costs in the plant's one currency. */
public sealed interface Choice {
    /** Name of the choice, unique among those of its kind. */
    String id();

    /** What it may be, by id, each with its price. */
    List<Priced> options();

    /**
     * One thing to choose.
     *
     * @param price of a metre of tube, of a hose, of a producer, of a set of elements [currency]
     */
    record Priced(String id, double price) {}

    /** One tube for a group of runs, by the length as it is ordered. */
    record Tubes(String id, List<String> runs, List<Priced> options) implements Choice {
        public Tubes {
            runs = List.copyOf(runs);
            options = List.copyOf(options);
        }
    }

    /** One hose for a group of inlets, a hose each. */
    record Hoses(String id, List<String> inlets, List<Priced> options) implements Choice {
        public Hoses {
            inlets = List.copyOf(inlets);
            options = List.copyOf(options);
        }
    }

    /** One producer of those described at a station; its id is that of the station. The others are not bought. */
    record Producers(String id, List<Priced> options) implements Choice {
        public Producers {
            options = List.copyOf(options);
        }
    }

    /**
     * The cloth area of a station's filter; its id is that of the station.
     *
     * @param areas in the order of the options
     */
    record Cloth(String id, List<Area> areas, List<Priced> options) implements Choice {
        public Cloth {
            areas = List.copyOf(areas);
            options = List.copyOf(options);
        }
    }
}
