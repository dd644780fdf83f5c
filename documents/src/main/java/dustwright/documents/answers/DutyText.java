package dustwright.documents.answers;

import dustwright.documents.writing.Figures;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.network.BleedResult;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.InletResult;
import dustwright.engine.network.LegResult;
import dustwright.engine.network.NodeResult;
import dustwright.engine.network.ProducerResult;
import dustwright.engine.network.StationResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.Dimension;
import dustwright.engine.quantity.Quantity;
import java.util.stream.Collectors;

/** Every figure of one solved state as tables. */
final class DutyText {
    /** Below this Reynolds number the air stands still for any reader, and a friction factor says nothing. */
    private static final double STILL = 1;

    private final Plant plant;
    private final DutyPoint duty;
    private final Show show;
    private final Lines lines;

    DutyText(Plant plant, DutyPoint duty, Show show, Lines lines) {
        this.plant = plant;
        this.duty = duty;
        this.show = show;
        this.lines = lines;
    }

    void write() {
        if (!duty.unchoked()) {
            lines.text("  ", "Mind: a piece is choked, so this is no valid operating state.");
        }
        if (!duty.dilute()) {
            String where = duty.legs().stream()
                    .filter(LegResult::chokesOnDust)
                    .map(DutyText::piece)
                    .collect(Collectors.joining(", "));
            lines.text(
                    "  ",
                    "Mind: there is no dilute flow through " + where
                            + ": its air is below the velocity of least drop, where one drop has two flows, so this is no valid operating state.");
        }
        duty.stations().forEach(this::station);
        inlets();
        bleeds();
        legs();
        if (duty.legs().stream().anyMatch(leg -> leg.dust().kgPerSecond() > 0)) {
            new DustText(plant, duty, show, lines).write();
        }
        nodes();
        lines.gap();
        lines.text(
                "  ",
                "Solved by " + duty.convergence().method() + " in "
                        + Wording.counted(duty.convergence().iterations(), "step", "steps")
                        + "; worst mass imbalance "
                        + Figures.significant(duty.convergence().worstBalance().kgPerSecond(), 2)
                        + " kg/s, worst leg law error "
                        + Figures.significant(duty.convergence().worstLegError(), 2) + " of ambient pressure squared.");
    }

    private String plain(Quantity quantity) {
        return Lines.plain(show.number(quantity));
    }

    private void station(StationResult station) {
        Show drops = show.losses();
        lines.gap();
        lines.text(
                "  ",
                "Station " + station.id() + ": " + show.freeAirFull(station.throughFilter()) + " through the filter ("
                        + show.full(station.receiverFlow()) + " in the receiver), receiver "
                        + show.full(station.receiver())
                        + ", filter " + drops.full(station.filterLoss()) + ", safety filter "
                        + drops.full(station.safetyFilterLoss()) + ", suction " + show.full(station.suction()) + ".");
        lines.text(
                "  ",
                "Let in: relief valve " + show.freeAirFull(station.relief()) + ", vent valve "
                        + show.freeAirFull(station.vent()) + ", rotary valve " + show.freeAirFull(station.rotaryValve())
                        + ".");
        TextTable table = TextTable.of(
                TextTable.words("Producer"),
                TextTable.words("State"),
                TextTable.number(show.unit(Dimension.ROTATIONAL_SPEED)),
                TextTable.number(show.unit(Dimension.FREE_AIR_FLOW)),
                TextTable.number(show.unit(Dimension.ACTUAL_FLOW) + " at inlet"),
                TextTable.number("Vacuum " + show.unit(Dimension.PRESSURE_DIFFERENCE)),
                TextTable.number("Rise " + show.unit(Dimension.TEMPERATURE_RISE).replace(" rise", "")),
                TextTable.number(show.unit(Dimension.POWER)));
        for (ProducerResult producer : station.producers()) {
            table.row(
                    Lines.plain(producer.id()),
                    Lines.plain(Wording.running(producer, plant, show)),
                    plain(producer.speed()),
                    Lines.plain(show.freeAir(producer.flow())),
                    plain(producer.inletFlow()),
                    plain(producer.vacuum()),
                    producer.rise().kelvin() > 0 ? plain(producer.rise()) : "-",
                    plain(producer.shaftPower()));
        }
        if (!table.isEmpty()) {
            lines.table(table);
        }
    }

