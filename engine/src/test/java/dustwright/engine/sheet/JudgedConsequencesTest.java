package dustwright.engine.sheet;

import static dustwright.engine.sheet.EquipmentSketch.finding;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dustwright.engine.bagging.Container;
import dustwright.engine.conveying.Dust;
import dustwright.engine.conveying.DustClass;
import dustwright.engine.conveying.LevelFriction;
import dustwright.engine.electrical.Electrical;
import dustwright.engine.electrical.Enclosure.AreaClass;
import dustwright.engine.electrical.Enclosure.Exposure;
import dustwright.engine.electrical.Panel;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.engine.hazard.BagType;
import dustwright.engine.hazard.ChargePath;
import dustwright.engine.hazard.ChargePath.DrumLiner;
import dustwright.engine.hazard.ChargePath.Material;
import dustwright.engine.hazard.DustCard;
import dustwright.engine.hazard.DustCard.Hygiene;
import dustwright.engine.hazard.DustCard.Sample;
import dustwright.engine.hazard.DustCard.Stated;
import dustwright.engine.hazard.DustFamily;
import dustwright.engine.hazard.Listing;
import dustwright.engine.hazard.Listing.Flame;
import dustwright.engine.hazard.Protection;
import dustwright.engine.hazard.Protection.Exhaust;
import dustwright.engine.hazard.Protection.Isolation;
import dustwright.engine.hazard.Protection.Method;
import dustwright.engine.hazard.Protection.Producers;
import dustwright.engine.hazard.Protection.Standing;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.Duration;
import dustwright.engine.quantity.ElectricResistance;
import dustwright.engine.quantity.ExplosionConstant;
import dustwright.engine.quantity.GaugePressure;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.SparkEnergy;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.quantity.Volume;
import dustwright.engine.receiver.ClothDust;
import dustwright.engine.receiver.HopperDust;
import dustwright.engine.tubing.Position;
import dustwright.engine.tubing.Run;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every consequence of a combustible dust has a verdict: it holds, it does not, or it is not known with what to enter. */
class JudgedConsequencesTest {
    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double BAR_Pa = 1e5;

    private Optional<DustFamily> family = Optional.of(DustFamily.ORGANIC);
    private Optional<Double> mie_mJ = Optional.of(50.0);
    private Optional<Double> mit_C = Optional.of(380.0);
    private Optional<Double> lit_C = Optional.of(300.0);
    private Optional<Double> pmax_bar = Optional.of(9.0);
    private Optional<Hygiene> hygiene = Optional.of(Hygiene.M);
    private boolean conductive;
    private Optional<Boolean> toxic = Optional.of(false);
    private boolean own;
    private Isolation isolation = Isolation.FLAP_VALVE;
    private Optional<Method> method = Optional.empty();
    private Optional<Double> stands_bar = Optional.empty();
    private Optional<Exhaust> exhaust = Optional.of(Exhaust.OUTDOORS);
    private Producers producers = Producers.UNKNOWN;
    private Optional<String> after = Optional.of("H13");
    private Listing.Devices devices = EquipmentSketch.LISTED;
    private Optional<Boolean> insulating = Optional.empty();
    private Optional<String> heap = Optional.empty();
    private Optional<Boolean> isFood = Optional.of(false);

    private static Optional<Stated<Temperature>> celsius(Optional<Double> value) {
        return value.map(t -> new Stated<>(new Temperature(ZERO_CELSIUS_K + t), Source.entered()));
    }

    private DustCard card() {
        return new DustCard(
                family,
                Optional.empty(),
                pmax_bar.map(p -> new Stated<>(new GaugePressure(p * BAR_Pa), Source.entered())),
                mie_mJ.map(e -> new Stated<>(new SparkEnergy(e / 1000), Source.entered())),
                celsius(mit_C),
                celsius(lit_C),
                Optional.empty(),
                Optional.of(conductive),
                isFood,
                toxic,
                Optional.of(false),
                hygiene,
                Optional.of(new Length(30e-6)),
                Optional.of(new Ratio(0.03)),
                own ? Sample.OWN : Sample.PUBLISHED,
                Optional.empty(),
                Optional.empty(),
                Optional.of("an invented reason"),
                own ? Optional.of("test report 7, invented") : Optional.empty(),
                insulating,
                heap,
                List.of());
    }

