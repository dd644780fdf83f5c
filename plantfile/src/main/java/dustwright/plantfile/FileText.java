package dustwright.plantfile;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/** The text of a file, or why there is none. */
record FileText(Optional<String> text, Optional<Fault> fault) {
    /** Largest file read, bytes; a plant of 3000 runs takes less than a tenth of it. */
    static final int LARGEST_bytes = 4 * 1024 * 1024;

    static FileText of(Path file) {
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            return wrong(
                    0,
                    0,
                    file + " cannot be read: it is no ordinary file",
                    "a file; a pipe or a device might never end");
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(LARGEST_bytes + 1);
            return bytes.length > LARGEST_bytes ? wrong(0, 0, tooLarge(), "") : utf8(bytes);
        } catch (NoSuchFileException e) {
            return wrong(0, 0, "there is no file " + file, "");
        } catch (AccessDeniedException e) {
            return wrong(0, 0, file + " cannot be read: this user may not read it", "");
        } catch (IOException e) {
            return wrong(0, 0, file + " cannot be read: " + e.getMessage(), "");
        }
    }

    static String tooLarge() {
        return "the file is larger than " + LARGEST_bytes / (1024 * 1024)
                + " MiB and was not read: no plant needs that much; is it the right file?";
    }

    private static FileText utf8(byte[] bytes) {
        try {
            return new FileText(
                    Optional.of(StandardCharsets.UTF_8
                            .newDecoder()
                            .onMalformedInput(CodingErrorAction.REPORT)
                            .onUnmappableCharacter(CodingErrorAction.REPORT)
                            .decode(ByteBuffer.wrap(bytes))
                            .toString()),
                    Optional.empty());
        } catch (CharacterCodingException e) {
            String lenient = new String(bytes, StandardCharsets.UTF_8);
            String before = lenient.substring(0, Math.max(0, lenient.indexOf('\uFFFD')));
            int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
            int column = before.length() - before.lastIndexOf('\n');
            return wrong(line, column, "this is not UTF-8 text", "a file saved as UTF-8");
        }
    }

    private static FileText wrong(int line, int column, String message, String expected) {
        return new FileText(
                Optional.empty(), Optional.of(new Fault(line, column, "", message, expected, Optional.empty())));
    }
}
