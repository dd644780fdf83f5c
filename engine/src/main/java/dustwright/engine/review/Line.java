package dustwright.engine.review;

import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.interlock.Sequence;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** One line of the study while it is being written: collects what guards against a deviation, and what was looked for in vain. */
final class Line {
    private static final int MOST_PLACES = 4;

    private final String id;
    private final String node;
    private final String deviation;
    private final String cause;
    private final String consequence;
    private final List<Finding> findings;
    private final Optional<Controlled> sequence;
    private final List<String> safeguards = new ArrayList<>();
    private final List<String> missing = new ArrayList<>();

    Line(
            String id,
            String node,
            String deviation,
            String cause,
            String consequence,
            List<Finding> findings,
            Optional<Controlled> sequence) {
        this.id = id;
        this.node = node;
        this.deviation = deviation;
        this.cause = cause;
        this.consequence = consequence;
        this.findings = findings;
        this.sequence = sequence;
    }

    Deviation done() {
        return new Deviation(id, node, deviation, cause, consequence, safeguards, missing);
    }

    /** A safeguard the design has, or one it lacks. */
    Line design(boolean there, String safeguard, String lack) {
        if (there) {
            safeguards.add(safeguard);
        } else {
            missing.add(lack);
        }
        return this;
    }

    /** Something no plant file can show: people show it on site. */
    Line toSee(String what) {
        missing.add("to be shown on site: " + what);
        return this;
    }

    /** What the checks of these kinds say at these places: holds everywhere, fails somewhere, not known. */
    Line checked(Set<String> places, FindingCode... codes) {
        for (FindingCode code : codes) {
            List<Finding> about = findings.stream()
                    .filter(f -> f.code() == code && places.contains(f.where().id()))
                    .toList();
            List<Finding> failing = about.stream().filter(Finding::fails).toList();
            List<Finding> open = about.stream().filter(f -> !f.decided()).toList();
            if (!failing.isEmpty()) {
                missing.add("check fails: " + code.title() + ", " + places(failing) + ". " + code.meaning());
            }
            if (!open.isEmpty()) {
                missing.add("not known: " + code.title() + ", " + places(open) + ". " + why(open.get(0)));
            }
            if (!about.isEmpty() && failing.isEmpty() && open.isEmpty()) {
                safeguards.add(holds(code));
            }
        }
        return this;
    }

    /** What is known of the dusts: a published value of another sample guards against nothing. */
    Line values(List<Dust> burning) {
        checked(burning.stream().map(Dust::id).collect(Collectors.toSet()), FindingCode.DUST_CARD);
        for (Dust dust : burning) {
            if (!dust.card().tested()) {
                safeguards.remove(holds(FindingCode.DUST_CARD));
                missing.add("not tested: " + dust.name()
                        + ", what is reckoned goes by values of other samples or the worst case");
            }
        }
        return this;
    }

    private static String holds(FindingCode code) {
        return "check holds: " + code.title();
    }

    private static String why(Finding open) {
        return open.unjudged() ? open.why() : open.code().meaning();
    }

    private static String places(List<Finding> findings) {
        List<String> places =
                findings.stream().map(f -> f.where().toString()).distinct().toList();
        String shown = places.stream().limit(MOST_PLACES).collect(Collectors.joining(", "));
        return places.size() > MOST_PLACES ? shown + " and " + (places.size() - MOST_PLACES) + " more" : shown;
    }

    /** An interlock of the control sequence by its cause; where there is none, what is missing. */
    Line interlock(String causeName, String lack) {
        return asked(causeName, lack, false);
    }

    /** An interlock that waits for a detector which no plant file can show: it guards only where that is there. */
    Line byDetector(String causeName, String lack) {
        return asked(causeName, lack, true);
    }

    private Line asked(String causeName, String lack, boolean detector) {
        cause(causeName)
                .ifPresentOrElse(
                        c -> found(c, detector),
                        () -> missing.add(lack
                                + sequence.map(s -> " (looked for in " + s.named() + ")")
                                        .orElse(" (no control sequence is described)")));
        return this;
    }

    private Optional<Sequence.Cause> cause(String name) {
        return sequence.stream()
                .flatMap(s -> s.sequence().causes().stream())
                .filter(c -> c.name().equals(name))
                .findFirst();
    }

    /** What only alarms guards nobody, and of the default sequence nobody has said that the plant's controller has it. */
    private void found(Sequence.Cause cause, boolean detector) {
        Controlled by = sequence.orElseThrow();
        String what = cause.message() + " of " + by.named();
        if (cause.demands().isEmpty()) {
            missing.add("tells, and stops nothing: alarm " + what);
            return;
        }
        String interlock = "interlock " + what + ": " + demands(cause) + (cause.latched() ? "; stays until RESET" : "");
        if (detector) {
            missing.add("to be shown on site: the detector of " + interlock);
        } else if (by.named().equals(Controlled.DEFAULT)) {
            missing.add("to be confirmed for the controller on site: " + interlock);
        } else {
            safeguards.add(interlock);
        }
    }

    /** A measurement that tells of this late: named, and no safeguard. */
    Line late(String causeName, String why) {
        cause(causeName)
                .ifPresent(c -> missing.add("tells late, " + why + ": " + c.message() + " of "
                        + sequence.orElseThrow().named()));
        return this;
    }

    private String demands(Sequence.Cause cause) {
        return cause.demands().entrySet().stream()
                .map(d -> words(d.getKey()) + " " + d.getValue())
                .collect(Collectors.joining(", "));
    }

    private String words(String output) {
        return sequence.orElseThrow().sequence().output(output).words();
    }
}
