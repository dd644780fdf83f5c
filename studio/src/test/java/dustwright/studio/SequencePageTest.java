package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The sequence behind the panel, edited in a real Chromium. */
class SequencePageTest extends InChromium {
    SequencePageTest() {
        super("bakery");
    }

    private Page page(int width, int height) {
        Page page = visit(width, height, "#place=panel&units=us", "[data-lamp=lamp_fault]");
        page.locator("#seqopen").press("Enter");
        PlaywrightAssertions.assertThat(page.locator("#seqtext")).hasValue(Pattern.compile("sequence: 1"));
        return page;
    }

    private static void replace(Page page, String before, String after) {
        page.evaluate(
                "([before, after]) => { const text = document.getElementById('seqtext');"
                        + " const at = text.value.indexOf(before); text.setSelectionRange(at, at + before.length); text.focus(); }",
                List.of(before, after));
        page.keyboard().insertText(after);
    }

    @Test
    void an_edit_is_judged_taken_and_shown_by_the_panel() {
        try (Page page = page(1366, 768)) {
            replace(page, "scan: ", "scan: soon ");
            page.locator("#seqtake").press("Enter");
            shows(page, "#seqhint", "not taken");
            picture(page, "sequence-fault-1366");
            page.locator("#seqfaults button").first().press("Enter");
            assertThat(page.evaluate("document.activeElement.id")).isEqualTo("seqtext");
            replace(page, "scan: soon ", "scan: ");
            replace(page, "shows: BAG HIGH LEVEL", "shows: BAG IS FULL NOW");
            page.locator("#seqprove").press("Enter");
            shows(page, "#seqhint", "every property holds");
            shows(page, "#seqproof", "holds");
            picture(page, "sequence-proof-1366");
            page.locator("#seqtake").press("Enter");
            shows(page, "#seqof", "edit 1");
            page.locator("#seqback").press("Enter");
            shows(page, "#panelof", "edit 1");
            shows(page, "#plate", "BAG IS FULL NOW");
        }
    }

    @Test
    void a_long_text_is_at_hand_on_every_screen_and_nothing_hinders_reading_it() {
        for (int[] size : List.of(new int[] {1366, 768}, new int[] {1920, 1080}, new int[] {390, 844})) {
            try (Page page = page(size[0], size[1])) {
                page.locator("#sequence summary").click();
                picture(page, "sequence-" + size[0]);
                serious(page, "sequence " + size[0]);
                page.keyboard().press("Escape");
            }
        }
    }
}
