package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.FilePayload;
import dustwright.engine.quantity.Dimension;
import dustwright.engine.quantity.QuantityText;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Drawing in a real Chromium: by mouse, by typed distances, by keyboard. */
class HandPageTest extends InChromium {
    HandPageTest() {
        super("bakery");
    }

    private Page page(String address) {
        return visit(1366, 768, address);
    }

    private static double[] middle(Page page, String inlet) {
        BoundingBox box = page.locator("[data-inlet=" + inlet + "] .catch").boundingBox();
        return new double[] {box.x + box.width / 2, box.y + box.height / 2};
    }

    @Test
    void an_inlet_dragged_takes_its_drop_along_and_back_undoes_it() {
        try (Page page = page("#open=A1&units=si")) {
            String before = text(page);
            page.getByText("Move", new Page.GetByTextOptions().setExact(true))
                    .first()
                    .click();
            page.waitForSelector(".hand .grip");
            double[] at = middle(page, "A1");
            page.mouse().move(at[0], at[1]);
            page.mouse().down();
            page.mouse().move(at[0], at[1] + 30);
            page.mouse().move(at[0], at[1] + 40);
            picture(page, "hand-drag-1366");
            page.mouse().up();
            kept(page, 2);
            assertThat(text(page)).containsPattern(Pattern.compile("A1: \\{at: \\[ 4\\.5, -[0-9.]+, 1\\]"));
            page.locator("#back").click();
            kept(page, 1);
            assertThat(text(page)).isEqualTo(before);
        }
    }

    @Test
    void a_new_inlet_is_laid_with_its_drop_by_one_click_and_taken_away_again() {
        try (Page page = page("#open=A1&units=si&inlet=A4")) {
            page.keyboard().press("n");
            double[] left = middle(page, "A1");
            double[] right = middle(page, "A2");
            page.mouse().click((left[0] + right[0]) / 2, left[1]);
            kept(page, 2);
            PlaywrightAssertions.assertThat(page.locator("#piece h2")).hasText("Inlet A5");
            PlaywrightAssertions.assertThat(page.locator("[data-inlet=A5]")).hasCount(1);
            PlaywrightAssertions.assertThat(page.locator("[data-run=DA5]")).hasCount(1);
            picture(page, "hand-inlet-1366");
            page.keyboard().press("g");
            page.waitForSelector(".hand .grip");
            page.keyboard().press("Shift+ArrowDown");
            kept(page, 3);
            page.keyboard().press("Delete");
            kept(page, 4);
            PlaywrightAssertions.assertThat(page.locator("[data-inlet=A5]")).hasCount(0);
        }
    }

    @Test
    void a_bay_taken_with_a_box_is_copied_by_a_typed_distance() {
        try (Page page = page("#open=A1&units=si")) {
            page.keyboard().press("g");
            page.waitForSelector(".hand .grip");
            double[] a = middle(page, "A1");
            page.keyboard().down("Shift");
            page.mouse().click(a[0], a[1]);
            double[] b = middle(page, "A2");
            page.mouse().click(b[0], b[1]);
            page.keyboard().up("Shift");
            assertThat(page.locator("#hand .cap").textContent()).isEqualTo("inlet A1, inlet A2");
            serious(page, "two inlets taken");
            shows(page, "#hand .acts", "east, m");
            page.getByLabel("By how much east").fill("3");
            shows(page, "#hand .also", "east 9.84 ft · 3.00 m");
            page.locator("#hand").getByText("Copy").click();
            kept(page, 2);
            PlaywrightAssertions.assertThat(page.locator("[data-inlet=A5], [data-inlet=A6]"))
                    .hasCount(2);
            splitsWhereItIsClicked(page);
        }
    }

    private static void splitsWhereItIsClicked(Page page) {
        page.keyboard().press("l");
        List<?> at = (List<?>) page.evaluate("""
                () => {
                  const path = document.querySelector('[data-run=HS8] path');
                  const {x, y} = path.getPointAtLength(path.getTotalLength() / 3);
                  const on = new DOMPoint(x, y).matrixTransform(path.getScreenCTM());
                  return [on.x, on.y];
                }""");
        page.mouse().click(((Number) at.get(0)).doubleValue(), ((Number) at.get(1)).doubleValue());
        PlaywrightAssertions.assertThat(page.locator("#split")).hasText("Split here");
        page.locator("#split").click();
        kept(page, 3);
        shows(page, "#piece h2", "Point JHS8-1");
        shows(page, "#piece", "east, m");
        assertThat(text(page)).contains("HS8b: {from: JHS8-1,");
    }

