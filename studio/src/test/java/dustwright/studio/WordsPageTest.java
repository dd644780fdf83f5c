package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.Media;
import dustwright.documents.writing.Wording;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Words of the trade open their explanation, and each place prints, in a real Chromium. */
class WordsPageTest extends InChromium {
    private static final int PICTURE_dpi = 60;

    @SuppressWarnings("NullAway.Init")
    @TempDir
    private Path prints;

    WordsPageTest() {
        super("bakery-one-main");
    }

    private Page page(int width, int height, String address) {
        return visit(width, height, address, "#findingscolumn .term, #machinescolumn .term");
    }

    @Test
    void a_word_opens_beside_the_page_by_pointer_and_by_keyboard_and_the_way_back_leads_to_it() {
        try (Page page = page(1366, 768, "#open=A1&units=us")) {
            Locator word = page.locator("#findingscolumn h2 .term").first();
            word.click();
            shows(page, "#term", "One requirement at one place in one state");
            shows(page, "#term .mark", "this program's own word");
            picture(page, "word-1366");
            serious(page, "a word");
            page.keyboard().press("Escape");
            assertThat(page.locator("#term").isVisible()).isFalse();
            PlaywrightAssertions.assertThat(word).isFocused();
            page.keyboard().press("Enter");
            PlaywrightAssertions.assertThat(page.locator("#term")).isVisible();
            page.keyboard().press("Escape");
            page.locator("#findings button").first().click();
            PlaywrightAssertions.assertThat(page.locator("#steps .term").first())
                    .isVisible();
            page.keyboard().press("3");
            page.locator("#machinebody h3 .term").first().click();
            PlaywrightAssertions.assertThat(page.locator("#machinescolumn #term"))
                    .isVisible();
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    void the_list_of_words_is_searched_by_keyboard() {
        try (Page page = page(1366, 768, "#open=A1")) {
            page.keyboard().press("v");
            PlaywrightAssertions.assertThat(page.locator("#termsearch")).isFocused();
            page.keyboard().type("saltation");
            PlaywrightAssertions.assertThat(page.locator("#termlist summary").first())
                    .hasText("saltation");
            shows(page, "#termlist", "Rizk 1973");
            picture(page, "words-1366");
            serious(page, "words");
            page.locator("#termsearch").fill("no such word");
            shows(page, "#termcount", "No word here has");
            page.locator("#termsearch").fill("");
            page.locator("#termlist summary").first().focus();
            page.keyboard().press("Enter");
            assertThat(page.locator("#termlist details[open]").count()).isEqualTo(1);
            page.keyboard().press("Escape");
            finds(page, "rec", "#piece h2", "Receiver station REC");
            finds(page, "settles in run HP2", "#findings [aria-current=true] b", "Dust settles in run HP2");
            finds(page, "relief valve", "#findingscolumn #term h2", "vacuum relief valve");
        }
        assertThat(complaints).isEmpty();
    }

    private static void finds(Page page, String words, String place, String shown) {
        page.locator("#find").fill(words);
        page.locator("#find").press("Enter");
        shows(page, place, shown);
    }

    /** On paper nothing is cut off at the right, all of a place is there, and the page is white though the screen is dark. */
    @Test
    void each_place_prints_in_full_by_day_on_both_papers() throws IOException {
        for (String place : List.of("plan", "text", "machines", "panel", "compare", "papers")) {
            for (String paper : List.of("A4", "Letter")) {
                try (Page page = page(1366, 768, "#open=A1&units=us&place=" + place)) {
                    page.locator("#light").click();
                    PlaywrightAssertions.assertThat(page.locator(marker(place)).first())
                            .isVisible();
                    page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
                    Path pdf = prints.resolve(place + ".pdf");
                    page.pdf(new Page.PdfOptions().setPath(pdf).setFormat(paper).setPrintBackground(true));
                    printed(place, paper, pdf);
                }
            }
        }
    }

    @Test
    void on_paper_the_profile_is_as_wide_as_the_paper() {
        try (Page page = page(700, 1000, "#open=A1&units=us")) {
            PlaywrightAssertions.assertThat(page.locator("#profile svg")).isVisible();
            page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
            assertThat(
                            (Boolean)
                                    page.evaluate(
                                            "document.querySelector('#profile svg').getBoundingClientRect().right <= document.documentElement.clientWidth"))
                    .isTrue();
            // Labels are written for the paper, none beyond the drawing.
            assertThat(page.evaluate("""
                                    () => {
                                      dispatchEvent(new Event('beforeprint'));
                                      const sheet = document.querySelector('#drawing svg').getBoundingClientRect();
                                      const tags = [...document.querySelectorAll('#drawing .tag')].map(tag => tag.getBoundingClientRect());
                                      return tags.length > 20 && tags.every(tag => tag.left >= sheet.left - 1 && tag.right <= sheet.right + 1 && tag.top >= sheet.top - 1 && tag.bottom <= sheet.bottom + 1);
                                    }""")).isEqualTo(true);
        }
    }

    private static String marker(String place) {
        return switch (place) {
            case "machines" -> "#machinebody .opens";
            case "panel" -> "#plate .lamp";
            case "papers" -> "#packages li";
            case "compare" -> "#compare h2";
            case "text" -> "#source";
            default -> "#drawing svg";
        };
    }

    private static void printed(String place, String paper, Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            String text = new PDFTextStripper().getText(document);
            assertThat(text).as(place).contains("Bakery").doesNotContain("Day / night");
            PDFTextStripper first = new PDFTextStripper();
            first.setEndPage(1);
            assertThat(first.getText(document).replaceAll("\\s+", " "))
                    .as("head of " + place)
                    .containsPattern("Printed 20[0-9]{2}-[0-9]{2}-[0-9]{2} ")
                    .contains("draft: no revision is accepted yet")
                    .contains(Wording.SCREENING);
            if (place.equals("panel")) {
                assertThat(first.getText(document)).contains("not connected to a plant");
            }
            if (place.equals("compare")) {
                assertThat(text).doesNotContain("Findings").doesNotContain("margin to the nearest limit");
            }
            if (place.equals("machines")) {
                assertThat(document.getNumberOfPages()).as("all sheets").isBetween(5, 40);
                assertThat(text).contains("Running cost").contains("they meet at");
            }
            BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, PICTURE_dpi);
            assertThat(image.getRGB(4, 4) & 0xFFFFFF).as(place + " is white").isEqualTo(0xFFFFFF);
            Path picture = Path.of("target", "screens", "print-" + place + "-" + paper + ".png");
            try (OutputStream out = Files.newOutputStream(picture)) {
                ImageIO.write(new PDFRenderer(document).renderImageWithDPI(0, 2 * PICTURE_dpi), "png", out);
            }
        }
    }
}
