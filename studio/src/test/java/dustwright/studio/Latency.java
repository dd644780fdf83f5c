package dustwright.studio;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/**
 * From a click on an inlet to the coloured drawing, measured in the browser: {@code Latency PLANT [CLICKS]}, or a number of inlets in place of
 * the plant. Prints milliseconds: least, median, 95th of a hundred, greatest. Clicks open and close inlets in turn, so that some four are open at once.
 */
final class Latency {
    private static final int WARM = 40;

    private Latency() {}

    public static void main(String[] arguments) throws IOException {
        int clicks = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 200;
        Path folder = Files.createTempDirectory("latency");
        Path plant = arguments[0].matches("[0-9]+")
                ? Files.writeString(folder.resolve("large.yaml"), LargePlant.text(Integer.parseInt(arguments[0])))
                : Path.of(arguments[0]);
        try (Studio studio = Studio.open(plant, folder.resolve("kept.db"), 0, "dustwright latency");
                Browser browser = Browser.open();
                Page page = browser.page(1366, 768)) {
            page.navigate(studio.address() + "#open=");
            page.waitForSelector("#scale button");
            List<?> inlets = (List<?>) page.evaluate(
                    "() => [...document.querySelectorAll('[data-inlet]')].map(piece => piece.dataset.inlet)");
            List<Double> times = new ArrayList<>();
            for (int click = 0; click < WARM + clicks; click++) {
                Object id = inlets.get(click * 7 % inlets.size());
                Object closed = inlets.get(Math.max(0, click - 4) * 7 % inlets.size());
                double opened = click(page, id);
                if (click >= WARM) {
                    times.add(opened);
                }
                if (click >= 4) {
                    click(page, closed);
                }
            }
            Collections.sort(times);
            System.out.printf(
                    Locale.ROOT,
                    "%d inlets, %d clicks: least %.0f, median %.0f, 95 of 100 below %.0f, most %.0f ms%n",
                    inlets.size(),
                    times.size(),
                    times.get(0),
                    times.get(times.size() / 2),
                    times.get(times.size() * 95 / 100),
                    times.get(times.size() - 1));
        }
    }

    /** The click is made in the page, and the time taken there up to the frame after the drawing was exchanged. */
    private static double click(Page page, Object inlet) {
        return ((Number) page.evaluate(
                        "id => new Promise(done => {"
                                + " const drawing = document.getElementById('drawing');"
                                + " const piece = [...drawing.querySelectorAll('[data-inlet]')].find(one => one.dataset.inlet === id);"
                                + " const box = piece.querySelector('.catch').getBoundingClientRect();"
                                + " const at = {clientX: box.x + box.width / 2, clientY: box.y + box.height / 2, bubbles: true, button: 0};"
                                + " const seen = new MutationObserver(() => { seen.disconnect(); requestAnimationFrame(() => done(performance.now() - begun)); });"
                                + " seen.observe(drawing, {childList: true});"
                                + " const begun = performance.now();"
                                + " piece.dispatchEvent(new PointerEvent('pointerdown', at));"
                                + " piece.dispatchEvent(new PointerEvent('pointerup', at));"
                                + "})",
                        inlet))
                .doubleValue();
    }
}
