package dustwright.studio;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** Tests of pages in a real Chromium, each on a studio of its own with a copy of an example. Pictures lie in target/screens. */
abstract class InChromium {
    /** For a machine that does much else. */
    private static final double LONGEST_WAIT_ms = 30_000;

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

    static void picture(Page page, String name) {
        page.screenshot(new Page.ScreenshotOptions().setPath(SCREENS.resolve(name + ".png")));
    }
}
