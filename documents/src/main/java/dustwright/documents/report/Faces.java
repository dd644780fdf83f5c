package dustwright.documents.report;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The face of the papers, DejaVu Sans Condensed, in two weights. */
final class Faces {
    static final String FAMILY = "DejaVu Sans Condensed";
    private static final String FOLDER = "/net/sf/jasperreports/fonts/dejavu/";

    /** Tables a browser needs; hinting and layout tables are left out. */
    private static final List<String> TABLES = List.of(
            "head", "hhea", "loca", "maxp", "cvt ", "prep", "glyf", "hmtx", "fpgm", "cmap", "name", "OS/2", "post");

    private Faces() {}

    static InputStream regular() {
        return open("DejaVuSansCondensed.ttf");
    }

    static InputStream bold() {
        return open("DejaVuSansCondensed-Bold.ttf");
    }

    private static InputStream open(String file) {
        InputStream in = Faces.class.getResourceAsStream(FOLDER + file);
        if (in == null) {
            throw new IllegalStateException("the face " + file + " is missing from the program");
        }
        return in;
    }

    /** Rules of a style sheet that carry both weights inside, cut down to the signs a text uses. */
    static String embedded(CharSequence text) {
        return rule("normal", subset(regular(), text)) + rule("bold", subset(bold(), text));
    }

    private static String rule(String weight, byte[] face) {
        return "@font-face { font-family: \"" + FAMILY + "\"; font-weight: " + weight
                + "; src: url(data:font/ttf;base64," + Base64.getEncoder().encodeToString(face)
                + ") format(\"truetype\"); }\n";
    }

    /** A face with the signs of a text and the plain ones, without tables that set scripts and ligatures. */
    static byte[] subset(InputStream face, CharSequence text) {
        try (face;
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(face.readAllBytes()))) {
            TTFSubsetter subsetter = new TTFSubsetter(font, TABLES);
            Set<Integer> signs = new HashSet<>();
            text.codePoints().forEach(signs::add);
            IntStream.rangeClosed(' ', '~').forEach(signs::add);
            subsetter.addAll(signs);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            subsetter.writeToStream(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