    @Test
    void a_tube_is_laid_over_corners_into_another_and_a_distance_is_measured() {
        try (Page page = page("#open=A1&units=si")) {
            page.keyboard().press("n");
            double[] a = middle(page, "A1");
            double[] b = middle(page, "A2");
            page.keyboard().press("x");
            page.mouse().click(a[0], a[1]);
            page.mouse().click(b[0], b[1]);
            PlaywrightAssertions.assertThat(page.locator("#say")).containsText("9.0");
            page.keyboard().press("b");
            page.getByLabel("Height", new Page.GetByLabelOptions().setExact(true))
                    .fill("6.3 m");
            page.getByLabel("Height", new Page.GetByLabelOptions().setExact(true))
                    .press("Enter");
            page.mouse().click(a[0], a[1]);
            PlaywrightAssertions.assertThat(page.locator("#hand .cap")).hasText("from A1");
            page.keyboard().press("Escape");
            page.keyboard().press("Escape");
        }
    }

    /** One grammar: what a property field takes is taken here, with the same figure, and what it refuses is refused. */
    @Test
    void lengths_are_typed_as_in_the_fields_of_a_property() {
        List<String> typed = List.of(
                "2",
                "2.5 m",
                "-1.5",
                "18 in",
                "6'",
                "24\"",
                "24 inch",
                "1 1/2 in",
                "3/4 ft",
                "2 yd",
                "1e3 mm",
                ".5",
                "0",
                "1,250 in",
                "1,5",
                "6 furlongs",
                "m",
                "3 kg",
                "1/0 in",
                "");
        try (Page page = page("#open=A1&units=us")) {
            @SuppressWarnings("unchecked")
            List<Map<String, Object>> read = (List<Map<String, Object>>) page.evaluate("""
                    async typed => {
                      const {length} = await import('/assets/length.js');
                      const {unit, lengths} = await (await fetch('/api/places')).json();
                      return typed.map(text => length(text, unit, lengths));
                    }""", typed);
            for (int n = 0; n < typed.size(); n++) {
                String text = typed.get(n);
                String full = text.matches("[-0-9.]+") ? text + " m" : text;
                if (QuantityText.read(full, List.of(Dimension.LENGTH)) instanceof QuantityText.Read.Good good) {
                    assertThat(read.get(n).get("metres"))
                            .as(text)
                            .isInstanceOfSatisfying(
                                    Number.class,
                                    metres -> assertThat(metres.doubleValue())
                                            .isCloseTo(good.quantity().si(), within(1e-12)));
                } else {
                    assertThat(read.get(n)).as(text).containsKey("why").doesNotContainKey("metres");
                }
            }
            page.keyboard().press("g");
            page.waitForSelector(".hand .grip");
            double[] a = middle(page, "A1");
            page.mouse().click(a[0], a[1]);
            shows(page, "#hand .acts", "east, m");
            page.getByLabel("By how much east").fill("1,5");
            page.locator("#hand").getByText("Move").click();
            shows(page, "#say", "A comma in a number: write 1200 for twelve hundred");
            kept(page, 1);
        }
    }

    @Test
    void what_cannot_be_drawn_is_said_and_nothing_changes() {
        try (Page page = page("#open=A1&units=si")) {
            page.keyboard().press("g");
            page.waitForSelector(".hand .grip");
            double[] a = middle(page, "A1");
            page.mouse().click(a[0], a[1]);
            page.getByLabel("By how much up").fill("20000");
            page.locator("#hand").getByText("Move").click();
            PlaywrightAssertions.assertThat(page.locator("#say")).containsText("Not drawn: ");
            kept(page, 1);
            List<Locator> grips = page.locator(".hand .grip").all();
            assertThat(grips).isNotEmpty();
        }
    }

