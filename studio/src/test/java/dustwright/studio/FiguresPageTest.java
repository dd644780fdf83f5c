package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.BoundingBox;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A plant one begins with is built up in a real Chromium, without its text: machines set by hand, every figure in a field. */
class FiguresPageTest extends InChromium {
    FiguresPageTest() {
        super("bakery");
    }

    @BeforeEach
    void beginning() throws Exception {
        studio.close();
        studio = Studio.open(
                Files.writeString(folder.resolve("mill.yaml"), Studio.starter()),
                folder.resolve("mill.db"),
                0,
                "dustwright test");
    }

    private static Locator field(Page page, String name) {
        return page.locator("#piece [aria-label=\"" + name + "\"]");
    }

    private static void fill(Page page, String name, String value) {
        field(page, name).fill(value);
        field(page, name).press("Enter");
    }

    /** A step is kept and the fields are those of the plant after it. */
    private static void shown(Page page, int step) {
        kept(page, step);
        PlaywrightAssertions.assertThat(page.locator("#piece")).hasAttribute("data-version", String.valueOf(step));
    }

    private static void press(Page page, String button) {
        page.locator("#piece button:text-is('" + button + "')").first().click();
    }

    private static void say(Page page, String key) {
        page.locator("#piece select.more")
                .selectOption(new com.microsoft.playwright.options.SelectOption().setLabel(key));
    }

    @Test
    void machines_are_set_by_mouse_and_back_undoes_them() {
        try (Page page = visit(1366, 768, "#open=A1&units=si")) {
            String before = text(page);
            page.locator("button[data-hand=machine]").click();
            page.locator("#hand select").first().selectOption("container");
            double[] receiver = receiver(page);
            page.mouse().click(receiver[0], receiver[1]);
            shows(page, "#piece h2", "container");
            fill(page, "volume", "0.2 m3");
            shown(page, 2);
            shows(page, "#piece", "7.063 ft³");
            page.locator("#hand select").first().selectOption("producers");
            page.mouse().click(receiver[0], receiver[1]);
            press(page, "New producer");
            shows(page, "#piece", "Not written yet");
            picture(page, "figures-draft-1366");
            serious(page, "a producer to be filled in");
            press(page, "Like P1 of REC");
            shown(page, 3);
            fill(page, "motor", "11 kW");
            shown(page, 4);
            page.locator("#hand select").first().selectOption("panel");
            page.mouse().click(receiver[0], receiver[1] + 90);
            shown(page, 5);
            shows(page, "#piece h2", "panel");
            picture(page, "figures-panel-1366");
            page.locator("#hand select").first().selectOption("receiver");
            BoundingBox inlet = page.locator("[data-inlet=A1] .catch").boundingBox();
            page.mouse().click(inlet.x + inlet.width / 2, inlet.y + inlet.height / 2);
            page.mouse().click(inlet.x - 60, inlet.y + inlet.height / 2);
            page.mouse().click(inlet.x - 60, inlet.y + inlet.height / 2);
            shown(page, 6);
            shows(page, "#piece h2", "Receiver station REC-2");
            shows(page, "#block", "solved");
            picture(page, "figures-receiver-1366");
            for (int n = 0; n < 5; n++) {
                page.locator("#back").click();
            }
            kept(page, 1);
            assertThat(text(page)).isEqualTo(before);
        }
        assertThat(complaints).isEmpty();
    }

    private static double[] receiver(Page page) {
        page.waitForSelector(".hand .grip");
        // The receiver is the grip farthest to the right.
        double[] at = {0, 0};
        for (Locator grip : page.locator(".hand .grip").all()) {
            BoundingBox box = grip.boundingBox();
            if (box.x > at[0]) {
                at[0] = box.x;
                at[1] = box.y;
            }
        }
        return new double[] {at[0] + 3, at[1] + 3};
    }

