package dustwright.engine.review;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a team has written to one line, or a line of its own. Words it gives go before those of the plant.
 *
 * @param who is to act
 * @param by when
 * @param status of the action
 * @param note anything else
 */
public record Note(
        Optional<String> node,
        Optional<String> deviation,
        Optional<String> cause,
        Optional<String> consequence,
        Optional<List<String>> safeguards,
        Optional<List<String>> missing,
        Optional<String> severity,
        Optional<String> likelihood,
        Optional<String> action,
        Optional<String> who,
        Optional<String> by,
        Optional<String> status,
        Optional<String> note) {
    /** Nothing written. */
    public static final Note NOTHING = new Note(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());

    /** Whether some words of the line are the team's. */
    boolean rewords() {
        return Stream.of(node, deviation, cause, consequence, safeguards, missing)
                .anyMatch(Optional::isPresent);
    }

    Deviation reword(Deviation line) {
        return new Deviation(
                line.id(),
                node.orElse(line.node()),
                deviation.orElse(line.deviation()),
                cause.orElse(line.cause()),
                consequence.orElse(line.consequence()),
                safeguards.orElse(line.safeguards()),
                missing.orElse(line.missing()));
    }
}
