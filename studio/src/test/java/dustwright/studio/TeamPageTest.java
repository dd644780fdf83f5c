package dustwright.studio;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import dustwright.studio.People.Role;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Signing in, roles and sign-off in a real Chromium; and texts that are written to run as a script there. */
class TeamPageTest extends InChromium {
    /** Runs where a page takes text for markup: as an element, out of an attribute, or out of a script. */
    private static final String HOSTILE =
            "\"><img src=x data-planted=1 onerror=window.planted=1><script>window.planted=1</script>";

    /** Until every set of the example is covered, on a machine that does much else. */
    private static final double COVERED_ms = 180_000;

    @SuppressWarnings("NullAway.Init")
    @TempDir
    private Path team;

    TeamPageTest() {
        super("bakery-one-main");
    }

    @BeforeEach
    void people() throws IOException {
        close();
        Store store = Store.open(team.resolve("kept.db"));
        Team.setUp(store);
        new People(store).put(HOSTILE.substring(0, 70), Role.DESIGNER, Team.PASSWORD.toCharArray());
        studio = Studio.open(
                store,
                new Studio.Opening(
                        Plants.copy("bakery-one-main", team), "bakery", "127.0.0.1", 0, "dustwright test", false));
    }

    private Page page() {
        Page page = browser.page(1366, 768);
        page.onPageError(error -> {
            if (!error.contains("You are not signed in")) {
                complaints.add(error);
            }
        });
        page.onConsoleMessage(message -> {
            if (message.text().contains("Content Security Policy")) {
                complaints.add(message.text());
            }
        });
        page.navigate(studio.address());
        return page;
    }

    private static void signIn(Page page, String name) {
        page.keyboard().type(name);
        page.keyboard().press("Tab");
        page.keyboard().type(Team.PASSWORD);
        page.keyboard().press("Enter");
        page.waitForSelector("#drawing svg");
    }

    /** Browsers keep cookies by host and not by port. */
    @Test
    void a_studio_on_another_database_of_this_machine_signs_nobody_out() throws IOException {
        Store store = Store.open(team.resolve("other.db"));
        Team.setUp(store);
        try (Studio other = Studio.open(
                        store,
                        new Studio.Opening(
                                Plants.copy("bakery-one-main", Files.createDirectories(team.resolve("other"))),
                                "other",
                                "127.0.0.1",
                                0,
                                "dustwright test",
                                false));
                Page page = page()) {
            signIn(page, "Dora");
            page.navigate(other.address());
            signIn(page, "Vera");
            shows(page, "#person", "Vera");
            page.navigate(studio.address());
            shows(page, "#person", "Dora");
        }
    }

