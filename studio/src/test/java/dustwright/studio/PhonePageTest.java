package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.BoundingBox;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The plan under fingers, in a real Chromium that takes itself for a phone; and lettering that can be read at any zoom. */
class PhonePageTest extends InChromium {
    private static final double LEAST_TEXT_px = 12;

    PhonePageTest() {
        super("bakery");
    }

    private Page phone(String address) {
        Page page = browser.phone();
        page.navigate(studio.address() + address);
        page.waitForSelector("#scale button");
        page.waitForSelector("#drawing [data-tag] text");
        return page;
    }

    /** Fingers down at their first places, over the others, and up. */
    private static void fingers(Page page, double[][]... places) {
        CDPSession session = page.context().newCDPSession(page);
        for (int n = 0; n < places.length; n++) {
            JsonArray points = new JsonArray();
            for (int finger = 0; finger < places[n].length; finger++) {
                JsonObject point = new JsonObject();
                point.addProperty("x", places[n][finger][0]);
                point.addProperty("y", places[n][finger][1]);
                point.addProperty("id", finger);
                points.add(point);
            }
            touch(session, n == 0 ? "touchStart" : "touchMove", points);
            page.waitForTimeout(40);
        }
        touch(session, "touchEnd", new JsonArray());
        page.waitForTimeout(200);
    }

    private static void touch(CDPSession session, String type, JsonArray points) {
        JsonObject event = new JsonObject();
        event.addProperty("type", type);
        event.add("touchPoints", points);
        session.send("Input.dispatchTouchEvent", event);
    }

    private static List<Double> box(Page page) {
        return numbers(page, "document.querySelector('#drawing svg').getAttribute('viewBox').split(' ').map(Number)");
    }

    private static List<Double> numbers(Page page, String asked) {
        return ((List<?>) page.evaluate("() => " + asked))
                .stream().map(one -> ((Number) one).doubleValue()).toList();
    }

    private static List<Double> onSheet(Page page, double x, double y) {
        return numbers(
                page,
                "(p => [p.x, p.y])(new DOMPoint(" + x + ", " + y
                        + ").matrixTransform(document.querySelector('#drawing svg').getScreenCTM().inverse()))");
    }

    private static double scrolled(Page page) {
        return numbers(page, "[scrollY]").get(0);
    }

    @Test
    void two_fingers_zoom_about_their_middle_and_one_drags_the_sheet_then() {
        try (Page page = phone("#open=A1&units=si")) {
            BoundingBox place = page.locator("#drawing").boundingBox();
            double x = place.x + place.width * 0.6;
            double y = place.y + place.height * 0.5;
            List<Double> before = box(page);
            List<Double> middle = onSheet(page, x, y);
            fingers(
                    page,
                    new double[][] {{x - 30, y}, {x + 30, y}},
                    new double[][] {{x - 45, y}, {x + 45, y}},
                    new double[][] {{x - 60, y}, {x + 60, y}},
                    new double[][] {{x - 75, y}, {x + 75, y}});
            List<Double> near = box(page);
            assertThat(near.get(2)).isBetween(before.get(2) / 2.7, before.get(2) / 2.3);
            assertThat(onSheet(page, x, y).get(0)).isBetween(middle.get(0) - 2, middle.get(0) + 2);
            assertThat(onSheet(page, x, y).get(1)).isBetween(middle.get(1) - 2, middle.get(1) + 2);
            picture(page, "phone-pinched-390");
            fingers(page, new double[][] {{x, y}}, new double[][] {{x - 30, y - 20}}, new double[][] {{x - 60, y - 40}
            });
            assertThat(box(page).get(0)).isGreaterThan(near.get(0) + 10);
            assertThat(box(page).get(1)).isGreaterThan(near.get(1) + 10);
            assertThat(scrolled(page)).isZero();
            for (int swipe = 0; swipe < 6; swipe++) {
                fingers(page, new double[][] {{x, y}}, new double[][] {{x - 90, y}}, new double[][] {{x - 200, y}});
            }
            assertThat(box(page).get(0) + box(page).get(2) / 2)
                    .as("the sheet never leaves its place")
                    .isLessThanOrEqualTo(before.get(2) + 0.5);
            page.locator("[data-zoom=all]").tap();
            assertThat(box(page)).isEqualTo(before);
            PlaywrightAssertions.assertThat(page.locator("#setname")).hasText("A1, filter normal");
        }
    }

