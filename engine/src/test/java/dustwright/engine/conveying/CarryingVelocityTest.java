package dustwright.engine.conveying;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.Reference;
import dustwright.engine.Reference.Row;
import dustwright.engine.air.Air;
import dustwright.engine.conveying.VelocityLaw.Orientation;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.quantity.Velocity;
import dustwright.engine.tubing.Friction;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class CarryingVelocityTest {
    private static final EnumSet<Orientation> ALL = EnumSet.allOf(Orientation.class);
    /** 60 kg/h of sand of 0.5 mm in a 2 in tube. */
    private static final Conveyed SAND = Streams.of(60 / 3600.0, 5e-4, 2650, 1.0, 0.0475);

    static List<Row> hoses() {
        return Reference.rows("conveying/hose-velocity.csv");
    }

    static List<Row> bodies() {
        return Reference.rows("conveying/minimum-velocity.csv");
    }

    @ParameterizedTest
    @MethodSource("hoses")
    void velocity_in_a_hose_is_that_of_continuity(Row row) {
        Air air = new Air(new AbsolutePressure(101_325), new Temperature(293.15), 287.05287, 1.8134e-5);
        double bore = row.value("diameter_m");
        double w = row.value("mass_flow_kg_s");
        double velocity = w / (air.density_kgPerM3(row.value("pressure_Pa")) * Math.PI / 4 * bore * bore);
        row.assertClose("velocity_m_s", velocity);
        row.assertClose("velocity_ft_min", velocity / 0.3048 * 60);
        row.assertClose("flow_scfm", w / FreeAirFlow.REFERENCE_DENSITY_kgPerM3 / Math.pow(0.3048, 3) * 60);
        row.assertClose("reynolds", Friction.reynolds(w, bore, air.viscosity_PaS()));
        // Mills' round constants give the same within their 0.13 %
        assertClose(
                row + " Mills",
                MillsVelocity.velocity_mPerS(w, 293.15, bore, row.value("pressure_Pa")),
                velocity,
                0.002);
    }

    @ParameterizedTest
    @MethodSource("bodies")
    void dust_classes_have_the_published_minimum(Row row) {
        Map<String, DustClass> acgih = Map.of(
                "fumes", DustClass.FUMES,
                "very fine light dust", DustClass.VERY_FINE_LIGHT,
                "dry dusts and powders", DustClass.DRY_POWDER,
                "average industrial dust", DustClass.AVERAGE_INDUSTRIAL,
                "heavy dusts", DustClass.HEAVY,
                "heavy or moist", DustClass.HEAVY_OR_MOIST);
        Map<String, DustClass> ireland = Map.of(
                "smoke, fume", DustClass.FUMES,
                "fine dry dust", DustClass.VERY_FINE_LIGHT,
                "dry dusts and powders", DustClass.DRY_POWDER);
        DustClass dustClass = switch (row.text("body")) {
            case "ACGIH" -> acgih.get(row.text("dust_class"));
            case "HSA Ireland" -> ireland.get(row.text("dust_class"));
            default -> null;
        };
        if (dustClass == null) {
            Reference.report(row, row.text("body") + ", " + row.text("dust_class") + ": no class of ours");
        } else {
            row.assertClose("velocity_low_m_s", dustClass.minimum().metresPerSecond());
        }
    }

    @Test
    void every_law_for_the_way_the_tube_lies_is_shown() {
        CarryingVelocity both = CarryingVelocity.of(Streams.dust("sand"), SAND, ALL);
        assertThat(both.weighed()).extracting(CarryingVelocity.Weighed::law).containsExactly(VelocityLaw.values());
        CarryingVelocity level = CarryingVelocity.of(Streams.dust("sand"), SAND, EnumSet.of(Orientation.LEVEL));
        assertThat(level.weighed()).allMatch(one -> one.law().orientation() == Orientation.LEVEL);
        assertThat(level.weighed()).hasSize(7);
    }

    @Test
    void the_greatest_law_inside_its_range_binds() {
        CarryingVelocity found = CarryingVelocity.of(Streams.dust("sand"), SAND, ALL);
        double greatest = 0;
        for (CarryingVelocity.Weighed one : found.weighed()) {
            if (one.answer() instanceof LawAnswer.Inside inside) {
                greatest = Math.max(greatest, inside.velocity().metresPerSecond());
            }
        }
        CarryingVelocity.Binding binding = found.binding().orElseThrow();
        assertThat(binding.velocity().metresPerSecond()).isEqualTo(greatest);
        assertThat(binding.law()).contains(VelocityLaw.SCHADE_1987);
    }

    @Test
    void nothing_binds_where_no_law_may_be_asked() {
        assertThat(CarryingVelocity.of(Streams.dust("trace"), Streams.of(1e-6, 5e-4, 2650, 1.0, 0.0475), ALL)
                        .binding())
                .isEmpty();
    }

    @Test
    void a_law_for_level_tubes_says_nothing_of_rising_ones() {
        // coarse sand at a trickle: at the slow velocities of saltation it is still 0.1 kg/kg, at those of choking less
        Conveyed trickle = Streams.of(6e-4, 5e-4, 2650, 1.0, 0.0475);
        CarryingVelocity both = CarryingVelocity.of(Streams.dust("sand"), trickle, ALL);
        assertThat(both.weighed())
                .filteredOn(one -> one.inside().isPresent())
                .isNotEmpty()
                .allMatch(one -> one.law().orientation() == Orientation.LEVEL);
        assertThat(both.notJudged()).singleElement().satisfies(open -> {
            assertThat(open.lies()).isEqualTo(Orientation.RISING);
            assertThat(open.why()).anyMatch(why -> why.startsWith("μ = "));
        });
        assertThat(CarryingVelocity.of(Streams.dust("sand"), SAND, ALL).notJudged())
                .isEmpty();
    }

    @Test
    void what_is_measured_binds_and_leaves_nothing_unjudged() {
        Conveyed fine = Streams.of(60 / 3600.0, 2e-6, 2650, 1.0, 0.0475);
        assertThat(CarryingVelocity.of(Streams.dust("fine"), fine, ALL).notJudged())
                .hasSize(2);
        CarryingVelocity measured = CarryingVelocity.of(Streams.dust("fine", Optional.of(new Velocity(11))), fine, ALL);
        assertThat(measured.notJudged()).isEmpty();
        assertThat(measured.binding())
                .contains(new CarryingVelocity.Binding("fine", Optional.empty(), new Velocity(11)));
        assertThat(CarryingVelocity.of(
                                Streams.dust("fine", Optional.of(new Velocity(11))),
                                fine,
                                EnumSet.noneOf(Orientation.class))
                        .binding())
                .as("a tube that only falls asks nothing")
                .isEmpty();
    }

    @Test
    void a_law_outside_its_range_warns_in_words_and_still_shows_its_figure() {
        LawAnswer answer = VelocityLaw.MATSUMOTO_1974.about(Streams.of(0.05, 1e-4, 2650, 1.0, 0.0475));
        assertThat(answer).isInstanceOfSatisfying(LawAnswer.OutsideRange.class, outside -> {
            assertThat(outside.extrapolated().metresPerSecond()).isPositive();
            assertThat(outside.why()).singleElement().asString().contains("d = ", "0.0003");
        });
    }

    @Test
    void air_far_thinner_than_any_test_was_made_in_is_outside_the_range() {
        LawAnswer answer = VelocityLaw.SCHADE_1987.about(Streams.of(0.05, 5e-4, 2650, 0.2, 0.0475));
        assertThat(answer)
                .isInstanceOfSatisfying(
                        LawAnswer.OutsideRange.class,
                        outside -> assertThat(outside.why())
                                .singleElement()
                                .asString()
                                .startsWith("ρ = 0.2 kg/m³"));
    }

    @ParameterizedTest
    @EnumSource(VelocityLaw.class)
    void a_trace_of_dust_is_outside_every_law(VelocityLaw law) {
        assertThat(law.about(Streams.of(1e-6, 5e-4, 2650, 1.0, 0.0475))).isInstanceOf(LawAnswer.OutsideRange.class);
        assertThat(law.about(Streams.of(0, 5e-4, 2650, 1.0, 0.0475))).isInstanceOf(LawAnswer.OutsideRange.class);
    }

    @ParameterizedTest
    @EnumSource(VelocityLaw.class)
    void every_law_names_its_author_its_equation_and_where_its_range_comes_from(VelocityLaw law) {
        assertThat(law.words()).matches("[A-Z].* (19)[0-9]{2}");
        assertThat(law.equation()).matches("CON-[0-9]+");
        assertThat(law.rangeSource().text()).isNotEmpty();
        assertThat(law.source().text()).contains(law.words().substring(0, 4));
    }

    @Test
    void dense_phase_law_for_coal_is_never_inside_its_range_in_a_vacuum_line() {
        assertThat(VelocityLaw.GELDART_LING_1990.about(SAND)).isInstanceOf(LawAnswer.OutsideRange.class);
    }

    @Test
    void air_at_half_the_pressure_carries_half_the_loading_per_velocity() {
        Conveyed thin = new Conveyed(
                SAND.solids(),
                SAND.particle(),
                new Density(0.5),
                SAND.viscosity(),
                new Length(0.0475),
                SAND.terminal());
        assertClose("loading", thin.loading(20), 2 * SAND.loading(20), 1e-14);
    }
}
