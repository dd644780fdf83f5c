package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import org.junit.jupiter.api.Test;

/** The place Machines in a real Chromium, by mouse and by keyboard alone. */
class MachinesPageTest extends InChromium {
    MachinesPageTest() {
        super("bakery");
    }

    private Page page(int width, int height, String address) {
        return visit(width, height, address, "#machinebody .opens");
    }

    /** While newer figures are awaited those that are shown are pale on purpose. */
    private static void answered(Page page) {
        page.waitForTimeout(1_000);
        page.waitForSelector("#machineall:not(.stale)");
    }

    @Test
    void each_figure_opens_its_derivation_and_the_way_back_leads_to_it() {
        try (Page page = page(1366, 768, "#open=A1&units=us&place=machines")) {
            assertThat(page.locator("#machinebody figure svg").count()).isGreaterThanOrEqualTo(2);
            shows(page, "#machineset", "every single user");
            picture(page, "machines-1366");
            Locator figure = page.locator("[data-figure='flow/REC']");
            figure.click();
            shows(page, "#machinesteps", "Actual flow");
            assertThat(page.locator("#machinesteps table").count()).isEqualTo(1);
            picture(page, "machines-derivation-1366");
            page.keyboard().press("Escape");
            assertThat(page.locator("#machinesteps").isVisible()).isFalse();
            PlaywrightAssertions.assertThat(figure).isFocused();
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    void by_keyboard_alone_one_goes_through_findings_and_sheets() {
        try (Page page = page(1366, 768, "#open=A1&units=us&place=machines")) {
            page.keyboard().press("j");
            page.keyboard().press("Enter");
            page.waitForSelector("#machinesteps:not([hidden])");
            shows(page, "#machinesteps", "Limit");
            page.keyboard().press("Escape");
            page.locator("#machineindex button")
                    .filter(new Locator.FilterOptions().setHasText("Rotary valve REC"))
                    .first()
                    .focus();
            page.keyboard().press("Enter");
            assertThat(page.evaluate("document.activeElement.closest('[data-sheet]').dataset.sheet"))
                    .isEqualTo("rotary-valve/REC");
            page.keyboard().press("Enter");
            page.waitForSelector("#machinesteps:not([hidden])");
            page.keyboard().press("1");
            PlaywrightAssertions.assertThat(page.locator("#drawing")).isVisible();
            page.keyboard().press("3");
            PlaywrightAssertions.assertThat(page.locator("#machines")).isVisible();
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    void the_set_of_the_plan_and_a_change_elsewhere_change_what_is_shown() {
        try (Page page = page(1366, 768, "#open=A1&units=us&place=machines&sets=one");
                Page other = page(1366, 768, "#open=A1&units=us&place=machines&sets=one")) {
            shows(page, "#machineset", "Set A1");
            String before = page.locator("[data-sheet='receiver/REC']").textContent();
            other.locator("[data-place=text]").click();
            PlaywrightAssertions.assertThat(other.locator("#source"))
                    .hasValue(java.util.regex.Pattern.compile("simultaneous users"));
            other.locator("#source")
                    .fill(other.locator("#source").inputValue().replace("{diameter: 0.9 m", "{diameter: 0.8 m"));
            other.locator("#take").click();
            shows(page, "#kept", "step 2");
            PlaywrightAssertions.assertThat(page.locator("[data-sheet='receiver/REC']"))
                    .not()
                    .hasText(before);
            PlaywrightAssertions.assertThat(page.locator("#machineall")).not().hasClass("stale");
        }
        assertThat(complaints).allMatch(c -> c.contains("409"));
    }

    @Test
    void no_serious_fault_of_access_by_day_by_night_and_on_a_phone() {
        for (int[] size : new int[][] {{1366, 768}, {1920, 1080}, {390, 844}}) {
            try (Page page = page(size[0], size[1], "#open=A1&place=machines&units=us")) {
                answered(page);
                serious(page, "machines " + size[0]);
                picture(page, "machines-" + size[0]);
                if (size[0] < 500) {
                    page.locator("#tools").click();
                }
                page.locator("#light").click();
                answered(page);
                serious(page, "machines by night " + size[0]);
                picture(page, "machines-night-" + size[0]);
            }
        }
    }

    /** Unknown is never 0. */
    @Test
    void what_is_not_known_stands_nowhere_on_the_scale() {
        try (Page page = page(1366, 768, "#open=A1&units=us&place=machines")) {
            page.evaluate("""
                    async () => {
                      const {findingRow} = await import('/assets/findingrow.js');
                      const one = {claim: 'not known', figures: '', margin: 'not known', letter: '', glyph: '?', bar: 0.5};
                      document.body.append(findingRow({...one, marginClass: 'unknown'}, false, () => {}), findingRow({...one, marginClass: 'thin'}, false, () => {}));
                    }
                    """);
            assertThat(page.locator("body > .noted .index").count()).isEqualTo(1);
            assertThat(page.locator("body > .noted svg .unknown").count()).isZero();
        }
    }
}
