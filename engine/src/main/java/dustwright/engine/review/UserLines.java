package dustwright.engine.review;

import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.plant.Plant;
import dustwright.engine.sheet.Collecting;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Lines about people with hoses and about the tubing, at a place where dust is collected. */
final class UserLines {
    private static final String TOOLS = "Inlets, hoses and tools";
    private static final String TUBING = "Tubing into ";

    private final Plant plant;
    private final Collecting here;
    private final Asking asking;

    UserLines(Plant plant, Collecting here, Asking asking) {
        this.plant = plant;
        this.here = here;
        this.asking = asking;
    }

    List<Deviation> lines() {
        List<Line> lines = new ArrayList<>();
        if (!here.burning().isEmpty()) {
            lines.add(charge());
            lines.add(embers());
            lines.add(vapour());
            lines.add(back());
        }
        if (here.dusts().size() > 1 || !here.metals().isEmpty()) {
            lines.add(wrongDust());
        }
        lines.add(settles());
        lines.add(blocked());
        return lines.stream().map(Line::done).toList();
    }

    private Line charge() {
        Set<String> hoses = here.inlets().stream().map(i -> i.hose()).collect(Collectors.toSet());
        Set<String> tools = here.inlets().stream().map(i -> i.tool()).collect(Collectors.toSet());
        Set<String> tubes = here.runs().stream().map(r -> r.tube()).collect(Collectors.toSet());
        return asking.line(
                        "tools charge",
                        TOOLS,
                        "charge does not reach ground",
                        "a cuff, tool or coupling that insulates; a hose swapped for one without a dissipative wall; worn bonding",
                        "a spark from tool, hose or person lights the dust in the hose or where it is picked up; a person flinches and falls")
                .checked(hoses, FindingCode.HOSE_RESISTANCE)
                .checked(tools, FindingCode.TOOL_STATIC)
                .checked(tubes, FindingCode.TUBE_STATIC)
                .toSee("earthing test at commissioning and repeated, by the test list")
                .toSee("hoses and tools marked so that no other is plugged in");
    }

    private Line embers() {
        return asking.line(
                        "tools embers",
                        TOOLS,
                        "burning or hot material is picked up",
                        "embers, weld spatter, hot ash, cigarette, friction of a stone or bolt",
                        "smouldering or an explosion in receiver, filter or bag, minutes to hours later")
                .byDetector("fire", "no signal of fire or explosion stops producers and valve")
                .toSee("users told what must not be picked up; sign at each inlet")
                .toSee("hot work permit: system stopped, emptied and cleaned before, watched after");
    }

    private Line vapour() {
        return asking.line(
                        "tools vapour",
                        TOOLS,
                        "flammable liquid, vapour or an oxidizer is picked up",
                        "a spill, a solvent cleaner, an unknown drum",
                        "a hybrid cloud that lights more easily and burns harder than the dust alone; fire in the filter")
                .toSee("users told; another, listed machine at hand for liquids")
                .toSee(
                        "that no vapour comes: bag and equipment are chosen for dust alone unless the plant file says otherwise");
    }

    private Line back() {
        Line line = asking.line(
                "main flame-back",
                TUBING + here.place().id(),
                "flame and pressure run back through the main",
                "explosion in what stands behind the main",
                "people who hold hoses burnt or struck; fires where inlets are open; further explosions of settled dust");
        return here.station().isPresent()
                ? line.checked(Set.of(here.place().id()), FindingCode.INLET_ISOLATION)
                        .interlock("isolation", "no isolation valve reports to the control whether it is ready")
                        .byDetector("fire", "no signal of fire or explosion stops producers and valve")
                : line.toSee("the collector is not drawn: isolation on this main is to be shown with it");
    }

    private Line wrongDust() {
        String names = here.dusts().stream().map(Dust::name).collect(Collectors.joining("; "));
        return asking.line(
                        "tools wrong-dust",
                        TOOLS,
                        "a dust comes in that must not meet the others",
                        "an inlet used for another dust, or cross-over of hoses; here come " + names,
                        "light metal and rust burn as thermite; oxidizers feed a fire without air; metal fires that water makes worse")
                .checked(Set.of(here.place().id()), FindingCode.DUSTS_TOGETHER, FindingCode.METAL_DRY)
                .toSee("inlets marked with the dust they are for");
    }

    private Set<String> runs() {
        Set<String> runs = new HashSet<>();
        here.runs().forEach(r -> runs.add(r.id()));
        return runs;
    }

    private Line settles() {
        return asking.line(
                        "main settles",
                        TUBING + here.place().id(),
                        "air too slow: dust settles",
                        "one user alone on a wide main, more users than "
                                + plant.usage().simultaneousUsers()
                                + " at once, caps left open, a leaking valve, a filter that is not cleaned",
                        "plugged tubing; a layer that a blast stirs up and burns all along; for food or allergens carry-over")
                .checked(runs(), FindingCode.TRANSPORT_VELOCITY, FindingCode.NEAR_CHOKING)
                .interlock("weak", "no alarm for lost vacuum")
                .toSee("cleanouts opened and looked into at a set interval");
    }

    private Line blocked() {
        return asking.line(
                        "main blocked",
                        TUBING + here.place().id(),
                        "tubing or tool blocked",
                        "a lump, a rag, foil, a bend full of damp dust",
                        "no cleaning; the producer works against its relief valve and gets hot; people open tubing under vacuum")
                .checked(dustIds(), FindingCode.LUMP)
                .checked(runs(), FindingCode.LUMP)
                .interlock("weak", "no alarm for lost vacuum");
    }

    private Set<String> dustIds() {
        return here.dusts().stream().map(Dust::id).collect(Collectors.toSet());
    }
}
