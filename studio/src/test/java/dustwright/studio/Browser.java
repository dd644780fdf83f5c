package dustwright.studio;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ViewportSize;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A real Chromium, and pages in it; there is none where Chromium is not installed. */
final class Browser implements AutoCloseable {
    private static final List<String> PLACES =
            List.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome");

    private final Playwright playwright;
    private final com.microsoft.playwright.Browser chromium;

    private Browser(Playwright playwright, com.microsoft.playwright.Browser chromium) {
        this.playwright = playwright;
        this.chromium = chromium;
    }

    static Optional<Path> installed() {
        return Stream.concat(Optional.ofNullable(System.getenv("CHROMIUM")).stream(), PLACES.stream())
                .map(Path::of)
                .filter(Files::isExecutable)
                .findFirst();
    }

    static Browser open() {
        Playwright playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        return new Browser(
                playwright,
                playwright
                        .chromium()
                        .launch(new BrowserType.LaunchOptions()
                                .setExecutablePath(installed().orElseThrow())
                                .setArgs(List.of("--no-sandbox", "--disable-gpu"))));
    }

    Page page(int width, int height) {
        Page page = chromium.newContext(new com.microsoft.playwright.Browser.NewContextOptions()
                        .setViewportSize(new ViewportSize(width, height)))
                .newPage();
        page.setDefaultTimeout(30_000);
        return page;
    }

    /** A page as on a phone, 390 px wide and worked with fingers. */
    Page phone() {
        Page page = chromium.newContext(new com.microsoft.playwright.Browser.NewContextOptions()
                        .setViewportSize(new ViewportSize(390, 844))
                        .setHasTouch(true)
                        .setIsMobile(true))
                .newPage();
        page.setDefaultTimeout(30_000);
        return page;
    }

    /** Pages that take any certificate, as after a person has said that this one is right. */
    BrowserContext trustingAll() {
        return chromium.newContext(new com.microsoft.playwright.Browser.NewContextOptions().setIgnoreHTTPSErrors(true));
    }

    @Override
    public void close() {
        chromium.close();
        playwright.close();
    }
}
