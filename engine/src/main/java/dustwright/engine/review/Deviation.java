package dustwright.engine.review;

import java.util.List;

/**
 * One line of the hazard study as the plant gives rise to it: a prompt for a team, no judgement.
 *
 * @param id stable while the plant keeps the part: {@code REC receiver ignition}
 * @param node part of the plant
 * @param deviation what is other than meant
 * @param cause why it could be
 * @param consequence what it could do, before any safeguard
 * @param safeguards found in the design, the checks and the control sequence
 * @param missing what was looked for and not found, or is not known
 */
public record Deviation(
        String id,
        String node,
        String deviation,
        String cause,
        String consequence,
        List<String> safeguards,
        List<String> missing) {
    public Deviation {
        safeguards = List.copyOf(safeguards);
        missing = List.copyOf(missing);
    }
}
