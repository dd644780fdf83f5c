package dustwright.studio;

import com.microsoft.playwright.Page;
import java.nio.file.Path;

/** Opens an address at the sizes pages are looked at and keeps the pictures: {@code Look ADDRESS FOLDER}. */
final class Look {
    private Look() {}

    public static void main(String[] arguments) {
        try (Browser browser = Browser.open()) {
            int[][] sizes = {{1366, 768}, {1920, 1080}, {390, 844}};
            for (int[] size : sizes) {
                Page page = browser.page(size[0], size[1]);
                page.onConsoleMessage(message -> System.out.println(message.text()));
                page.navigate(arguments[0]);
                page.waitForSelector("#drawing svg");
                page.waitForTimeout(3000);
                page.screenshot(new Page.ScreenshotOptions()
                        .setPath(Path.of(arguments[1], size[0] + ".png"))
                        .setFullPage(size[0] < 500));
                page.close();
            }
        }
    }
}
