package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.electrical.Panel;
import dustwright.engine.electrical.PanelHeat;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.plant.Limit;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.ActualVolumeFlow;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.ElectricPower;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.quantity.TemperatureRise;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Heat that is made in the panel, and whether it leaves at the hottest that panel and parts may see. */
final class PanelCooling {
    private static final double DRIVE_EFFICIENCY = 0.97;
    private static final Source ENERGY = Source.published("energy balance");
    private static final Source WALLS = Source.commonPractice();
    private static final String PATH =
            "Sum it from their makers' sheets and enter \"power path heat\" of the panel; what follows for cooling is the least.";

    private final Plant plant;
    private final Panel panel;
    private final Writing writing = new Writing("");

    private PanelCooling(Plant plant, Panel panel) {
        this.plant = plant;
        this.panel = panel;
    }

    /** @param control load of the control circuits, all of which turns to heat */
    static Sheet of(Plant plant, Panel panel, ElectricPower control) {
        PanelCooling cooling = new PanelCooling(plant, panel);
        cooling.balance(control);
        return cooling.writing.sheet("panel", "Panel", Place.Kind.PANEL);
    }

    private void balance(ElectricPower control) {
        List<Step> made = made(control);
        ElectricPower heat = (ElectricPower) made.get(made.size() - 1).result().value();
        List<String> atRest = drivesAtRest();
        writing.known(
                "panel-heat",
                "Heat made inside"
                        + (atRest.isEmpty() ? "" : ", drive of " + String.join(" and ", atRest) + " at rest")
                        + (pathKnown() ? "" : ", contactors, overloads and fuses not counted"),
                heat,
                made);
        if (!pathKnown()) {
            writing.unknown("panel-heat-path", "Heat of contactors, overloads, fuses", PATH);
        }
        if (panel.ambient().isEmpty() || panel.surface().isEmpty()) {
            String why = "Enter \"ambient\" and \"surface\" of the panel.";
            writing.unknown("panel-cooling", COOLING, why);
            notKnown(heat, why);
            return;
        }
        leaves(heat, made, panel.ambient().get(), panel.surface().get());
    }

    private boolean pathKnown() {
        return panel.powerPathHeat().isPresent();
    }

    private List<Step> made(ElectricPower control) {
        List<Step> steps = new ArrayList<>();
        List<Term> parts = new ArrayList<>();
        parts.add(new Term("P_control", "control load", control));
        for (Station station : plant.stations()) {
            for (VacuumProducer producer : heating(station)) {
                Term left = new Term(
                        "P_loss(" + producer.id() + ")",
                        "left in the panel by its drive",
                        new ElectricPower(driveLoss_W(producer)));
                parts.add(left);
                steps.add(step(
                        "ELE-19",
                        "P_loss = P (1/η − 1)",
                        Source.commonPractice(),
                        left,
                        new Term(
                                "P",
                                "nameplate of " + producer.id(),
                                producer.motor().nameplate()),
                        new Term("η", "efficiency of its drive", new Ratio(DRIVE_EFFICIENCY))));
            }
        }
        panel.powerPathHeat()
                .ifPresent(stated -> parts.add(new Term(
                        "P_path",
                        "contactors, overloads, fuses and transformers, as stated",
                        new ElectricPower(stated.watts()))));
        ElectricPower heat = sum(parts);
        steps.add(
                new Step("ELE-24", "P = P_control + Σ P_loss", parts, new Term("P", "heat made inside", heat), ENERGY));
        return steps;
    }

    /** Drives that lose heat together: as many producers run as do not stand by, and those that lose most are taken. */
    private List<VacuumProducer> heating(Station station) {
        List<VacuumProducer> all = station.producers();
        List<VacuumProducer> hottest = all.stream()
                .sorted(Comparator.comparingDouble(producer -> -driveLoss_W(producer)))
                .limit(all.stream().filter(producer -> !producer.standby()).count())
                .toList();
        return all.stream()
                .filter(producer -> hottest.contains(producer) && driveLoss_W(producer) > 0)
                .toList();
    }

