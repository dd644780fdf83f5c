package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Drawing without a pointer, in a real Chromium: nothing but keys is pressed. */
class KeyboardPageTest extends InChromium {
    KeyboardPageTest() {
        super("bakery");
    }

    private Page page(String address) {
        return visit(1366, 768, address);
    }

    private static void said(Page page, String words) {
        PlaywrightAssertions.assertThat(page.locator("#say")).containsText(words);
    }

    private static void press(Page page, String key, int times) {
        for (int n = 0; n < times; n++) {
            page.keyboard().press(key);
        }
    }

    private static void hand(Page page, String key, String hand) {
        page.keyboard().press(key);
        PlaywrightAssertions.assertThat(page.locator("button[data-hand=" + hand + "]"))
                .hasAttribute("aria-pressed", "true");
    }

    @Test
    void a_new_inlet_is_laid_where_the_cross_was_walked() {
        try (Page page = page("#open=A1&units=si&inlet=A1")) {
            hand(page, "n", "inlet");
            press(page, "ArrowRight", 6);
            press(page, "Shift+ArrowRight", 2);
            said(page, "Cross at 7.70 m east, 0.00 m north");
            assertThat(page.locator("#say").getAttribute("aria-live")).isEqualTo("polite");
            picture(page, "keyboard-cross-1366");
            page.keyboard().press("Enter");
            kept(page, 2);
            PlaywrightAssertions.assertThat(page.locator("#piece h2")).hasText("Inlet A5");
            assertThat(text(page)).containsPattern(Pattern.compile("A5: .*at: \\[7\\.7, 0, 1\\]"));
        }
    }

    @Test
    void a_place_is_typed_in_feet_and_taken_as_typed() {
        try (Page page = page("#open=A1&units=us&inlet=A1")) {
            hand(page, "n", "inlet");
            page.getByLabel("Cross, east").fill("25.55 ft");
            page.getByLabel("Cross, north").fill("0 ft");
            page.getByLabel("Cross, north").press("Enter");
            kept(page, 2);
            assertThat(text(page)).containsPattern(Pattern.compile("A5: .*at: \\[7\\.788, 0, 1\\]"));
        }
    }

    @Test
    void a_wall_is_drawn_and_a_distance_measured_by_arrows_and_enter() {
        try (Page page = page("#open=A1&units=si&inlet=A1")) {
            hand(page, "w", "wall");
            press(page, "ArrowUp", 4);
            page.keyboard().press("Enter");
            said(page, "1 corner so far");
            press(page, "ArrowRight", 8);
            page.keyboard().press("Enter");
            page.keyboard().press("Enter");
            kept(page, 2);
            assertThat(text(page)).contains("[[4.5, 2, 0], [8.5, 2, 0]]");
            hand(page, "x", "measure");
            press(page, "Shift+ArrowUp", 1);
            press(page, "Shift+ArrowDown", 1);
            page.keyboard().press("Enter");
            said(page, "One end is taken");
            press(page, "ArrowRight", 4);
            page.keyboard().press("Enter");
            said(page, "2.00 m");
        }
    }

    @Test
    void a_tube_begins_at_an_inlet_and_takes_corners_at_the_cross() {
        try (Page page = page("#open=A1&units=si&inlet=B2")) {
            hand(page, "b", "tube");
            press(page, "Shift+ArrowUp", 1);
            said(page, "on inlet B2");
            page.keyboard().press("Enter");
            said(page, "The tube begins at B2");
            press(page, "ArrowDown", 3);
            page.keyboard().press("Enter");
            said(page, "1 corner so far");
            press(page, "ArrowDown", 30);
            picture(page, "keyboard-tube-1366");
            page.keyboard().press("Escape");
            page.keyboard().press("Escape");
            kept(page, 1);
        }
    }

    @Test
    void arrows_reach_points_corners_and_receivers_and_what_is_taken_is_what_is_shown() {
        try (Page page = page("#open=A1&units=si&inlet=A1")) {
            hand(page, "g", "move");
            PlaywrightAssertions.assertThat(page.locator("#hand .cap")).hasText("inlet A1");
            StringBuilder seen = new StringBuilder();
            for (String key : "Right Right Right Right Right Right Right Right Right Up Up Right Up Left".split(" ")) {
                page.keyboard().press("Arrow" + key);
                String taken = page.locator("#hand .cap").textContent();
                seen.append(taken).append('\n');
                String[] words = taken.split(" ");
                String shown = switch (words[0]) {
                    case "inlet" -> "Inlet ";
                    case "corner" -> "Tube ";
                    case "point" -> "Point ";
                    default -> "Receiver station ";
                };
                PlaywrightAssertions.assertThat(page.locator("#piece h2")).hasText(shown + words[words.length - 1]);
                assertThat(page.locator(".hand .taken").count()).isEqualTo(1);
            }
            assertThat(seen.toString()).contains("point ").contains("corner ").contains("receiver REC");
            page.keyboard().press("/");
            page.keyboard().type("D2\n");
            PlaywrightAssertions.assertThat(page.locator("#piece h2")).hasText("Inlet D2");
            PlaywrightAssertions.assertThat(page.locator("#hand .cap")).hasText("inlet D2");
            picture(page, "keyboard-move-1366");
        }
    }

    @Test
    void several_are_taken_by_enter_and_moved_together() {
        try (Page page = page("#open=A1&units=si&inlet=A1")) {
            hand(page, "g", "move");
            PlaywrightAssertions.assertThat(page.locator("#hand .cap")).hasText("inlet A1");
            page.keyboard().press("Enter");
            said(page, "inlet A1 is held");
            page.keyboard().press("/");
            page.keyboard().type("A2\n");
            PlaywrightAssertions.assertThat(page.locator("#hand .cap")).hasText("inlet A1, inlet A2");
            page.keyboard().press("Enter");
            PlaywrightAssertions.assertThat(page.locator("#hand .cap")).hasText("inlet A1, inlet A2");
            page.keyboard().press("Shift+ArrowUp");
            kept(page, 2);
            assertThat(text(page))
                    .containsPattern("A1: \\{at: \\[ *4\\.5, 0\\.5, 1\\]")
                    .containsPattern("A2: \\{at: \\[[0-9. ]+, 0\\.5, 1\\]");
            page.keyboard().press("Escape");
            PlaywrightAssertions.assertThat(page.locator("#hand")).isHidden();
        }
    }
}
