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
 * From a hand's doing to the coloured drawing, measured in the browser: {@code Latency PLANT [TIMES]} clicks on inlets, opened and closed in turn
 * so that some four are open at once; {@code Latency PLANT TIMES RUN TUBE TUBE} gives a run one tube and the other, four inlets open; a number of
 * inlets may stand in place of the plant. Once at the pace of a quick hand, four a second, and once without a pause. Prints milliseconds: least,
 * median, 95th of a hundred, greatest.
 */
final class Latency {
    private static final int WARM = 40;
    private static final int HAND_ms = 250;
    /** For so long a person looks at a page before its first edit. */
    private static final int LOOKED_ms = 15_000;

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
            studio.practise();
            page.waitForTimeout(LOOKED_ms);
            List<?> inlets = (List<?>) page.evaluate(
                    "() => [...document.querySelectorAll('[data-inlet]')].map(piece => piece.dataset.inlet)");
            for (int pause_ms : new int[] {HAND_ms, 0}) {
                List<Double> times = arguments.length > 2
                        ? edits(page, inlets, clicks, arguments, pause_ms)
                        : clicks(page, inlets, clicks, pause_ms);
                Collections.sort(times);
                System.out.printf(
                        Locale.ROOT,
                        "%d inlets, %d times, %s: least %.0f, median %.0f, 95 of 100 below %.0f, most %.0f ms%n",
                        inlets.size(),
                        times.size(),
                        pause_ms > 0 ? "by a quick hand" : "without a pause",
                        times.get(0),
                        times.get(times.size() / 2),
                        times.get(times.size() * 95 / 100),
                        times.get(times.size() - 1));
            }
        }
    }

    private static List<Double> clicks(Page page, List<?> inlets, int clicks, int pause_ms) {
        List<Double> times = new ArrayList<>();
        for (int click = 0; click < WARM + clicks; click++) {
            Object id = inlets.get(click * 7 % inlets.size());
            Object closed = inlets.get(Math.max(0, click - 4) * 7 % inlets.size());
            page.waitForTimeout(pause_ms);
            double opened = click(page, id);
            if (click >= WARM) {
                times.add(opened);
            }
            page.waitForTimeout(pause_ms);
            if (click >= 4) {
                click(page, closed);
            }
        }
        return times;
    }

    private static List<Double> edits(Page page, List<?> inlets, int edits, String[] arguments, int pause_ms) {
        if (pause_ms > 0) {
            inlets.subList(0, 4).forEach(inlet -> click(page, inlet));
        }
        page.fill("#find", arguments[2]);
        page.press("#find", "Enter");
        page.waitForSelector("#piece input[aria-label='tube']");
        List<Double> times = new ArrayList<>();
        for (int edit = 0; edit < WARM + edits; edit++) {
            page.waitForTimeout(pause_ms);
            double took = timed(
                    page,
                    "const input = document.querySelector('#piece input[aria-label=tube]'); input.value = it;",
                    "input.dispatchEvent(new Event('change', {bubbles: true}));",
                    arguments[3 + edit % 2]);
            if (edit >= WARM) {
                times.add(took);
            }
        }
        return times;
    }

    private static double click(Page page, Object inlet) {
        return timed(
                page,
                "const piece = [...document.querySelectorAll('[data-inlet]')].find(one => one.dataset.inlet === it);"
                        + " const box = piece.querySelector('.catch').getBoundingClientRect();"
                        + " const at = {clientX: box.x + box.width / 2, clientY: box.y + box.height / 2, bubbles: true, button: 0};",
                "piece.dispatchEvent(new PointerEvent('pointerdown', at)); piece.dispatchEvent(new PointerEvent('pointerup', at));",
                inlet);
    }

    /** Done in the page, and the time taken there up to the end of the frame that paints the colours. */
    private static double timed(Page page, String before, String does, Object it) {
        return ((Number) page.evaluate(
                        "it => new Promise(done => {" + before
                                + " const mark = performance.mark;"
                                + " const painted = new MessageChannel(); painted.port1.onmessage = () => done(performance.now() - begun);"
                                + " performance.mark = name => { performance.mark = mark; requestAnimationFrame(() => painted.port2.postMessage('')); };"
                                + " const begun = performance.now();" + does + "})",
                        it))
                .doubleValue();
    }
}
