package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class DrawingsTest {
    private static final int SEED = 20261126;

    /** As a page puts it together from the drawing it has. */
    private static String whole(String told, String had) {
        List<String> before = List.of(had.split("\n"));
        List<String> lines = new ArrayList<>();
        for (String line : told.split("\n")) {
            if (line.startsWith("=")) {
                String[] from = line.substring(1).split(" ");
                int first = Integer.parseInt(from[0]);
                lines.addAll(before.subList(first, first + Integer.parseInt(from[1])));
            } else {
                lines.add(line);
            }
        }
        return String.join("\n", lines);
    }

    @Test
    void a_page_that_has_a_drawing_is_told_what_differs_and_can_put_the_next_together() {
        Random random = new Random(SEED);
        Drawings drawings = new Drawings();
        String had = "";
        long number = 0;
        for (int n = 0; n < 400; n++) {
            List<String> lines = new ArrayList<>(List.of("<svg" + random.nextInt(3) + ">"));
            int pieces = random.nextInt(30);
            for (int piece = 0; piece < pieces; piece++) {
                lines.add("<g id='" + random.nextInt(12) + "'></g>");
            }
            String next = String.join("\n", lines);
            Drawings.Told told = drawings.told(next, number);
            assertThat(whole(told.lines(), had)).isEqualTo(next);
            had = next;
            number = told.number();
        }
    }

    @Test
    void one_line_that_differs_is_told_alone() {
        Drawings drawings = new Drawings();
        long first = drawings.told("<svg>\n<a/>\n<b/>\n<c/>\n</svg>", 0).number();
        assertThat(drawings.told("<svg>\n<a/>\n<b x='1'/>\n<c/>\n</svg>", first).lines())
                .isEqualTo("=0 2\n<b x='1'/>\n=3 2");
    }

    @Test
    void a_drawing_that_is_not_known_any_more_or_of_another_program_is_told_whole() {
        Drawings drawings = new Drawings();
        long first = drawings.told("<svg>\n</svg>", 0).number();
        for (int n = 0; n < 16; n++) {
            drawings.told("<svg>\n<g" + n + "/>\n</svg>", first);
        }
        assertThat(drawings.told("<svg>\n</svg>", first).lines()).isEqualTo("<svg>\n</svg>");
        assertThat(new Drawings().told("<svg>\n</svg>", first).lines()).isEqualTo("<svg>\n</svg>");
    }
}
