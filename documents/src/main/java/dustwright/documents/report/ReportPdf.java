package dustwright.documents.report;

import com.openhtmltopdf.extend.FSSupplier;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.EnumSet;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;

/** The report as PDF: vector drawings, faces embedded, tags for readers that speak. */
public final class ReportPdf {
    private static final int NORMAL = 400;
    private static final int BOLD = 700;

    /** In the text and in the drawings. */
    private static final Set<FSFontUseCase> EVERYWHERE = EnumSet.of(FSFontUseCase.DOCUMENT, FSFontUseCase.SVG);

    /** The PDF library tells of every face it does not need; kept here so that the setting is not collected away. */
    private static final Logger LIBRARY = Logger.getLogger("org.apache");

    private ReportPdf() {}

    /** Writes the report; the stream is left open. */
    public static void write(Report report, PaperSize size, OutputStream out) throws IOException {
        XRLog.setLoggingEnabled(false);
        LIBRARY.setLevel(Level.SEVERE);
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useSVGDrawer(new BatikSVGDrawer());
        face(builder, Faces::regular, NORMAL);
        face(builder, Faces::bold, BOLD);
        builder.withHtmlContent(report.paper(size), null);
        builder.toStream(out);
        builder.run();
    }

    private static void face(PdfRendererBuilder builder, FSSupplier<InputStream> file, int weight) {
        builder.useFont(file, Faces.FAMILY, weight, FontStyle.NORMAL, true, EVERYWHERE);
    }
}
