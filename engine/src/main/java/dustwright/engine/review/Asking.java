package dustwright.engine.review;

import dustwright.engine.finding.Finding;
import dustwright.engine.sheet.Collecting;
import java.util.List;
import java.util.Optional;

/** What every line of one place where dust is collected is asked of: its checks and its control sequence. */
record Asking(Collecting here, List<Finding> findings, Optional<Controlled> sequence) {
    Asking {
        findings = List.copyOf(findings);
    }

    Line line(String what, String node, String deviation, String cause, String consequence) {
        return new Line(here.place().id() + " " + what, node, deviation, cause, consequence, findings, sequence);
    }
}
