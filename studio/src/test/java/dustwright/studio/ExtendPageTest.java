package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.util.List;
import org.junit.jupiter.api.Test;

/** "Six more inlets?" asked of a plant that stands, in a real Chromium. */
class ExtendPageTest extends InChromium {
    ExtendPageTest() {
        super("bakery");
    }

    @Test
    void what_stands_is_kept_and_a_new_inlet_and_a_third_user_are_held_against_it() {
        try (Page page = visit(1366, 768, "#open=A1&units=si&inlet=A1")) {
            page.locator("[data-place=extend]").click();
            shows(page, "#extension", "Nothing says yet what stands today");
            page.locator("#standstoday").click();
            shows(
                    page,
                    "#extension",
                    "24 inlets today, 24 then. 3 users at once as today: more inlets are not more users.");
            page.locator("[data-place=plan]").click();
            page.keyboard().press("n");
            shows(page, "#hint", "laid like the chosen inlet");
            page.locator("#drawing").focus();
            for (int n = 0; n < 6; n++) {
                page.keyboard().press("ArrowRight");
            }
            page.keyboard().press("Shift+ArrowRight");
            page.keyboard().press("Shift+ArrowRight");
            page.keyboard().press("Enter");
            kept(page, 2);
            page.evaluate(
                    "async () => { const v = (await (await fetch('/api/plant')).json()).version; await fetch('/api/value', {method: 'POST', headers: {'X-Dustwright': 'studio'}, body: JSON.stringify({version: v, path: 'usage.simultaneous users', value: '4', plain: true})}); }");
            kept(page, 3);
            page.keyboard().press("7");
            shows(page, "#extension", "24 inlets today, 25 then. 3 users at once today, 4 then.");
            Locator first = page.locator("#extension tbody tr").first();
            assertThat(first.textContent())
                    .startsWith("A5new")
                    .contains("not there")
                    .contains("free");
            PlaywrightAssertions.assertThat(page.locator("#extension tbody tr")).hasCount(25);
            shows(page, "#extension", "Gives out first");
            picture(page, "extend-1366");
        }
        assertThat(complaints).isEmpty();
    }

    /** The air told is that which the set has by itself. */
    @Test
    void least_air_is_that_of_the_worst_set_asked() throws Exception {
        try (Page page = visit(1366, 768, "#open=A1&units=us&place=extend")) {
            page.locator("#standstoday").click();
            PlaywrightAssertions.assertThat(page.locator("#extension tbody tr")).hasCount(24);
            String row = String.valueOf(
                    page.evaluate(
                            "async () => JSON.stringify((await (await fetch('/api/extension?today=now&then=now&units=us')).json()).inlets.find(one => one.id === 'A1'))"));
            assertThat(row).contains("\"what\":\"stands\"").contains("\"less\":false");
            String today = row.replaceFirst(".*\"today\":\"([^\"]*)\".*", "$1");
            assertThat(row).contains("\"then\":\"" + today + "\"").contains("\"change\":\"same\"");
            for (String filter : List.of("clean", "dirty")) {
                String alone = String.valueOf(page.evaluate(
                        "async filter => (await (await fetch('/api/set?open=A1&units=us&filter=' + filter)).json()).readings.inlets.A1",
                        filter));
                assertThat(number(alone)).isGreaterThanOrEqualTo(number(today));
            }
        }
    }

    private static double number(String figure) {
        return Double.parseDouble(figure.replaceFirst("^([0-9.]+).*", "$1"));
    }

    @Test
    void it_is_read_at_every_size_by_day_and_by_night() {
        for (int[] size : List.of(new int[] {1366, 768}, new int[] {1920, 1080}, new int[] {390, 844})) {
            try (Page page = visit(size[0], size[1], "#open=A1&units=us&place=extend")) {
                page.locator("#standstoday").click();
                shows(page, "#extension", "Least air at each inlet");
                for (String light : List.of("day", "night")) {
                    page.evaluate("light => { document.documentElement.dataset.light = light; }", light);
                    serious(page, "extend, " + light + " " + size[0]);
                    picture(page, "extend-" + light + "-" + size[0]);
                }
                page.locator("#today").selectOption("a:as it stands");
                page.evaluate(
                        "async () => fetch('/api/alternative/letgo', {method: 'POST', headers: {'X-Dustwright': 'studio'}, body: JSON.stringify({name: 'as it stands'})})");
            }
        }
    }
}