    private Protection protection() {
        Protection p = Protection.UNKNOWN;
        return new Protection(
                method,
                Optional.of(Standing.OUTDOORS),
                p.volume(),
                p.slenderness(),
                stands_bar.map(bar -> new GaugePressure(bar * BAR_Pa)),
                p.opens(),
                p.vent(),
                Optional.of(isolation),
                p.mains(),
                p.returnIsolation(),
                exhaust,
                p.watched(),
                p.valveIsolates(),
                p.containerStands(),
                producers,
                devices);
    }

    private EquipmentSketch sketch() {
        EquipmentSketch sketch = new EquipmentSketch();
        sketch.combustible = Optional.of(true);
        sketch.card = card();
        sketch.protection = protection();
        sketch.after = after;
        return sketch;
    }

    private Finding found(FindingCode code) {
        return finding(sketch().sheets(), code).orElseThrow(() -> new AssertionError("no finding " + code));
    }

    private String verdict(FindingCode code) {
        return verdict(found(code));
    }

    private static String verdict(Finding finding) {
        return finding.unjudged() ? "not known" : finding.holds() ? "holds" : "fails";
    }

    private static String first(Finding finding) {
        return finding.derivation().steps().get(0).formula();
    }

    // ---- heat

    /** IEC 60079-14 5.6.3 (from memory): 2/3 MIT in °C and LIT − 75 K; NEC 500.8(D)(2): organic dust 165 °C at most. */
    @ParameterizedTest
    @CsvSource({
        "ORGANIC,380,300,165",
        "ORGANIC,380,180,105",
        "ORGANIC,180,300,120",
        "CARBONACEOUS,380,300,225",
        "CARBONACEOUS,600,450,360"
    })
    void air_that_leaves_a_producer_is_held_against_the_lowest_limit_of_the_dust(
            DustFamily dust, double mit, double lit, double limit_C) {
        family = Optional.of(dust);
        mit_C = Optional.of(mit);
        lit_C = Optional.of(lit);
        Finding heat = found(FindingCode.HOT_SURFACE);
        assertThat(heat.holds()).isTrue();
        assertThat(heat.limit().si() - ZERO_CELSIUS_K).isCloseTo(limit_C, within(1e-9));
        assertThat(heat.value())
                .isEqualTo(((Answer.Known) sketch().sheets().stream()
                                .flatMap(s -> s.entries().stream())
                                .filter(e -> e.id().equals("discharge-temperature/P"))
                                .findFirst()
                                .orElseThrow()
                                .answer())
                        .value());
    }

    @Test
    void a_dust_that_smoulders_below_the_air_a_producer_lets_out_is_found_at_the_producer() {
        lit_C = Optional.of(110.0);
        Finding heat = found(FindingCode.HOT_SURFACE);
        assertThat(heat.value().si() - ZERO_CELSIUS_K).isGreaterThan(35);
        assertThat(heat.fails()).isTrue();
        assertThat(heat.where().id()).isEqualTo("P");
    }

    /** What is known and too low fails; what is not known is asked for by its key. */
    @ParameterizedTest
    @CsvSource({"380,,not known", ",300,not known", ",,not known", ",100,fails"})
    void without_ignition_temperatures_nobody_says_that_the_air_is_cool_enough(Double mit, Double lit, String says) {
        mit_C = Optional.ofNullable(mit);
        lit_C = Optional.ofNullable(lit);
        Finding heat = found(FindingCode.HOT_SURFACE);
        assertThat(verdict(heat)).isEqualTo(says);
        if (says.equals("not known")) {
            assertThat(first(heat)).contains("\"mit\"", "\"lit\"");
        }
    }

    @ParameterizedTest
    @CsvSource({",,not known", "yes,,not known", "yes,150,holds", "yes,170,fails", ",170,fails"})
    void surfaces_of_producer_and_motor_are_held_against_the_dust(String inArea, Double surface, String says) {
        producers = new Producers(
                Optional.ofNullable(inArea).map("yes"::equals),
                Optional.of(true),
                Optional.ofNullable(surface).map(t -> new Temperature(ZERO_CELSIUS_K + t)));
        assertThat(verdict(FindingCode.MOTOR_SURFACE)).isEqualTo(says);
    }