    @Test
    void a_floor_plan_is_handed_in_and_laid_by_two_points_and_their_distance() throws Exception {
        try (Page page = page("#open=A1&units=si")) {
            page.keyboard().press("p");
            page.getByLabel("Picture of the floor")
                    .setInputFiles(new FilePayload("floor.png", "image/png", FloorPlanTest.png(1000, 600)));
            page.waitForSelector("svg .floor");
            BoundingBox box = page.locator("svg .floor").boundingBox();
            page.mouse().click(box.x + box.width * 0.1, box.y + box.height * 0.1);
            page.mouse().click(box.x + box.width * 0.9, box.y + box.height * 0.1);
            Locator apart = page.getByLabel("Distance between the points");
            apart.fill("1.25 in");
            page.getByText("Lay by distance").click();
            shows(page, "#say", "less than 1 m wide");
            apart.fill("1,250 in");
            page.getByText("Lay by distance").click();
            shows(page, "#say", "A comma in a number");
            apart.fill("40 m");
            page.getByText("Lay by distance").click();
            PlaywrightAssertions.assertThat(page.locator("#say")).containsText("50.");
            assertThat(((Number) page.evaluate(
                                    "async () => (await (await fetch('/api/floorplan')).json()).metresPerPoint"))
                            .doubleValue())
                    .isBetween(0.0495, 0.0505);
            page.keyboard().press("0");
            picture(page, "floorplan-1366");
            page.getByText("Isometric").click();
            page.waitForSelector("svg .floor");
            picture(page, "floorplan-isometric-1366");
        }
    }

    @Test
    void a_floor_plan_is_laid_without_a_pointer() throws Exception {
        try (Page page = page("#open=A1&units=si")) {
            page.keyboard().press("p");
            page.getByLabel("Picture of the floor")
                    .setInputFiles(new FilePayload("floor.png", "image/png", FloorPlanTest.png(1000, 600)));
            page.waitForSelector("svg .floor");
            page.locator("#drawing").focus();
            for (int n = 0; n < 20; n++) {
                page.keyboard().press("ArrowLeft");
            }
            page.keyboard().press("Enter");
            for (int n = 0; n < 40; n++) {
                page.keyboard().press("ArrowRight");
            }
            page.keyboard().press("Shift+ArrowLeft");
            PlaywrightAssertions.assertThat(page.locator("#say")).containsText("Enter takes the point");
            page.keyboard().press("Enter");
            picture(page, "floorplan-cross-1366");
            page.getByLabel("Distance between the points").fill("39.9 m");
            page.getByText("Lay by distance").press("Enter");
            PlaywrightAssertions.assertThat(page.locator("#say")).containsText("50.");
            assertThat(((Number) page.evaluate(
                                    "async () => (await (await fetch('/api/floorplan')).json()).metresPerPoint"))
                            .doubleValue())
                    .isBetween(0.04999, 0.05001);
        }
    }

    @Test
    void a_wall_is_drawn_by_typed_corners_and_an_inlet_laid_near_it_lands_on_it() {
        try (Page page = page("#open=A1&units=si")) {
            String before = text(page);
            page.keyboard().press("w");
            for (String[] corner : List.of(new String[] {"2 m", "10 m"}, new String[] {"14 m", "10 m"})) {
                page.getByLabel("Corner east").fill(corner[0]);
                page.getByLabel("Corner north").fill(corner[1]);
                page.locator("#hand button:text-is('Next corner')").click();
            }
            page.locator("#hand button:text-is('End the wall')").click();
            kept(page, 2);
            assertThat(text(page)).contains("W1: [[2, 10, 0], [14, 10, 0]]");
            picture(page, "wall-1366");
            page.keyboard().press("/");
            page.keyboard().type("B1\n");
            PlaywrightAssertions.assertThat(page.locator("#piece h2")).hasText("Inlet B1");
            page.keyboard().press("n");
            double[] near = middle(page, "B2");
            double[] other = middle(page, "A2");
            double perMetre = (other[1] - near[1]) / 12;
            page.mouse().click((near[0] + middle(page, "B1")[0]) / 2, near[1] + 2 * perMetre + 3);
            kept(page, 3);
            assertThat(text(page)).containsPattern(Pattern.compile("at: \\[[0-9.]+, 10, 1\\]"));
            page.keyboard().press("w");
            page.locator("#hand button:text-is('Take away')").last().click();
            kept(page, 4);
            for (int click = 0; click < 3; click++) {
                page.locator("#back").click();
            }
            picture(page, "backs-1366");
            kept(page, 1);
            assertThat(text(page)).isEqualTo(before);
        }
    }

