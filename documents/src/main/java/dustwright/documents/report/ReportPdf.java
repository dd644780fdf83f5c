package dustwright.documents.report;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.EnumSet;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;

/** The report as PDF: vector drawings, faces embedded. */
public final class ReportPdf {
    private static final int NORMAL = 400;
    private static final int BOLD = 700;

    private static final String SOME_DRAWING =
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"9\" height=\"9\" viewBox=\"0 0 9 9\">"
                    + "<path d=\"M0 0L9 9\" stroke=\"#000\"/><text x=\"0\" y=\"9\">x</text></svg>";

    /** In the text and in the drawings. */
    private static final Set<FSFontUseCase> EVERYWHERE = EnumSet.of(FSFontUseCase.DOCUMENT, FSFontUseCase.SVG);

    /** The PDF library tells of every face it does not need; kept here so that the setting is not collected away. */
    private static final Logger LIBRARY = Logger.getLogger("org.apache");

    private ReportPdf() {}

    /** Writes the report; the stream is left open. */
    public static void write(Report report, PaperSize size, OutputStream out) throws IOException {
        write(report.paper(size), out);
    }

    /** Writes well-formed markup; the stream is left open. */
    static void write(String paper, OutputStream out) throws IOException {
        PdfRendererBuilder builder = builder(paper);
        builder.withHtmlContent(paper, null);
        builder.toStream(out);
        builder.run();
    }

    /** Loads the PDF writer beside other work, so that the first report of a program does not wait for it. */
    public static void prepare() {
        Thread loading = new Thread(ReportPdf::loadWriter, "pdf writer");
        loading.setDaemon(true);
        loading.start();
    }

    private static void loadWriter() {
        try {
            PdfRendererBuilder builder = builder("");
            builder.withHtmlContent("<html><body><p>x</p>" + SOME_DRAWING + "</body></html>", null);
            builder.toStream(OutputStream.nullOutputStream());
            builder.run();
        } catch (IOException e) {
            // Nothing is lost: the report itself will meet the same fault and say so.
        }
    }

    private static PdfRendererBuilder builder(String text) {
        XRLog.setLoggingEnabled(false);
        LIBRARY.setLevel(Level.SEVERE);
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useSVGDrawer(new BatikSVGDrawer());
        face(builder, Faces.subset(Faces.regular(), text), NORMAL);
        face(builder, Faces.subset(Faces.bold(), text), BOLD);
        return builder;
    }

    private static void face(PdfRendererBuilder builder, byte[] face, int weight) {
        builder.useFont(() -> new ByteArrayInputStream(face), Faces.FAMILY, weight, FontStyle.NORMAL, true, EVERYWHERE);
    }
}
