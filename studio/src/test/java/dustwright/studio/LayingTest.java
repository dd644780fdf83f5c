package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dustwright.documents.drawing.Layout;
import dustwright.documents.drawing.SheetScale;
import dustwright.engine.plant.Plant;
import dustwright.engine.tubing.Position;
import dustwright.engine.tubing.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Drawing by hand: tubing stays square, drops enter from above at 45°, and the text keeps every byte that does not say a moved place. */
class LayingTest {
    @SuppressWarnings("NullAway.Init")
    @TempDir
    private Path folder;

    @SuppressWarnings("NullAway.Init")
    private String before;

    @SuppressWarnings("NullAway.Init")
    private Pencil pencil;

    @SuppressWarnings("NullAway.Init")
    private Laying laying;

    @BeforeEach
    void bakery() throws IOException {
        before = Files.readString(Plants.copy("bakery", folder));
        pencil = new Pencil(before, folder);
        laying = new Laying(pencil);
    }

    private Position at(String kind, String id, int corner) {
        return Laying.node(pencil.plant(), kind, id, corner).at();
    }

    private void move(String kind, String id, double dx, double dy, double dz) {
        laying.move(List.of(Laying.node(pencil.plant(), kind, id, 0)), dx, dy, dz);
    }

    private static void same(Position at, double x, double y, double z) {
        assertThat(at.distanceTo(new Position(x, y, z)).metres())
                .as(at.toString())
                .isCloseTo(0, within(1e-9));
    }

    /** A1 stands at 4.5, 0; its drop goes up, over to 4.5, 1.4 and into JS1 at 5.1, 2 of the header along x. */
    @Test
    void an_inlet_moved_along_its_header_takes_riser_entry_and_junction_along() {
        move("inlet", "A1", 0.4, 0, 0);
        same(at("inlet", "A1", 0), 4.9, 0, 1);
        same(at("corner", "DA1", 0), 4.9, 0, 6.3);
        same(at("corner", "DA1", 1), 4.9, 1.4, 6.3);
        same(at("point", "JS1", 0), 5.5, 2, 6);
    }

    /** HS3 is straight from JS3 to JS4: the parts are of its size, and the new point is moved like any other. */
    @Test
    void a_straight_run_is_split_where_it_is_clicked() {
        SheetScale sheet = SheetScale.of(Layout.plan(pencil.plant()));
        Position from = at("point", "JS3", 0);
        Position to = at("point", "JS4", 0);
        double x = from.x_m() + 0.3 * (to.x_m() - from.x_m());
        Position clicked = new Position(x, from.y_m(), from.z_m());
        String point = laying.split("HS3", sheet.at(clicked).plus(0, 3), sheet);
        assertThat(at("point", point, 0).distanceTo(clicked).metres()).isLessThan(0.001);
        assertThat(pencil.values("runs.HS3b"))
                .containsEntry("from", point)
                .containsEntry("to", "JS4")
                .containsEntry("tube", "T3");
        assertThat(pencil.values("runs.HS3")).containsEntry("to", point).containsEntry("tube", "T3");
        move("point", point, 0, 0, 0.4);
        assertThat(at("point", point, 0).z_m()).isCloseTo(from.z_m() + 0.4, within(1e-9));
    }

    @Test
    void a_run_clicked_at_its_bend_is_split_beside_it() {
        Plant plant = pencil.plant();
        SheetScale sheet = SheetScale.of(Layout.isometric(plant));
        Position bend = at("corner", "DA1", 0);
        String point = laying.split("DA1", sheet.at(bend), sheet);
        assertThat(at("point", point, 0).distanceTo(bend).metres()).isGreaterThan(0.1);
        assertThat(pencil.plant().runs()).hasSize(plant.runs().size() + 1);
    }

    @Test
    void an_inlet_moved_away_from_its_header_lengthens_the_drop_only() {
        move("inlet", "A1", 0, -2, 0.25);
        same(at("inlet", "A1", 0), 4.5, -2, 1.25);
        same(at("corner", "DA1", 0), 4.5, -2, 6.3);
        same(at("corner", "DA1", 1), 4.5, 1.4, 6.3);
        same(at("point", "JS1", 0), 5.1, 2, 6);
    }