    @Test
    void by_keyboard_alone_one_signs_in_after_a_wrong_try_and_out_again() {
        try (Page page = page()) {
            assertThat(page).hasURL(studio.address() + "sign-in");
            serious(page, "sign in");
            picture(page, "sign-in-1366");
            page.keyboard().type("Dora");
            page.keyboard().press("Tab");
            page.keyboard().type("not the password");
            page.keyboard().press("Enter");
            assertThat(page.locator("#why")).containsText("do not belong together");
            page.locator("#who").focus();
            page.keyboard().press("Control+A");
            signIn(page, "Dora");
            assertThat(page.locator("#person")).containsText("designer");
            page.keyboard().press("Escape");
            page.locator("#keys").focus();
            page.keyboard().press("Enter");
            page.locator("#oldword").focus();
            for (String typed : List.of(Team.PASSWORD, "other dull words", "other dull words")) {
                page.keyboard().type(typed);
                page.keyboard().press("Tab");
            }
            page.keyboard().press("Enter");
            shows(page, "#passwordhint", "Your password is changed.");
            serious(page, "password");
            page.locator("#keys").focus();
            page.keyboard().press("Enter");
            page.locator("#person button").focus();
            page.keyboard().press("Enter");
            assertThat(page).hasURL(studio.address() + "sign-in");
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    void a_designer_accepts_a_checker_signs_off_and_a_viewer_sees_both() throws Exception {
        try (Page page = page()) {
            signIn(page, "Dora");
            assertThat(page.locator("#person")).containsText("Dora");
            page.locator("[data-place=papers]").click();
            assertThat(page.locator("#author")).hasValue("Dora");
            page.locator("#note").fill("first issue");
            page.locator("#accept button").click();
            assertThat(page.locator("#revisions")).containsText("Not signed off.");
        }
        try (Page page = page()) {
            signIn(page, "Carl");
            assertThat(page.locator("#back")).isDisabled();
            page.locator("[data-place=papers]").click();
            page.locator(".signoff button").click();
            assertThat(page.locator(".check")).containsText("No revision before it is signed off");
            assertThat(page.locator(".check [role=status]")).containsText("Coverage of every set of this revision: ");
            page.locator(".check input").fill("as discussed");
            assertThat(page.locator(".check button").first())
                    .isEnabled(new LocatorAssertions.IsEnabledOptions().setTimeout(COVERED_ms));
            page.locator(".check button").first().click();
            assertThat(page.locator("#revisions")).containsText("Carl: as discussed");
            picture(page, "signed-off-1366");
            Team dora = Team.signedIn(studio, "Dora");
            assertThat(dora.tube("HP1", "T2").statusCode()).isEqualTo(200);
            post(dora, "api/accept", node -> node);
            page.locator("[data-place=plan]").click();
            page.locator("[data-place=papers]").click();
            page.locator(".signoff button").click();
            assertThat(page.locator(".check .differ li")).hasCount(1);
            assertThat(page.locator(".check .differ")).containsText("tube: T2");
            serious(page, "check");
            picture(page, "check-1366");
            page.locator(".check button").last().click();
            shows(page, "#say", "A revision is refused with a reason");
            page.locator(".check input").fill("too thin");
            page.locator(".check button").last().click();
            assertThat(page.locator("#revisions")).containsText("Carl: too thin");
        }
        try (Page page = page()) {
            signIn(page, "Vera");
            for (String hand : List.of("move", "inlet", "tube", "wall", "floor")) {
                assertThat(page.locator("[data-hand=" + hand + "]")).isDisabled();
            }
            page.keyboard().press("w");
            assertThat(page.locator("#say")).containsText("a designer makes changes");
            page.keyboard().press("/");
            page.keyboard().type("A1\n");
            assertThat(page.locator("#piece h2")).hasText("Inlet A1");
            assertThat(page.locator("#piece input").first()).not().isEditable();
            inOneRow(page);
            picture(page, "viewer-1366");
            assertThat(page.locator("#plan .may")).isVisible();
            page.locator("[data-place=text]").click();
            assertThat(page.locator("#source")).not().isEditable();
            assertThat(page.locator("#text .may")).hasText("A viewer looks; a designer makes changes.");
            page.locator("[data-place=papers]").click();
            assertThat(page.locator("#accept")).isHidden();
            assertThat(page.locator("#revisions")).containsText("Carl: as discussed");
            assertThat(page.locator(".signoff")).hasCount(0);
            assertThat(page.locator("#revisions li > button").first()).isDisabled();
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    void back_over_a_step_of_somebody_else_asks_first_and_who_made_it_is_told_and_finds_it_again() throws Exception {
        try (Store store = Store.open(team.resolve("kept.db"))) {
            new People(store).put("Zoe", Role.DESIGNER, Team.PASSWORD.toCharArray());
        }
        Team zoe = Team.signedIn(studio, "Zoe");
        assertThat(zoe.tube("HP1", "T2").statusCode()).isEqualTo(200);
        try (Page hers = page();
                Page page = page()) {
            signIn(hers, "Zoe");
            signIn(page, "Dora");
            kept(page, 2);
            kept(hers, 2);
            page.locator("#back").click();
            shows(page, "#say", "Step 2 was made by Zoe: runs.HP1.tube: T2. Nothing was taken back.");
            serious(page, "back over somebody's step");
            page.locator("#say button").click();
            shows(page, "#say", "One step back: “runs.HP1.tube: T2” is undone.");
            shows(hers, "#say", "Dora went back to step 1");
            Team.signedIn(studio, "Dora").tube("HP11", "T2");
            kept(page, 2);
            shows(hers, "#say", "left behind by this step of Dora");
            hers.locator("[data-place=papers]").click();
            hers.locator("#leftbehind summary").click();
            shows(hers, "#left", "Step 2 by Zoe");
            hers.locator("#left button").click();
            kept(hers, 3);
            assertThat(text(hers)).contains("tube: T2");
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    void who_is_no_longer_signed_in_is_told_so_and_goes_on_after_signing_in_on_another_page() throws Exception {
        try (Page page = page()) {
            signIn(page, "Dora");
            kept(page, 1);
            try (Store store = Store.open(team.resolve("kept.db"))) {
                new People(store).put("Dora", Role.DESIGNER, Team.PASSWORD.toCharArray());
            }
            page.locator("[data-place=machines]").click();
            shows(page, "#kept", "signed out");
            shows(page, "#say", "Sign in on a page of its own");
            Page other = page.waitForPopup(() -> page.locator("#say a").click());
            other.waitForSelector("#who:focus");
            signIn(other, "Dora");
            kept(page, 1);
            shows(page, "#person", "Dora");
            assertThat(page.locator("#machineindex")).containsText("REC");
        }
        assertThat(complaints).isEmpty();
    }

    /** Who is signed in leaves the register whole: nothing of it is cut off, Find keeps its word. */
    private static void inOneRow(Page page) {
        assertThat(
                        page.evaluate(
                                "() => [...document.querySelectorAll('.plant span, .plant small, .aids *, .places button')].filter(one => one.checkVisibility() && (one.scrollWidth > one.clientWidth + 1 && getComputedStyle(one).display !== 'inline' && one.tagName !== 'INPUT' || one.getBoundingClientRect().right > innerWidth)).map(one => one.textContent).join('; ')"))
                .isEqualTo("");
        assertThat(page.locator(".find > span")).isVisible();
        assertThat(page.evaluate("() => document.querySelector('.find > span').getBoundingClientRect().left > 0"))
                .isEqualTo(true);
    }

    /** Every text a person can give: names and notes of the plant file, of inlets, revisions, alternatives, people, sign-offs. */
    @Test
    void texts_written_as_scripts_stay_texts_on_every_page() throws Exception {
        String person = HOSTILE.substring(0, 70);
        Team designer = Team.signedIn(studio, person);
        String text = designer.json("api/text").path("text").asText();
        String planted = text.replaceAll("(?m)^  (name|note): .*", "  $1: '" + HOSTILE + "'")
                .replaceAll("\\{name: [A-Z][^,}]*", "{name: '" + HOSTILE + "'");
        assertThat(planted.split("window.planted", -1)).hasSizeGreaterThan(10);
        post(designer, "api/text", node -> node.put("text", planted));
        assertThat(designer.json("api/plant").path("faults")).isEmpty();
        post(designer, "api/accept", node -> node.put("note", HOSTILE));
        post(designer, "api/alternative", node -> node.put("name", HOSTILE.substring(0, 58)));
        assertThat(Team.signedIn(studio, "Carl")
                        .post(
                                "api/sign",
                                Team.JSON
                                        .createObjectNode()
                                        .put("revision", 1)
                                        .put("note", HOSTILE)
                                        .toString())
                        .statusCode())
                .isEqualTo(200);
        try (Page page = page()) {
            signIn(page, person);
            for (String place : List.of("text", "panel", "compare", "papers", "plan")) {
                page.locator("[data-place=" + place + "]").click();
                page.waitForTimeout(1500);
                clean(page, place);
            }
            page.locator("[data-place=papers]").click();
            assertThat(page.locator("#revisions")).containsText("<script>");
            page.locator("#packages button:text-is('Make')").first().click();
            page.waitForSelector("a[href*='name=report.html']");
            page.navigate(studio.address() + "api/papers/file?paper=report&name=report.html");
            clean(page, "report");
            assertThat(page.locator("body")).containsText("<script>");
        }
        assertThat(complaints).isEmpty();
    }

    private static void clean(Page page, String place) {
        assertThat(page.evaluate("() => document.querySelectorAll('[data-planted]').length + (window.planted ?? 0)"))
                .as(place)
                .isEqualTo(0);
    }

    private interface Filled {
        ObjectNode with(ObjectNode node);
    }

    private static void post(Team by, String path, Filled filled) throws IOException, InterruptedException {
        ObjectNode body = Team.JSON
                .createObjectNode()
                .put("version", by.json("api/plant").path("version").asLong());
        assertThat(by.post(path, filled.with(body).toString()).statusCode())
                .as(path)
                .isEqualTo(200);
    }
}
