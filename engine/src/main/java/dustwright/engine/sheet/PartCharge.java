package dustwright.engine.sheet;

import dustwright.engine.bagging.Container;
import dustwright.engine.finding.Derivation;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.hazard.BagType.LinerType;
import dustwright.engine.hazard.ChargePath;
import dustwright.engine.hazard.ChargePath.DrumLiner;
import dustwright.engine.hazard.ChargePath.Material;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.ElectricResistance;
import java.util.List;
import java.util.Locale;

/** Whether charge leaves the parts that dust rubs on: tubing, tools, a drum and what lies in it. */
final class PartCharge {
    private static final Source PLASTIC =
            Source.fromMemory("IEC TS 60079-32-1; NFPA 77: no insulating pipes or drums for dust that burns");

    private final Plant plant;
    private final Collecting here;
    private final Writing writing;

    PartCharge(Plant plant, Collecting here, Writing writing) {
        this.plant = plant;
        this.here = here;
        this.writing = writing;
    }

    void write() {
        List<String> tubes = here.runs().stream().map(r -> r.tube()).distinct().toList();
        plant.tubes().stream()
                .filter(t -> tubes.contains(t.id()))
                .forEach(t -> part(
                        FindingCode.TUBE_STATIC,
                        new Place(Place.Kind.TUBE, t.id()),
                        t.charge(),
                        "from any point of it to ground, bridged at every coupling as it is to be built"));
        List<String> tools =
                here.inlets().stream().map(i -> i.tool()).distinct().toList();
        plant.tools().stream()
                .filter(t -> tools.contains(t.id()))
                .forEach(t -> part(
                        FindingCode.TOOL_STATIC,
                        new Place(Place.Kind.TOOL, t.id()),
                        t.charge(),
                        "from its tip to the hose's cuff"));
        here.station()
                .flatMap(s -> s.container())
                .filter(c -> c.kind() == Container.Kind.DRUM)
                .ifPresent(this::drum);
    }

    private void drum(Container drum) {
        Place place = new Place(Place.Kind.CONTAINER, here.place().id());
        part(FindingCode.DRUM_STATIC, place, drum.charge(), "from its inside to its ground clip");
        if (drum.drumLiner().isEmpty()) {
            String why = "Enter \"liner\" of the drum: none, or of which material.";
            writing.unknown("drum-liner", "Liner of the drum", why);
            writing.notSaid(FindingCode.LINER_STATIC, Place.Kind.CONTAINER, LinerType.SOURCE, why);
            return;
        }
        boolean insulates = drum.drumLiner().get() == DrumLiner.INSULATING;
        writing.words(
                "drum-liner",
                "Liner of the drum",
                drum.drumLiner().get().words() + (insulates ? ": it keeps its charge, whatever drum it lies in" : ""),
                List.of(),
                Source.entered());
        writing.none(
                FindingCode.LINER_STATIC,
                Place.Kind.CONTAINER,
                "liners that keep charge in the drum",
                insulates ? 1 : 0,
                PLASTIC);
    }

    private void part(FindingCode code, Place place, ChargePath charge, String way) {
        String what = "charge-" + place.kind().name().toLowerCase(Locale.ROOT) + "-" + place.id();
        String name = "Charge on " + place;
        if (charge.material().isEmpty()) {
            String why = "Enter \"material\" of " + place + ": conductive, dissipative or insulating.";
            writing.unknown(what, name, why);
            writing.notSaid(code, place, PLASTIC, why);
            return;
        }
        Material material = charge.material().get();
        if (material == Material.INSULATING) {
            writing.words(
                    what,
                    name,
                    "insulating: it keeps charge, and sparks reach it from every metal part on it",
                    List.of(),
                    PLASTIC);
            writing.none(code, place, "parts that insulate", 1, PLASTIC);
            return;
        }
        ElectricResistance limit = new ElectricResistance(material.limit().limit_ohm());
        if (charge.resistance().isEmpty()) {
            String why = "Enter \"resistance\" of " + place + ", " + way + ".";
            writing.unknown(what, name, why);
            writing.add(Finding.unjudged(
                    code,
                    place,
                    Sheet.ANY_SET,
                    Side.AT_MOST,
                    limit,
                    material.limit().source(),
                    why));
            return;
        }
        ElectricResistance resistance = charge.resistance().get();
        writing.given(what, name + ", " + material.words() + ", " + way, resistance);
        Step step = Writing.step("HAZ-20", "R as stated", material.limit().source(), new Term("R", way, resistance));
        writing.add(Finding.of(
                code,
                place,
                Sheet.ANY_SET,
                Side.AT_MOST,
                resistance,
                limit,
                new Derivation(List.of(step), material.limit().source())));
    }
}