    @Test
    void a_junction_does_not_pass_the_next_one_and_no_inlet_is_pulled_off_its_place() {
        move("inlet", "A1", 5, 0, 0);
        same(at("point", "JS1", 0), 5.1, 2, 6);
        move("point", "JS3", 0.3, 0, 0);
        same(at("point", "JS3", 0), 14.4, 2, 6);
        same(at("inlet", "A2", 0), 13.5, 0, 1);
        same(at("corner", "DA2", 1), 13.5, 1.4, 6.3);
    }

    @Test
    void only_the_moved_coordinates_change_in_the_text() {
        move("inlet", "A1", 0, -2, 0);
        assertThat(pencil.text())
                .isEqualTo(before.replace("A1: {at: [ 4.5, 0, 1]", "A1: {at: [ 4.5, -2, 1]")
                        .replace("via: [[4.5, 0, 6.3], [4.5, 1.4, 6.3]]", "via: [[4.5, -2, 6.3], [4.5, 1.4, 6.3]]"));
    }

    @Test
    void coordinates_keep_the_unit_they_are_written_in() {
        String feet = before.replace("A1: {at: [ 4.5, 0, 1]", "A1: {at: [14.764 ft, 0, 1000 mm]");
        Pencil other = new Pencil(feet, folder);
        new Laying(other).move(List.of(Laying.node(other.plant(), "inlet", "A1", 0)), 0.3048, 0, 0.001);
        assertThat(other.text()).contains("A1: {at: [15.764 ft, 0, 1001 mm]");
    }

    @Test
    void a_new_inlet_goes_up_over_and_into_the_nearest_header_from_above_with_the_stream() {
        String id = laying.inlet("A4", new Position(9, 0, 1));
        assertThat(id).isEqualTo("A5");
        Plant plant = pencil.plant();
        Run drop = plant.runs().stream()
                .filter(r -> r.from().equals("A5"))
                .findFirst()
                .orElseThrow();
        assertThat(drop.id()).isEqualTo("DA5");
        assertThat(drop.wye().orElseThrow().degrees()).isCloseTo(45, within(1e-9));
        List<Position> corners = ((Run.Route.Drawn) drop.route()).corners();
        same(corners.get(1), 9, 0, 6.3);
        same(corners.get(2), 9, 1.4, 6.3);
        same(corners.get(3), 9.6, 2, 6);
        Run into = plant.runs().stream()
                .filter(r -> r.to().equals(drop.to()) && !r.equals(drop))
                .findFirst()
                .orElseThrow();
        Run on = plant.runs().stream()
                .filter(r -> r.from().equals(drop.to()))
                .findFirst()
                .orElseThrow();
        assertThat(into.wye()).isEmpty();
        assertThat(on.tube()).isEqualTo(into.tube());
    }

    @Test
    void an_inlet_laid_and_taken_away_leaves_the_plant_as_it_was() {
        Plant first = pencil.plant();
        String id = laying.inlet("A4", new Position(9, 0, 1));
        laying.takeAway(id);
        Plant last = pencil.plant();
        assertThat(last.runs()).isEqualTo(first.runs());
        assertThat(last.points()).isEqualTo(first.points());
        assertThat(last.inlets()).isEqualTo(first.inlets());
    }

    @Test
    void a_run_split_and_joined_again_is_the_run_it_was() {
        Plant first = pencil.plant();
        String point = laying.split("DA2");
        assertThat(pencil.plant().runs()).hasSize(first.runs().size() + 1);
        laying.join(point);
        assertThat(pencil.plant().runs()).isEqualTo(first.runs());
    }

    @Test
    void a_tube_laid_into_a_run_joins_it_with_the_stream() {
        String run = laying.tube("JC1", List.of(new Position(9, 12, 5.5)), "HS3", "T3");
        Run laid = pencil.plant().run(run);
        assertThat(laid.wye()).isPresent();
        assertThat(pencil.plant().runs().stream().filter(r -> r.to().equals(laid.to())))
                .hasSize(2);
    }

