package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** Tests of pages in a real Chromium, each on a studio of its own with a copy of an example. Pictures lie in target/screens. */
abstract class InChromium {
    /** For a machine that does much else. */
    private static final double LONGEST_WAIT_ms = 30_000;

    /**
     * Sought and picked out in the page, of which nothing but the faults is sent here: what is in order are thousands of elements. What is pale on purpose while newer figures are on their way is
     * waited for.
     */
    private static final String FAULTS_OF_ACCESS = """
            async () => {
              for (let n = 0; n < 200 && document.querySelector('.stale:not(#drawing)'); n++) await new Promise(on => setTimeout(on, 50));
              return (await axe.run(document, {resultTypes: ['violations'], selectors: false})).violations
                .filter(rule => ['serious', 'critical'].includes(rule.impact))
                .map(rule => `${rule.id}: ${rule.nodes[0].html}`);
            }
            """;

    private static final Path SCREENS = Path.of("target", "screens");

    @SuppressWarnings("NullAway.Init")
    static Browser browser;

    private final String example;

    @SuppressWarnings("NullAway.Init")
    @TempDir
    Path folder;

    @SuppressWarnings("NullAway.Init")
    private Path plant;

    @SuppressWarnings("NullAway.Init")
    Studio studio;

    /** What pages wrote as errors to the console or failed with. */
    final List<String> complaints = new ArrayList<>();

    InChromium(String example) {
        this.example = example;
    }

    @BeforeAll
    static void chromium() throws IOException {
        assumeTrue(Browser.installed().isPresent(), "chromium is not installed");
        Files.createDirectories(SCREENS);
        browser = Browser.open();
        PlaywrightAssertions.setDefaultAssertionTimeout(LONGEST_WAIT_ms);
    }

    @AfterAll
    static void shut() {
        if (Browser.installed().isPresent()) {
            browser.close();
        }
    }

    @BeforeEach
    void open() throws IOException {
        plant = Plants.copy(example, folder);
        studio = Studio.open(plant, folder.resolve("kept.db"), 0, "dustwright test");
    }

    @AfterEach
    void close() {
        studio.close();
    }

    /** The studio is ended and, after what happens meanwhile, begun again at the same address on what it kept. */
    void away(Runnable meanwhile) throws IOException {
        int port = URI.create(studio.address()).getPort();
        studio.close();
        meanwhile.run();
        studio = Studio.open(plant, folder.resolve("kept.db"), port, "dustwright test");
    }

    /** A page of the studio, once its sets are solved; what it complains of in the console and what it fails with is kept. */
    Page visit(int width, int height, String address) {
        return visit(width, height, address, "#scale button");
    }

    /** The same, once something is there. */
    Page visit(int width, int height, String address, String there) {
        Page page = browser.page(width, height);
        page.onConsoleMessage(message -> {
            if (message.type().equals("error")) {
                complaints.add(message.text());
            }
        });
        page.onPageError(complaints::add);
        page.navigate(studio.address() + address);
        page.waitForSelector(there, new Page.WaitForSelectorOptions().setState(WaitForSelectorState.ATTACHED));
        return page;
    }

    static void shows(Page page, String place, String words) {
        PlaywrightAssertions.assertThat(page.locator(place)).containsText(words);
    }

    /** The step the page shows as kept. */
    static void kept(Page page, int step) {
        shows(page, "#kept", "step " + step + ", kept");
    }

    /** The plant file as it is kept now. */
    static String text(Page page) {
        return String.valueOf(page.evaluate("async () => (await (await fetch('/api/text')).json()).text"));
    }

    /** No fault of access that keeps somebody out. */
    static void serious(Page page, String what) {
        if (page.evaluate("typeof axe").equals("undefined")) {
            page.evaluate("() => {" + AxeBuilder.getAxeScript() + "}");
        }
        assertThat((List<?>) page.evaluate(FAULTS_OF_ACCESS)).as(what).isEmpty();
    }

    static void picture(Page page, String name) {
        page.screenshot(new Page.ScreenshotOptions().setPath(SCREENS.resolve(name + ".png")));
    }
}