    @Test
    void one_finger_scrolls_the_page_while_all_is_shown_and_a_tap_opens_an_inlet() {
        try (Page page = phone("#open=A1&units=si")) {
            BoundingBox place = page.locator("#drawing").boundingBox();
            List<Double> before = box(page);
            double x = place.x + place.width / 2;
            double y = place.y + place.height * 0.7;
            fingers(
                    page,
                    new double[][] {{x, y}},
                    new double[][] {{x, y - 40}},
                    new double[][] {{x, y - 90}},
                    new double[][] {{x, y - 150}});
            assertThat(scrolled(page)).isGreaterThan(40);
            assertThat(box(page)).isEqualTo(before);
            page.evaluate("() => scrollTo(0, 0)");
            BoundingBox inlet = page.locator("[data-inlet=B2] .catch").boundingBox();
            double beside = inlet.x + inlet.width / 2 - 9;
            page.touchscreen().tap(beside, inlet.y + inlet.height / 2 + 9);
            PlaywrightAssertions.assertThat(page.locator("#setname")).containsText("A1+B2");
        }
    }

    @Test
    void on_a_phone_the_drawing_stands_high_and_all_buttons_are_behind_one() {
        try (Page page = phone("#open=A1,C2,G1&units=us")) {
            assertThat(page.locator("#drawing").boundingBox().y).isLessThan(150);
            assertThat(page.locator("#keys").isVisible()).isFalse();
            picture(page, "phone-390");
            page.locator("#tools").tap();
            picture(page, "phone-tools-390");
            for (String button : List.of(
                    "[data-zoom=in]",
                    "[data-zoom=out]",
                    "[data-zoom=all]",
                    "#tools",
                    "#keys",
                    "#back",
                    "[data-hand=move]")) {
                assertThat(page.locator(button).boundingBox().height).as(button).isGreaterThanOrEqualTo(44);
            }
            page.locator("#keys").tap();
            PlaywrightAssertions.assertThat(page.locator("#help")).isVisible();
            assertThat(page.locator("#back").isVisible()).isFalse();
            picture(page, "phone-help-390");
            serious(page, "help on a phone");
        }
    }

    @Test
    void nothing_is_written_smaller_than_12_px_at_any_zoom() {
        try (Page page = browser.page(1366, 768)) {
            page.navigate(studio.address() + "#open=A1,C2,G1&units=us&run=HS2");
            page.waitForSelector("#scale button");
            page.waitForSelector("#drawing [data-tag] text");
            for (String key : List.of("0", "+", "+", "+", "+", "+", "0", "-", "-")) {
                page.keyboard().press(key);
                page.waitForTimeout(150);
                assertThat(smallest(page)).as("after " + key).isGreaterThanOrEqualTo(LEAST_TEXT_px - 0.05);
                assertThat(numbers(page, LETTERING + ".map(t => t.getBoundingClientRect().height)"))
                        .as("lettering does not grow with the drawing")
                        .allMatch(high -> high < 20);
            }
            page.keyboard().press("0");
            page.waitForTimeout(150);
            assertThat(numbers(page, OVERLAPS)).as("labels over one another").isEmpty();
            picture(page, "lettering-1366");
            page.keyboard().press("+");
            page.keyboard().press("+");
            page.keyboard().press("+");
            page.waitForTimeout(150);
            picture(page, "lettering-near-1366");
        }
        try (Page page = phone("#open=A1,C2,G1&units=us")) {
            assertThat(smallest(page)).isGreaterThanOrEqualTo(LEAST_TEXT_px - 0.05);
        }
    }

    private static final String LETTERING = "[...document.querySelectorAll('#drawing text')]";
    private static final String OVERLAPS = """
            (all => all.filter((a, i) => all.some((b, j) => i < j && a.parent !== b.parent && a.box.left < b.box.right - 1 && b.box.left < a.box.right - 1
                && a.box.top + 4 < b.box.bottom && b.box.top + 4 < a.box.bottom)).map(() => 1))(
                [...document.querySelectorAll('#drawing text')].map(one => ({parent: one.parentElement, box: one.getBoundingClientRect()})))""";

    /** Size on the screen of the smallest text of the page, drawings scaled as they are shown. */
    private static double smallest(Page page) {
        return numbers(page, """
                        [Math.min(...[...document.querySelectorAll('body *')].filter(one => one.checkVisibility() && [...one.childNodes].some(n => n.nodeType === 3 && n.textContent.trim()) && !one.closest('title'))
                            .map(one => parseFloat(getComputedStyle(one).fontSize) * (one.ownerSVGElement ? one.getScreenCTM().a : 1)))]""").get(0);
    }
}
