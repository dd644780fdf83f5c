package dustwright.engine;

import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.quantity.Velocity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The slowest a run gets with a single user anywhere upstream of it.
 *
 * @param inlet the inlet that is open alone
 * @param state name of the state, filter condition included
 * @param slowest velocity at the run's slowest point
 * @param least velocity the dust needs
 * @param margin (slowest − least)/least [-]
 */
public record OneUserVelocity(String run, String inlet, String state, Velocity slowest, Velocity least, double margin) {
    static List<OneUserVelocity> of(List<StateAnswer> answers) {
        Map<String, OneUserVelocity> slowest = new LinkedHashMap<>();
        for (StateAnswer answer : answers) {
            if (answer.state().open().size() != 1) {
                continue;
            }
            for (Finding finding : answer.findings()) {
                if (finding.code() == FindingCode.TRANSPORT_VELOCITY
                        && finding.where().kind() == Place.Kind.RUN) {
                    OneUserVelocity found = new OneUserVelocity(
                            finding.where().id(),
                            answer.state().open().get(0),
                            answer.state().name(),
                            new Velocity(finding.value().si()),
                            new Velocity(finding.limit().si()),
                            finding.margin());
                    slowest.merge(found.run(), found, (a, b) -> b.margin() < a.margin() ? b : a);
                }
            }
        }
        return List.copyOf(slowest.values());
    }
}
