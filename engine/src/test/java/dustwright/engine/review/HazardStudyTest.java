package dustwright.engine.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dustwright.engine.finding.Derivation;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.hazard.Listing;
import dustwright.engine.hazard.Protection;
import dustwright.engine.interlock.DefaultSequence;
import dustwright.engine.interlock.Options;
import dustwright.engine.interlock.Sequence;
import dustwright.engine.network.PlantSketch;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.Count;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.receiver.Receiver;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Lines follow from what the plant has, what its checks say and what its sequence holds. */
class HazardStudyTest {
    private static final Plant PLANT = new PlantSketch()
            .tube("T2", 0.0475, 4.5e-5)
            .dust("flour", 60e-6, 1450)
            .points("J")
            .inlet("A", "flour", 0.01)
            .inlet("B", "flour", 0.01)
            .run("RA", "A", "J", "T2", 20, 1)
            .run("RB", "B", "J", "T2", 12, 1)
            .run("M", "J", "REC", "T2", 15, 1)
            .station("REC")
            .cloth(8, 40_000)
            .relief(8.5, 11, 0.2)
            .lobe("P", 0.2)
            .and()
            .plant();

    private static Deviation line(List<Deviation> lines, String id) {
        return lines.stream()
                .filter(l -> l.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no line " + id + " in "
                        + lines.stream().map(Deviation::id).toList()));
    }

    private static Finding counted(FindingCode code, int found) {
        return Finding.of(
                code,
                new Place(Place.Kind.RECEIVER, "REC"),
                "any set",
                Side.AT_MOST,
                new Count(found),
                new Count(0),
                new Derivation(List.of(), Source.entered()));
    }

    @Test
    void parts_that_are_not_drawn_give_no_line_and_parts_that_are_missing_are_said() {
        List<Deviation> lines = HazardStudy.lines(PLANT, List.of(), Map.of());
        assertThat(lines).extracting(Deviation::id).doesNotHaveDuplicates().noneMatch(id -> id.startsWith("REC valve"));
        assertThat(line(lines, "REC receiver too-deep").safeguards()).contains("vacuum relief valve is drawn");
        assertThat(line(lines, "REC filter torn").missing()).contains("no safety filter before the producers");
        assertThat(line(lines, "REC receiver too-full").missing()).contains("no level probe is drawn");
    }

    @Test
    void a_check_that_holds_is_a_safeguard_and_one_that_fails_or_is_open_is_missing() {
        Deviation holds = line(
                HazardStudy.lines(PLANT, List.of(counted(FindingCode.INLET_ISOLATION, 0)), Map.of()),
                "REC main flame-back");
        assertThat(holds.safeguards()).contains("check holds: Isolation on the main");
        Deviation fails = line(
                HazardStudy.lines(PLANT, List.of(counted(FindingCode.INLET_ISOLATION, 1)), Map.of()),
                "REC main flame-back");
        assertThat(fails.safeguards()).doesNotContain("check holds: Isolation on the main");
        assertThat(fails.missing())
                .anySatisfy(m -> assertThat(m)
                        .startsWith("check fails: Isolation on the main, receiver REC")
                        .contains("people who hold hoses"));
        Finding open = Finding.unjudged(
                FindingCode.INLET_ISOLATION,
                new Place(Place.Kind.RECEIVER, "REC"),
                "any set",
                Side.AT_MOST,
                new Count(0),
                Source.entered(),
                "Enter it.");
        assertThat(line(HazardStudy.lines(PLANT, List.of(open), Map.of()), "REC main flame-back")
                        .missing())
                .contains("not known: Isolation on the main, receiver REC. Enter it.");
    }

    @Test
    void interlocks_are_those_of_the_sequence_with_what_they_demand() {
        List<Deviation> lines = HazardStudy.lines(PLANT, List.of(), Map.of());
        // nobody has said that the controller on site does as the sequence this program begins with
        assertThat(line(lines, "REC control power").missing())
                .anySatisfy(s -> assertThat(s)
                        .startsWith(
                                "to be confirmed for the controller on site: interlock EMERGENCY STOP of the default sequence: ")
                        .contains(" off"));
        Map<String, Controlled> own = Map.of(
                "REC",
                new Controlled(
                        DefaultSequence.of("own", Options.of(PLANT.stations().get(0), Set.of())), "line-3.yaml"));
        Deviation confirmed = line(HazardStudy.lines(PLANT, List.of(), own), "REC control power");
        assertThat(confirmed.safeguards())
                .anySatisfy(s -> assertThat(s)
                        .startsWith("interlock EMERGENCY STOP of line-3.yaml: ")
                        .contains(" off"));
        // no isolation valve is stated, so the sequence has no signal of one
        assertThat(line(lines, "REC main flame-back").missing())
                .contains(
                        "no isolation valve reports to the control whether it is ready (looked for in the default sequence)");
    }

    /** The default sequence is the one the program writes for this station: what stands only in the plant file does not change it. */
    @Test
    void an_isolation_device_that_is_stated_reports_to_no_sequence_that_does_not_ask_it() {
        Protection none = Protection.UNKNOWN;
        Protection isolated = new Protection(
                none.method(),
                none.standing(),
                none.volume(),
                none.slenderness(),
                none.reduced(),
                none.opens(),
                none.vent(),
                Optional.of(Protection.Isolation.FLAP_VALVE),
                none.mains(),
                none.returnIsolation(),
                none.exhaust(),
                none.watched(),
                none.valveIsolates(),
                none.containerStands(),
                none.producers(),
                Listing.Devices.UNKNOWN);
        Plant plant = new PlantSketch()
                .tube("T2", 0.0475, 4.5e-5)
                .dust("flour", 60e-6, 1450)
                .inlet("A", "flour", 0.01)
                .run("RA", "A", "REC", "T2", 20, 1)
                .station("REC")
                .cloth(8, 40_000)
                .receiver(new Receiver(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        new Ratio(0),
                        isolated))
                .lobe("P", 0.2)
                .and()
                .plant();
        assertThat(line(HazardStudy.lines(plant, List.of(), Map.of()), "REC main flame-back")
                        .missing())
                .contains(
                        "no isolation valve reports to the control whether it is ready (looked for in the default sequence)");
    }

    @Test
    void an_interlock_that_waits_for_a_detector_guards_only_once_the_detector_is_shown() {
        Deviation lit = line(HazardStudy.lines(PLANT, List.of(), Map.of()), "REC receiver ignition");
        assertThat(lit.safeguards()).noneMatch(s -> s.contains("FIRE"));
        assertThat(lit.missing())
                .anySatisfy(m -> assertThat(m).startsWith("to be shown on site: the detector of interlock FIRE"));
    }

    @Test
    void a_matrix_that_looks_odd_is_told_and_the_one_to_begin_with_does_not() {
        assertThat(RiskMatrix.TO_BEGIN_WITH.odd()).isEmpty();
        RiskMatrix flat = new RiskMatrix(
                List.of("hurt", "killed"),
                List.of("rare", "often"),
                Map.of("hurt", List.of("low", "high"), "killed", List.of("low", "low")),
                List.of("low", "high"));
        assertThat(flat.odd())
                .containsExactly(
                        "The risk of \"killed\" is the same at every likelihood.",
                        "\"low\" stands below \"high\" at hurt, rare to hurt, often, and above it at hurt, often to killed, often: one"
                                + " of the two is the wrong way round.",
                        "Every risk of the matrix is accepted: no row can ask for an action.");
    }

    @Test
    void a_worse_case_that_is_accepted_where_the_milder_is_not_is_told() {
        RiskMatrix turned = new RiskMatrix(
                List.of("hurt", "killed"),
                List.of("rare", "often"),
                Map.of("hurt", List.of("high", "low"), "killed", List.of("high", "low")),
                List.of("low"));
        assertThat(turned.odd())
                .contains(
                        "\"low\" is accepted and \"high\" is not, though it is the worse case: hurt, rare to hurt, often.");
    }

    /** An alarm stops nothing, and a drop over the safety filter rises once that has loaded. */
    @Test
    void alarms_and_what_tells_late_are_no_safeguards() {
        Map<String, Controlled> own = Map.of(
                "REC",
                new Controlled(
                        DefaultSequence.of("own", Options.of(PLANT.stations().get(0), Set.of())), "line-3.yaml"));
        List<Deviation> lines = HazardStudy.lines(PLANT, List.of(), own);
        assertThat(line(lines, "REC main settles").missing())
                .anyMatch(m -> m.startsWith("tells, and stops nothing: alarm "));
        assertThat(lines)
                .flatExtracting(Deviation::safeguards)
                .noneMatch(s -> String.valueOf(s).contains("alarm"));
        Deviation torn = line(lines, "REC filter torn");
        assertThat(torn.safeguards()).noneMatch(s -> s.contains("line-3.yaml"));
        assertThat(torn.missing()).contains("nothing is stated to tell dust in the exhaust air at once");
    }

    @Test
    void a_sequence_of_the_plant_itself_goes_before_the_default_and_is_named() {
        Sequence with = DefaultSequence.of("own", Options.of(PLANT.stations().get(0), Set.of(Options.Extra.ISOLATION)));
        List<Deviation> lines = HazardStudy.lines(PLANT, List.of(), Map.of("REC", new Controlled(with, "line-3.yaml")));
        assertThat(line(lines, "REC main flame-back").safeguards())
                .anySatisfy(s -> assertThat(s).startsWith("interlock ").contains(" of line-3.yaml: "));
        assertThat(lines)
                .flatExtracting(Deviation::safeguards, Deviation::missing)
                .map(String::valueOf)
                .noneMatch(s -> s.contains(Controlled.DEFAULT));
    }

    @Test
    void a_matrix_with_a_gap_is_refused_and_a_full_one_answers() {
        assertThatThrownBy(() ->
                        new RiskMatrix(List.of("a", "b"), List.of("x", "y"), Map.of("a", List.of("1", "2")), List.of()))
                .hasMessageContaining("one row for each severity");
        assertThat(RiskMatrix.TO_BEGIN_WITH.risk("several people killed", "every year"))
                .isEqualTo("high");
        assertThatThrownBy(() -> RiskMatrix.TO_BEGIN_WITH.risk("nuisance", "often"))
                .hasMessageContaining("not in the matrix");
    }

    /** Graver or likelier is never less of a risk in the matrix a study begins with. */
    @Test
    void the_matrix_to_begin_with_rises_in_both_directions() {
        List<String> order = List.of("low", "medium", "high");
        RiskMatrix m = RiskMatrix.TO_BEGIN_WITH;
        for (int s = 0; s < m.severities().size(); s++) {
            for (int l = 0; l < m.likelihoods().size(); l++) {
                int here = order.indexOf(
                        m.risk(m.severities().get(s), m.likelihoods().get(l)));
                if (s > 0) {
                    assertThat(here)
                            .isGreaterThanOrEqualTo(order.indexOf(m.risk(
                                    m.severities().get(s - 1), m.likelihoods().get(l))));
                }
                if (l > 0) {
                    assertThat(here)
                            .isGreaterThanOrEqualTo(order.indexOf(m.risk(
                                    m.severities().get(s), m.likelihoods().get(l - 1))));
                }
            }
        }
    }
}
