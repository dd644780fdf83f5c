package dustwright.cli;

import static dustwright.cli.Edits.study;
import static dustwright.cli.Edits.with;
import static org.assertj.core.api.Assertions.assertThat;

import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.Study;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.quantity.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a reader is told of a hazard: by whom a conflict arises, what is not known where figures do not hold, and what to do. */
class HazardSentencesTest {
    private static String bakery = "";

    @BeforeAll
    static void read() throws IOException {
        bakery = Files.readString(Path.of("..", "examples", "bakery", "plant.yaml"));
    }

    private static Finding worst(Study study, FindingCode code) {
        return study.worstPerPlace().stream()
                .filter(f -> f.code() == code)
                .findFirst()
                .orElseThrow();
    }

    private static String told(Finding finding) {
        return Wording.valueAndLimit(finding, new Show(UnitSystem.SI));
    }

    /** IEC 61340-4-4 and the hybrid mixtures of NFPA 68 and EN 14491, from memory: values of a dust alone are not those of its mixture with vapour. */
    @ParameterizedTest
    @EnumSource(
            value = FindingCode.class,
            names = {"VENT_AREA", "INLET_ISOLATION", "VALVE_ISOLATION", "CONE_DISCHARGE", "FILTER_STATIC"})
    void beside_vapour_nothing_holds_by_the_dust_alone(FindingCode code) {
        assertThat(worst(study(bakery), code).holds()).as("without vapour").isTrue();
        Finding beside = worst(study(with(bakery, "vapour: none", "vapour: group IIA or IIB")), code);
        assertThat(beside.unjudged()).isTrue();
        assertThat(told(beside)).contains("group IIA or IIB", "Have the mixture tested");
    }

    @Test
    void a_vent_that_is_open_only_for_want_of_a_test_says_which() {
        String untested = with(bakery, "explodes like: \"Starch, wheat\", ", "");
        Finding vent = worst(study(untested), FindingCode.VENT_AREA);
        assertThat(vent.unjudged()).isTrue();
        assertThat(told(vent)).contains("tested and enter \"kst\" and \"pmax\"").doesNotContain("with this duct");
    }

    @Test
    void a_vent_that_opens_when_the_vessel_has_given_way_fails_whatever_its_area() {
        Finding vent = worst(study(with(bakery, "opens: 0.1 bar", "opens: 0.5 bar")), FindingCode.VENT_AREA);
        assertThat(vent.fails()).isTrue();
        assertThat(told(vent)).contains("open above the pressure the vessel stands");
    }

    @Test
    void a_panel_that_nobody_describes_is_not_known_where_dust_burns() {
        String without = bakery.replaceFirst("(?m)^panel:(\n +.*)+\n", "");
        assertThat(without).isNotEqualTo(bakery);
        Finding panel = worst(study(without), FindingCode.PANEL_AREA);
        assertThat(panel.unjudged()).isTrue();
        assertThat(told(panel)).contains("No panel is described", "classified by");
    }

    @Test
    void a_bag_that_must_not_meet_a_dust_is_told_with_dust_energy_and_type() {
        Finding bag = worst(study(with(bakery, "type: C\n", "type: A\n")), FindingCode.BAG_STATIC);
        assertThat(bag.fails()).isTrue();
        assertThat(told(bag)).contains("Wheat flour", " mJ", "with type A");
    }
}
