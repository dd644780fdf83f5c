package dustwright.studio;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.util.Optional;
import java.util.UUID;

/**
 * Puts a text in the place of a file as a whole: who reads it meanwhile has the old or the new one. The file stays what it was to others: its
 * owner, group and mode, and a link that leads to it. A file whose owner or group cannot be given to another is written into instead, and then
 * somebody may read a part of it meanwhile.
 */
final class WholeFile {
    private WholeFile() {}

    static void put(Path file, String text) throws IOException {
        Path place = Files.isSymbolicLink(file) ? file.toRealPath() : file;
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        Path beside = place.resolveSibling("." + place.getFileName() + "." + UUID.randomUUID());
        try {
            Files.write(beside, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            if (Files.exists(place) && !alike(place, beside)) {
                // Of another owner or group, which only its owner can give: written into the file itself.
                Files.write(place, bytes, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE);
                return;
            }
            Files.move(beside, place, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    /** Gives a new file owner, group and mode of another; false where it cannot have them. */
    private static boolean alike(Path old, Path made) throws IOException {
        Optional<PosixFileAttributeView> view =
                Optional.ofNullable(Files.getFileAttributeView(made, PosixFileAttributeView.class));
        if (view.isEmpty()) {
            return true;
        }
        PosixFileAttributes wanted = Files.readAttributes(old, PosixFileAttributes.class);
        try {
            PosixFileAttributes now = view.get().readAttributes();
            if (!now.group().equals(wanted.group())) {
                view.get().setGroup(wanted.group());
            }
            if (!now.owner().equals(wanted.owner())) {
                view.get().setOwner(wanted.owner());
            }
            view.get().setPermissions(wanted.permissions());
            return true;
        } catch (IOException mayNot) {
            return false;
        }
    }
}
