package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.finding.Derivation;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.hazard.Bonding;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.Count;
import dustwright.engine.quantity.ElectricResistance;
import dustwright.engine.sheet.EarthingList.Couplings;
import dustwright.engine.tubing.Hose;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * What is to be bonded and measured, counted from the layout (equation HAZ-20). A coupling of thin-wall tube with a rubber sleeve is an
 * insulator: each is bridged, or is of a tested conductive make.
 */
final class BondingPoints {
    private static final Source PRACTICE = Source.commonPractice();

    private final Plant plant;
    private final Collecting collecting;
    private final Writing writing;

    BondingPoints(Plant plant, Collecting collecting, Writing writing) {
        this.plant = plant;
        this.collecting = collecting;
        this.writing = writing;
    }

    void write() {
        couplings();
        equipment();
        for (Bonding bonding : List.of(Bonding.METAL_JOINT, Bonding.METAL_PART, Bonding.HOSE, Bonding.PERSON)) {
            writing.given(
                    "resistance-" + bonding.name().toLowerCase(Locale.ROOT).replace('_', '-'),
                    "Measured at commissioning and repeated, at most: " + bonding.words(),
                    new ElectricResistance(bonding.limit_ohm()),
                    bonding.source());
        }
        hoses().forEach(this::hose);
    }

    private void couplings() {
        List<Couplings> runs = collecting.runs().stream()
                .map(run -> EarthingList.couplings(plant, run))
                .toList();
        double ends = runs.stream().mapToInt(Couplings::ends).sum();
        double bends = runs.stream().mapToInt(Couplings::bends).sum();
        double further = runs.stream().mapToInt(Couplings::further).sum();
        double fittings = runs.stream().mapToInt(Couplings::fittings).sum();
        boolean measured = runs.stream().anyMatch(Couplings::measured);
        Count all = new Count(ends + 2 * bends + further + 2 * fittings);
        writing.known(
                "couplings",
                measured
                        ? "Couplings to bridge, at least: runs by measured length do not show their bends"
                        : "Couplings to bridge, counted from the layout",
                all,
                List.of(step(
                        "HAZ-20",
                        "N = 2 runs + 2 bends + further lengths + 2 fittings",
                        PRACTICE,
                        new Term("N", "couplings", all),
                        new Term("runs", "runs of tubing", new Count(ends / 2)),
                        new Term("bends", "bends", new Count(bends)),
                        new Term("further", "stock lengths of 20 ft beyond the first, at least", new Count(further)),
                        new Term("fittings", "fittings on runs", new Count(fittings)))));
    }

    private void equipment() {
        double inlets = collecting.inlets().size();
        double machines = collecting
                .station()
                .map(s -> EarthingList.machines(s, collecting.mains()).size())
                .orElse(0);
        Count all = new Count(inlets + machines);
        writing.known(
                "grounds",
                "Inlets and machines with their own ground",
                all,
                List.of(step(
                        "HAZ-20",
                        "N = inlets + machines",
                        PRACTICE,
                        new Term("N", "grounds", all),
                        new Term("inlets", "inlet valves; each hose adds two cuffs and its tool", new Count(inlets)),
                        new Term(
                                "machines",
                                "receiver and its head, valve, container stand, producers; filter cages are further",
                                new Count(machines)))));
    }

    private Stream<Hose> hoses() {
        List<String> used =
                collecting.inlets().stream().map(i -> i.hose()).distinct().toList();
        return plant.hoses().stream().filter(hose -> used.contains(hose.id()));
    }

    private void hose(Hose hose) {
        Bonding limit = Bonding.HOSE;
        String id = "hose-" + hose.id();
        String name = "Hose " + hose.id() + ", end to end";
        if (hose.resistance().isEmpty()) {
            String why =
                    "Enter \"resistance\" of the hose, measured from cuff to cuff: a wire in a plastic wall makes no dissipative wall.";
            writing.unknown(id, name, why);
            writing.add(Finding.unjudged(
                    FindingCode.HOSE_RESISTANCE,
                    new Place(Place.Kind.HOSE, hose.id()),
                    Sheet.ANY_SET,
                    Side.AT_MOST,
                    new ElectricResistance(limit.limit_ohm()),
                    limit.source(),
                    why));
            return;
        }
        ElectricResistance measured = hose.resistance().get();
        double perMetre = measured.ohms() / hose.length().metres();
        String kind = perMetre < Bonding.CONDUCTIVE_HOSE_PER_METRE.limit_ohm()
                ? "conductive"
                : perMetre < Bonding.DISSIPATIVE_HOSE_PER_METRE.limit_ohm()
                        ? "dissipative"
                        : "neither conductive nor dissipative";
        boolean connector = measured.ohms() > limit.limit_ohm() && measured.ohms() < Bonding.CONNECTOR.limit_ohm();
        writing.given(
                id,
                name + ", " + kind
                        + (connector ? "; enough for " + Bonding.CONNECTOR.words() + ", which this is not" : ""),
                measured,
                Source.entered());
        Step step = step("HAZ-20", "R as stated", limit.source(), new Term("R", "hose from cuff to cuff", measured));
        writing.add(Finding.of(
                FindingCode.HOSE_RESISTANCE,
                new Place(Place.Kind.HOSE, hose.id()),
                Sheet.ANY_SET,
                Side.AT_MOST,
                measured,
                new ElectricResistance(limit.limit_ohm()),
                new Derivation(List.of(step), limit.source())));
    }
}
