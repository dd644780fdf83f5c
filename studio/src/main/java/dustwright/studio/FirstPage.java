package dustwright.studio;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.PDFRenderer;

/**
 * The first page of a PDF as a picture, drawn by a process of its own with little memory and little time: a small file can unfold to any
 * size or draw for ever, and nothing inside a program stops that for certain.
 */
final class FirstPage {
    private static final int MOST_PAGES = 50;
    private static final float LONGEST_SIDE_px = 4000;
    private static final int LONGEST_s = 20;
    private static final String MEMORY = "-Xmx400m";
    private static final int TOO_MANY_PAGES = 4;
    private static final int NO_PAGE = 5;

    private FirstPage() {}

    /** Reads a PDF from standard input and writes the picture to standard output. */
    public static void main(String[] none) throws IOException {
        try (PDDocument document = Loader.loadPDF(System.in.readAllBytes())) {
            if (document.getNumberOfPages() > MOST_PAGES) {
                System.exit(TOO_MANY_PAGES);
            }
            if (document.getNumberOfPages() == 0) {
                System.exit(NO_PAGE);
            }
            PDRectangle box = document.getPage(0).getCropBox();
            float scale = LONGEST_SIDE_px / Math.max(box.getWidth(), box.getHeight());
            BufferedImage drawn = new PDFRenderer(document).renderImage(0, scale);
            ImageIO.write(drawn, "png", System.out);
        }
    }

    /**
     * Has it drawn.
     *
     * @throws Upload.Refused where no picture came of it in time
     */
    static byte[] drawnApart(byte[] pdf) throws Upload.Refused {
        try {
            return drawn(pdf);
        } catch (IOException fault) {
            throw new Upload.Refused("This PDF could not be drawn.");
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new Upload.Refused("This PDF was not drawn: the studio is ending.");
        }
    }

    private static byte[] drawn(byte[] pdf) throws IOException, InterruptedException, Upload.Refused {
        Path given = Files.createTempFile("page", ".pdf");
        Path made = Files.createTempFile("page", ".png");
        try {
            Files.write(given, pdf);
            Process process = new ProcessBuilder(List.of(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            MEMORY,
                            "-XX:+UseSerialGC",
                            "-XX:+ExitOnOutOfMemoryError",
                            "-Djava.awt.headless=true",
                            "-cp",
                            System.getProperty("java.class.path"),
                            FirstPage.class.getName()))
                    .redirectInput(given.toFile())
                    .redirectOutput(made.toFile())
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            try {
                if (!process.waitFor(LONGEST_s, TimeUnit.SECONDS)) {
                    throw new Upload.Refused("This PDF takes more than " + LONGEST_s + " s to draw.");
                }
            } finally {
                process.destroyForcibly();
            }
            if (process.exitValue() == TOO_MANY_PAGES) {
                throw new Upload.Refused(
                        "A PDF has at most " + MOST_PAGES + " pages; give the page with the floor plan.");
            }
            if (process.exitValue() == NO_PAGE) {
                throw new Upload.Refused("This PDF has no page; give one with the floor plan on its first.");
            }
            if (process.exitValue() != 0) {
                throw new Upload.Refused("This PDF is damaged, locked, or unfolds to more than a floor plan needs.");
            }
            return Files.readAllBytes(made);
        } finally {
            Files.deleteIfExists(given);
            Files.deleteIfExists(made);
        }
    }
}
