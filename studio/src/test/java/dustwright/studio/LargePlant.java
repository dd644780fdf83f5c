package dustwright.studio;

import java.util.Locale;

/** An invented plant of many inlets for measurements: five headers side by side, each with its share of the inlets on drops 1.5 m apart. */
final class LargePlant {
    private static final int HEADERS = 5;
    private static final double APART_m = 1.5;

    private LargePlant() {}

    /** The plant to begin with, with so many inlets in place of its own. */
    static String text(int inlets) {
        StringBuilder points = new StringBuilder("points:\n");
        StringBuilder drops = new StringBuilder("inlets:\n");
        StringBuilder runs = new StringBuilder("runs:\n");
        int each = inlets / HEADERS;
        for (int header = 1; header <= HEADERS; header++) {
            for (int n = 1; n <= each; n++) {
                String id = header + "-" + n;
                double x = 3 + APART_m * n;
                double y = 12.0 * header;
                points.append(line("  J%s: [%.1f, %.1f, 4]%n", id, x + 0.6, y));
                drops.append(line(
                        "  I%s: {at: [%.1f, %.1f, 1], hose: H15, tool: floor, dust: mixed, feed: 40 kg/h, leak: 8e-9 kg/(s.Pa), valve k: 0.3}%n",
                        id, x, y - 6));
                runs.append(line(
                        "  D%s: {from: I%s, to: J%s, tube: T2, bend radius: 300 mm%s, via: [[%.1f, %.1f, 4.3], [%.1f, %.1f, 4.3]]}%n",
                        id, id, id, n == 1 ? "" : ", wye: 45 deg", x, y - 6, x, y - 0.6));
                runs.append(line(
                        "  H%s: {from: J%s, to: %s, tube: T3, bend radius: 300 mm%s}%n",
                        id,
                        id,
                        n == each ? "REC" : "J" + header + "-" + (n + 1),
                        n == each ? line(", via: [[%.1f, %.1f, 4], [%.1f, %.1f, 2.5]]", x + 4, y, x + 4, y) : ""));
            }
        }
        return Studio.starter()
                .replaceFirst("(?s)points:\n.*?(?=\nstations:)", points + "\n" + drops + "\n" + runs)
                .replaceFirst("at: \\[26, 10, 2.5\\]", line("at: [%.1f, %.1f, 2.5]", APART_m * each + 12, 36.0))
                .replace("[A1, A2]", "[I1-1, I5-1]");
    }

    private static String line(String format, Object... values) {
        return String.format(Locale.ROOT, format.replace("%n", "\n"), values);
    }
}