    @Test
    void a_receiver_set_at_the_end_of_an_inlets_new_tube_takes_the_place_of_its_drop() {
        Plant first = pencil.plant();
        String id = laying.station(
                "A1", List.of(new Position(4.5, 0, 6), new Position(-4, 0, 6), new Position(-4, 0, 2)), "", "T2");
        Plant last = pencil.plant();
        assertThat(last.stations()).hasSize(first.stations().size() + 1);
        assertThat(last.runs().stream().filter(r -> r.from().equals("A1")))
                .singleElement()
                .satisfies(run -> assertThat(run.to()).isEqualTo(id));
        assertThat(last.runs().stream().map(Run::id)).doesNotContain("DA1");
        assertThat(last.stations().stream().flatMap(s -> s.producers().stream()).map(p -> p.id()))
                .doesNotHaveDuplicates();
        assertThat(last.stations().get(last.stations().size() - 1).filter())
                .isEqualTo(first.stations().get(0).filter());
    }

    @Test
    void a_tube_laid_from_an_inlet_takes_the_place_of_its_tube_and_one_taken_away_leaves_no_loose_point() {
        Plant first = pencil.plant();
        String spare = laying.tube("JC1", List.of(new Position(9, 12, 5.5)), "HS3", "T3");
        laying.takeTubeAway(spare);
        assertThat(pencil.plant().runs()).isEqualTo(first.runs());
        laying.tube("A2", List.of(new Position(13.5, 0, 6.3)), "HS3", "T2");
        Plant last = pencil.plant();
        assertThat(last.runs().stream().filter(r -> r.from().equals("A2"))).hasSize(1);
        assertThat(last.runs().stream().map(Run::id)).doesNotContain("DA2");
        assertThat(last.points()).hasSameSizeAs(first.points());
    }

    @Test
    void the_panel_stands_where_it_is_set_and_is_moved_like_any_place() {
        laying.panel(new Position(1, 2, 0));
        move("panel", "", 0.5, 0, 0);
        same(at("panel", "", 0), 1.5, 2, 0);
        laying.panel(new Position(3, 3, 0));
        same(at("panel", "", 0), 3, 3, 0);
    }

    @Test
    void what_cannot_be_drawn_is_said() {
        assertThatThrownBy(() -> laying.join("JS1")).hasMessageContaining("two sizes: T2 and T25");
        assertThatThrownBy(() -> laying.join("JS2")).hasMessageContaining("where one run comes in and one goes on");
        assertThatThrownBy(() -> laying.inlet("Z9", new Position(1, 1, 1))).hasMessageContaining("no inlet Z9");
        assertThatThrownBy(() -> move("roof", "A1", 1, 0, 0)).hasMessageContaining("roof");
        assertThatThrownBy(() -> laying.split("nothing")).hasMessageContaining("nothing");
    }

    /** Wherever along the south wall it is asked: drops of a column line stand in the way, and bends leave no room before them. */
    @Test
    void a_new_inlet_finds_a_place_where_the_bends_of_the_header_fit() throws IOException {
        String one = Files.readString(Plants.copy("bakery-one-main", Files.createDirectory(folder.resolve("one"))));
        for (double x : new double[] {2.2, 4.5, 9, 13, 18, 22.5, 27, 30.5, 34.2, 36}) {
            Pencil fresh = new Pencil(one, folder);
            String id = new Laying(fresh).inlet("A2", new Position(x, 0, 1));
            Run drop = fresh.plant().runs().stream()
                    .filter(r -> r.from().equals(id))
                    .findFirst()
                    .orElseThrow();
            Run into = fresh.plant().runs().stream()
                    .filter(r -> r.from().equals(drop.to()))
                    .findFirst()
                    .orElseThrow();
            assertThat(into.tube()).as("the main, from %s", x).isEqualTo("T4");
        }
    }

    /** A riser of 0.2 m to 0.3 m above the only headers, at 4 m, has no room for a bend of 300 mm. */
    @Test
    void what_cannot_be_laid_is_said_of_the_inlet_asked_for_and_names_no_line_of_a_text_nobody_has() {
        Pencil plain = new Pencil(Studio.starter(), folder);
        assertThatThrownBy(() -> new Laying(plain).inlet("A1", new Position(9, 2, 4.1)))
                .isInstanceOf(Pencil.Cannot.class)
                .hasMessageStartingWith(
                        "an inlet here finds no header near it that its drop could enter. Nearest is H1; there: ")
                .hasMessageContaining("bends")
                .hasMessageNotContaining("line ");
        assertThat(plain.text()).isEqualTo(Studio.starter());
    }
}