    @Test
    void surfaces_of_producers_outside_every_area_are_not_asked() {
        producers = new Producers(Optional.of(false), Optional.empty(), Optional.empty());
        assertThat(finding(sketch().sheets(), FindingCode.MOTOR_SURFACE)).isEmpty();
    }

    // ---- place of the producer

    @ParameterizedTest
    @CsvSource({
        ",,H13,not known",
        "no,,H13,holds",
        "no,,,not known",
        "no,yes,,holds",
        "yes,,H13,not known",
        "yes,no,H13,fails",
        "yes,yes,H13,holds"
    })
    void where_the_producers_stand_and_what_they_are_marked_for_is_judged(
            String inArea, String marked, String filter, String says) {
        producers = new Producers(
                Optional.ofNullable(inArea).map("yes"::equals),
                Optional.ofNullable(marked).map("yes"::equals),
                Optional.empty());
        after = Optional.ofNullable(filter);
        Finding place = found(FindingCode.PRODUCER_PLACE);
        assertThat(verdict(place)).isEqualTo(says);
        if (says.equals("not known")) {
            assertThat(first(place)).contains("nter \"");
        }
    }

    // ---- heap

    @ParameterizedTest
    @CsvSource({
        "50,no,ORGANIC,holds",
        "10,no,ORGANIC,not known",
        "2,no,ORGANIC,not known",
        ",no,ORGANIC,not known",
        "2,yes,CARBONACEOUS,holds",
        "5,yes,ALUMINIUM,not known"
    })
    void a_heap_of_an_easily_lit_dust_is_left_to_a_specialist(
            Double mie, String conducts, DustFamily dust, String says) {
        mie_mJ = Optional.ofNullable(mie);
        conductive = conducts.equals("yes");
        family = Optional.of(dust);
        assertThat(verdict(FindingCode.CONE_DISCHARGE)).isEqualTo(says);
    }

    /** A test of the own dust or a specialist closes what the ignition energy leaves open; a word without its test does not. */
    @ParameterizedTest
    @CsvSource({
        "no,true,,holds",
        "no,false,,not known",
        "yes,true,,not known",
        ",true,,not known",
        ",false,judged,holds"
    })
    void a_heap_is_closed_by_a_test_of_its_resistivity_or_by_a_specialist(
            String insulates, boolean tested, String judged, String says) {
        mie_mJ = Optional.of(2.0);
        own = tested;
        insulating = Optional.ofNullable(insulates).map("yes"::equals);
        heap = Optional.ofNullable(judged);
        Finding cone = found(FindingCode.CONE_DISCHARGE);
        assertThat(verdict(cone)).isEqualTo(says);
        if (says.equals("not known")) {
            assertThat(first(cone)).contains("\"insulating\"", "\"heap judged\"");
        }
    }

    // ---- what a device was tested for

    private static Listing device(double kst_bar, double pmax_bar, Double at, Flame stops, Boolean laden) {
        return new Listing(
                Optional.of(new ExplosionConstant(kst_bar * BAR_Pa)),
                Optional.of(new GaugePressure(pmax_bar * BAR_Pa)),
                Optional.of(new GaugePressure(20_000)),
                Optional.of(new Length(3)),
                Optional.of(new Length(7)),
                Optional.ofNullable(at).map(Length::new),
                Optional.ofNullable(stops),
                Optional.ofNullable(laden));
    }

    /** Kst of the dust is not known here: a device does for 800 bar m/s, the worst, or nobody knows. */
    @ParameterizedTest
    @CsvSource({
        "FLAP_VALVE,800,9,5,FROM_RECEIVER,,holds",
        "FLAP_VALVE,300,9,5,FROM_RECEIVER,,not known",
        "FLAP_VALVE,800,8.9,5,FROM_RECEIVER,,fails",
        "FLAP_VALVE,800,9,2.9,FROM_RECEIVER,,fails",
        "FLAP_VALVE,800,9,7.1,BOTH_WAYS,,fails",
        "FLAP_VALVE,800,9,,BOTH_WAYS,,not known",
        "FLAP_VALVE,800,9,5,INTO_RECEIVER,,fails",
        "FLAP_VALVE,800,9,5,,,not known",
        "FLOAT_VALVE,800,9,5,BOTH_WAYS,,not known",
        "FLOAT_VALVE,800,9,5,BOTH_WAYS,false,fails",
        "FLOAT_VALVE,800,9,5,BOTH_WAYS,true,holds"
    })
    void isolation_is_judged_by_what_it_was_tested_for_and_how_it_stands(
            Isolation kind, double kst, double pmax, Double at, Flame stops, Boolean laden, String says) {
        isolation = kind;
        Listing stated = device(kst, pmax, at, stops, laden);
        devices = new Listing.Devices(Listing.UNKNOWN, stated, stated, Listing.UNKNOWN);
        assertThat(verdict(FindingCode.INLET_ISOLATION)).isEqualTo(says);
    }