    private List<String> drivesAtRest() {
        return plant.stations().stream()
                .flatMap(station -> station.producers().stream()
                        .filter(producer ->
                                driveLoss_W(producer) > 0 && !heating(station).contains(producer)))
                .map(VacuumProducer::id)
                .toList();
    }

    /** Heat a producer's drive leaves in the panel [W]; none without a drive, or where it stands elsewhere. */
    private double driveLoss_W(VacuumProducer producer) {
        return producer.driven() && panel.drivesInside()
                ? PanelHeat.driveLoss_W(producer.motor().nameplate().watts(), DRIVE_EFFICIENCY)
                : 0;
    }

    private static ElectricPower sum(List<Term> parts) {
        return new ElectricPower(parts.stream().mapToDouble(t -> t.value().si()).sum());
    }

    // ---- what leaves it

    private static final String COOLING = "Air the panel needs to stay cool";

    private void leaves(ElectricPower heat, List<Step> made, Temperature ambient, Area surface) {
        TemperatureRise rise = new TemperatureRise(panel.inside().kelvin() - ambient.kelvin());
        List<Step> steps = new ArrayList<>(made);
        Step walls = walls(surface, rise);
        steps.add(walls);
        wallsAlone(heat, made, ambient, surface);
        cooler(heat, walls, steps);
        air(heat, walls, rise, steps);
        judged(heat, walls, rise, steps);
    }

    private void wallsAlone(ElectricPower heat, List<Step> made, Temperature ambient, Area surface) {
        writing.tried("panel-inside", "Inside at most, cooled by its walls alone", () -> {
            double rise_K = PanelHeat.rise_K(heat.watts(), PanelHeat.PAINTED_STEEL_WPerM2K, surface.squareMetres());
            List<Step> warm = new ArrayList<>(made);
            warm.add(step(
                    "ELE-45",
                    "T = T_a + P / (k A), k 5.5 W/(m² K)",
                    WALLS,
                    new Term("T", "inside, cooled by its walls alone", new Temperature(ambient.kelvin() + rise_K)),
                    new Term("T_a", "hottest air around it", ambient),
                    new Term("P", "heat made inside", heat),
                    new Term("A", "walls that stand free", surface)));
            return warm;
        });
    }

    private static Step walls(Area surface, TemperatureRise rise) {
        ElectricPower walls = new ElectricPower(
                PanelHeat.throughWalls_W(PanelHeat.PAINTED_STEEL_WPerM2K, surface.squareMetres(), rise.kelvin()));
        return step(
                "ELE-20",
                "P_walls = k A ΔT, k 5.5 W/(m² K)",
                WALLS,
                new Term("P_walls", "passed by the walls", walls),
                new Term("A", "walls that stand free", surface),
                new Term("ΔT", "inside over ambient", rise));
    }

    /** What a closed cooler must carry: the heat less what the walls pass, or with what they let in. */
    private void cooler(ElectricPower heat, Step walls, List<Step> before) {
        ElectricPower rest = new ElectricPower(
                Math.max(0, heat.watts() - walls.result().value().si()));
        List<Step> steps = new ArrayList<>(before);
        steps.add(step(
                "ELE-26",
                "P_cooler = max(0, P − P_walls)",
                ENERGY,
                new Term("P_cooler", "left for a closed cooler", rest),
                new Term("P", "heat made inside", heat),
                walls.result()));
        writing.known("panel-cooler", "Left for a closed cooler", rest, steps);
    }

