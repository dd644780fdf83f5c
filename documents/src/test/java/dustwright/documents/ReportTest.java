package dustwright.documents;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.documents.report.Origin;
import dustwright.documents.report.PaperSize;
import dustwright.documents.report.Report;
import dustwright.documents.report.ReportPdf;
import dustwright.documents.writing.Show;
import dustwright.engine.Study;
import dustwright.engine.quantity.UnitSystem;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

final class ReportTest {
    private static final Origin ORIGIN = new Origin("plant.yaml", "7c41e09b", "Dustwright test");
    private static final String HOSTILE = "<script>alert('x')</script>\"&" + "W".repeat(300);

    private static Report report(Study study, UnitSystem units) {
        return Report.of(study, new Show(units), ORIGIN);
    }

    private static PDDocument pdf(Study study, PaperSize size) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ReportPdf.write(report(study, UnitSystem.US), size, out);
        return Loader.loadPDF(out.toByteArray());
    }

    @Test
    void first_page_says_verdict_one_user_velocity_and_slowest_stretch() {
        String html = report(InventedStudy.of(20), UnitSystem.US).html();
        String first =
                html.substring(html.indexOf("<section class=\"first\""), html.indexOf("<section id=\"drawing\""));
        assertThat(first)
                .contains("Does not hold")
                .contains(
                        "Dust settles in run MA1 with A1 alone, filter normal: 2\u202F006\u00A0ft/min, least 3\u202F000")
                .contains("Velocity with one user")
                .contains("the slowest stretch is run MA1")
                .contains("2 assumptions, 1 override")
                .contains("What would help at run MA1:")
                .contains("No answer for set all closed, filter dirty.")
                .contains("not yet checked");
    }

    @Test
    void the_page_names_no_address_outside_itself() {
        String html = report(InventedStudy.of(20), UnitSystem.SI).html();
        String withoutNamespaces =
                html.replace("http://www.w3.org/2000/svg", "").replace("http://www.w3.org/1999/xhtml", "");
        assertThat(withoutNamespaces)
                .doesNotContain("http:")
                .doesNotContain("https:")
                .doesNotContain("<script");
        assertThat(Pattern.compile("(src|href)=|@import|url\\((?!data:)")
                        .matcher(withoutNamespaces)
                        .find())
                .isFalse();
    }

    @Test
    void a_hostile_name_stays_text_on_every_paper() throws Exception {
        Study study = InventedStudy.named(12, HOSTILE, HOSTILE);
        String html = report(study, UnitSystem.US).html();
        assertThat(html).contains("&lt;script&gt;").doesNotContain("<script>");
        try (PDDocument pdf = pdf(study, PaperSize.A4)) {
            assertThat(new PDFTextStripper().getText(pdf)).contains("<script>alert('x')</script>");
        }
    }

    @Test
    void no_number_that_is_not_one_is_printed() {
        String html = report(InventedStudy.of(20), UnitSystem.US).html();
        assertThat(html.replaceAll("base64,[^)]*", "")).doesNotContain("NaN").doesNotContain("Infinity");
    }

    @Test
    void the_verdict_is_never_that_something_is_safe() {
        String html = report(InventedStudy.of(20), UnitSystem.US).html().replaceAll("base64,[^)]*", "");
        assertThat(html).doesNotContainPattern("(?i)\\bsafe\\b(?! working load)");
    }

    @Test
    void the_page_is_well_formed() throws Exception {
        String html = report(InventedStudy.of(20), UnitSystem.US).html();
        String markup = html.substring(html.indexOf('\n'));
        var document = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(markup.getBytes(java.nio.charset.StandardCharsets.UTF_8)));
        assertThat(document.getElementsByTagName("h1").getLength()).isEqualTo(1);
        assertThat(document.getElementsByTagName("svg").getLength()).isEqualTo(6);
    }

    @Test
    void the_same_study_gives_the_same_page() {
        assertThat(report(InventedStudy.of(40), UnitSystem.US).html())
                .isEqualTo(report(InventedStudy.of(40), UnitSystem.US).html());
    }

    @Test
    void the_pdf_has_all_pages_and_carries_its_faces() throws IOException {
        try (PDDocument pdf = pdf(InventedStudy.of(20), PaperSize.LETTER)) {
            assertThat(pdf.getNumberOfPages()).isBetween(8, 14);
            assertThat(pdf.getPage(0).getMediaBox().getWidth()).isEqualTo(612);
            List<PDFont> faces = faces(pdf);
            assertThat(faces).isNotEmpty().allMatch(PDFont::isEmbedded);
            assertThat(new PDFTextStripper().getText(pdf))
                    .contains("page 1 of " + pdf.getNumberOfPages())
                    .contains("13  Reach of this report".replace("  ", " "));
        }
    }

    private static List<PDFont> faces(PDDocument pdf) throws IOException {
        List<PDFont> faces = new ArrayList<>();
        for (PDPage page : pdf.getPages()) {
            for (COSName name : page.getResources().getFontNames()) {
                faces.add(page.getResources().getFont(name));
            }
        }
        return faces;
    }

    @Test
    void a_small_report_reads_as_it_was_accepted() {
        String html = report(InventedStudy.of(3), UnitSystem.US).html();
        Golden.check(
                "report-3.html",
                html.substring(html.indexOf("<main"), html.indexOf("</main>"))
                        .replaceAll("(?s)<svg.*?</svg>", "<svg/>"));
    }

    @Test
    void every_unsolved_set_is_listed_with_its_reason() {
        String html = report(InventedStudy.of(20), UnitSystem.US).html();
        assertThat(html).contains("No answer. The hose at A3 is choked; 60 steps were tried.");
    }
}
