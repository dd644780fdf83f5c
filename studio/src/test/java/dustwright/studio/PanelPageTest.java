package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The panel of the bakery, rehearsed in a real Chromium. */
class PanelPageTest extends InChromium {
    PanelPageTest() {
        super("bakery");
    }

    private Page page(int width, int height) {
        return visit(width, height, "#place=panel&units=us", "[data-lamp=lamp_fault]");
    }

    private static Locator lamp(Page page, String name) {
        return page.locator("[data-lamp=" + name + "] small");
    }

    private static void is(Page page, String lamp, String word) {
        PlaywrightAssertions.assertThat(lamp(page, lamp)).hasText(word);
    }

    private static void events(Page page, int count) {
        for (int n = 0; n < count; n++) {
            page.locator("#nexts").click();
            page.waitForTimeout(60);
        }
    }

    @Test
    void by_keyboard_one_starts_vacuums_and_sees_a_full_bag_take_the_suction_away() {
        try (Page page = page(1366, 768)) {
            page.locator("#usersact").press("Enter");
            page.locator("[data-push=start]").press("Enter");
            page.locator("#clock").click();
            page.keyboard().press("Space");
            is(page, "lamp_vacuuming", "lit");
            page.keyboard().press("Space");
            shows(page, "#runs", "Run");
            assertThat(page.locator("#stepname").textContent()).isEqualTo("vacuuming");
            picture(page, "panel-1366");
            page.locator("[data-fault='container probe caked']").click();
            page.keyboard().press("e");
            page.keyboard().press("e");
            page.keyboard().press("e");
            events(page, 6);
            is(page, "lamp_container_high", "flashes");
            is(page, "lamp_vacuuming", "dark");
            shows(page, "#messages", "BAG");
            shows(page, "#told", "dust cakes on the bag's level probe");
            assertThat(page.locator("#course svg").count()).isEqualTo(1);
            picture(page, "panel-bag-full");
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    void an_emergency_stop_is_pushed_in_and_pulled_and_nothing_starts_by_itself() {
        try (Page page = page(1920, 1080)) {
            page.locator("[data-push=start]").click();
            page.locator("[data-speed='10']").click();
            assertThat(page.locator("#runs").textContent())
                    .as("a speed starts nothing")
                    .isEqualTo("Run");
            page.locator("#runs").click();
            is(page, "lamp_vacuuming", "lit");
            page.locator("[data-push=estop]").click();
            is(page, "lamp_vacuuming", "dark");
            is(page, "lamp_fault", "lit");
            picture(page, "panel-estop-1920");
            assertThat(
                            page.evaluate(
                                    "() => { const svg = document.querySelector('#course svg'), right = svg.getBoundingClientRect().right; return [...svg.querySelectorAll('text')].filter(t => t.getBoundingClientRect().right > right + 0.5).map(t => t.textContent).join(); }"))
                    .as("nothing of the chart is cut off")
                    .isEqualTo("");
            assertThat(
                            page.evaluate(
                                    "() => { const needle = document.querySelector('.gauge .needle'); return [...document.querySelectorAll('.gauge .num')].every(n => needle.compareDocumentPosition(n) & Node.DOCUMENT_POSITION_FOLLOWING); }"))
                    .as("numerals stand over the needle")
                    .isEqualTo(true);
            page.locator("[data-push=estop]").click();
            page.locator("[data-push=reset]").click();
            events(page, 3);
            is(page, "lamp_vacuuming", "dark");
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    void a_drill_gives_points_and_its_answers_are_folded_away() {
        try (Page page = page(1366, 768)) {
            page.locator("#paneldrill").selectOption("valve-chain-breaks");
            shows(page, "#score", "points so far");
            String drill = String.valueOf(
                    page.evaluate("document.querySelector('#paneldrill').selectedOptions[0].textContent"));
            assertThat(drill).matches("Drill [1-9]");
            shows(page, "#panelof", drill + " · ");
            shows(page, "#block", drill);
            assertThat(page.locator("#rehearse").textContent()
                            + page.locator("#block").textContent())
                    .doesNotContainIgnoringCase("chain breaks");
            assertThat(page.locator(".gauge .needle").count()).isEqualTo(1);
            page.locator("[data-push=start]").click();
            page.locator("[data-speed='1000']").click();
            page.locator("#runs").click();
            is(page, "lamp_fault", "lit");
            page.locator("#runs").click();
            page.locator("[data-fault='hopper bridged']").click();
            page.locator("[data-fault='valve chain broken']").click();
            shows(page, "#score", "not yet");
            PlaywrightAssertions.assertThat(page.locator("#marklist li")).hasCount(0);
            PlaywrightAssertions.assertThat(page.locator("#panelhelp details").first())
                    .not()
                    .hasAttribute("open", "");
            picture(page, "panel-drill");
            page.locator("[data-speed='1000']").click();
            page.locator("#runs").click();
            shows(page, "#score", "at the end");
            shows(page, "#marklist", "once a guess");
            shows(page, "#panelof", "Valve chain breaks");
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    void no_serious_fault_of_access_by_day_and_by_night_and_on_a_phone() {
        for (int[] size : new int[][] {{1366, 768}, {1920, 1080}, {390, 844}}) {
            try (Page page = page(size[0], size[1])) {
                events(page, 2);
                for (String light : List.of("day", "night")) {
                    page.evaluate("light => document.documentElement.dataset.light = light", light);
                    serious(page, "panel, " + light + " " + size[0]);
                    picture(page, "panel-" + light + "-" + size[0]);
                }
                assertThat((Boolean) page.evaluate(
                                "document.documentElement.scrollWidth <= document.documentElement.clientWidth"))
                        .as("no sideways scrolling at " + size[0])
                        .isTrue();
            }
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    void lamps_and_buttons_keep_apart_when_the_emergency_stop_says_more() {
        try (Page page = page(1366, 768)) {
            Object before = page.evaluate("document.querySelector('.pushes').getBoundingClientRect().height");
            page.locator("[data-push=estop]").click();
            shows(page, "[data-push=estop]", "pushed in: pull");
            assertThat(page.evaluate("document.querySelector('.pushes').getBoundingClientRect().height"))
                    .isEqualTo(before);
            assertThat(
                            (Boolean)
                                    page.evaluate(
                                            "Math.max(...[...document.querySelectorAll('.lamp')].map(one => one.getBoundingClientRect().bottom)) <= document.querySelector('.pushes').getBoundingClientRect().top"))
                    .isTrue();
            assertThat(
                            page.evaluate(
                                    "() => { const plate = document.querySelector('#plate'); return plate.scrollHeight <= plate.clientHeight; }"))
                    .as("nothing of the plate is cut off")
                    .isEqualTo(true);
            assertThat(
                            page.evaluate(
                                    "[...document.querySelectorAll('.readings dd')].slice(1).every(one => { const words = document.createRange(); words.selectNodeContents(one); return words.getClientRects().length === 1; })"))
                    .as("a figure and its unit stand on one line")
                    .isEqualTo(true);
            picture(page, "panel-stopped-1366");
        }
    }
}
