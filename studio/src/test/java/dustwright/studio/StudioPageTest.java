package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The pages in a real Chromium, by mouse and by keyboard alone. */
class StudioPageTest extends InChromium {
    StudioPageTest() {
        super("bakery-one-main");
    }

    private Page page(int width, int height, String address) {
        return visit(width, height, address);
    }

    @Test
    void clicking_an_inlet_opens_it_and_the_findings_are_those_of_the_new_set() {
        try (Page page = page(1366, 768, "#open=A1&units=us")) {
            assertThat(page.locator("#setname").textContent()).startsWith("A1, filter normal");
            page.locator("[data-inlet=C1] .catch").click();
            shows(page, "#setname", "A1+C1");
            assertThat(page.locator("#block").textContent()).contains("2 inlets open");
            assertThat(page.url()).contains("open=A1%2CC1").contains("inlet=C1");
            picture(page, "plan-1366");
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    void what_is_pointed_at_says_its_air_and_the_profile_is_that_of_the_chosen_way() {
        try (Page page = page(1366, 768, "#open=A1,C1,D1&units=us")) {
            page.locator("[data-run=DA1] .catch").hover(new Locator.HoverOptions().setForce(true));
            shows(page, "#pointed", "Tube DA1: ");
            shows(page, "#pointed", "scfm");
            shows(page, "#pointed", "ft/min");
            for (String inlet : List.of("A1", "D1")) {
                page.locator("#find").fill(inlet.toLowerCase(java.util.Locale.ROOT));
                page.locator("#find").press("Enter");
                PlaywrightAssertions.assertThat(page.locator("#piece h2")).hasText("Inlet " + inlet);
                shows(page, "#reading", "behind its valve");
                PlaywrightAssertions.assertThat(page.locator("#profile svg"))
                        .hasAttribute("aria-label", Pattern.compile(".*" + inlet + ".*"));
            }
            page.keyboard().press("z");
            picture(page, "shown-1366");
            assertThat(page.locator("#drawing svg").getAttribute("viewBox")).doesNotStartWith("0 0 ");
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    void by_keyboard_alone_one_finds_a_piece_opens_a_derivation_and_comes_back() {
        try (Page page = page(1366, 768, "#open=A1&units=us")) {
            page.keyboard().press("j");
            page.keyboard().press("Enter");
            page.waitForSelector("#steps:not([hidden])");
            assertThat(page.locator("#steps").textContent()).contains("TUB-6").contains("continuity");
            picture(page, "derivation-1366");
            page.keyboard().press("Escape");
            assertThat(page.locator("#steps").isVisible()).isFalse();
            page.keyboard().press("/");
            page.keyboard().type("C2");
            page.keyboard().press("Enter");
            PlaywrightAssertions.assertThat(page.locator("#piece h2")).hasText("Inlet C2");
            page.keyboard().press("o");
            shows(page, "#setname", "A1+C2");
            page.keyboard().press("ArrowRight");
            PlaywrightAssertions.assertThat(page.locator("#piece h2")).not().hasText("Inlet C2");
            page.keyboard().press("u");
            page.keyboard().press("3");
            shows(page, "#block", "3 inlets open");
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    void a_value_typed_at_a_tube_changes_the_plant_and_back_undoes_it() {
        try (Page page = page(1366, 768, "#open=A1&units=us&run=HP1")) {
            Locator tube = page.getByLabel("tube", new Page.GetByLabelOptions().setExact(true));
            String before = page.locator("#findings").textContent();
            tube.fill("T2");
            tube.press("Enter");
            shows(page, "#kept", "step 2, kept");
            PlaywrightAssertions.assertThat(page.locator("#findings")).not().hasText(before);
            tube.fill("T9");
            tube.press("Enter");
            Locator refused = page.locator("#piece .why").filter(new Locator.FilterOptions().setHasText("T9"));
            PlaywrightAssertions.assertThat(refused).hasCount(1);
            assertThat(refused.textContent())
                    .as("at the field itself no line of the file")
                    .doesNotContain("line ", "runs.HP1.tube");
            page.locator("#back").click();
            shows(page, "#kept", "step 1, kept");
            PlaywrightAssertions.assertThat(page.locator("#findings")).hasText(before);
        }
        // what the page refused shows as an answer that is none of "OK"; nothing else may complain
        assertThat(complaints).allMatch(text -> text.contains("422"));
    }

    @Test
    void what_another_page_changes_leaves_what_is_typed_or_refused_here() {
        try (Page one = page(1366, 768, "#open=A1&run=HP2");
                Page other = page(1366, 768, "#open=A1&run=HP1")) {
            Locator tube = other.getByLabel("tube", new Page.GetByLabelOptions().setExact(true));
            Locator refusal = other.locator("#piece .why").filter(new Locator.FilterOptions().setHasText("T9"));
            tube.fill("T9");
            tube.press("Enter");
            PlaywrightAssertions.assertThat(refusal).hasCount(1);
            other.waitForResponse(answer -> answer.url().contains("/api/part"), () -> {
                Locator there = one.getByLabel("tube", new Page.GetByLabelOptions().setExact(true));
                there.fill("T2");
                there.press("Enter");
            });
            shows(other, "#kept", "step 2, kept");
            PlaywrightAssertions.assertThat(tube).hasValue("T9");
            PlaywrightAssertions.assertThat(refusal).hasCount(1);
        }
        assertThat(complaints).allMatch(text -> text.contains("422"));
    }

    @Test
    void two_pages_on_one_plant_see_each_other_and_overwrite_nothing() {
        try (Page one = page(1366, 768, "#open=A1&run=HP1");
                Page other = page(1366, 768, "#open=A1&run=HP2")) {
            Locator tube = one.getByLabel("tube", new Page.GetByLabelOptions().setExact(true));
            tube.fill("T2");
            tube.press("Enter");
            shows(other, "#kept", "step 2, kept");
        }
    }

    @Test
    void text_is_typed_taken_and_its_fault_shown_by_line() {
        try (Page page = page(1366, 768, "#open=A1")) {
            page.keyboard().press("2");
            PlaywrightAssertions.assertThat(page.locator("#source")).hasValue(Pattern.compile("simultaneous users"));
            String text = page.locator("#source").inputValue();
            page.locator("#source").fill(text.replace("simultaneous users", "simultaneous usres"));
            page.locator("#take").click();
            page.waitForSelector("#faults button");
            assertThat(page.locator("#faults").textContent()).contains("simultaneous users");
            picture(page, "text-1366");
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    void an_alternative_is_kept_changed_compared_and_taken_up_again() {
        try (Page page = page(1366, 768, "#open=A1&run=HP1&units=us")) {
            page.keyboard().press("5");
            page.locator("#altname").fill("as it was");
            page.getByText("Keep the working copy as an alternative").click();
            shows(page, "#kepthint", "Kept as as it was");
            // opened with nothing kept, it shows what is kept since against the working copy
            PlaywrightAssertions.assertThat(page.locator("#before")).hasValue("a:as it was");
            PlaywrightAssertions.assertThat(page.locator("#after")).hasValue("now");
            page.locator("[data-place=plan]").click();
            page.locator("#piece input[aria-label=tube]").fill("T2");
            page.locator("#piece input[aria-label=tube]").press("Enter");
            shows(page, "#kept", "step 2");
            page.locator("[data-place=compare]").click();
            page.locator("#before").selectOption("a:as it was");
            shows(page, "#differences", "Dust carried in run HP1");
            shows(page, "#differences", "verdict differs");
            assertThat(page.locator(".pair svg").count()).isEqualTo(2);
            picture(page, "compare-1366");
            page.locator("#alternatives button").first().click();
            shows(page, "#kept", "step 3");
            shows(page, "#differences", "No requirement comes out differently.");
            page.locator("#altname").fill("as it was");
            page.getByText("Keep the working copy as an alternative").click();
            shows(page, "#kepthint", "Take another name");
        }
        assertThat(complaints).as("but for the name that was taken").allMatch(c -> c.contains("422"));
    }

    @Test
    void a_tour_goes_on_when_what_it_says_is_done() {
        try (Page page = page(1366, 768, "#open=A1&units=us")) {
            assertThat(page.locator("#tour").isVisible()).isFalse();
            page.keyboard().press("?");
            page.locator("#tourbegin").click();
            shows(page, "#toursay", "Stop 1 of 10");
            picture(page, "tour-1366");
            page.locator("[data-inlet=C1] .catch").click();
            shows(page, "#toursay", "Stop 2 of 10");
            shows(page, "#setname", "A1+C1");
            page.locator("#findings button").first().click();
            shows(page, "#toursay", "Stop 3 of 10");
            page.keyboard().press("Escape");
            shows(page, "#toursay", "Stop 4 of 10");
            page.locator("#scale button").first().click();
            shows(page, "#toursay", "Stop 5 of 10");
            page.locator("#tournext").click();
            shows(page, "#toursay", "Stop 6 of 10");
            page.locator("#tourend").click();
            assertThat(page.locator("#tour").isVisible()).isFalse();
            assertThat(page.locator(".toured").count()).isZero();
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    void a_revision_is_accepted_with_a_name_and_listed() {
        try (Page page = page(1366, 768, "#open=A1")) {
            page.keyboard().press("6");
            page.locator("#author").fill("A. Engineer");
            page.locator("#note").fill("as quoted");
            page.getByText("Accept this revision").click();
            shows(page, "#revisions", "A. Engineer: as quoted");
            shows(page, "#accepted", "Revision 1 is kept. Coverage of every set: ");
            page.getByText("Accept this revision").click();
            shows(page, "#accepted", "This is revision 1 already");
            PlaywrightAssertions.assertThat(page.locator("#revisions li")).hasCount(1);
            picture(page, "papers-1366");
        }
        assertThat(complaints).allMatch(text -> text.contains("422"));
    }

    @Test
    void a_value_typed_while_nothing_answers_waits_in_the_page_and_is_sent() throws IOException {
        try (Page page = page(1366, 768, "#open=A1&units=us&run=HP1")) {
            Locator tube = page.locator("#piece input[aria-label=tube]");
            PlaywrightAssertions.assertThat(tube).isVisible();
            away(() -> {
                shows(page, "#kept", "not answering");
                tube.fill("T2");
                tube.press("Enter");
                shows(page, "#piece", "It is kept in this page and will be sent");
                shows(page, "#kept", "kept up to step 1, 1 edit waits to be sent");
                picture(page, "unanswered-1366");
            });
            shows(page, "#say", "The edit that waited is taken.");
            shows(page, "#kept", "step 2, kept");
            PlaywrightAssertions.assertThat(tube).hasValue("T2");
            assertThat((String) page.evaluate("async () => (await (await fetch('/api/text')).json()).text"))
                    .containsPattern("HP1: .*tube: T2");
        }
    }

    @Test
    void what_is_drawn_or_typed_as_text_while_nothing_answers_is_told_and_not_lost() throws IOException {
        try (Page page = page(1366, 768, "#open=A1&units=si&inlet=A1")) {
            page.keyboard().press("w");
            for (String east : List.of("2 m", "14 m")) {
                page.getByLabel("Corner east").fill(east);
                page.getByLabel("Corner north").fill("10 m");
                page.locator("#hand button:text-is('Next corner')").click();
            }
            away(() -> {
                shows(page, "#kept", "not answering");
                page.locator("#hand button:text-is('End the wall')").click();
                shows(page, "#say", "What you drew waits in this page and will be sent");
                shows(page, "#kept", "1 edit waits to be sent");
                picture(page, "drawn-unanswered-1366");
            });
            shows(page, "#say", "The edit that waited is taken.");
            kept(page, 2);
            page.locator("[data-place=text]").click();
            PlaywrightAssertions.assertThat(page.locator("#source")).hasValue(Pattern.compile("W1: "));
            page.locator("#source").fill(page.locator("#source").inputValue() + "# mine\n");
            away(() -> {
                shows(page, "#kept", "not answering");
                page.locator("#take").click();
                shows(page, "#texthint", "not kept: the studio is not answering");
            });
            PlaywrightAssertions.assertThat(page.locator("#kept")).not().containsText("not answering");
            page.locator("#take").click();
            kept(page, 3);
            assertThat(text(page)).endsWith("# mine\n");
        }
    }

    @Test
    void a_derivation_on_a_page_in_inches_has_its_figures_in_inches_and_as_the_formula_takes_them() {
        try (Page page = page(1366, 768, "#open=A1&units=us")) {
            page.locator(".noted").first().click();
            shows(page, "#steps", "ft/min (");
            shows(page, "#steps", "in (");
            picture(page, "derivation-us-1366");
            page.locator("#units").click();
            page.locator(".noted").first().click();
            PlaywrightAssertions.assertThat(page.locator("#steps")).not().containsText("ft/min");
        }
    }

    /** A button without a name is critical, letters of hardly any contrast are serious (WCAG 2.2, 4.1.2 and 1.4.3). */
    @Test
    void a_serious_fault_of_access_is_found_where_there_is_one() {
        try (Page page = page(1366, 768, "#open=A1")) {
            page.evaluate("document.querySelector('main').insertAdjacentHTML('afterbegin',"
                    + " '<button></button><p style=\"color: #777; background: #888\">hardly read</p>')");
            assertThatThrownBy(() -> serious(page, "spoilt"))
                    .isInstanceOf(AssertionError.class)
                    .hasMessageContaining("button-name: <button></button>")
                    .hasMessageContaining("color-contrast: <p");
        }
    }

    @Test
    void no_serious_fault_of_access_by_day_by_night_and_on_a_phone() {
        for (String place : List.of("plan", "text", "compare", "papers")) {
            for (int[] size : new int[][] {{1366, 768}, {1920, 1080}, {390, 844}}) {
                try (Page page = page(size[0], size[1], "#open=A1&run=HP1&place=" + place)) {
                    page.waitForTimeout(300);
                    serious(page, place + " " + size[0]);
                    if (size[0] < 500) {
                        page.locator("#tools").click();
                    }
                    page.locator("#light").click();
                    serious(page, place + " by night " + size[0]);
                    picture(page, place + "-night-" + size[0]);
                }
            }
        }
    }

    /** At most three at once, two in the south and one at the allergen corner, says the plant file. */
    @Test
    void the_index_of_the_users_scale_stands_at_the_set_shown_and_a_set_nobody_asks_for_says_so() {
        try (Page page = page(1366, 768, "#open=A1&units=us")) {
            Locator three = page.locator("#scale [data-users='3']");
            PlaywrightAssertions.assertThat(page.locator("#own")).containsText("the set shown");
            three.click();
            PlaywrightAssertions.assertThat(three).hasAttribute("aria-checked", "true");
            shows(page, "#scale [data-users='3'] .nth", "set 1 of ");
            PlaywrightAssertions.assertThat(page.locator("#own")).hasCount(0);
            PlaywrightAssertions.assertThat(page.locator("#say")).isEmpty();
            page.keyboard().press("]");
            shows(page, "#scale [data-users='3'] .nth", "set 2 of ");
            shows(page, "#say", "Set 2 of ");
            page.locator("#shut").click();
            for (String inlet : List.of("A1", "A2", "B3", "G1", "G2")) {
                page.locator("[data-inlet=" + inlet + "] .catch").click();
            }
            PlaywrightAssertions.assertThat(page.locator("#say")).isEmpty();
            PlaywrightAssertions.assertThat(page.locator("#scale [data-users][aria-checked=true]"))
                    .hasCount(0);
            String why = "5 users of at most 3, 3 in south of at most 2, 2 in allergen of at most 1";
            shows(page, "#own", "not asked: " + why);
            shows(page, "#own", "5 users");
            shows(page, "#block", "Not asked" + why);
            String margin = page.locator("#findings .m").first().textContent();
            shows(page, "#own", margin);
            picture(page, "not-asked-1366");
            serious(page, "a set nobody asks for");
            three.click();
            PlaywrightAssertions.assertThat(three).hasAttribute("aria-checked", "true");
            PlaywrightAssertions.assertThat(page.locator("#own")).hasCount(0);
            PlaywrightAssertions.assertThat(page.locator("#block")).not().containsText("Not asked");
        }
        assertThat(complaints).isEmpty();
    }

    /** No ink of the paper stays as it is by night: a wall would be the brightest of all. */
    @Test
    void by_night_every_ink_of_a_drawing_is_exchanged() {
        try (Page page = page(1366, 768, "#open=A1,C1,D1&units=us")) {
            page.evaluate("document.documentElement.dataset.light = 'night'");
            assertThat((List<?>) page.evaluate("""
                    () => [...new Set([...document.querySelectorAll('#drawing svg *, #profile svg *')].flatMap(one => ['fill', 'stroke']
                      .filter(name => {
                        const hex = /^#(..)(..)(..)$/.exec(one.getAttribute(name) ?? '');
                        return hex && getComputedStyle(one)[name] === `rgb(${hex.slice(1).map(part => parseInt(part, 16)).join(', ')})`;
                      }).map(name => `${name} ${one.getAttribute(name)} in ${one.closest('[data-layer]')?.dataset.layer}`)))]
                    """)).isEmpty();
            picture(page, "night-1366");
        }
    }

    @Test
    void the_whole_plant_names_the_tubes_that_are_short_or_thin_and_a_closer_look_all() {
        try (Page page = page(1366, 768, "#open=A1,C1,D1&units=us")) {
            Locator holds = page.locator("#drawing [data-tag=holds] text").first();
            page.waitForSelector("#drawing [data-tag=chief] text");
            assertThat(page.locator("#drawing [data-tag=holds]").count()).isPositive();
            PlaywrightAssertions.assertThat(holds).hasCount(0);
            String one = String.valueOf(
                    page.locator("#drawing [data-tag=holds]").first().getAttribute("data-name"));
            page.locator("#find").fill(one);
            page.locator("#find").press("Enter");
            PlaywrightAssertions.assertThat(page.locator("#drawing [data-tag=holds][data-name='" + one + "'] text")
                            .first())
                    .hasText(one);
            page.keyboard().press("Escape");
            PlaywrightAssertions.assertThat(holds).hasCount(0);
            for (int n = 0; n < 6; n++) {
                page.keyboard().press("+");
            }
            PlaywrightAssertions.assertThat(holds).hasCount(1);
        }
    }

    @Test
    void the_legend_says_of_what_it_is_and_in_the_words_of_the_classes() {
        try (Page page = page(1366, 768, "#open=A1&units=us")) {
            shows(page, ".legend p", "margin to the nearest limit in this set");
            for (String word : List.of("far short", "short", "thin", "fair", "ample", "no dust")) {
                shows(page, ".legend", word);
            }
        }
    }

    @Test
    void help_is_left_by_escape_from_its_search_and_night_stays_over_a_reload() {
        try (Page page = page(1366, 768, "#open=A1&units=us")) {
            page.keyboard().press("v");
            PlaywrightAssertions.assertThat(page.locator("#termsearch")).isFocused();
            page.keyboard().press("Escape");
            PlaywrightAssertions.assertThat(page.locator("#help")).isHidden();
            page.keyboard().press("d");
            Object light = page.evaluate("document.documentElement.dataset.light");
            page.reload();
            assertThat(page.evaluate("document.documentElement.dataset.light"))
                    .isEqualTo(light)
                    .isNotNull();
        }
    }
}