    @ParameterizedTest
    @CsvSource({
        "FLAMELESS_VENTING,8.9,,fails",
        "SUPPRESSION,8.9,0.3,fails",
        "SUPPRESSION,9,0.3,holds",
        "SUPPRESSION,9,0.19,fails",
        "SUPPRESSION,9,,not known",
        "FLAMELESS_VENTING,,,not known"
    })
    void flameless_vents_and_suppression_are_judged_by_what_they_were_tested_for(
            Method way, Double pmax, Double stands, String says) {
        method = Optional.of(way);
        stands_bar = Optional.ofNullable(stands);
        Listing stated = pmax == null ? Listing.UNKNOWN : device(800, pmax, 5.0, Flame.BOTH_WAYS, true);
        devices = new Listing.Devices(stated, Listing.UNKNOWN, Listing.UNKNOWN, Listing.UNKNOWN);
        assertThat(verdict(FindingCode.EXPLOSION_PROTECTION)).isEqualTo(says);
    }

    // ---- tubing, tools, drum

    /** 1 MΩ of a conductive part, 100 MΩ of a dissipative one (IEC TS 60079-32-1, from memory); an insulating one never does. */
    @ParameterizedTest
    @CsvSource({
        "CONDUCTIVE,1e6,holds",
        "CONDUCTIVE,1.1e6,fails",
        "DISSIPATIVE,1e8,holds",
        "DISSIPATIVE,1.1e8,fails",
        "INSULATING,1,fails",
        "CONDUCTIVE,,not known",
        ",1,not known"
    })
    void a_part_that_dust_rubs_on_is_judged_by_material_and_resistance(Material material, Double ohm, String says) {
        ChargePath charge = new ChargePath(
                Optional.ofNullable(material), Optional.ofNullable(ohm).map(ElectricResistance::new));
        EquipmentSketch sketch = sketch();
        sketch.container = Optional.of(new Container(
                Container.Kind.DRUM,
                new Volume(0.2),
                Optional.empty(),
                Container.Stop.LEVEL_PROBE,
                new Container.Changing(new Duration(300), false, Optional.empty()),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                charge,
                Optional.of(DrumLiner.NONE),
                Optional.of(BagType.Vapour.NONE)));
        assertThat(verdict(finding(sketch.sheets(), FindingCode.DRUM_STATIC).orElseThrow()))
                .isEqualTo(says);
    }

    // ---- dusts that nobody has tested

    /** A mineral may hold rust: beside a light metal only a test of it shows that it does not. */
    @ParameterizedTest
    @CsvSource({"true,holds", "false,not known"})
    void a_mineral_beside_a_light_metal_needs_a_test(boolean tested, String says) {
        Dust metal = dust("metal", true);
        own = tested;
        family = Optional.of(DustFamily.MINERAL);
        mie_mJ = Optional.empty();
        mit_C = Optional.empty();
        lit_C = Optional.empty();
        pmax_bar = Optional.empty();
        Dust mineral = dust("mineral", false);
        Collecting here = new Collecting(
                new Place(Place.Kind.POINT, "SEP"), Optional.empty(), List.of(), List.of(), List.of(metal, mineral));
        assertThat(mineral.burns()).isFalse();
        Sheet sheet = HazardSheet.of(sketch().plant(), here).orElseThrow();
        assertThat(verdict(finding(List.of(sheet), FindingCode.DUSTS_TOGETHER).orElseThrow()))
                .isEqualTo(says);
    }

