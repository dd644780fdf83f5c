package dustwright.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.junit.jupiter.api.Test;

/** Pictures that are handed in, good ones and such as are made to harm. */
class UploadTest {
    private static final int CHUNK = 1 << 16;

    private static byte[] picture(String format) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), format, bytes);
        return bytes.toByteArray();
    }

    private static byte[] saved(PDDocument document) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        document.save(bytes);
        return bytes.toByteArray();
    }

    private static void refused(byte[] bytes, String why) {
        assertThatThrownBy(() -> Upload.of(bytes))
                .isInstanceOf(Upload.Refused.class)
                .hasMessageContaining(why);
    }

    @Test
    void png_and_jpeg_are_known_by_their_bytes_and_come_back_as_they_are() throws Exception {
        for (String format : new String[] {"png", "jpeg"}) {
            byte[] bytes = picture(format);
            Upload upload = Upload.of(bytes);
            assertThat(upload.type()).isEqualTo("image/" + format);
            assertThat(upload.bytes()).isEqualTo(bytes);
            assertThat(upload.width_px()).isEqualTo(40);
            assertThat(upload.height_px()).isEqualTo(30);
        }
    }

    @Test
    void the_first_page_of_a_pdf_becomes_a_picture_of_its_proportions() throws Exception {
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage(new PDRectangle(400, 200));
            document.addPage(page);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                content.addRect(0, 0, 400, 200);
                content.fill();
            }
            Upload upload = Upload.of(saved(document));
            assertThat(upload.type()).isEqualTo("image/png");
            assertThat(upload.width_px()).isEqualTo(2 * upload.height_px());
        }
    }

    @Test
    void what_is_no_picture_is_refused_whatever_it_is_called() {
        refused(new byte[0], "none of them");
        refused("<svg xmlns='http://www.w3.org/2000/svg' onload='alert(1)'/>".getBytes(StandardCharsets.UTF_8), "none");
        refused("GIF89a<script>alert(1)</script>".getBytes(StandardCharsets.UTF_8), "none of them");
        refused("<html><script>alert(1)</script>".getBytes(StandardCharsets.UTF_8), "none of them");
    }

    @Test
    void what_is_cut_off_or_only_begins_like_a_picture_is_refused() throws Exception {
        byte[] png = picture("png");
        refused(Arrays.copyOf(png, 40), "damaged");
        refused(Arrays.copyOf(picture("jpeg"), 30), "damaged");
        refused("%PDF-1.7\n<script>".getBytes(StandardCharsets.UTF_8), "damaged");
    }

    @Test
    void what_is_too_large_is_refused_before_it_is_looked_into() throws Exception {
        refused(Arrays.copyOf(picture("png"), Upload.LARGEST_bytes + 1), "at most 6 MB");
    }

    /** 60 000 by 60 000 points in a file of a few hundred bytes, which would unfold to 10 GB. */
    @Test
    void a_picture_of_too_many_points_is_refused_before_it_is_unfolded() throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'});
        ByteArrayOutputStream header = new ByteArrayOutputStream();
        DataOutputStream head = new DataOutputStream(header);
        head.writeInt(60_000);
        head.writeInt(60_000);
        head.write(new byte[] {8, 2, 0, 0, 0});
        chunk(out, "IHDR", header.toByteArray());
        chunk(out, "IDAT", deflated(1 << 20));
        chunk(out, "IEND", new byte[0]);
        refused(bytes.toByteArray(), "60000 by 60000");
    }

    private static void chunk(DataOutputStream out, String type, byte[] content) throws IOException {
        byte[] name = type.getBytes(StandardCharsets.US_ASCII);
        CRC32 sum = new CRC32();
        sum.update(name);
        sum.update(content);
        out.writeInt(content.length);
        out.write(name);
        out.write(content);
        out.writeInt((int) sum.getValue());
    }

    private static byte[] deflated(long length) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (OutputStream out = new DeflaterOutputStream(bytes)) {
            byte[] spaces = new byte[CHUNK];
            Arrays.fill(spaces, (byte) ' ');
            for (long n = 0; n < length; n += CHUNK) {
                out.write(spaces);
            }
        }
        return bytes.toByteArray();
    }

    @Test
    void a_pdf_without_a_page_is_refused_by_that() throws Exception {
        try (PDDocument document = new PDDocument()) {
            refused(saved(document), "has no page");
        }
    }

    @Test
    void a_pdf_of_too_many_pages_is_refused() throws Exception {
        try (PDDocument document = new PDDocument()) {
            for (int n = 0; n < 51; n++) {
                document.addPage(new PDPage());
            }
            refused(saved(document), "at most 50 pages");
        }
    }

    /** A picture in the page says it has 15 000 by 15 000 points: 675 MB. */
    @Test
    void a_pdf_that_unfolds_to_more_than_it_should_ends_its_own_process_and_no_other() throws Exception {
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage();
            document.addPage(page);
            COSStream image = document.getDocument().createCOSStream();
            image.setItem(COSName.TYPE, COSName.XOBJECT);
            image.setItem(COSName.SUBTYPE, COSName.IMAGE);
            image.setInt(COSName.WIDTH, 15_000);
            image.setInt(COSName.HEIGHT, 15_000);
            image.setInt(COSName.BITS_PER_COMPONENT, 8);
            image.setItem(COSName.COLORSPACE, COSName.DEVICERGB);
            image.setItem(COSName.FILTER, COSName.FLATE_DECODE);
            try (OutputStream raw = image.createRawOutputStream()) {
                raw.write(deflated(675_000_000L));
            }
            PDResources resources = new PDResources();
            resources.getCOSObject().setItem(COSName.XOBJECT, new org.apache.pdfbox.cos.COSDictionary());
            resources.getCOSObject().getCOSDictionary(COSName.XOBJECT).setItem(COSName.getPDFName("I"), image);
            page.setResources(resources);
            PDStream content = new PDStream(document);
            try (OutputStream out = content.createOutputStream()) {
                out.write("500 0 0 500 0 0 cm /I Do".getBytes(StandardCharsets.US_ASCII));
            }
            page.setContents(content);
            refused(saved(document), "more");
        }
    }

    /** Each of 30 forms draws the next one ten times. */
    @Test
    void a_pdf_that_draws_for_ever_is_ended() throws Exception {
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage();
            document.addPage(page);
            PDFormXObject inner = form(document, "0 0 500 500 re f");
            for (int n = 0; n < 30; n++) {
                PDFormXObject outer = form(document, "/F Do ".repeat(10));
                PDResources resources = new PDResources();
                resources.put(COSName.getPDFName("F"), inner);
                outer.setResources(resources);
                inner = outer;
            }
            PDResources resources = new PDResources();
            resources.put(COSName.getPDFName("F"), inner);
            page.setResources(resources);
            PDStream content = new PDStream(document);
            try (OutputStream out = content.createOutputStream()) {
                out.write("/F Do".getBytes(StandardCharsets.US_ASCII));
            }
            page.setContents(content);
            refused(saved(document), "20 s");
        }
    }

    private static PDFormXObject form(PDDocument document, String drawn) throws IOException {
        PDFormXObject form = new PDFormXObject(document);
        form.setBBox(new PDRectangle(500, 500));
        try (OutputStream out = form.getStream().createOutputStream()) {
            out.write(drawn.getBytes(StandardCharsets.US_ASCII));
        }
        return form;
    }
}
