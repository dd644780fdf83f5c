package dustwright.plantfile;

import dustwright.engine.rehearsal.Script;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Scripts of ready-made drills. They ask for nothing a default sequence lacks, and need no figure of a plant. */
public final class Drills {
    private static final List<String> NAMES =
            List.of("bag-fills-at-night", "bridged-hopper", "wet-flour", "air-supply-lost", "valve-chain-breaks");

    private Drills() {}

    /** Names of all drills. */
    public static List<String> names() {
        return NAMES;
    }

    /** The script's text, to read and to edit. */
    public static String text(String name) {
        try (InputStream in = Drills.class.getResourceAsStream("/drills/" + name + ".yaml")) {
            if (in == null || !NAMES.contains(name)) {
                throw new IllegalArgumentException("no drill is called " + name + ": " + String.join(", ", NAMES));
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The script of a drill. */
    public static Script script(String name) {
        if (RehearsalReader.read(text(name)) instanceof RehearsalReading.Read read) {
            return read.script();
        }
        throw new IllegalStateException("drill " + name + " cannot be read");
    }
}
