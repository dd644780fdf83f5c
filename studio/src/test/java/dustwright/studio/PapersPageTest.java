package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import org.junit.jupiter.api.Test;

/** The place Papers in a real Chromium, by mouse and by keyboard alone. */
class PapersPageTest extends InChromium {
    private static final double LONGEST_MAKING_ms = 200_000;

    PapersPageTest() {
        super("bakery-one-main");
    }

    private Page page(int width, int height) {
        return visit(width, height, "#open=A1&units=us&place=papers", "#packages li");
    }

    @Test
    void by_keyboard_alone_a_package_is_made_and_its_files_stand_there() {
        try (Page page = page(1366, 768)) {
            Locator control = page.locator("[data-paper=control-REC]");
            control.locator(".acts button").focus();
            page.keyboard().press("Enter");
            PlaywrightAssertions.assertThat(control.locator(".files a").first())
                    .hasText("control.html", new LocatorAssertions.HasTextOptions().setTimeout(LONGEST_MAKING_ms));
            PlaywrightAssertions.assertThat(control.locator(".acts button")).hasText("Make anew");
            PlaywrightAssertions.assertThat(control.locator(".of")).containsText("Of Step 1, mark");
            Page paper = page.context()
                    .waitForPage(() -> control.locator(".files a").first().click());
            PlaywrightAssertions.assertThat(paper.locator("h1")).containsText("Bakery");
            paper.close();
            page.keyboard().press("1");
            page.keyboard().press("6");
            PlaywrightAssertions.assertThat(control.locator(".files a").first()).isVisible();
            picture(page, "papers-made-1366");
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    void no_serious_fault_of_access_by_day_by_night_and_on_a_phone() {
        for (int[] size : new int[][] {{1366, 768}, {1920, 1080}, {390, 844}}) {
            try (Page page = page(size[0], size[1])) {
                page.locator("[data-paper=report] .acts button").click();
                serious(page, "papers in work " + size[0]);
                picture(page, "papers-work-" + size[0]);
                if (size[0] < 500) {
                    page.locator("#tools").click();
                }
                page.locator("#light").click();
                serious(page, "papers in work by night " + size[0]);
                picture(page, "papers-work-night-" + size[0]);
            }
        }
    }
}