    @Test
    void a_receiver_and_the_panel_are_set_by_keys_alone() {
        try (Page page = visit(1366, 768, "#open=A1&units=si&inlet=A1")) {
            page.keyboard().press("s");
            shows(page, "#hint", "from which a tube leads to the new receiver");
            page.locator("#drawing").focus();
            page.keyboard().press("ArrowLeft");
            page.keyboard().press("ArrowRight");
            shows(page, "#say", "inlet A1");
            page.keyboard().press("Enter");
            shows(page, "#say", "The tube begins at A1");
            for (int n = 0; n < 8; n++) {
                page.keyboard().press("ArrowLeft");
            }
            page.keyboard().press("Enter");
            shows(page, "#say", "1 corner so far");
            page.keyboard().press("Enter");
            shown(page, 2);
            shows(page, "#piece h2", "Receiver station REC-2");
            page.getByLabel("Which machine").selectOption("panel");
            page.locator("#drawing").focus();
            page.keyboard().press("ArrowUp");
            page.keyboard().press("Enter");
            shown(page, 3);
            assertThat(text(page)).containsPattern("panel: *\\{at: ");
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    void every_figure_of_a_plant_is_filled_in_without_its_text() {
        try (Page page = visit(1366, 768, "#open=A1&units=us")) {
            page.keyboard().press("a");
            shows(page, "#piece h2", "The whole plant");
            picture(page, "figures-whole-1366");
            serious(page, "the whole plant");
            press(page, "dusts");
            press(page, "mixed");
            fill(page, "bulk density", "610 kg/m3");
            shown(page, 2);
            fill(page, "bulk density", "610");
            shows(page, "#piece", "density");
            field(page, "bulk density").press("Escape");
            say(page, "combustible");
            field(page, "combustible").selectOption("yes");
            press(page, "Add it");
            shown(page, 3);
            press(page, "The whole plant");
            press(page, "usage");
            press(page, "design sets");
            press(page, "New design set");
            shows(page, "#piece", "Not written yet");
            press(page, "The whole plant");
            press(page, "usage");
            press(page, "design sets");
            field(page, "New both").fill("A2");
            page.locator("#piece fieldset.list .away").last().click();
            shown(page, 4);
            field(page, "New both").fill("A2");
            press(page, "One more");
            shown(page, 5);
            press(page, "The whole plant");
            press(page, "requirements");
            say(page, "wear velocity");
            field(page, "wear velocity").fill("30 m/s");
            press(page, "Add it");
            shown(page, 6);
            fill(page, "Source of wear velocity", "owner's letter");
            shown(page, 7);
            picture(page, "figures-requirements-1366");
            press(page, "The whole plant");
            say(page, "supply");
            press(page, "Add it");
            shows(page, "#piece .why", "volts");
            field(page, "volts").fill("480 V");
            field(page, "hertz").fill("60 Hz");
            press(page, "Add it");
            shown(page, 8);
            shows(page, "#block", "solved");
            assertThat(text(page))
                    .contains("combustible: yes")
                    .contains("wear velocity: {value: 30 m/s, source: owner's letter}")
                    .contains("both: [A1, A2]")
                    .contains("supply: {volts: 480 V, hertz: 60 Hz}");
            for (int n = 0; n < 7; n++) {
                page.locator("#back").click();
            }
            kept(page, 1);
            assertThat(text(page)).isEqualTo(Studio.starter());
        }
        assertThat(complaints).allMatch(words -> words.contains("422"));
    }

    @Test
    void fields_are_read_at_every_size_by_day_and_by_night() {
        for (int[] size : List.of(new int[] {1366, 768}, new int[] {1920, 1080}, new int[] {390, 844})) {
            for (String light : List.of("day", "night")) {
                try (Page page = visit(size[0], size[1], "#open=A1&units=us&part=stations.REC.producers.P1")) {
                    page.evaluate("light => { document.documentElement.dataset.light = light; }", light);
                    PlaywrightAssertions.assertThat(field(page, "displacement")).isVisible();
                    serious(page, "a producer, " + light + " " + size[0]);
                    picture(page, "figures-" + light + "-" + size[0]);
                }
            }
        }
    }
}
