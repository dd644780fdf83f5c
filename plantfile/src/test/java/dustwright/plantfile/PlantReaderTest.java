package dustwright.plantfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.bagging.BagSupport;
import dustwright.engine.bagging.BulkBag;
import dustwright.engine.bagging.Container;
import dustwright.engine.conveying.Dust;
import dustwright.engine.conveying.DustClass;
import dustwright.engine.conveying.LevelFriction;
import dustwright.engine.finding.Assumption;
import dustwright.engine.finding.Confidence;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.engine.hazard.DustCard;
import dustwright.engine.hazard.PublishedDust;
import dustwright.engine.plant.Costs;
import dustwright.engine.plant.Held;
import dustwright.engine.plant.Operation;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Shifts;
import dustwright.engine.plant.Station;
import dustwright.engine.producer.Drive;
import dustwright.engine.producer.Machine;
import dustwright.engine.producer.StatedLoss;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.Duration;
import dustwright.engine.quantity.Money;
import dustwright.engine.quantity.UnitSystem;
import dustwright.engine.tubing.Inlet;
import dustwright.engine.tubing.Position;
import dustwright.engine.tubing.Run;
import dustwright.engine.tubing.Tool;
import dustwright.engine.tubing.Wall;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlantReaderTest {
    private static final String TEXT = resource("two-inlets.yaml");

    @Test
    void tubing_is_read_with_its_units() {
        Plant plant = plant(TEXT);
        assertThat(plant.tube("T3").bore().metres()).isCloseTo(2.87 * 0.0254, within(1e-12));
        assertThat(plant.hose("H15").bore().metres()).isCloseTo(0.0381, within(1e-12));
        assertThat(plant.hose("H15").length().metres()).isCloseTo(7.62, within(1e-12));
        assertThat(plant.tool("floor").law()).isEqualTo(new Tool.Law.VelocityHeads(6));
        Run drop = plant.run("D1");
        assertThat(drop.wye().orElseThrow().degrees()).isCloseTo(45, within(1e-12));
        Run.Route.Drawn route = (Run.Route.Drawn) drop.route();
        assertThat(route.corners())
                .containsExactly(new Position(4.5, 0, 1), new Position(4.5, 0, 6), new Position(4.5, 2, 6));
        assertThat(route.bendRadius().metres()).isEqualTo(0.3);
        assertThat(plant.run("D2").fittings().get(0).count()).isEqualTo(2);
        Inlet inlet = plant.inlet("A2");
        assertThat(inlet.leak().kgPerSecondPascal()).isEqualTo(8e-9);
        assertThat(inlet.feed().kgPerSecond()).isCloseTo(60.0 / 3600, within(1e-15));
        assertThat(plant.dust("flour").minimumVelocity()).isEqualTo(DustClass.VERY_FINE_LIGHT.minimum());
    }

    @Test
    void a_bag_is_read_with_what_holds_it() {
        Container container = plant(TEXT).station("REC").container().orElseThrow();
        assertThat(container.kind()).isEqualTo(Container.Kind.BULK_BAG);
        assertThat(container.stop()).isEqualTo(Container.Stop.LEVEL_PROBE);
        assertThat(container.changing()).isEqualTo(new Container.Changing(new Duration(720), false, Optional.of(6)));
        BulkBag bag = container.bag().orElseThrow();
        assertThat(bag.size().orElseThrow().height().metres()).isEqualTo(1.3);
        assertThat(bag.stand().base()).isEqualTo(BagSupport.Base.ON_FLOOR_OR_PALLET);
        assertThat(bag.stand().seal().orElseThrow().pressure().pascals()).isCloseTo(4 * 6894.757, within(0.01));
        assertThat(bag.stand().inflation().orElseThrow().flow().cubicMetresPerSecond())
                .isCloseTo(0.05, within(1e-12));
        assertThat(bag.filledShort()).as("it is inflated").isEmpty();
        assertThat(container.fills()).isEqualTo(container.volume());
    }

    @Test
    void a_bag_that_nothing_inflates_fills_its_stated_share() {
        String text = TEXT.replaceFirst("\n *inflation: [^\n]*", "");
        Container container = plant(text).station("REC").container().orElseThrow();
        assertThat(container.fills().cubicMetres()).isCloseTo(0.72, within(1e-12));
    }

    @Test
    void a_rated_loss_that_names_no_air_is_taken_for_standard_air_and_listed() {
        assertThat(plant(TEXT).station("REC").safetyFilter().orElseThrow().state())
                .isEqualTo(StatedLoss.State.SITE);
        assertThat(plant(TEXT).assumptions()).noneMatch(a -> a.what().contains("stated for"));
        Plant silent = plant(TEXT.replace(", stated for: site air", ""));
        assertThat(silent.station("REC").safetyFilter().orElseThrow().state()).isEqualTo(StatedLoss.State.STANDARD);
        assertThat(silent.assumptions())
                .filteredOn(a -> a.what().contains("stated for standard air"))
                .extracting(a -> a.place().kind())
                .containsExactlyInAnyOrder(Place.Kind.SAFETY_FILTER, Place.Kind.RELIEF_VALVE, Place.Kind.SILENCER);
    }

    @Test
    void a_bag_without_a_safe_working_load_is_a_listed_assumption() {
        Plant plant = plant(TEXT.replaceFirst(" *safe working load: [^\n]*\n", ""));
        assertThat(plant.station("REC").container().orElseThrow().safeWorkingLoad())
                .isEmpty();
        assertThat(plant.assumptions()).anySatisfy(a -> assertThat(a.what()).contains("load of a full container"));
    }

    @Test
    void shifts_costs_air_and_sound_are_read() {
        Operation operation = plant(TEXT).operation();
        Shifts shifts = operation.shifts().orElseThrow();
        assertThat(shifts.perWeek()).isEqualTo(10);
        assertThat(shifts.cleaning()).isEqualTo(new Shifts.Cleaning.Minutes(new Duration(1800)));
        Costs costs = operation.costs().orElseThrow();
        assertThat(costs.container().orElseThrow()).isEqualTo(new Money(14, "EUR"));
        assertThat(costs.electricity().orElseThrow().si() * 3.6e6).isCloseTo(0.12, within(1e-12));
        assertThat(operation.airOf("REC").orElseThrow().pulses().orElseThrow().perSecond())
                .isCloseTo(120 / 3600.0, within(1e-12));
        assertThat(operation.soundOf("REC").orElseThrow().casing().orElseThrow().decibels())
                .isEqualTo(88);
        assertThat(operation.asked().containerLife().orElseThrow().value().seconds())
                .isEqualTo(8 * 3600);
    }

    @Test
    void a_station_is_read_with_its_producers() {
        Station station = plant(TEXT).station("REC");
        double velocity_mPerS = 450 * 0.3048 / 60 / 95; // acfm over ft² is ft/min
        assertThat(station.filter().dirty().pascalSecondsPerMetre())
                .isCloseTo(6 * 249.08891 / velocity_mPerS, within(1e-6));
        assertThat(station.relief().orElseThrow().accumulation().pascals()).isCloseTo(2.5 * 3386.38864, within(1e-4));
        VacuumProducer lobe = station.producers().get(0);
        assertThat(lobe.drive()).isInstanceOf(Drive.Fixed.class);
        assertThat(lobe.greatestSpeed().rpm()).isCloseTo(2200, within(1e-9));
        assertThat(((Machine.LobePump) lobe.machine()).slipAtOnePsi().rpm()).isCloseTo(130, within(1e-9));
        VacuumProducer channel = station.producers().get(1);
        assertThat(channel.drive()).isInstanceOf(Drive.Holding.class);
        assertThat(channel.standby()).isTrue();
        Machine.CurveMachine curve = (Machine.CurveMachine) channel.machine();
        assertThat(curve.dynamic()).isTrue();
        assertThat(curve.kind()).isEqualTo("side channel");
        assertThat(curve.points()).hasSize(2);
    }

    @Test
    void the_site_follows_from_altitude_temperature_and_humidity() {
        Plant plant = plant(TEXT);
        // ISO 2533:1975: 120 m is 99 889 Pa (101 325 Pa · (1 − 0.0065·120/288.15)^5.2559)
        assertThat(plant.site().air().ambient().pascals()).isCloseTo(99_889, within(5.0));
        assertThat(plant.site().air().temperature().kelvin()).isEqualTo(293.15);
        assertThat(plant.site().relativeHumidity()).isEqualTo(0.5);
    }

    @Test
    void units_of_reports_and_requirements_with_their_source_are_read() {
        Reading.Read read = (Reading.Read) PlantReader.read(TEXT);
        assertThat(read.units()).isEqualTo(UnitSystem.US);
        assertThat(read.plant().requirements().toolFlow().orElseThrow().source().text())
                .isEqualTo("customer letter");
        assertThat(read.plant()
                        .requirements()
                        .inletVacuum()
                        .orElseThrow()
                        .source()
                        .confidence())
                .isEqualTo(Confidence.ENTERED);
        assertThat(read.plant().requirements().canVelocity()).isEmpty();
        assertThat(read.plant().usage().simultaneousUsers()).isEqualTo(2);
        assertThat(read.plant().usage().designSets().get(0).open()).containsExactly("A1", "A2");
    }

    @Test
    void a_dust_has_its_particles_and_its_form_of_friction() {
        String text = TEXT.replace(
                "class: very fine light dust",
                "class: very fine light dust, particle size: 60 um, particle density: 1.45 g/cm3");
        Plant plant = plant(text);
        Dust dust = plant.dusts().get(0);
        assertThat(dust.particle().orElseThrow().size().metres()).isCloseTo(6e-5, within(1e-18));
        assertThat(dust.particle().orElseThrow().density().kgPerCubicMetre()).isCloseTo(1450, within(1e-9));
        assertThat(dust.levelFriction()).isEqualTo(LevelFriction.YANG);
        assertThat(plant.assumptions()).extracting(Assumption::what).contains("level friction yang");
        Plant stated = plant(text.replace("particle size: 60 um", "level friction: hinkle, particle size: 60 um"));
        assertThat(stated.dusts().get(0).levelFriction()).isEqualTo(LevelFriction.HINKLE);
        assertThat(stated.assumptions())
                .extracting(Assumption::what)
                .noneMatch(what -> what.startsWith("level friction"));
    }

    @Test
    void a_measured_network_needs_no_station_and_no_places() {
        Plant plant = plant(resource("measured-loop.yaml"));
        assertThat(plant.runs()).hasSize(7);
        assertThat(plant.run("WN").route()).isInstanceOfSatisfying(Run.Route.Measured.class, m -> {
            assertThat(m.length().metres()).isEqualTo(30);
            assertThat(m.k()).isEqualTo(1.5);
        });
        assertThat(plant.tube("D70").wall()).isEqualTo(new Wall.FixedFactor(0.02));
        assertThat(plant.run("air1").from()).isEqualTo(Run.STILL_AIR);
        assertThat(plant.held().get(0))
                .isInstanceOfSatisfying(
                        Held.Pressure.class,
                        h -> assertThat(h.pressure().pascals()).isEqualTo(80_000));
        assertThat(plant.held().get(2))
                .isInstanceOfSatisfying(
                        Held.Supply.class,
                        h -> assertThat(h.into().kgPerSecond()).isCloseTo(100.0 / 3600 * 1.20411, within(1e-6)));
        assertThat(plant.usage().simultaneousUsers()).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "vacuum: 6 inHg, 81006.67",
        "draw: 0.02 kg/s, -0.02",
        "draw: 100 scfm, -0.0568275",
    })
    void held_values_come_as_absolute_pressure_or_inflow(String written, double expected) {
        String text = resource("measured-loop.yaml").replace("W: {supply: 0.05 kg/s}", "W: {" + written + "}");
        Held held = plant(text).held().get(1);
        double si = held instanceof Held.Pressure pressure
                ? pressure.pressure().pascals()
                : ((Held.Supply) held).into().kgPerSecond();
        assertThat(si).isCloseTo(expected, within(1e-6 * Math.abs(expected)));
    }

    @Test
    void every_default_that_acts_is_listed_with_its_basis_and_no_other() {
        List<String> taken =
                plant(TEXT).assumptions().stream().map(Assumption::what).toList();
        assertThat(taken)
                .containsExactlyInAnyOrder(
                        "roughness 0.03 mm",
                        "what it adds to pressure drops is left out, and no saltation or choking velocity is computed, until"
                                + " \"particle size\" and \"particle density\" are entered",
                        "its class's least velocity, made for air near 1.2 kg/m³, is asked as it is in thinner air too; common practice asks √(1.2/ρ) times as much there, which explain shows beside it",
                        "rise 0 m",
                        "dust yes (D1, D2, M1)",
                        "bend radius 3 bores",
                        "valve k 0.5",
                        "leak 3e-9 kg/(s.Pa)",
                        "pre-separation 0 %",
                        "hot and moist no",
                        "by fan",
                        "slip at 1 psi 130 rpm",
                        "mechanical efficiency 0.9",
                        "idle loss 0 W",
                        "deepest vacuum as stated at a barometer of 101 325 Pa (P1, P2)",
                        "standby no",
                        "service factor 1",
                        "service factor 1",
                        "dynamic yes",
                        "rated density 1.2 kg/m3",
                        "transport factor 1",
                        "valve capacity 1.5",
                        "air stays at the site's temperature from the inlets to the vacuum producers (isothermal flow)",
                        "the weight of the air in rising and falling tubes is left out: tens of pascals that nearly cancel",
                        "a wye has its junction loss in states in which exactly its two streams flow as drawn into one; in others,"
                                + " as when a stream turns, none. Speeding up into the common bore is charged, nothing is recovered",
                        "one velocity head of the hose is added to its k, as the air starts at rest");
        assertThat(plant(TEXT).assumptions())
                .allSatisfy(a -> assertThat(a.basis().text()).isNotBlank())
                .anySatisfy(a -> {
                    assertThat(a.place()).isEqualTo(new Place(Place.Kind.TUBE, "T3"));
                    assertThat(a.basis().confidence()).isEqualTo(Confidence.COMMON_PRACTICE);
                });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "via: [[4.5, 0, 6]], bend radius: 300 mm, wye: 45 deg | via: [[4.5, 0, 6]], bend radius: 300 mm | no junction loss where D1 and D2 join, as none states a wye",
                "via: [[9, 2, 6]], fittings | via: [[9, 2, 6]], wye: 60 deg, fittings | no junction loss where D1 and D2 join, as all of them enter at an angle",
                "D1: {from: A1, to: J1, tube: T2 | D1: {from: A1, to: J1, tube: T3 | no junction loss where D1 and D2 join, as the one at an angle is wider than the tube both go on in",
                "D2: {from: A2, to: J1, | D2: {from: J1, to: A2, | no loss where streams are drawn as parting",
                "runs: | bleeds: {B1: {at: J1, diameter: 10 mm}}~runs: | no junction loss, as air is let in, fed, drawn or held there too",
            })
    void a_junction_whose_loss_is_not_computed_is_an_assumption(String good, String changed, String expected) {
        String text = TEXT.replaceFirst(Pattern.quote(good), Matcher.quoteReplacement(changed.replace("~", "\n")));
        if (expected.contains("wider")) {
            text = text.replaceFirst("M1: \\{from: J1, to: REC, tube: T3", "M1: {from: J1, to: REC, tube: T2");
        }
        assertThat(text).isNotEqualTo(TEXT);
        assertThat(plant(text).assumptions()).anySatisfy(a -> {
            assertThat(a.what()).isEqualTo(expected);
            assertThat(a.place()).isEqualTo(new Place(Place.Kind.POINT, "J1"));
        });
    }

    @Test
    void a_run_from_still_air_says_that_a_velocity_head_is_added() {
        assertThat(plant(resource("measured-loop.yaml")).assumptions())
                .extracting(Assumption::what)
                .anyMatch(what -> what.startsWith("one velocity head is added to its k, as it starts in still air"));
    }

    @Test
    void tools_walls_and_openings_may_be_said_in_other_ways() {
        Plant plant = plant(TEXT.replace(
                        "floor: {k: 6}",
                        "floor: {opening: 4 cm2}\n  wand: {curve: [[1 inHg, 40 scfm], [2 inHg, 60 scfm]]}")
                .replace("length: 25 ft, roughness: 0.3 mm", "length: 25 ft, corrugation: 6 mm")
                .replace("\nusage:", "\nbleeds:\n  B1: {at: J1, diameter: 20 mm, open: yes}\n\nusage:")
                .replace("both: [A1, A2]", "far ones together: [A2]")
                .replace(
                        "pressure drop: {at: 450 acfm, clean: 1 inH2O, normal: 4 inH2O, dirty: 6 inH2O}",
                        "resistance: {clean: 10 kPa.s/m, normal: 40 kPa.s/m, dirty: 60 kPa.s/m}"));
        assertThat(plant.tool("floor").law()).isInstanceOfSatisfying(Tool.Law.Opening.class, o -> {
            assertThat(o.area().squareMetres()).isEqualTo(4e-4);
            assertThat(o.dischargeCoefficient()).isEqualTo(0.62);
        });
        assertThat(plant.tool("wand").law())
                .isInstanceOfSatisfying(
                        Tool.Law.Curve.class,
                        c -> assertThat(c.points().get(1).vacuum().pascals()).isCloseTo(2 * 3386.38864, within(1e-4)));
        assertThat(plant.hose("H15").wall()).isInstanceOf(Wall.Corrugated.class);
        assertThat(plant.bleeds().get(0).area().squareMetres()).isCloseTo(Math.PI * 1e-4, within(1e-12));
        assertThat(plant.usage().designSets().get(0).name()).isEqualTo("far ones together");
        assertThat(plant.station("REC").filter().normal().pascalSecondsPerMetre())
                .isEqualTo(40_000);
    }

    @Test
    void a_byte_order_mark_and_windows_line_ends_do_no_harm() {
        assertThat(plant("\uFEFF" + TEXT.replace("\n", "\r\n"))).isEqualTo(plant(TEXT));
    }

    @Test
    void a_held_draw_needs_an_opening_to_the_still_air() {
        String text = resource("measured-loop.yaml")
                .replace("  air1: {from: air, to: T, tube: D70, length: 5 m, k: 2}\n", "")
                .replace("E: {pressure: 80 kPa abs}", "E: {draw: 0.1 kg/s}")
                .replace("\nheld:", "\nbleeds:\n  B: {at: T, diameter: 50 mm, open: no}\n\nheld:");
        assertThat(FaultsTest.faults(text)).anySatisfy(f -> assertThat(f.text()).contains("leads nowhere"));
        assertThat(plant(text.replace("open: no", "open: yes")).bleeds()).hasSize(1);
    }

    @Test
    void an_override_holds_and_is_listed_with_its_reason() {
        Plant plant = plant(TEXT);
        assertThat(((Run.Route.Measured) plant.run("M1").route()).length().metres())
                .isEqualTo(31);
        assertThat(plant.overrides()).singleElement().satisfies(o -> {
            assertThat(o.place()).isEqualTo(new Place(Place.Kind.RUN, "M1"));
            assertThat(o.what()).isEqualTo("runs.M1.length is 31 m instead of 24 m");
            assertThat(o.reason()).isEqualTo("as built");
            assertThat(o.by()).isEqualTo("R.K.");
        });
    }

    @Test
    void an_override_may_say_what_the_file_left_open_and_ids_may_hold_dots() {
        String text = TEXT.replace("M1", "M1.a")
                .replace("set: runs.M1.a.length, to: 31 m", "set: inlets.A1.leak, to: 1e-8 kg/(s.Pa)")
                .replace("by: R.K.}", "by: R.K.}\n  - {set: 'runs.M1.a.length', to: 29 m, reason: as built, by: R.K.}");
        Plant plant = plant(text);
        assertThat(plant.inlet("A1").leak().kgPerSecondPascal()).isEqualTo(1e-8);
        assertThat(((Run.Route.Measured) plant.run("M1.a").route()).length().metres())
                .isEqualTo(29);
        assertThat(plant.overrides().get(0).what()).isEqualTo("inlets.A1.leak is 1e-8 kg/(s.Pa)");
    }

    @Test
    void coordinates_may_be_in_feet_and_carry_their_own_unit() {
        String text =
                TEXT.replace("coordinates: m}", "coordinates: ft}").replace("at: [9, 2, 1]", "at: [9, 2 m, 12 in]");
        assertThat(plant(text).inlet("A2").at().orElseThrow()).satisfies(p -> {
            assertThat(p.x_m()).isCloseTo(9 * 0.3048, within(1e-12));
            assertThat(p.y_m()).isEqualTo(2);
            assertThat(p.z_m()).isCloseTo(0.3048, within(1e-12));
        });
    }

    @Test
    void names_that_other_readers_take_for_booleans_stay_text() {
        assertThat(plant(TEXT.replace("name: Packing hall demo", "name: NO")).name())
                .isEqualTo("NO");
        String text = TEXT.replace("tube: T3, length", "dust: no, tube: T3, length")
                .replace(", dust: flour, feed: 60 kg/h", "");
        assertThat(plant(text).run("M1").dust()).isFalse();
    }

    @Test
    void every_key_and_value_is_found_in_the_text_again() {
        SourceMap lines = ((Reading.Read) PlantReader.read(TEXT)).lines();
        Span value = lines.value("runs.D2.fittings[0].k").orElseThrow();
        assertThat(TEXT.substring(value.start(), value.end())).isEqualTo("0.1");
        Span key = lines.key("stations.REC.producers.P2.hold").orElseThrow();
        assertThat(TEXT.substring(key.start(), key.end())).isEqualTo("hold");
        assertThat(TEXT.lines().toList().get(key.line() - 1).substring(key.column() - 1))
                .startsWith("hold: 7 inHg");
        assertThat(lines.value("runs.D9")).isEmpty();
    }

    static String resource(String name) {
        try (InputStream in = Objects.requireNonNull(PlantReaderTest.class.getResourceAsStream(name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Plant plant(String text) {
        Reading reading = PlantReader.read(text);
        if (reading instanceof Reading.Faults faults) {
            throw new AssertionError(
                    String.join("\n", faults.faults().stream().map(Fault::text).toList()));
        }
        return ((Reading.Read) reading).plant();
    }

    @Test
    void a_published_dust_stands_in_for_what_is_not_tested_and_each_value_is_an_assumption() {
        String text = withCard(
                "0.06",
                "kst: 130 bar.m/s, sample size: 0.03 mm, sample moisture: 3 %, family: organic, explodes like: \"Starch, wheat\","
                        + " ignites like: Wheat flour, like because: \"flour is starch, invented\"");
        DustCard card = plant(text).dusts().get(0).card();
        assertThat(card.kst().orElseThrow().value().pascalMetresPerSecond()).isEqualTo(130e5);
        assertThat(card.kst().orElseThrow().source()).isEqualTo(Source.entered());
        assertThat(card.greatest().orElseThrow().value().pascals()).isEqualTo(9.9e5);
        assertThat(card.ignition().orElseThrow().value().joules()).isEqualTo(50e-3);
        // the lower of 30 and 50 g/m³
        assertThat(card.explosible().orElseThrow().value().kgPerCubicMetre()).isEqualTo(0.03);
        assertThat(plant(text).assumptions())
                .filteredOn(a -> a.what().contains(PublishedDust.WARNING))
                .extracting(a -> a.what().replaceAll(",.*", ""))
                .containsExactly("pmax 990.0 kPa", "mie 50.0 mJ", "mit 380.0 °C", "lit 360.0 °C", "mec 0.030 kg/m³");
    }

    private static String withCard(String particle_mm, String card) {
        return TEXT.replace(
                "class: very fine light dust",
                "class: very fine light dust, particle size: " + particle_mm
                        + " mm, particle density: 1450 kg/m3, explosion: {" + card + "}");
    }

    /** What stands in is of the dust's kind and as fine, and somebody says why: else nothing of it is taken, and the card says so. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0.06 | family: organic, explodes like: 'Starch, wheat', ignites like: Wheat flour | why Starch, wheat and Wheat flour may stand for it",
                "0.06 | family: organic, like because: x, explodes like: Iron carbonyl, ignites like: Wheat flour | whether it is organic, as stated, or like Iron carbonyl of Group E",
                "0.06 | family: organic, like because: x, explodes like: Aluminum, ignites like: 'Aluminum, flake A422' | whether it is organic, as stated, or like Aluminum of Group E",
                "0.06 | family: organic, like because: x, explodes like: 'Starch, wheat', ignites like: 'Coal, Pittsburgh seam' | or like Coal, Pittsburgh seam of Group F",
                "0.06 | family: aluminium, like because: x, explodes like: Bronze, ignites like: 'Tin, atomized' | whether it is aluminium, as stated, or like Bronze",
                "0.06 | like because: x, explodes like: 'Starch, wheat', ignites like: Wheat flour | so whether what stands in is of its kind",
                "0.03 | family: organic, like because: x, ignites like: Wheat flour | a stand-in as fine as the dust",
                "0.01 | family: organic, like because: x, explodes like: Polyvinyl chloride | a stand-in as fine as the dust",
            },
            quoteCharacter = '#')
    void nothing_is_taken_from_a_published_dust_of_another_kind_or_without_a_reason(
            String particle_mm, String card, String told) {
        DustCard relied = plant(withCard(particle_mm, card.replace('\'', '"')))
                .dusts()
                .get(0)
                .card();
        assertThat(relied.kst()).isEmpty();
        assertThat(relied.ignition()).isEmpty();
        assertThat(relied.missing().stream().map(DustCard.Missing::name)).anyMatch(name -> name.contains(told));
        if (told.contains("as stated")) {
            assertThat(relied.family().filter(f -> !f.lightMetal()))
                    .as("a family that is contradicted counts only where it is the worst there is")
                    .isEmpty();
        }
    }

    /** Values of a sample nobody has described, or of a coarse or damp one, are entered and do not count. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0.06 | sample size: 0.03 mm, sample moisture: 3 %  | true",
                "0.06 | sample size: 0.45 mm, sample moisture: 3 %  | false",
                "0.60 | sample size: 0.55 mm, sample moisture: 3 %  | false",
                "0.06 | sample size: 0.03 mm, sample moisture: 12 % | false",
                "0.06 | sample moisture: 3 %                        | false",
                "0.06 | sample size: 0.03 mm                        | false",
            })
    void values_count_only_where_their_sample_was_fine_and_dry(String particle_mm, String sample, boolean count) {
        DustCard relied = plant(
                        withCard(particle_mm, "family: organic, kst: 12 bar.m/s, mie: 900 mJ, pmax: 9 bar, " + sample))
                .dusts()
                .get(0)
                .card();
        assertThat(relied.kst().isPresent()).isEqualTo(count);
        assertThat(relied.ignition().isPresent()).isEqualTo(count);
        assertThat(relied.doubts().isEmpty()).isEqualTo(count);
    }

    @Test
    void a_limit_of_vacuum_by_the_plant_file_is_taken_at_sea_level_on_record() {
        assertThat(plant(TEXT).assumptions()).anySatisfy(a -> {
            assertThat(a.what())
                    .contains("deepest vacuum as stated at a barometer of 101 325 Pa")
                    .contains("P1, P2");
            assertThat(a.basis().text()).contains("If it holds for this site already");
        });
    }

    @Test
    void a_tool_by_a_curve_tells_from_where_to_where_it_was_measured() {
        String text = TEXT.replace("floor: {k: 6}", "floor: {curve: [[1 inHg, 40 scfm], [2 inHg, 60 scfm]]}");
        assertThat(plant(text).assumptions()).anySatisfy(a -> {
            assertThat(a.place()).isEqualTo(new Place(Place.Kind.TOOL, "floor"));
            assertThat(a.what())
                    .contains("from 3.39 to 6.77 kPa (1.00 to 2.00 inHg)")
                    .contains("square root");
        });
    }
}
