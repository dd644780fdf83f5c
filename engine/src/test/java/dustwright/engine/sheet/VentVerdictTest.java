package dustwright.engine.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.bagging.Container;
import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.engine.hazard.BagType;
import dustwright.engine.hazard.DustCard;
import dustwright.engine.hazard.DustCard.Stated;
import dustwright.engine.hazard.DustFamily;
import dustwright.engine.hazard.Protection;
import dustwright.engine.hazard.Protection.Method;
import dustwright.engine.hazard.Protection.Standing;
import dustwright.engine.hazard.Protection.Vent;
import dustwright.engine.hazard.VentEn14491;
import dustwright.engine.hazard.VentMethod;
import dustwright.engine.hazard.VentNfpa68;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.ClothLoad;
import dustwright.engine.quantity.Count;
import dustwright.engine.quantity.Duration;
import dustwright.engine.quantity.ExplosionConstant;
import dustwright.engine.quantity.GaugePressure;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.SparkEnergy;
import dustwright.engine.quantity.Velocity;
import dustwright.engine.quantity.Volume;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of a vent: holds, fails, not known; never better for a stronger dust. */
class VentVerdictTest {
    private static final int CASES = 4000;
    private static final double BAR_Pa = 1e5;
    private static final Vent OPEN = Vent.UNKNOWN;

    private enum Verdict {
        HOLDS,
        NOT_KNOWN,
        FAILS
    }

    private static DustCard card(double kst_bar, double greatest_bar) {
        DustCard none = DustCard.UNKNOWN;
        return new DustCard(
                Optional.of(DustFamily.ORGANIC),
                Optional.of(new Stated<>(new ExplosionConstant(kst_bar * BAR_Pa), Source.entered())),
                Optional.of(new Stated<>(new GaugePressure(greatest_bar * BAR_Pa), Source.entered())),
                Optional.of(new Stated<>(new SparkEnergy(0.05), Source.entered())),
                none.cloud(),
                none.layer(),
                none.explosible(),
                none.conductive(),
                none.food(),
                Optional.of(false),
                Optional.of(false),
                none.hygiene(),
                Optional.of(new Length(30e-6)),
                Optional.of(new Ratio(0.03)),
                none.sample(),
                none.severity(),
                none.sensitivity(),
                Optional.of("an invented reason"),
                none.report(),
                Optional.empty(),
                Optional.empty(),
                List.of());
    }

    /** A vent of some area and what lessens or enlarges what is asked of it. */
    private static Vent vent(
            double area_m2,
            Vent like,
            Optional<Ratio> share,
            Optional<VentMethod> standard,
            Optional<Ratio> efficiency) {
        return new Vent(
                Optional.of(new Area(area_m2)),
                1,
                like.duct().or(() -> Optional.of(new Length(0))),
                like.moving().or(() -> Optional.of(new Velocity(15))),
                like.panel().or(() -> Optional.of(new ClothLoad(0.5))),
                like.hinged(),
                share,
                standard,
                efficiency.or(() -> Optional.of(new Ratio(1))));
    }

