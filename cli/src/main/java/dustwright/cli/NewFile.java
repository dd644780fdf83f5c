package dustwright.cli;

import dustwright.documents.papers.Paper;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.UUID;

/** Writes a file beside its place and moves it there when it is whole: what was there before is never half overwritten. */
final class NewFile {
    /** What fills the file. */
    interface Content {
        void to(OutputStream out) throws IOException;
    }

    private NewFile() {}

    /** Writes papers into a folder, which is made if it is not there. */
    static void write(Path folder, List<Paper> papers) throws IOException {
        Files.createDirectories(folder);
        for (Paper paper : papers) {
            write(folder.resolve(paper.name()), paper.content()::to);
        }
    }

    static void write(Path place, Content content) throws IOException {
        // Not a temporary file of the system's making: those only their owner may read, and a report is handed on.
        Path whole = place.resolveSibling("." + place.getFileName() + "." + UUID.randomUUID() + ".part");
        try {
            try (OutputStream out =
                    new BufferedOutputStream(Files.newOutputStream(whole, StandardOpenOption.CREATE_NEW))) {
                content.to(out);
            }
            Files.move(whole, place, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(whole);
        }
    }

    /** Why writing failed, in words. */
    static String reason(IOException fault) {
        if (fault instanceof AccessDeniedException) {
            return "writing there is not allowed";
        }
        if (fault instanceof java.nio.file.FileAlreadyExistsException) {
            return "a file of that name is in the way";
        }
        if (fault instanceof FileSystemException system && system.getReason() != null) {
            return system.getReason();
        }
        return String.valueOf(fault.getMessage());
    }
}
