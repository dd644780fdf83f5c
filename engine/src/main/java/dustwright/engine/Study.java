package dustwright.engine;

import dustwright.engine.finding.Finding;
import dustwright.engine.plant.Plant;
import java.util.List;

/**
 * The class to read first: a plant and the states asked for in, all results and findings out.
 *
 * @param states one answer per state asked, in the order asked
 * @param oneUser slowest one-user velocity per run that carries dust, in the order of the plant file; empty if not asked
 * @param charts system against producer, one per station, in the state with the worst margin
 * @param profiles along the path of the open inlet with the worst margin; empty if nothing was solved
 */
public record Study(
        Plant plant,
        List<StateAnswer> states,
        List<OneUserVelocity> oneUser,
        List<OperatingChart> charts,
        List<PressureProfile> profiles) {
    public Study {
        states = List.copyOf(states);
        oneUser = List.copyOf(oneUser);
        charts = List.copyOf(charts);
        profiles = List.copyOf(profiles);
    }

    /** True when every state was solved and every requirement holds in each. */
    public boolean holds() {
        return states.stream().allMatch(StateAnswer::holds);
    }

    /** All findings of all states, smallest margin first; equal margins in the order of states. */
    public List<Finding> worstFirst() {
        return states.stream()
                .flatMap(s -> s.findings().stream())
                .sorted(java.util.Comparator.comparingDouble(Finding::margin))
                .toList();
    }
}
