package dustwright.documents;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.documents.drawing.Layout;
import dustwright.documents.drawing.Lettering;
import dustwright.documents.drawing.MarginClass;
import dustwright.documents.drawing.PlantDrawing;
import dustwright.documents.drawing.PlantViews;
import dustwright.documents.drawing.ProfileChart;
import dustwright.documents.drawing.Scene;
import dustwright.documents.drawing.Shape;
import dustwright.documents.drawing.Sheet;
import dustwright.documents.drawing.Spot;
import dustwright.documents.report.Digest;
import dustwright.documents.writing.Show;
import dustwright.engine.PressureProfile;
import dustwright.engine.StateAnswer;
import dustwright.engine.Study;
import dustwright.engine.finding.Side;
import dustwright.engine.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class DrawingTest {
    private static final Show SHOW = new Show(UnitSystem.US);

    static Stream<Study> plants() {
        return Stream.of(
                InventedStudy.of(20),
                InventedStudy.of(120),
                InventedStudy.withoutPlaces(20),
                InventedStudy.withoutPlaces(120),
                InventedStudy.named(40, "PACKING-HALL-NORTH-", "long names"));
    }

    private static Sheet drawn(Study study, Layout layout) {
        StateAnswer answer = new Digest(study).worstState().orElseThrow();
        return PlantDrawing.of(PlantViews.state(
                study.plant(),
                Digest.duty(answer).orElseThrow(),
                answer.findings(),
                layout,
                new Digest(study).letters(),
                SHOW));
    }

    private static List<Sheet> drawings(Study study) {
        List<Sheet> sheets = new ArrayList<>(List.of(drawn(study, Layout.plan(study.plant()))));
        sheets.add(PlantDrawing.of(PlantViews.oneUser(study, Layout.plan(study.plant()), Map.of(), SHOW)));
        if (Layout.placed(study.plant())) {
            sheets.add(drawn(study, Layout.isometric(study.plant())));
        }
        return sheets;
    }

    private static List<Shape> layer(Scene scene, String name) {
        return scene.layers().stream()
                .filter(l -> l.name().equals(name))
                .flatMap(l -> l.shapes().stream())
                .toList();
    }

    /** Box of a text: left, top, right, bottom; two tenths of a unit are given for rounding. */
    private static double[] box(Shape.Text text) {
        double width = Lettering.width(text.text(), text.size(), text.bold());
        double left = text.at().x() + 0.2;
        return new double[] {
            left,
            text.at().y() - text.size() * 0.7,
            left + width - 0.4,
            text.at().y() + text.size() * 0.1
        };
    }

    private static List<Shape.Text> labels(Sheet sheet) {
        return layer(sheet.scene(), "labels").stream()
                .filter(Shape.Text.class::isInstance)
                .map(Shape.Text.class::cast)
                .toList();
    }

    /** Names along a path of three hundred pieces are whole and apart, on paper and on a page. */
    @Test
    void of_many_pieces_along_a_path_those_are_named_that_find_room() {
        Study study = InventedStudy.of(20);
        PressureProfile few = PressureProfile.of(
                        study.plant(), new Digest(study).worstState().orElseThrow())
                .get(0);
        List<PressureProfile.Stretch> pieces = new ArrayList<>();
        for (int n = 0; n < 300; n++) {
            PressureProfile.Stretch one =
                    few.stretches().get(n % few.stretches().size());
            pieces.add(new PressureProfile.Stretch(
                    "HALL-" + n,
                    one.length(),
                    one.vacuumFrom(),
                    one.vacuumTo(),
                    one.velocityFrom(),
                    one.velocityTo(),
                    one.least(),
                    one.most()));
        }
        PressureProfile many = new PressureProfile(few.state(), few.inlet(), pieces);
        for (Scene scene : List.of(ProfileChart.of(many, SHOW), ProfileChart.live(many, SHOW))) {
            List<Shape.Text> names = layer(scene, "profile").stream()
                    .filter(Shape.Text.class::isInstance)
                    .map(Shape.Text.class::cast)
                    .filter(t -> t.text().startsWith("HALL") || t.text().contains("…"))
                    .toList();
            assertThat(names).hasSizeBetween(10, 100).noneMatch(t -> t.text().contains("…"));
            for (int i = 0; i < names.size(); i++) {
                for (int k = 0; k < i; k++) {
                    Shape.Text a = names.get(i);
                    Shape.Text b = names.get(k);
                    double wide =
                            (Lettering.width(a.text(), a.size(), false) + Lettering.width(b.text(), b.size(), false))
                                    / 2;
                    assertThat(Math.abs(a.at().x() - b.at().x()) >= wide
                                    || Math.abs(a.at().y() - b.at().y()) >= a.size() * 0.9)
                            .as("%s and %s", a.text(), b.text())
                            .isTrue();
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("plants")
    void no_label_lies_on_another(Study study) {
        for (Sheet sheet : drawings(study)) {
            List<Shape.Text> labels = labels(sheet);
            assertThat(labels).hasSizeGreaterThan(5);
            for (int i = 0; i < labels.size(); i++) {
                for (int k = 0; k < i; k++) {
                    double[] a = box(labels.get(i));
                    double[] b = box(labels.get(k));
                    boolean apart = a[0] >= b[2] || b[0] >= a[2] || a[1] >= b[3] || b[1] >= a[3];
                    assertThat(apart)
                            .as("%s and %s", labels.get(i).text(), labels.get(k).text())
                            .isTrue();
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("plants")
    void no_label_lies_on_tubing_or_leaves_the_sheet(Study study) {
        for (Sheet sheet : drawings(study)) {
            for (Shape.Text label : labels(sheet)) {
                double[] box = box(label);
                assertThat(box[0]).isGreaterThanOrEqualTo(0);
                assertThat(box[2]).isLessThanOrEqualTo(Scene.PAGE_WIDTH);
                for (Shape shape : layer(sheet.scene(), "tubing")) {
                    List<Spot> points = ((Shape.Path) shape).points();
                    for (int i = 1; i < points.size(); i++) {
                        assertThat(passes(points.get(i - 1), points.get(i), box))
                                .as(label.text())
                                .isFalse();
                    }
                }
            }
        }
    }

    /** Walks along the line in steps finer than lettering. */
    private static boolean passes(Spot from, Spot to, double[] box) {
        int steps = 1 + (int) (Math.hypot(to.x() - from.x(), to.y() - from.y()) / 0.5);
        for (int s = 0; s <= steps; s++) {
            double x = from.x() + (to.x() - from.x()) * s / steps;
            double y = from.y() + (to.y() - from.y()) * s / steps;
            if (x > box[0] && x < box[2] && y > box[1] && y < box[3]) {
                return true;
            }
        }
        return false;
    }

    @ParameterizedTest
    @MethodSource("plants")
    void every_run_is_drawn_once_and_inside_the_sheet(Study study) {
        for (Sheet sheet : drawings(study)) {
            List<Shape> tubing = layer(sheet.scene(), "tubing");
            assertThat(tubing).hasSameSizeAs(study.plant().runs());
            assertThat(tubing)
                    .allSatisfy(shape -> assertThat(((Shape.Path) shape).points())
                            .allSatisfy(p -> assertThat(p.x()).isBetween(0.0, Scene.PAGE_WIDTH)));
            assertThat(sheet.scene().height()).isLessThan(980);
        }
    }

    @Test
    void a_small_plant_is_drawn_as_it_was_accepted() {
        Study study = InventedStudy.of(6);
        Golden.check(
                "plan-6.svg", drawn(study, Layout.plan(study.plant())).scene().svgFile());
        Study scheme = InventedStudy.withoutPlaces(6);
        Golden.check(
                "scheme-6.svg",
                drawn(scheme, Layout.plan(scheme.plant())).scene().svgFile());
    }

    @Test
    void margin_classes_hold_their_lower_end() {
        assertThat(MarginClass.of(-0.2501)).isEqualTo(MarginClass.FAR);
        assertThat(MarginClass.of(-0.25)).isEqualTo(MarginClass.SHORT);
        assertThat(MarginClass.of(-0.0001)).isEqualTo(MarginClass.SHORT);
        assertThat(MarginClass.of(0)).isEqualTo(MarginClass.THIN);
        assertThat(MarginClass.of(0.10)).isEqualTo(MarginClass.FAIR);
        assertThat(MarginClass.of(0.25)).isEqualTo(MarginClass.AMPLE);
    }

    @Test
    void a_printed_margin_never_contradicts_its_class() {
        assertThat(Show.margin(-0.0004)).isEqualTo("−0.04\u00A0%");
        assertThat(Show.margin(-0.254)).isEqualTo("−25.4\u00A0%");
        assertThat(Show.margin(0.0996)).isEqualTo("+9.96\u00A0%");
        assertThat(Show.margin(0)).isEqualTo("0\u00A0%");
        assertThat(Show.margin(-1e-12)).isEqualTo("just below 0\u00A0%");
    }

    /** Class shows without colour: weight or dash differs, and so does the sign. */
    @Test
    void classes_differ_without_hue() {
        List<MarginClass> five =
                List.of(MarginClass.FAR, MarginClass.SHORT, MarginClass.THIN, MarginClass.FAIR, MarginClass.AMPLE);
        for (int i = 1; i < five.size(); i++) {
            assertThat(five.get(i).weight()).isLessThan(five.get(i - 1).weight());
            assertThat(five.get(i).glyph(Side.AT_LEAST))
                    .isNotEqualTo(five.get(i - 1).glyph(Side.AT_LEAST));
        }
        assertThat(MarginClass.SHORT.glyph(Side.AT_LEAST)).isNotEqualTo(MarginClass.SHORT.glyph(Side.AT_MOST));
    }

    @Test
    void a_long_id_keeps_both_its_ends() {
        assertThat(Lettering.fitted("PACKING-HALL-NORTH-A17", 10, 60))
                .startsWith("PACK")
                .endsWith("A17")
                .contains("…");
        assertThat(Lettering.fitted("A17", 10, 60)).isEqualTo("A17");
    }
}
