package dustwright.documents.report;

import dustwright.documents.drawing.MarginStrip;
import dustwright.documents.writing.DustWords;
import dustwright.documents.writing.Element;
import dustwright.documents.writing.Figures;
import dustwright.documents.writing.LawTable;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.Carrying;
import dustwright.engine.OneUserVelocity;
import dustwright.engine.StateAnswer;
import dustwright.engine.finding.Finding;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.InletResult;
import dustwright.engine.network.LegResult;
import dustwright.engine.network.ProducerResult;
import dustwright.engine.network.StationResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.Dimension;
import dustwright.engine.tubing.Inlet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Every state in one line, and the numbers of the worst one: pieces, inlets, stations. */
final class ResultTables {
    private static final int MOST_SETS = 60;

    private final Digest digest;
    private final Show show;
    private final Plant plant;

    ResultTables(Digest digest, Show show) {
        this.digest = digest;
        this.show = show;
        this.plant = digest.study().plant();
    }

    Element states() {
        Table table = Table.of(
                Table.words("Set"),
                Table.number("Users", ""),
                Table.number("Air at inlets", show.unit(Dimension.FREE_AIR_FLOW)),
                Table.number("Deepest vacuum", show.unit(Dimension.PRESSURE_DIFFERENCE)),
                Table.words("Tightest"),
                Table.margins());
        List<StateAnswer> told = told();
        for (StateAnswer answer : told) {
            Digest.duty(answer)
                    .ifPresentOrElse(
                            duty -> solved(table, answer, duty),
                            () -> table.row(
                                    answer.state().name(),
                                    Integer.toString(answer.state().open().size()),
                                    "",
                                    "",
                                    "No answer. " + answer.duty().match(d -> "", why -> why),
                                    ""));
        }
        Element section = Parts.section("sets", "4  Sets");
        int all = digest.study().states().size();
        if (told.size() < all) {
            section.add(Parts.paragraph(
                    "",
                    Figures.count(told.size()) + " of " + Figures.count(all)
                            + " sets: those without an answer and the tightest. The JSON answer of verify holds all."));
        }
        section.add(Parts.paragraph(
                "",
                "Air at inlets: free air that enters through open inlets and leaks of closed ones, all stations together; bleeds and"
                        + " rotary valves come on top. Deepest vacuum: at the inlet of a producer."));
        return section.add(table.element("wide"));
    }

    /** All sets where they fit a page or two; else those without an answer and the tightest ones, in the order asked. */
    private List<StateAnswer> told() {
        List<StateAnswer> all = digest.study().states();
        if (all.size() <= MOST_SETS) {
            return all;
        }
        Set<String> tightest = all.stream()
                .sorted(Comparator.comparingDouble(Digest::leastMargin))
                .limit(MOST_SETS)
                .map(a -> a.state().name())
                .collect(Collectors.toSet());
        return all.stream()
                .filter(a -> tightest.contains(a.state().name()) || !Digest.isSolved(a))
                .toList();
    }

    private void solved(Table table, StateAnswer answer, DutyPoint duty) {
        double inlets_kgPerS =
                duty.inlets().stream().mapToDouble(i -> i.flow().kgPerSecond()).sum();
        String vacuum = duty.stations().stream()
                .flatMap(s -> s.producers().stream())
                .map(ProducerResult::vacuum)
                .max(Comparator.naturalOrder())
                .map(show::number)
                .orElse("");
        Object tightest = "nothing asked";
        Object margin = "";
        var least = answer.findings().stream().min(Comparator.comparingDouble(Finding::margin));
        if (least.isPresent()) {
            tightest = least.get().code().title() + ", " + least.get().where();
            margin = Parts.margin(least.get());
        }
        table.row(
                answer.state().name(),
                Integer.toString(answer.state().open().size()),
                show.freeAir(new dustwright.engine.quantity.MassFlow(inlets_kgPerS)),
                vacuum,
                tightest,
                margin);
    }