    @Test
    void what_changed_since_the_last_revision_is_listed_and_chosen_from_the_list() {
        try (Page page = page("#open=A1&units=si")) {
            page.locator("[data-place=papers]").click();
            page.locator("#author").fill("A. Example");
            page.locator("#author").press("Enter");
            PlaywrightAssertions.assertThat(page.locator("#accepted")).containsText("Revision 1 is kept");
            page.locator("[data-place=plan]").click();
            PlaywrightAssertions.assertThat(page.locator("#since")).isHidden();
            page.evaluate(
                    "async () => { const v = (await (await fetch('/api/plant')).json()).version; await fetch('/api/value', {method: 'POST', headers: {'X-Dustwright': 'studio'}, body: JSON.stringify({version: v, path: 'runs.DG1.tube', value: 'T3', plain: true})}); }");
            PlaywrightAssertions.assertThat(page.locator("#sincewords")).hasText("1 changed");
            page.locator("#since summary").click();
            page.locator("#sincelist button").click();
            PlaywrightAssertions.assertThat(page.locator("#piece h2")).hasText("Tube DG1");
            picture(page, "since-1366");
        }
    }

    @Test
    void a_box_over_the_drawing_takes_places_and_no_lettering() {
        try (Page page = page("#open=A1&units=si")) {
            page.keyboard().press("g");
            page.waitForSelector(".hand .grip");
            double[] a = middle(page, "A1");
            double[] b = middle(page, "A3");
            page.keyboard().down("Shift");
            page.mouse().move(a[0] - 30, a[1] - 60);
            page.mouse().down();
            page.mouse().move(b[0] + 30, b[1] + 20);
            page.mouse().up();
            page.keyboard().up("Shift");
            PlaywrightAssertions.assertThat(page.locator("#hand .cap")).containsText("places");
            assertThat(page.evaluate("String(getSelection())")).isEqualTo("");
        }
    }

    @Test
    void after_a_tube_is_laid_none_is_under_way_and_what_it_took_the_place_of_is_said() {
        try (Page page = page("#open=A1&units=si")) {
            page.keyboard().press("b");
            page.waitForSelector(".hand .grip");
            double[] a = middle(page, "A1");
            page.mouse().click(a[0], a[1]);
            shows(page, "#hand .cap", "from A1");
            // in its middle, where its arrow lies over it
            BoundingBox to = page.locator("[data-run=HS2] .catch").boundingBox();
            page.getByLabel("Height", new Page.GetByLabelOptions().setExact(true))
                    .fill("6.3 m");
            page.getByLabel("Height", new Page.GetByLabelOptions().setExact(true))
                    .press("Enter");
            page.mouse().click(to.x + to.width / 2, to.y + to.height / 2);
            kept(page, 2);
            shows(page, "#say", "is laid in place of DA1");
            PlaywrightAssertions.assertThat(page.locator("#hand .cap")).isEmpty();
            shows(page, "#hint", "where the tube begins");
        }
    }

    @Test
    void what_cannot_be_drawn_names_no_line_of_a_text_that_is_not_kept() {
        try (Page page = page("#open=A1&units=si")) {
            Object answer = page.evaluate("""
                    async () => (await (await fetch('/api/draw', {method: 'POST', headers: {'Content-Type': 'application/json', 'X-Dustwright': 'studio'},
                      body: JSON.stringify({version: (await (await fetch('/api/plant')).json()).version, what: 'move', pieces: [{kind: 'corner', id: 'DA1', corner: 1}], dx: 0, dy: -1.25, dz: 0})})).json()).why
                    """);
            assertThat(String.valueOf(answer)).contains("bends").contains("DA1").doesNotContain("line ");
        }
    }
}
