package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** An empty plant file in a real Chromium: how a plant begins. */
class BeginPageTest extends InChromium {
    BeginPageTest() {
        super("bakery");
    }

    @BeforeEach
    void empty() throws Exception {
        studio.close();
        studio = Studio.open(
                Files.writeString(folder.resolve("empty.yaml"), ""), folder.resolve("empty.db"), 0, "dustwright test");
    }

    @Test
    void one_click_draws_a_plant_that_is_then_changed_by_hand() {
        for (int[] size : List.of(new int[] {1366, 768}, new int[] {390, 844})) {
            try (Page page = browser.page(size[0], size[1])) {
                page.onPageError(complaints::add);
                page.navigate(studio.address());
                page.waitForSelector("#starter");
                page.keyboard().press("g");
                picture(page, "begin-" + size[0]);
                serious(page, "begin " + size[0]);
            }
        }
        try (Page page = browser.page(1366, 768)) {
            page.onPageError(complaints::add);
            page.navigate(studio.address());
            page.locator("#starter").click();
            page.waitForSelector("#scale button");
            PlaywrightAssertions.assertThat(page.locator("#name")).hasText("New plant");
            PlaywrightAssertions.assertThat(page.locator("#begin")).isHidden();
            page.keyboard().press("n");
            PlaywrightAssertions.assertThat(page.locator("#hint")).containsText("Click where the new inlet is");
            page.waitForTimeout(500);
            var drawing = page.locator("#drawing").boundingBox();
            page.mouse().click(drawing.x + drawing.width * 0.45, drawing.y + drawing.height * 0.3);
            PlaywrightAssertions.assertThat(page.locator("#say")).containsText("is laid like");
            picture(page, "begun-1366");
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    void the_plant_that_is_measured_has_as_many_inlets_as_asked() {
        Reading reading = PlantReader.read(LargePlant.text(300));
        assertThat(reading).isInstanceOf(Reading.Read.class);
        assertThat(((Reading.Read) reading).plant().inlets()).hasSize(300);
    }

    @Test
    void the_plant_to_begin_with_is_read() {
        Reading reading = PlantReader.read(Studio.starter());
        assertThat(reading).isInstanceOf(Reading.Read.class);
        assertThat(((Reading.Read) reading).plant().inlets()).hasSize(2);
    }
}