    Element oneUser() {
        Element section = Parts.section("one-user", "5  Velocity with one user, every run");
        List<OneUserVelocity> sorted = MarginStrip.worstFirst(digest.study().oneUser());
        return sorted.isEmpty()
                ? section.add(Parts.paragraph("", "Not asked."))
                : section.add(FirstPage.oneUserTable(sorted, digest, show));
    }

    Element pieces(StateAnswer answer, DutyPoint duty) {
        String velocity = show.unit(Dimension.VELOCITY);
        String pressure = show.unit(Dimension.ABSOLUTE_PRESSURE);
        Table table = Table.of(
                Table.words("Piece"),
                Table.words("From, to"),
                Table.number("Bore", show.boreUnit()),
                Table.number("Free air", show.unit(Dimension.FREE_AIR_FLOW)),
                Table.number("Velocity from", velocity),
                Table.number("Velocity to", velocity),
                Table.number("Pressure from", pressure),
                Table.number("Pressure to", pressure),
                Table.number("Re", ""),
                Table.number("f", ""),
                Table.number("K", ""));
        for (LegResult leg : duty.legs()) {
            table.row(
                    piece(leg) + (leg.choked() ? ", choked" : "") + (leg.chokesOnDust() ? ", no dilute flow" : ""),
                    leg.from() + " → " + leg.to(),
                    show.bore(leg.bore()),
                    show.freeAir(leg.flow()),
                    show.number(leg.velocityFrom()),
                    show.number(leg.velocityTo()),
                    show.number(leg.pressureFrom()),
                    show.number(leg.pressureTo()),
                    Figures.fixed(leg.reynolds(), 0),
                    Figures.fixed(leg.frictionFactor(), 4),
                    Figures.fixed(leg.k(), 2));
        }
        Element section = Parts.section("pieces", "6  Pieces")
                .add(
                        Parts.paragraph(
                                "",
                                "Set " + answer.state().name()
                                        + ". Flow is free air, negative against the drawn direction; f is Darcy's"
                                        + " friction factor, K the summed loss coefficient on the piece's own velocity, both without unit."))
                .add(table.element("small"));
        List<LegResult> dusty =
                duty.legs().stream().filter(leg -> leg.dust().kgPerSecond() > 0).toList();
        return dusty.isEmpty()
                ? section
                : section.add(dust(dusty).element("small")).addAll(laws(dusty));
    }

    /** What dust adds to the pressure drop of every piece that carries some. */
    private Table dust(List<LegResult> dusty) {
        Table table = Table.of(
                Table.words("Dust in"),
                Table.number("Dust", show.unit(Dimension.MASS_FLOW)),
                Table.number("Per air", "kg/kg"),
                Table.number("Adds in all", show.lossUnit()),
                Table.number("by starting", show.lossUnit()),
                Table.number("by friction", show.lossUnit()),
                Table.number("by lift", show.lossUnit()),
                Table.number("by bends", show.lossUnit()),
                Table.number("Above least drop", ""));
        for (LegResult leg : dusty) {
            DustWords words = new DustWords(leg, show);
            table.row(
                    piece(leg),
                    show.number(leg.dust()),
                    Figures.fixed(leg.loading(), 2),
                    words.total(),
                    words.acceleration(),
                    words.friction(),
                    words.lift(),
                    words.bends(),
                    words.aboveLeastDrop());
        }
        return table;
    }

    private List<Element> laws(List<LegResult> dusty) {
        LawTable asked = new LawTable(
                dusty.stream()
                        .map(leg -> new LawTable.Asked(piece(leg), Carrying.of(plant, leg)))
                        .toList(),
                show);
        if (asked.rows().isEmpty()) {
            return List.of();
        }
        List<Table.Column> columns = new ArrayList<>(List.of(
                Table.words("Piece"),
                Table.words("Dust"),
                Table.words("Asks most"),
                Table.number("Asked", show.unit(Dimension.VELOCITY))));
        asked.heads().forEach(law -> columns.add(Table.number(law, "")));
        Table table = Table.of(columns.toArray(Table.Column[]::new));
        asked.rows().forEach(row -> table.row(row.toArray(Object[]::new)));
        return List.of(table.element("small"), Parts.paragraph("note", asked.note()));
    }