    private void air(ElectricPower heat, Step walls, TemperatureRise rise, List<Step> before) {
        if (!(rise.kelvin() >= 1)) {
            writing.unknown(
                    "panel-cooling",
                    COOLING,
                    "The air around it is as hot as its parts may stand in, so none cools it: a closed cooler carries what is made inside and"
                            + " what comes in through the walls.");
            return;
        }
        if (classified()) {
            writing.words(
                    "panel-cooling",
                    COOLING,
                    "none may pass a panel in a classified area: a closed cooler",
                    List.of(),
                    WALLS);
            return;
        }
        Density density = siteAir();
        ActualVolumeFlow air = new ActualVolumeFlow(PanelHeat.coolingAir_m3PerS(
                heat.watts(), walls.result().value().si(), rise.kelvin(), density.kgPerCubicMetre()));
        List<Step> steps = new ArrayList<>(before);
        steps.add(step(
                "ELE-21",
                "Q = max(0, P − P_walls) / (ρ cp ΔT), cp 1005 J/(kg K)",
                ENERGY,
                new Term("Q", "air through the panel", air),
                new Term("P", "heat made inside", heat),
                walls.result(),
                new Term("ρ", "density of the site's air", density),
                new Term("ΔT", "inside over ambient", rise)));
        if (air.cubicMetresPerSecond() > 0) {
            writing.known("panel-cooling", COOLING + "; a closed cooler keeps the dust out", air, steps);
        } else {
            writing.words(
                    "panel-cooling",
                    COOLING,
                    pathKnown()
                            ? "none: its walls pass the heat"
                            : "none for the heat that is counted: its walls pass that",
                    steps,
                    ENERGY);
        }
    }

    private Density siteAir() {
        return new Density(
                plant.site().air().density_kgPerM3(plant.site().air().ambient().pascals()));
    }

    private boolean classified() {
        return panel.area()
                .filter(area -> PanelEnclosure.division(area).isPresent())
                .isPresent();
    }

    // ---- the verdict

    /** All that leaves at the hottest its parts may stand in, against all that is made inside. */
    private void judged(ElectricPower heat, Step walls, TemperatureRise rise, List<Step> before) {
        List<Step> steps = new ArrayList<>(before);
        List<Term> off = new ArrayList<>(List.of(walls.result()));
        panel.cooler()
                .ifPresent(stated ->
                        off.add(new Term("P_cooler", "closed cooler, as stated", new ElectricPower(stated.watts()))));
        panel.coolingAir().ifPresent(flow -> throughIt(flow, rise, steps, off));
        ElectricPower leaves = sum(off);
        steps.add(new Step(
                "ELE-44",
                "P_off = P_walls + P_cooler + P_air",
                off,
                new Term("P_off", "leaves at the hottest its parts may stand in", leaves),
                ENERGY));
        writing.known("panel-leaves", "Heat that leaves at " + celsius(panel.inside()) + " inside", leaves, steps);
        if (pathKnown() || leaves.compareTo(heat) < 0) {
            writing.asked(
                    FindingCode.PANEL_HEAT,
                    Place.Kind.PANEL,
                    Sheet.ANY_SET,
                    Side.AT_LEAST,
                    leaves,
                    new Limit<>(heat, ENERGY),
                    steps);
        } else {
            notKnown(
                    heat,
                    "Heat of contactors, overloads and fuses is not stated: enter \"power path heat\" of the panel.");
        }
    }

    private static String celsius(Temperature inside) {
        return Math.round(inside.kelvin() - 273.15) + " °C";
    }

    /** Air led through a panel counts where room air may pass it at all. */
    private void throughIt(ActualVolumeFlow flow, TemperatureRise rise, List<Step> steps, List<Term> off) {
        if (classified()) {
            writing.words(
                    "panel-fan",
                    "Air led through it, as stated",
                    "not counted: none may pass a panel in a classified area",
                    List.of(),
                    WALLS);
            return;
        }
        Density density = siteAir();
        Term carried = new Term(
                "P_air",
                "carried off by air through it",
                new ElectricPower(
                        PanelHeat.byAir_W(flow.cubicMetresPerSecond(), rise.kelvin(), density.kgPerCubicMetre())));
        off.add(carried);
        steps.add(step(
                "ELE-44",
                "P_air = ρ cp Q ΔT, cp 1005 J/(kg K)",
                ENERGY,
                carried,
                new Term("ρ", "density of the site's air", density),
                new Term("Q", "air its fan leads through it", flow),
                new Term("ΔT", "inside over ambient", rise)));
    }

    private void notKnown(ElectricPower heat, String why) {
        writing.unjudged(FindingCode.PANEL_HEAT, Place.Kind.PANEL, Side.AT_LEAST, new Limit<>(heat, ENERGY), why);
    }
}
