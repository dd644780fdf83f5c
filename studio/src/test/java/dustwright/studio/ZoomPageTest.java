package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A small screen, and one at twice the size (WCAG 2.2, 1.4.4 and 1.4.10), in a real Chromium: nothing is cut off, nothing lies over another. */
class ZoomPageTest extends InChromium {
    /** Things that are cut off by what is around them, controls that lie over each other, and a page that scrolls sideways. */
    private static final String AMISS = """
            () => {
              const amiss = [];
              const page = document.documentElement;
              if (page.scrollWidth > page.clientWidth + 1) amiss.push(`the page is ${page.scrollWidth} wide, its window ${page.clientWidth}`);
              const seen = what => [...document.querySelectorAll(what)].filter(one => one.checkVisibility({visibilityProperty: true}) && one.getBoundingClientRect().width > 1 && !one.closest('svg, .skip, #say, #tour'));
              const words = one => `${one.tagName.toLowerCase()} ${one.id} "${(one.textContent || one.getAttribute('aria-label') || '').trim().slice(0, 40)}"`;
              for (const one of seen('button, h2, p, label, input, select')) {
                const box = one.getBoundingClientRect();
                for (let around = one.parentElement; around && around !== document.body; around = around.parentElement) {
                  const style = getComputedStyle(around);
                  const edge = around.getBoundingClientRect();
                  if (style.overflowX === 'hidden' && (box.right > edge.right + 1 || box.left < edge.left - 1)) amiss.push(`${words(one)} is cut off at the side by ${words(around)}`);
                  if (style.overflowY === 'hidden' && (box.bottom > edge.bottom + 1 || box.top < edge.top - 1)) amiss.push(`${words(one)} is cut off by ${words(around)}`);
                  if (['auto', 'scroll', 'hidden'].includes(style.overflowY)) break;
                }
                if (one.matches('button') && one.scrollWidth > one.clientWidth + 1) amiss.push(`${words(one)} is wider than its button`);
              }
              const controls = seen('button, input, select, a');
              for (let i = 0; i < controls.length; i++) for (let j = i + 1; j < controls.length; j++) {
                if (controls[i].contains(controls[j])) continue;
                const [a, b] = [controls[i].getBoundingClientRect(), controls[j].getBoundingClientRect()];
                if (Math.min(a.right, b.right) - Math.max(a.left, b.left) > 2 && Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 2 && !away(controls[i]) && !away(controls[j])) amiss.push(`${words(controls[i])} lies over ${words(controls[j])}`);
              }
              // Scrolled out of what holds it.
              function away(one) {
                const box = one.getBoundingClientRect();
                for (let around = one.parentElement; around; around = around.parentElement) {
                  if (getComputedStyle(around).position === 'sticky') return true;
                  if (getComputedStyle(around).overflowY === 'visible') continue;
                  const edge = around.getBoundingClientRect();
                  if (box.bottom > edge.bottom + 1 || box.top < edge.top - 1) return true;
                }
                return false;
              }
              return [...new Set(amiss)];
            }
            """;

    ZoomPageTest() {
        super("bakery-one-main");
    }

    @Test
    void nothing_is_cut_off_or_lies_over_another_on_a_small_screen_or_at_twice_the_size() {
        for (int[] size : List.of(new int[] {1024, 768}, new int[] {683, 384}, new int[] {512, 384})) {
            for (String place : List.of("plan", "text", "machines", "panel", "compare", "extend", "papers")) {
                try (Page page = visit(size[0], size[1], "#open=A1&units=us&run=HP1&place=" + place)) {
                    page.waitForTimeout(400);
                    picture(page, "zoom-" + place + "-" + size[0]);
                    assertThat((List<?>) page.evaluate(AMISS))
                            .as(place + " " + size[0])
                            .isEmpty();
                    if (size[0] != 512) {
                        serious(page, place + " " + size[0]);
                    }
                }
            }
        }
    }

    @Test
    void while_one_draws_nothing_is_cut_off_either() {
        for (int[] size : List.of(new int[] {1366, 768}, new int[] {1024, 768}, new int[] {683, 384})) {
            try (Page page = visit(size[0], size[1], "#open=A1&units=us&inlet=A1")) {
                for (String key : List.of("s", "b", "n", "w", "g")) {
                    page.keyboard().press(key);
                    page.waitForTimeout(300);
                    assertThat((List<?>) page.evaluate(AMISS))
                            .as(key + " " + size[0])
                            .isEmpty();
                }
                picture(page, "zoom-hand-" + size[0]);
            }
        }
    }
}