    private static String piece(LegResult leg) {
        return (leg.kind() == LegResult.Kind.HOSE ? "hose at " : "") + leg.id();
    }

    Element inlets(StateAnswer answer, DutyPoint duty) {
        Table table = Table.of(
                Table.words("Inlet"),
                Table.words("State"),
                Table.number("Free air", show.unit(Dimension.FREE_AIR_FLOW)),
                Table.number("Vacuum at the valve", show.unit(Dimension.PRESSURE_DIFFERENCE)),
                Table.words("Hose, tool"),
                Table.words("Dust"),
                Table.number("Feed when open", show.unit(Dimension.MASS_FLOW)));
        for (InletResult result : duty.inlets()) {
            Inlet inlet = plant.inlet(result.id());
            table.row(
                    result.id(),
                    (result.open() ? "open" : "closed, leaks") + (result.choked() ? ", choked" : ""),
                    show.freeAir(result.flow()),
                    show.number(result.vacuumAtValve()),
                    inlet.hose() + ", " + inlet.tool(),
                    inlet.dust().map(id -> plant.dust(id).name()).orElse("clean air"),
                    show.number(inlet.feed()));
        }
        Element section = Parts.section("inlets", "7  Inlets");
        return section.add(
                Parts.paragraph("", "Set " + answer.state().name() + ", air entering."), table.element("wide"));
    }

    Element stations(StateAnswer answer, DutyPoint duty) {
        Element section = Parts.section("stations", "8  Stations");
        section.add(Parts.paragraph("", "Set " + answer.state().name() + "."));
        Table table = Table.of(Table.words("Station"), Table.words("What"), Table.words("Value"));
        Show drops = show.losses();
        for (StationResult station : duty.stations()) {
            stationRows(table, station, drops);
        }
        if (duty.stations().isEmpty()) {
            return section.add(Parts.paragraph("", "The plant file holds no station."));
        }
        return section.add(table.element("wide"));
    }

    private void stationRows(Table table, StationResult station, Show drops) {
        table.row(station.id(), "receiver, static pressure", show.full(station.receiver()));
        table.row("", "air through the filter", show.freeAirFull(station.throughFilter()));
        table.row("", "the same in the receiver", show.full(station.receiverFlow()));
        table.row("", "filter, pressure drop", drops.full(station.filterLoss()));
        table.row("", "safety filter, pressure drop", drops.full(station.safetyFilterLoss()));
        table.row("", "suction of the producers, static pressure", show.full(station.suction()));
        table.row("", "relief valve, air let in", show.freeAirFull(station.relief()));
        table.row("", "vent valve, air let in", show.freeAirFull(station.vent()));
        table.row("", "rotary valve, air leaking up", show.freeAirFull(station.rotaryValve()));
        for (ProducerResult producer : station.producers()) {
            String state = Wording.running(producer, plant, show);
            table.row("", "producer " + producer.id() + ", " + state, show.full(producer.speed()));
            if (producer.running()) {
                table.row(
                        "",
                        "   air passed",
                        show.freeAirFull(producer.flow()) + ", at its inlet " + show.full(producer.inletFlow()));
                table.row(
                        "",
                        "   vacuum, pressure difference",
                        show.full(producer.vacuum()) + ", " + show.full(producer.difference()));
                table.row(
                        "",
                        "   shaft power, temperature rise",
                        show.full(producer.shaftPower()) + ", "
                                + (producer.rise().kelvin() > 0 ? show.full(producer.rise()) : "not known"));
            }
        }
    }

    static String howSolved(DutyPoint duty) {
        return "Solved by " + duty.convergence().method() + " in "
                + Wording.counted(duty.convergence().iterations(), "step", "steps") + "; worst mass imbalance "
                + Figures.significant(duty.convergence().worstBalance().kgPerSecond(), 2)
                + " kg/s, worst error of a leg law "
                + Figures.significant(duty.convergence().worstLegError(), 2) + " of ambient pressure squared.";
    }
}
