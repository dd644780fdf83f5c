package dustwright.documents.answers;

import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.air.Air;
import dustwright.engine.producer.Duty;
import dustwright.engine.producer.Model;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.Dimension;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.UnitSystem;
import dustwright.engine.quantity.Units;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a catalogue holds and what of it serves a duty, in text and as {@code dustwright/catalogue/1}. Those that serve come first, the
 * smallest motor first.
 *
 * @param vacuums at which every machine is shown; none where a duty is asked
 * @param duties each machine at the asked duty; none where the catalogue is listed
 */
public record CatalogueAnswer(
        List<VacuumProducer> producers,
        Air air,
        List<PressureDifference> vacuums,
        Optional<FreeAirFlow> flow,
        Optional<PressureDifference> vacuum,
        List<Duty> duties) {
    public CatalogueAnswer {
        producers = List.copyOf(producers);
        vacuums = List.copyOf(vacuums);
        duties = List.copyOf(duties);
    }

    /** Every machine at its own speed and at a few vacuums. */
    public static CatalogueAnswer list(List<VacuumProducer> producers, Air air) {
        List<PressureDifference> vacuums = Stream.of(3, 5, 7, 10, 14)
                .map(inHg -> new PressureDifference(inHg * Units.INCH_OF_MERCURY_Pa))
                .filter(v -> v.pascals() < air.ambient().pascals())
                .toList();
        return new CatalogueAnswer(producers, air, vacuums, Optional.empty(), Optional.empty(), List.of());
    }

    /** Every machine at one duty. */
    public static CatalogueAnswer duty(
            List<VacuumProducer> producers, Air air, FreeAirFlow flow, PressureDifference vacuum) {
        List<Duty> duties = producers.stream()
                .map(p -> Duty.of(p, air, vacuum, flow))
                .sorted(Comparator.comparing((Duty d) -> !d.serves())
                        .thenComparing(d -> d.producer().nameplate())
                        .thenComparing(Duty::shaftPower))
                .toList();
        return new CatalogueAnswer(producers, air, List.of(), Optional.of(flow), Optional.of(vacuum), duties);
    }

    /** For a person at a terminal. */
    public String text(UnitSystem units, int width) {
        Show show = new Show(units);
        Lines lines = new Lines(width);
        lines.text("", title(show)).gap();
        if (duties.isEmpty()) {
            lines.table(listed(show));
            lines.gap()
                    .text(
                            "",
                            "Columns \"at\": free air in " + show.unit(Dimension.FREE_AIR_FLOW) + " at that vacuum in "
                                    + show.unit(Dimension.PRESSURE_DIFFERENCE)
                                    + " at the inlet, at the stated speed; - where a limit, the motor or the measured"
                                    + " curve ends before. Silencers are not counted.");
        } else {
            List<Duty> serving = duties.stream().filter(Duty::serves).toList();
            if (serving.isEmpty()) {
                lines.text("", "No machine of this catalogue serves the duty.");
            } else {
                lines.table(serving(serving, show));
            }
            missing(lines);
            lines.text(
                    "",
                    "Motors are held to their nameplate: a belt is taken that gives the speed. A drive gives rated torque only;"
                            + " of a directly coupled machine that is looked at, of another the plant's verify tells.");
        }
        catalogues().forEach(c -> lines.text("", c));
        lines.text("", Wording.freeAir(show));
        return lines.text("", Wording.SCREENING).toString();
    }

    private String title(Show show) {
        String site = "at a barometer of " + show.full(air.ambient()) + ", " + show.full(air.temperature());
        return flow.isPresent() && vacuum.isPresent()
                ? "Asked: " + show.full(flow.get()) + " at " + show.full(vacuum.get()) + " at the producer's inlet, "
                        + site
                : Wording.counted(producers.size(), "vacuum producer", "vacuum producers") + " " + site;
    }

    private TextTable listed(Show show) {
        List<TextTable.Column> columns = Stream.concat(
                        Stream.of(
                                TextTable.words("Model"),
                                TextTable.words("Kind"),
                                TextTable.number("Motor " + show.unit(Dimension.POWER)),
                                TextTable.number("Speed " + show.unit(Dimension.ROTATIONAL_SPEED)),
                                TextTable.number("Deepest " + show.unit(Dimension.PRESSURE_DIFFERENCE))),
                        vacuums.stream()
                                .map(v ->
                                        TextTable.number(show.unit(Dimension.FREE_AIR_FLOW) + " at " + show.number(v))))
                .toList();
        TextTable table = TextTable.of(columns.toArray(TextTable.Column[]::new));
        for (VacuumProducer producer : producers) {
            Stream<String> head = Stream.of(
                    producer.id(),
                    producer.machine().kind(),
                    show.number(producer.nameplate()),
                    show.number(Duty.at(producer, air, vacuums.get(0)).speed()),
                    show.number(producer.deepestVacuumAt(air.ambient())));
            Stream<String> flows = vacuums.stream()
                    .map(v -> Duty.at(producer, air, v))
                    .map(d -> d.serves() ? show.number(d.flow()) : "-");
            table.row(Stream.concat(head, flows).map(Lines::plain).toArray(String[]::new));
        }
        return table;
    }

    private static TextTable serving(List<Duty> serving, Show show) {
        TextTable table = TextTable.of(
                TextTable.words("Model"),
                TextTable.words("Kind"),
                TextTable.number("Motor " + show.unit(Dimension.POWER)),
                TextTable.number("Speed " + show.unit(Dimension.ROTATIONAL_SPEED)),
                TextTable.number("Takes " + show.unit(Dimension.FREE_AIR_FLOW)),
                TextTable.number("Shaft " + show.unit(Dimension.POWER)),
                TextTable.number("Load"),
                TextTable.number("Rise " + show.unit(Dimension.TEMPERATURE_RISE).replace(" rise", "")));
        for (Duty duty : serving) {
            VacuumProducer producer = duty.producer();
            table.row(
                    producer.id(),
                    producer.machine().kind(),
                    Lines.plain(show.number(producer.nameplate())),
                    Lines.plain(show.number(duty.speed())),
                    Lines.plain(show.number(duty.flow())),
                    Lines.plain(show.number(duty.shaftPower())),
                    Math.round(100 * load(duty)) + " %",
                    Lines.plain(duty.rise().map(show::number).orElse("-")));
        }
        return table;
    }

    private static double load(Duty duty) {
        return duty.shaftPower().watts() / duty.producer().nameplate().watts();
    }

    private void missing(Lines lines) {
        List<Duty> others = duties.stream().filter(d -> !d.serves()).toList();
        if (others.isEmpty()) {
            lines.gap();
            return;
        }
        lines.head("Not serving");
        others.stream()
                .collect(Collectors.groupingBy(
                        d -> d.misses().stream().map(Duty.Miss::words).collect(Collectors.joining(", ")),
                        java.util.LinkedHashMap::new,
                        Collectors.mapping(d -> d.producer().id(), Collectors.joining(", "))))
                .forEach((why, models) -> lines.text("  ", models + ": " + why));
        lines.gap();
    }

    /** The catalogues the machines stand in; those with invented figures say so first. */
    private List<String> catalogues() {
        List<Model> models = producers.stream().flatMap(p -> p.model().stream()).toList();
        String invented = models.stream()
                .filter(Model::invented)
                .map(Model::catalogue)
                .distinct()
                .collect(Collectors.joining(", "));
        Stream<String> others =
                models.stream().filter(m -> !m.invented()).map(m -> m.catalogue() + ": " + m.stated() + ".");
        Stream<String> warning = invented.isEmpty()
                ? Stream.of()
                : Stream.of("INVENTED figures of machines that do not exist: " + invented + ".");
        return Stream.concat(warning, others).distinct().toList();
    }

    /** For a program. */
    public String json() {
        return JsonText.of(json -> {
            json.text("format", "dustwright/catalogue/1");
            json.text("caution", Wording.SCREENING);
            PlantJson.air(json, air);
            if (flow.isPresent() && vacuum.isPresent()) {
                json.object("duty", () -> {
                    json.number("flow_kgPerS", flow.get().mass().kgPerSecond());
                    json.si("vacuum_Pa", vacuum.get());
                });
                json.list("producers", duties, duty -> {
                    producer(json, duty.producer());
                    point(json, duty);
                });
            } else {
                json.list("producers", producers, producer -> {
                    producer(json, producer);
                    json.list("points", vacuums, v -> point(json, Duty.at(producer, air, v)));
                });
            }
        });
    }

    private void producer(JsonText json, VacuumProducer producer) {
        json.text("model", producer.id());
        json.text("kind", producer.machine().kind());
        producer.model().ifPresent((Model model) -> {
            json.text("catalogue", model.catalogue());
            json.text("source", model.stated());
            json.bool("invented", model.invented());
        });
        json.si("motor_W", producer.nameplate());
        json.si("leastSpeed_perS", producer.leastSpeed());
        json.si("greatestSpeed_perS", producer.greatestSpeed());
        json.si("deepestVacuumHere_Pa", producer.deepestVacuumAt(air.ambient()));
        json.si("greatestRise_K", producer.greatestRise());
    }

    private static void point(JsonText json, Duty duty) {
        json.si("vacuum_Pa", duty.vacuum());
        json.si("speed_perS", duty.speed());
        json.number("flow_kgPerS", duty.flow().mass().kgPerSecond());
        json.si("shaftPower_W", duty.shaftPower());
        duty.rise().ifPresent(rise -> json.si("rise_K", rise));
        json.bool("serves", duty.serves());
        json.texts("misses", duty.misses().stream().map(Duty.Miss::words).toList());
    }
}
