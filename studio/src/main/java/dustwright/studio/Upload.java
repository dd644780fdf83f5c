package dustwright.studio;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/**
 * A picture that somebody hands in: known by its bytes, never by a name or a type the sender gives it, and bounded before anything of it
 * is unfolded. A PDF becomes the picture of its first page.
 */
final class Upload {
    static final int LARGEST_bytes = 6_000_000;
    static final long MOST_px = 40_000_000;

    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
    private static final byte[] JPEG = {(byte) 0xff, (byte) 0xd8, (byte) 0xff};
    private static final byte[] PDF = {'%', 'P', 'D', 'F', '-'};

    private final String type;
    private final byte[] bytes;
    private final int width_px;
    private final int height_px;

    private Upload(String type, byte[] bytes, int width_px, int height_px) {
        this.type = type;
        this.bytes = bytes;
        this.width_px = width_px;
        this.height_px = height_px;
    }

    /** What to tell a browser it is: {@code image/png} or {@code image/jpeg}. */
    String type() {
        return type;
    }

    byte[] bytes() {
        return bytes.clone();
    }

    int width_px() {
        return width_px;
    }

    int height_px() {
        return height_px;
    }

    /** A picture that is not taken, with the reason in words. */
    static final class Refused extends Exception {
        private static final long serialVersionUID = 1;

        Refused(String why) {
            super(why);
        }
    }

    /**
     * Looks at what was handed in.
     *
     * @throws Refused where it is too large, of another kind, or cannot be read
     */
    static Upload of(byte[] bytes) throws Refused {
        if (bytes.length > LARGEST_bytes) {
            throw new Refused("A picture has at most " + LARGEST_bytes / 1_000_000 + " MB; this has more.");
        }
        if (begins(bytes, PNG)) {
            return picture(bytes, "png");
        }
        if (begins(bytes, JPEG)) {
            return picture(bytes, "jpeg");
        }
        if (begins(bytes, PDF)) {
            return picture(FirstPage.drawnApart(bytes), "png");
        }
        throw new Refused("A picture is a PNG, a JPEG or a PDF; this is none of them.");
    }

    private static boolean begins(byte[] bytes, byte[] mark) {
        return bytes.length > mark.length && Arrays.equals(bytes, 0, mark.length, mark, 0, mark.length);
    }

    /** One at a time: unfolded, a picture takes 160 MB at most. */
    private static synchronized Upload picture(byte[] bytes, String format) throws Refused {
        ImageReader reader = ImageIO.getImageReadersByFormatName(format).next();
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
            reader.setInput(in, true, true);
            int width = reader.getWidth(0);
            int height = reader.getHeight(0);
            if ((long) width * height > MOST_px) {
                throw new Refused(String.format(
                        Locale.ROOT,
                        "A picture has at most %d million points; this has %d by %d.",
                        MOST_px / 1_000_000,
                        width,
                        height));
            }
            reader.read(0);
            return new Upload("image/" + format, bytes, width, height);
        } catch (IOException | RuntimeException broken) {
            throw new Refused("This picture is cut off or damaged.");
        } finally {
            reader.dispose();
        }
    }
}