    private Dust dust(String id, boolean burns) {
        if (burns) {
            family = Optional.of(DustFamily.ALUMINIUM);
        }
        return new Dust(
                id,
                id,
                Optional.empty(),
                DustClass.DRY_POWDER.minimum(),
                Source.entered(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                LevelFriction.YANG,
                Optional.empty(),
                Optional.of(burns),
                ClothDust.UNKNOWN,
                HopperDust.UNKNOWN,
                card());
    }

    /** Whoever enters an ignition energy says that something lights it. */
    @Test
    void an_ignition_energy_of_a_joule_beside_no_explosion_is_not_taken_as_no_dust_that_burns() {
        own = true;
        mie_mJ = Optional.of(1000.0);
        mit_C = Optional.empty();
        lit_C = Optional.empty();
        pmax_bar = Optional.empty();
        assertThat(dust("x", false).burns()).isTrue();
        mie_mJ = Optional.empty();
        family = Optional.of(DustFamily.ORGANIC);
        assertThat(dust("x", false).burns()).isFalse();
    }

    // ---- food

    @ParameterizedTest
    @CsvSource({
        "true,true,holds",
        "true,false,fails",
        "true,,not known",
        ",true,holds",
        ",,not known",
        "false,false,none"
    })
    void dust_that_goes_into_food_asks_what_it_touches(Boolean food, Boolean declared, String says) {
        isFood = Optional.ofNullable(food);
        EquipmentSketch sketch = sketch();
        sketch.foodContact = Optional.ofNullable(declared);
        assertThat(finding(sketch.sheets(), FindingCode.FOOD_CONTACT)
                        .map(JudgedConsequencesTest::verdict)
                        .orElse("none"))
                .isEqualTo(says);
    }

    // ---- after-filter

    /** Shares of EN 1822-1 classes against L 1 %, M 0.1 %, H 0.005 %. */
    @ParameterizedTest
    @CsvSource({
        "E10,L,fails",
        "E11,M,fails",
        "E12,L,holds",
        "H13,M,holds",
        "H13,H,fails",
        "H14,H,holds",
        "E12,,not known"
    })
    void an_after_filter_of_returned_air_is_held_against_the_dust_class(String filter, Hygiene dustClass, String says) {
        exhaust = Optional.of(Exhaust.INDOORS);
        after = Optional.of(filter);
        hygiene = Optional.ofNullable(dustClass);
        assertThat(verdict(FindingCode.AFTER_FILTER)).isEqualTo(says);
    }

    @Test
    void outdoors_only_a_toxic_dust_asks_for_an_after_filter_of_its_class() {
        assertThat(finding(sketch().sheets(), FindingCode.AFTER_FILTER)).isEmpty();
        toxic = Optional.of(true);
        after = Optional.empty();
        assertThat(verdict(FindingCode.AFTER_FILTER)).isEqualTo("fails");
    }

    // ---- containment

    @ParameterizedTest
    @CsvSource({"9,9.5,holds", "9,9,holds", "9,8.9,fails", ",11.9,not known", ",12,holds", "9,,not known"})
    void a_vessel_that_contains_is_held_by_its_figure_against_pmax(Double pmax, Double stands, String says) {
        own = true;
        method = Optional.of(Method.CONTAINMENT);
        pmax_bar = Optional.ofNullable(pmax);
        stands_bar = Optional.ofNullable(stands);
        Finding contained = found(FindingCode.EXPLOSION_PROTECTION);
        assertThat(verdict(contained)).isEqualTo(says);
        assertThat(contained.limit().si()).isEqualTo((pmax == null ? 12 : pmax) * BAR_Pa);
    }

    @Test
    void pmax_of_other_samples_does_not_show_that_a_vessel_contains() {
        method = Optional.of(Method.CONTAINMENT);
        stands_bar = Optional.of(9.9);
        assertThat(verdict(FindingCode.EXPLOSION_PROTECTION)).isEqualTo("not known");
    }

    @Test
    void a_vessel_too_weak_for_a_metal_fails_and_a_strong_one_is_its_makers_to_show() {
        method = Optional.of(Method.CONTAINMENT);
        family = Optional.of(DustFamily.ALUMINIUM);
        stands_bar = Optional.of(5.0);
        assertThat(verdict(FindingCode.EXPLOSION_PROTECTION)).isEqualTo("fails");
        stands_bar = Optional.of(10.0);
        assertThat(verdict(FindingCode.EXPLOSION_PROTECTION)).isEqualTo("not known");
    }

    // ---- panel

    @ParameterizedTest
    @CsvSource({"ORGANIC,12,holds", "ALUMINIUM,12,not known", ",12,not known", "ALUMINIUM,9,holds", "ORGANIC,,not known"
    })
    void a_panel_in_class_ii_division_2_beside_a_metal_or_without_its_enclosure_is_not_said_to_hold(
            DustFamily dust, String type, String says) {
        family = Optional.ofNullable(dust);
        Plant plant = sketch().plant();
        Panel panel = new Panel(
                Optional.of(AreaClass.CLASS_II_DIVISION_2),
                Optional.of("owner"),
                Optional.ofNullable(type),
                Optional.empty(),
                Optional.of(Exposure.DUSTY_INDOOR),
                Panel.Control.DC_24,
                Optional.empty(),
                new Temperature(323.15),
                Optional.empty(),
                true,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        List<Sheet> sheets = EquipmentSketch.sheets(
                plant.withElectrical(new Electrical(Optional.empty(), Optional.of(panel))), List.of());
        assertThat(verdict(finding(sheets, FindingCode.PANEL_AREA).orElseThrow()))
                .isEqualTo(says);
    }

    // ---- couplings

    /** No piece reaches past a bend: 5.7, 1.8 and 9.4 m between two bends are 1, 1 and 2 lengths of 6.096 m. */
    @Test
    void a_stretch_between_two_bends_is_cut_from_lengths_of_its_own() {
        double r = 0.6;
        Run.Route.Drawn route = new Run.Route.Drawn(
                List.of(
                        new Position(0, 0, 0),
                        new Position(5.7 + r, 0, 0),
                        new Position(5.7 + r, 1.8 + 2 * r, 0),
                        new Position(5.7 + 2 * r + 9.4, 1.8 + 2 * r, 0)),
                new Length(r));
        Plant plant = sketch().plant();
        Run run = new Run("X", "J", "REC", "T3", route, List.of(), Optional.empty(), true);
        assertThat(EarthingList.couplings(plant, run).all()).isEqualTo(2 + 2 * 2 + 1);
    }

    // ---- what is left out

    private Map<String, Finding> verdicts() {
        return sketch().sheets().stream()
                .flatMap(sheet -> sheet.findings().stream())
                .collect(Collectors.toMap(f -> f.code() + "/" + f.where() + "/" + f.state(), f -> f));
    }

    /** Nothing holds because somebody left out what would not hold, said. */
    @ParameterizedTest
    @CsvSource({
        "VENTING,OUTDOORS",
        "VENTING,INDOORS",
        "FLAMELESS_VENTING,OUTDOORS",
        "SUPPRESSION,INDOORS",
        "CONTAINMENT,OUTDOORS"
    })
    void what_is_left_out_of_a_dust_is_never_judged_better_than_the_worst_that_could_be_said(Method way, Exhaust air) {
        method = Optional.of(way);
        exhaust = Optional.of(air);
        stands_bar = Optional.of(13.0);
        own = true;
        toxic = Optional.of(true);
        Map<String, Finding> poison = verdicts();
        toxic = Optional.empty();
        noBetter(verdicts(), poison);
        toxic = Optional.of(false);
        family = Optional.of(DustFamily.ALUMINIUM);
        Map<String, Finding> metal = verdicts();
        family = Optional.empty();
        noBetter(verdicts(), metal);
    }

    private static void noBetter(Map<String, Finding> leftOut, Map<String, Finding> said) {
        said.forEach((id, finding) -> {
            if (!finding.holds() && finding.code() != FindingCode.DUST_CARD) {
                assertThat(leftOut.get(id))
                        .as(id)
                        .isNotNull()
                        .satisfies(f -> assertThat(f.holds()).as(id).isFalse());
            }
        });
    }

    /** Values of a test that says it burns stand against "no", also beside Kst 0. */
    @Test
    void not_combustible_is_not_taken_against_ignition_temperatures() {
        family = Optional.of(DustFamily.MINERAL);
        own = true;
        pmax_bar = Optional.empty();
        mie_mJ = Optional.empty();
        assertThat(card().saysThatItBurns()).containsExactly("MIT", "LIT");
        assertThat(card().shownInert()).isFalse();
    }

    @Test
    void a_dust_of_class_h_that_is_stated_not_to_be_toxic_leaves_its_card_open() {
        assertThat(card().missing()).extracting(DustCard.Missing::key).doesNotContain("toxic");
        hygiene = Optional.of(Hygiene.H);
        assertThat(card().missing()).extracting(DustCard.Missing::key).contains("toxic");
    }
}
