package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Two browsers on one plant: what one types is never lost, and never lands on what the other did unseen. */
class TogetherPageTest extends InChromium {
    TogetherPageTest() {
        super("bakery");
    }

    private Page page(String address) {
        return visit(1366, 768, address);
    }

    @Test
    void a_value_typed_on_an_older_one_is_taken_only_once_its_writer_has_seen_the_newer() {
        try (Page a = page("#inlet=A1&open=A1");
                Page b = page("#inlet=A1&open=A1")) {
            Locator mine = b.locator("#piece input[aria-label=feed]");
            mine.fill("77 kg/h");
            Locator theirs = a.locator("#piece input[aria-label=feed]");
            theirs.fill("33 kg/h");
            theirs.press("Enter");
            shows(a, "#kept", "step 2, kept");
            shows(b, "#kept", "step 2, kept");
            shows(b, "#piece", "It is 33 kg/h by now.");
            mine.press("Enter");
            shows(b, "#piece", "Somebody set this to 33 kg/h");
            assertThat(text(b)).contains("feed: 33 kg/h");
            mine.fill("78 kg/h");
            mine.press("Enter");
            shows(b, "#kept", "step 3, kept");
            assertThat(text(b)).contains("feed: 78 kg/h");
        }
    }

    @Test
    void not_answering_ends_by_itself_and_is_told_in_words_on_every_page() {
        try (Page page = page("#inlet=A1&open=A1")) {
            List<String> faults = new ArrayList<>();
            page.onPageError(faults::add);
            page.context().setOffline(true);
            Locator feed = page.locator("#piece input[aria-label=feed]");
            feed.fill("33 kg/h");
            feed.press("Enter");
            shows(page, "#kept", "not answering");
            shows(page, "#kept", "1 edit waits");
            page.locator("[data-place=machines]").click();
            shows(page, "#machineset", "The studio is not answering.");
            page.locator("[data-place=panel]").click();
            shows(page, "#panelwhy", "The studio is not answering.");
            page.context().setOffline(false);
            kept(page, 2);
            assertThat(text(page)).contains("feed: 33 kg/h");
            PlaywrightAssertions.assertThat(page.locator("#panelwhy")).hasText("");
            PlaywrightAssertions.assertThat(page.locator("#plate svg").first()).isVisible();
            assertThat(faults).isEmpty();
        }
    }

    @Test
    void an_answer_that_is_not_the_studios_is_told_in_words_and_the_button_can_be_pressed_again() {
        try (Page page = page("#place=text&open=A1")) {
            List<String> faults = new ArrayList<>();
            page.onPageError(faults::add);
            page.route(
                    "**/api/write",
                    route -> route.fulfill(new Route.FulfillOptions()
                            .setStatus(502)
                            .setContentType("text/html")
                            .setBody("<h1>Bad Gateway</h1>")));
            page.locator("#write").click();
            shows(page, "#texthint", "No reason was given (502)");
            page.unroute("**/api/write");
            page.locator("#write").click();
            shows(page, "#texthint", "written to");
            assertThat(faults).isEmpty();
        }
    }

    @Test
    void a_text_typed_while_somebody_else_went_on_stands_beside_theirs_until_its_writer_chooses() {
        try (Page a = page("#inlet=A1&open=A1");
                Page b = page("#place=text&open=A1")) {
            PlaywrightAssertions.assertThat(b.locator("#source")).hasValue(Pattern.compile("dustwright: 1"));
            b.locator("#source").fill(b.locator("#source").inputValue() + "\n# mine\n");
            Locator theirs = a.locator("#piece input[aria-label=feed]");
            theirs.fill("33 kg/h");
            theirs.press("Enter");
            shows(b, "#kept", "step 2, kept");
            b.locator("button:text-is('Back')").click();
            shows(b, "#say", "typed here and not taken");
            assertThat(b.locator("#source").inputValue()).endsWith("# mine\n");
            b.locator("#take").click();
            shows(b, "#texthint", "changed elsewhere");
            PlaywrightAssertions.assertThat(b.locator("#theirs")).hasValue(Pattern.compile("feed: 33 kg/h"));
            shows(b, "#differ", "feed: 33 kg/h");
            picture(b, "conflict-1366");
            b.locator("#mine").click();
            shows(b, "#texthint", "kept");
            PlaywrightAssertions.assertThat(b.locator("#conflict")).isHidden();
            assertThat(text(b)).contains("# mine").doesNotContain("feed: 33 kg/h");
        }
    }
}
