package dustwright.engine.sheet;

import dustwright.engine.bagging.BulkBag;
import dustwright.engine.finding.Source;
import dustwright.engine.hazard.BagType;
import dustwright.engine.hazard.Bonding;
import dustwright.engine.hazard.ChargePath;
import dustwright.engine.hazard.Protection;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.Length;
import dustwright.engine.tubing.Fitting;
import dustwright.engine.tubing.Inlet;
import dustwright.engine.tubing.Run;
import dustwright.engine.tubing.RunGeometry;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is measured between parts and ground before a system for combustible dust is handed over, and again at a set interval: every coupling,
 * inlet, hose and machine of the drawn plant (equation HAZ-20).
 */
public final class EarthingList {
    /** Tube as it is sold, 20 ft. */
    private static final double STOCK_m = 6.096;

    private final Plant plant;
    private final List<Point> points = new ArrayList<>();

    private EarthingList(Plant plant) {
        this.plant = plant;
    }

    /**
     * One line of the test list.
     *
     * @param number of equal measurements on this line
     * @param limit with what may be measured at most
     */
    public record Point(String where, String what, int number, Bonding limit, With with) {}

    /** What it is measured with; the letter stands in the list. */
    public enum With {
        A("ohmmeter for bonds, between both ends, 10 mA or more"),
        B("resistance meter to 10 GΩ, test voltage 10 V up to 1 MΩ, 100 V above"),
        C("meter for footwear, the person standing on the spot");

        /** Where the ways of measuring come from. */
        public static final Source SOURCE = Source.fromMemory("IEC 61340-2-3, IEC 61340-4-1; 10 mA is common practice");

        private final String words;

        With(String words) {
            this.words = words;
        }

        /** The instrument. */
        public String words() {
            return words;
        }
    }

    /** The couplings of one run. */
    record Couplings(int ends, int bends, int further, int fittings, boolean measured) {
        int all() {
            return ends + 2 * bends + further + 2 * fittings;
        }
    }

    static Couplings couplings(Plant plant, Run run) {
        RunGeometry geometry = RunGeometry.of(run, plant.tube(run.tube()));
        int bends = geometry.bends().size();
        return new Couplings(
                2,
                bends,
                geometry.straights().stream().mapToInt(EarthingList::further).sum(),
                run.fittings().stream().mapToInt(Fitting::count).sum(),
                run.route() instanceof Run.Route.Measured);
    }

    /** Stock lengths of one stretch beyond its first: no piece reaches past a bend. */
    private static int further(Length stretch) {
        return Math.max(0, (int) Math.ceil(stretch.metres() / STOCK_m - 1e-9) - 1);
    }

    /** Machines of a station that have a ground of their own, by name. */
    static List<String> machines(Station station, List<String> mains) {
        List<String> machines =
                new ArrayList<>(List.of("receiver " + station.id(), "head and tube sheet " + station.id()));
        if (station.rotaryValve().isPresent()) {
            machines.add("rotary valve " + station.id());
        }
        if (station.container().isPresent()) {
            machines.add("stand of bag or drum " + station.id());
        }
        if (station.safetyFilter().isPresent()) {
            machines.add("housing of the safety filter " + station.id());
        }
        if (station.receiver()
                .protection()
                .method()
                .filter(Protection.Method::vents)
                .isPresent()) {
            machines.add("frame of the explosion vent " + station.id());
        }
        Protection protection = station.receiver().protection();
        if (isolated(protection.isolation())) {
            mains.stream()
                    .filter(m -> mains.size() == 1 || protection.mains().contains(m))
                    .forEach(m -> machines.add("isolation device of main " + m));
        }
        if (isolated(protection.returnIsolation())) {
            machines.add("isolation device of the return air at " + station.id());
        }
        station.producers().forEach(p -> machines.add("vacuum producer " + p.id()));
        return machines;
    }

    private static boolean isolated(Optional<Protection.Isolation> isolation) {
        return isolation.filter(i -> i != Protection.Isolation.NONE).isPresent();
    }

    /** The list for a place where dust is collected; empty where none of it burns. */
    public static List<Point> of(Plant plant, Collecting here) {
        EarthingList list = new EarthingList(plant);
        if (!here.burning().isEmpty()) {
            here.inlets().forEach(list::inlet);
            here.runs().forEach(list::run);
            here.station().ifPresent(s -> list.station(s, here.mains()));
        }
        return List.copyOf(list.points);
    }

    private void add(String where, String what, int number, Bonding limit, With with) {
        points.add(new Point(where, what, number, limit, with));
    }

    private void inlet(Inlet inlet) {
        String where = "inlet " + inlet.id();
        add(where, "valve to ground", 1, Bonding.METAL_PART, With.A);
        add(where, "hose " + inlet.hose() + " with its tool, tool to valve", 1, Bonding.HOSE, With.B);
    }

    private void run(Run run) {
        int all = couplings(plant, run).all();
        add("run " + run.id(), all == 1 ? "its coupling" : "each of its couplings", all, Bonding.METAL_JOINT, With.A);
        add("run " + run.id(), "to ground", 1, Bonding.METAL_PART, With.A);
    }

    private void station(Station station, List<String> mains) {
        machines(station, mains).forEach(m -> add(m, "to ground", 1, Bonding.METAL_PART, With.A));
        add(
                "filter " + station.id(),
                "every cage and clamp to the tube sheet; their number is not in the plant file",
                1,
                Bonding.METAL_PART,
                With.A);
        station.container()
                .flatMap(c -> c.bag())
                .flatMap(BulkBag::type)
                .filter(t -> t == BagType.C)
                .ifPresent(type -> {
                    add("bag at " + station.id(), "any point to its tab, tab to ground", 1, Bonding.BAG_TYPE_C, With.B);
                    add(
                            "bag at " + station.id(),
                            "the same where the older edition or a local rule holds",
                            1,
                            Bonding.BAG_TYPE_C_STRICT,
                            With.B);
                });
        if (station.container().filter(c -> c.bag().isEmpty()).isPresent()) {
            Optional<ChargePath.Material> material =
                    station.container().orElseThrow().charge().material();
            boolean insulates =
                    material.filter(m -> m == ChargePath.Material.INSULATING).isPresent();
            add(
                    "drum at " + station.id(),
                    insulates
                            ? "insulating as stated: no measurement helps, another drum does"
                            : "inside and clamp ring to its ground clip",
                    1,
                    insulates
                            ? Bonding.METAL_PART
                            : material.map(ChargePath.Material::limit).orElse(Bonding.METAL_PART),
                    With.B);
            add("drum at " + station.id(), "ground clip to ground, drum in place", 1, Bonding.METAL_PART, With.A);
        }
        if (station.container().isPresent()) {
            add(
                    "stand at " + station.id(),
                    "person who changes the bag or drum, through shoes and floor",
                    1,
                    Bonding.PERSON,
                    With.C);
        }
    }
}