    private static Vent vent(double area_m2) {
        return vent(area_m2, OPEN, Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static Vent by68(double area_m2, Optional<Velocity> air, Optional<ClothLoad> panel) {
        return new Vent(
                Optional.of(new Area(area_m2)),
                1,
                Optional.of(new Length(0)),
                air,
                panel,
                Optional.empty(),
                Optional.empty(),
                Optional.of(VentMethod.NFPA_68),
                Optional.of(new Ratio(1)));
    }

    /** Air is counted at the fastest there is; no mass of a panel is the worst, a vent holds only with one that is stated and in range. */
    @Test
    void what_enlarges_a_vent_and_is_left_out_never_lets_it_hold() {
        Optional<ClothLoad> light = Optional.of(new ClothLoad(0.5));
        Finding open = found(stated(4.5, 1, 0.4, by68(0.5, Optional.empty(), Optional.empty())), card(200, 9));
        assertThat(open.unjudged()).isTrue();
        assertThat(open.derivation().steps().get(0).formula()).contains("\"panel\" and \"air in vessel\"");
        assertThat(verdict(stated(4.5, 1, 0.4, by68(1.2, Optional.empty(), light)), card(200, 9)))
                .isEqualTo(Verdict.HOLDS);
        assertThat(verdict(stated(4.5, 1, 0.4, by68(9, Optional.of(new Velocity(1)), Optional.empty())), card(200, 9)))
                .isEqualTo(Verdict.NOT_KNOWN);
        Finding heavy = found(
                stated(4.5, 1, 0.4, by68(9, Optional.of(new Velocity(1)), Optional.of(new ClothLoad(200)))),
                card(200, 9));
        assertThat(heavy.unjudged()).isTrue();
        assertThat(heavy.derivation().steps().get(0).formula()).contains("inertia term", "50");
    }

    /** By values of a sample that is coarse or damp a vent may be too small, and never is large enough; without values it is neither. */
    @Test
    void values_that_do_not_count_fail_a_vent_and_never_let_it_hold() {
        DustCard good = card(200, 9);
        for (DustCard bad : List.of(
                sampled(good, Optional.of(new Length(450e-6)), good.moisture()),
                sampled(good, good.sampleSize(), Optional.of(new Ratio(0.2))),
                sampled(good, Optional.empty(), good.moisture()),
                sampled(good, good.sampleSize(), Optional.empty()))) {
            assertThat(verdict(stated(4.5, 1, 0.4, vent(0.1)), bad)).isEqualTo(Verdict.FAILS);
            assertThat(verdict(stated(4.5, 1, 0.4, vent(0.5)), good)).isEqualTo(Verdict.HOLDS);
            assertThat(verdict(stated(4.5, 1, 0.4, vent(0.5)), bad)).isEqualTo(Verdict.NOT_KNOWN);
        }
    }

    private static DustCard sampled(DustCard c, Optional<Length> size, Optional<Ratio> moisture) {
        return new DustCard(
                c.family(),
                c.kst(),
                c.greatest(),
                c.ignition(),
                c.cloud(),
                c.layer(),
                c.explosible(),
                c.conductive(),
                c.food(),
                c.toxic(),
                c.sensitizing(),
                c.hygiene(),
                size,
                moisture,
                c.sample(),
                c.severity(),
                c.sensitivity(),
                c.because(),
                c.report(),
                c.insulating(),
                c.heap(),
                List.of());
    }

    /** A vessel that is not drawn whole is at least what is stated and the container that nothing isolates below it. */
    @Test
    void a_container_below_counts_also_where_the_vessel_is_not_drawn() {
        Protection p = stated(1, 1, 0.4, vent(0.1));
        assertThat(verdict(found(sheet(p, Optional.empty(), card(100, 8), false))))
                .isEqualTo(Verdict.HOLDS);
        Finding drum = found(sheet(p, Optional.of(bag(1)), card(100, 8), false));
        assertThat(drum.unjudged()).isTrue();
        assertThat(drum.derivation().steps().get(0).formula()).contains("\"volume\"");
    }

    private static Vent with(Optional<Length> duct, Optional<Velocity> moving, Optional<ClothLoad> panel) {
        return new Vent(
                Optional.empty(),
                1,
                duct,
                moving,
                panel,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new Ratio(1)));
    }

    private static Protection protection(
            Method method, Optional<Volume> volume, Optional<Ratio> slenderness, double reduced_bar, Vent vent) {
        return new Protection(
                Optional.of(method),
                Optional.of(Standing.OUTDOORS),
                volume,
                slenderness,
                Optional.of(new GaugePressure(reduced_bar * BAR_Pa)),
                Optional.of(new GaugePressure(0.1 * BAR_Pa)),
                vent,
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(false),
                Optional.empty(),
                Protection.Producers.UNKNOWN,
                EquipmentSketch.LISTED);
    }

    private static Protection stated(double volume_m3, double slenderness, double reduced_bar, Vent vent) {
        return protection(
                Method.VENTING,
                Optional.of(new Volume(volume_m3)),
                Optional.of(new Ratio(slenderness)),
                reduced_bar,
                vent);
    }

    private static Sheet sheet(Protection protection, Optional<Container> below, DustCard card) {
        return sheet(protection, below, card, protection.volume().isEmpty());
    }

    private static Sheet sheet(Protection protection, Optional<Container> below, DustCard card, boolean drawn) {
        EquipmentSketch sketch = new EquipmentSketch();
        sketch.drawn = drawn;
        sketch.protection = protection;
        sketch.card = card;
        sketch.container = below;
        Station station = sketch.plant().stations().get(0);
        Dust dust = sketch.plant().dusts().get(0);
        Writing writing = new Writing("REC");
        new VentLines(station, writing).write(List.of(dust));
        return writing.sheet("hazard", "", Place.Kind.STATION);
    }

    private static Finding found(Protection protection, DustCard card) {
        return found(sheet(protection, Optional.empty(), card));
    }

    private static Finding found(Sheet sheet) {
        return sheet.findings().stream()
                .filter(f -> f.code() == FindingCode.VENT_AREA)
                .findFirst()
                .orElseThrow();
    }

    private static Verdict verdict(Finding f) {
        return !f.decided() ? Verdict.NOT_KNOWN : f.holds() ? Verdict.HOLDS : Verdict.FAILS;
    }

    private static Verdict verdict(Protection protection, DustCard card) {
        return verdict(found(protection, card));
    }

    private static Quantity value(Sheet sheet, String id) {
        return sheet.entries().stream()
                .filter(e -> e.id().equals(id + "/REC"))
                .map(e -> ((Answer.Known) e.answer()).value())
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + id));
    }

    // ---- stronger is never better

    /** Just past every bound of both methods, where one of them stops to give numbers. */
    @ParameterizedTest
    @CsvSource({"200,10,200,10.1", "300,11,301,11", "290,10,300.5,10.5", "9,9,10,9", "200,4.9,200,5", "800,9,801,9"})
    void across_a_bound_of_a_method_a_stronger_dust_is_not_judged_better(
            double kst, double pmax, double strongerKst, double strongerPmax) {
        for (double area_m2 = 0.02; area_m2 < 3; area_m2 *= 1.05) {
            Protection p = stated(4.5, 2.6, 0.4, vent(area_m2));
            assertNotBetter(
                    verdict(p, card(kst, pmax)),
                    verdict(p, card(strongerKst, strongerPmax)),
                    "with " + area_m2 + " m²");
        }
    }

    @Test
    void a_stronger_dust_is_never_judged_better_and_a_weaker_never_worse() {
        SplittableRandom random = new SplittableRandom(20261126);
        Map<Verdict, Integer> seen = new EnumMap<>(Verdict.class);
        for (int n = 0; n < CASES; n++) {
            double volume_m3 = 0.2 * Math.pow(100, random.nextDouble());
            double reduced_bar = 0.2 + 1.5 * random.nextDouble();
            double kst = 1 + 850 * Math.pow(random.nextDouble(), 2);
            double pmax = 4 + 9 * random.nextDouble();
            Vent like = with(
                    random.nextInt(4) == 0 ? Optional.of(new Length(3 * random.nextDouble())) : Optional.empty(),
                    random.nextInt(3) == 0 ? Optional.of(new Velocity(50 * random.nextDouble())) : Optional.empty(),
                    random.nextInt(3) == 0 ? Optional.of(new ClothLoad(60 * random.nextDouble())) : Optional.empty());
            Vent vent = vent(
                    0.01 * Math.pow(300, random.nextDouble()),
                    like,
                    random.nextInt(3) == 0 ? Optional.of(new Ratio(random.nextDouble())) : Optional.empty(),
                    random.nextInt(2) == 0
                            ? Optional.of(random.nextBoolean() ? VentMethod.EN_14491 : VentMethod.NFPA_68)
                            : Optional.empty(),
                    Optional.empty());
            Protection p = stated(volume_m3, 1 + 5.5 * random.nextDouble(), reduced_bar, vent);
            double more = 1 + random.nextDouble();
            boolean kstGrows = random.nextInt(3) > 0;
            boolean pmaxGrows = !kstGrows || random.nextBoolean();
            boolean drawn = random.nextInt(4) == 0;
            Verdict weak = verdict(found(sheet(p, Optional.empty(), card(kst, pmax), drawn)));
            Verdict strong = verdict(found(sheet(
                    p, Optional.empty(), card(kstGrows ? kst * more : kst, pmaxGrows ? pmax * more : pmax), drawn)));
            seen.merge(weak, 1, Integer::sum);
            assertNotBetter(weak, strong, "case " + n);
        }
        assertThat(seen).hasSize(3);
        assertThat(seen.values()).as("holds, not known, fails").allMatch(count -> count > CASES / 20);
    }

    /** Stronger: from fail to nothing else, from not known never to hold. */
    private static void assertNotBetter(Verdict weak, Verdict strong, String as) {
        if (strong == Verdict.HOLDS) {
            assertThat(weak).as(as).isEqualTo(Verdict.HOLDS);
        }
        if (weak == Verdict.FAILS) {
            assertThat(strong).as(as).isEqualTo(Verdict.FAILS);
        }
    }

    // ---- which standard

    @Test
    void where_one_method_is_out_of_range_the_other_alone_does_not_let_a_vent_hold() {
        // L/D 8: above NFPA 68's 6, within EN 14491's 20
        Protection p = stated(4.5, 8, 0.4, vent(3));
        Finding open = found(p, card(100, 8));
        assertThat(open.unjudged()).isTrue();
        assertThat(open.derivation().steps().get(0).formula())
                .contains("Not known by NFPA 68 for Flour", "L/D", "\"vent standard\"");
        Protection governed = stated(
                4.5, 8, 0.4, vent(3, OPEN, Optional.empty(), Optional.of(VentMethod.EN_14491), Optional.empty()));
        assertThat(verdict(governed, card(100, 8))).isEqualTo(Verdict.HOLDS);
        Protection other =
                stated(4.5, 8, 0.4, vent(3, OPEN, Optional.empty(), Optional.of(VentMethod.NFPA_68), Optional.empty()));
        assertThat(verdict(other, card(100, 8))).isEqualTo(Verdict.NOT_KNOWN);
    }

    /** Too small by one method is too small, whatever the other can say. */
    @Test
    void what_a_method_in_range_asks_fails_a_smaller_vent_also_while_the_other_is_not_known() {
        assertThat(verdict(stated(4.5, 8, 0.4, vent(0.1)), card(100, 8))).isEqualTo(Verdict.FAILS);
    }

    /** Pmax 10.5 bar is past EN 14491's bound of 10 bar: the area at that bound is what it asks at least. */
    @Test
    void past_its_range_a_method_asks_no_less_than_for_a_weaker_dust_in_range() {
        double atBound_m2 = VentEn14491.area_m2(1.2, 205e5, 10e5, 0.1e5, 0.4e5, 2.66);
        double nfpa_m2 = VentNfpa68.area_m2(1.2, 205e5, 10.5e5, 0.1e5, 0.4e5, 2.66);
        assertThat(atBound_m2).isGreaterThan(nfpa_m2);
        Protection between = stated(1.2, 2.66, 0.4, vent((atBound_m2 + nfpa_m2) / 2));
        Finding fails = found(between, card(205, 10.5));
        assertThat(fails.fails()).isTrue();
        assertThat(fails.limit()).as("no figure that somebody might fit").isEqualTo(new Count(0));
        assertThat(fails.derivation().limitSource()).isEqualTo(VentEn14491.SOURCE);
    }

    @Test
    void the_entry_that_governs_counts_the_corrections() {
        Vent moving = vent(
                0.6,
                with(Optional.empty(), Optional.of(new Velocity(50)), Optional.empty()),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        Sheet sheet = sheet(stated(4.5, 1, 0.4, moving), Optional.empty(), card(200, 9));
        assertThat(sheet.entries().stream().map(Entry::name))
                .anyMatch(name -> name.contains("by NFPA 68 for Flour, which governs"))
                .noneMatch(name -> name.contains("EN 14491 governs"));
        assertThat(value(sheet, "vent-governs").si())
                .isEqualTo(found(sheet).limit().si());
    }

    // ---- outside its own scope EN 14491 gives no number

    @ParameterizedTest
    @CsvSource({"duct,Not covered", "panel,light panel"})
    void behind_a_duct_or_with_a_heavy_panel_en_14491_gives_no_number_and_the_vent_is_not_known(
            String what, String why) {
        Vent like = what.equals("duct")
                ? with(Optional.of(new Length(0.5)), Optional.empty(), Optional.empty())
                : with(Optional.empty(), Optional.empty(), Optional.of(new ClothLoad(100)));
        Sheet sheet = sheet(
                stated(4.5, 1, 0.4, vent(3, like, Optional.empty(), Optional.empty(), Optional.empty())),
                Optional.empty(),
                card(100, 8));
        assertThat(sheet.entries().stream()
                        .filter(e -> e.id().equals("vent-en-flour/REC"))
                        .map(Entry::answer))
                .singleElement()
                .isInstanceOfSatisfying(
                        Answer.Unknown.class,
                        unknown -> assertThat(unknown.why()).contains(why));
        assertThat(verdict(found(sheet))).isEqualTo(Verdict.NOT_KNOWN);
    }

    // ---- what lessens the area is flagged

    @Test
    void a_vent_that_would_do_only_by_a_small_cloud_is_not_known() {
        double whole_m2 = VentNfpa68.area_m2(4.5, 200e5, 9e5, 0.1e5, 0.4e5, 1);
        Optional<VentMethod> nfpa = Optional.of(VentMethod.NFPA_68);
        Optional<Ratio> share = Optional.of(new Ratio(0.2));
        Protection small = stated(4.5, 1, 0.4, vent(0.9 * whole_m2, OPEN, share, nfpa, Optional.empty()));
        Finding open = found(small, card(200, 9));
        assertThat(open.unjudged()).isTrue();
        assertThat(open.derivation().steps().get(0).formula()).contains("\"cloud share\"", "specialist");
        assertThat(verdict(
                        stated(4.5, 1, 0.4, vent(1.01 * whole_m2, OPEN, share, nfpa, Optional.empty())), card(200, 9)))
                .isEqualTo(Verdict.HOLDS);
        assertThat(verdict(stated(4.5, 1, 0.4, vent(0.01, OPEN, share, nfpa, Optional.empty())), card(200, 9)))
                .isEqualTo(Verdict.FAILS);
    }

    @Test
    void a_volume_stated_below_the_drawn_one_is_flagged_and_decides_nothing() {
        Sheet sheet = sheet(stated(0.3, 1, 0.4, vent(0.1)), Optional.empty(), card(115, 9), true);
        double drawn_m3 = value(sheet, "flame-volume-drawn").si();
        assertThat(drawn_m3).isGreaterThan(2);
        Finding open = found(sheet);
        assertThat(open.unjudged()).isTrue();
        assertThat(open.derivation().steps().get(0).formula())
                .contains("\"volume\"", "\"length to diameter\"", "specialist");
    }

    // ---- what hangs below

    private static Container bag(double volume_m3) {
        return new Container(
                Container.Kind.BULK_BAG,
                new Volume(volume_m3),
                Optional.empty(),
                Container.Stop.LEVEL_PROBE,
                new Container.Changing(new Duration(300), false, Optional.empty()),
                Optional.empty(),
                Optional.of(EquipmentSketch.bag(BagType.C)),
                Optional.empty());
    }

    /** EN 14491 is for a Pmax of 10 bar at most up to Kst 300 bar m/s: a stronger dust decides beyond, and is no figure of this one. */
    @Test
    void outside_the_range_a_stronger_dust_decides_and_no_figure_is_named_for_this_one() {
        Protection drawn = protection(Method.VENTING, Optional.empty(), Optional.empty(), 0.4, vent(4));
        Sheet outside = sheet(drawn, Optional.empty(), card(150, 12));
        Sheet inside = sheet(drawn, Optional.empty(), card(150, 9));
        for (Sheet sheet : List.of(outside, inside)) {
            assertThat(sheet.findings().stream().filter(f -> f.code() == FindingCode.VENT_AREA))
                    .singleElement()
                    .satisfies(f -> assertThat(f.holds()).isTrue());
            assertThat(sheet.entries().stream().anyMatch(e -> e.id().startsWith("vent-governs")))
                    .isEqualTo(sheet.equals(inside));
            assertThat(sheet.entries().stream().anyMatch(e -> e.id().startsWith("vent-enough")))
                    .isEqualTo(sheet.equals(outside));
        }
    }

    /** The bag of 0.45 m³ hangs as a column as wide as the receiver of 1.2 m. */
    @Test
    void a_bag_that_nothing_isolates_belongs_to_the_volume_and_height_of_the_flame() {
        Protection drawn = protection(Method.VENTING, Optional.empty(), Optional.empty(), 0.4, vent(0.4));
        Sheet alone = sheet(drawn, Optional.empty(), card(115, 9));
        Sheet with = sheet(drawn, Optional.of(bag(0.45)), card(115, 9));
        assertThat(value(with, "flame-volume").si()
                        - value(alone, "flame-volume").si())
                .isCloseTo(0.45, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(value(with, "flame-slenderness").si()
                        - value(alone, "flame-slenderness").si())
                .isCloseTo(0.45 / (Math.PI / 4 * 1.44) / 1.2, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(value(with, "vent-en-flour").si())
                .isGreaterThan(value(alone, "vent-en-flour").si());
    }

    // ---- flameless

    @Test
    void a_flameless_device_counts_by_its_efficiency_and_without_one_nobody_knows() {
        Optional<Volume> volume = Optional.of(new Volume(4.5));
        Optional<Ratio> compact = Optional.of(new Ratio(1));
        Vent plain = vent(0.35);
        Vent unsaid = new Vent(
                plain.area(),
                1,
                plain.duct(),
                plain.moving(),
                plain.panel(),
                plain.hinged(),
                plain.share(),
                plain.standard(),
                Optional.empty());
        // a panel too lets through less than an open hole, unless somebody says that it does not
        for (Method method : List.of(Method.FLAMELESS_VENTING, Method.VENTING)) {
            Finding open = found(protection(method, volume, compact, 0.4, unsaid), card(200, 9));
            assertThat(open.unjudged()).isTrue();
            assertThat(open.derivation().steps().get(0).formula()).contains("\"vent efficiency\"");
        }
        Vent listed = vent(0.35, OPEN, Optional.empty(), Optional.empty(), Optional.of(new Ratio(0.8)));
        Finding fails = found(protection(Method.FLAMELESS_VENTING, volume, compact, 0.4, listed), card(200, 9));
        assertThat(fails.fails()).as("0.28 m² of 0.307").isTrue();
        assertThat(fails.value().si()).isCloseTo(0.28, org.assertj.core.api.Assertions.within(1e-12));
    }
}