    private void inlets() {
        TextTable table = TextTable.of(
                TextTable.words("Inlet"),
                TextTable.words("State"),
                TextTable.number(show.unit(Dimension.FREE_AIR_FLOW)),
                TextTable.number("Vacuum at valve " + show.unit(Dimension.PRESSURE_DIFFERENCE)));
        for (InletResult inlet : duty.inlets()) {
            table.row(
                    Lines.plain(inlet.id()),
                    (inlet.open() ? "open" : "closed") + (inlet.choked() ? ", choked" : ""),
                    Lines.plain(show.freeAir(inlet.flow())),
                    plain(inlet.vacuumAtValve()));
        }
        if (!table.isEmpty()) {
            lines.gap().table(table);
        }
    }

    private void bleeds() {
        TextTable table = TextTable.of(
                TextTable.words("Far-end bleed"),
                TextTable.words("State"),
                TextTable.number(show.unit(Dimension.FREE_AIR_FLOW)));
        for (BleedResult bleed : duty.bleeds()) {
            table.row(Lines.plain(bleed.id()), bleed.open() ? "open" : "shut", Lines.plain(show.freeAir(bleed.flow())));
        }
        if (!table.isEmpty()) {
            lines.gap().table(table);
        }
    }

    private void legs() {
        String velocity = show.unit(Dimension.VELOCITY);
        String pressure = show.unit(Dimension.ABSOLUTE_PRESSURE);
        TextTable table = TextTable.of(
                TextTable.words("Piece"),
                TextTable.words("From"),
                TextTable.words("To"),
                TextTable.number(show.unit(Dimension.FREE_AIR_FLOW)),
                TextTable.number(velocity + " from"),
                TextTable.number("to"),
                TextTable.number(pressure + " from"),
                TextTable.number("to"),
                TextTable.number("Re"),
                TextTable.number("f"),
                TextTable.number("K"));
        for (LegResult leg : duty.legs()) {
            table.row(
                    Lines.plain(piece(leg) + (leg.choked() ? " choked" : "")),
                    Lines.plain(leg.from()),
                    Lines.plain(leg.to()),
                    Lines.plain(show.freeAir(leg.flow())),
                    plain(leg.velocityFrom()),
                    plain(leg.velocityTo()),
                    plain(leg.pressureFrom()),
                    plain(leg.pressureTo()),
                    Lines.plain(Figures.fixed(leg.reynolds(), 0)),
                    leg.reynolds() < STILL ? "still" : Lines.plain(Figures.fixed(leg.frictionFactor(), 4)),
                    Lines.plain(Figures.fixed(leg.k(), 2)));
        }
        lines.gap().table(table);
    }

    static String piece(LegResult leg) {
        return (leg.kind() == LegResult.Kind.HOSE ? "hose " : "") + leg.id();
    }

    private void nodes() {
        TextTable table = TextTable.of(
                TextTable.words("Point"),
                TextTable.number(show.unit(Dimension.ABSOLUTE_PRESSURE)),
                TextTable.number("Vacuum " + show.unit(Dimension.PRESSURE_DIFFERENCE)));
        for (NodeResult node : duty.nodes()) {
            table.row(Lines.plain(node.id()), plain(node.pressure()), plain(node.vacuum()));
        }
        lines.gap().table(table);
        if (duty.nodes().stream().anyMatch(node -> node.vacuum().pascals() < 0)) {
            lines.text("  ", "Below zero: above the barometer.");
        }
    }
}
