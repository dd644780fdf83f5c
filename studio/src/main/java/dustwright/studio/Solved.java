package dustwright.studio;

import dustwright.engine.StateAnswer;
import dustwright.engine.Study;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The sets asked for last, solved: what is told of one after its colours is not solved again. */
final class Solved {
    private static final int KEPT = 8;

    private record Asked(long version, State state) {}

    private final Map<Asked, StateAnswer> kept = new LinkedHashMap<>();

    /** Of the plant of this version. */
    StateAnswer of(long version, Plant plant, State state) {
        Asked asked = new Asked(version, state);
        synchronized (this) {
            StateAnswer known = kept.get(asked);
            if (known != null) {
                return known;
            }
        }
        StateAnswer answer = Study.of(plant, List.of(state)).states().get(0);
        synchronized (this) {
            kept.put(asked, answer);
            if (kept.size() > KEPT) {
                kept.remove(kept.keySet().iterator().next());
            }
        }
        return answer;
    }
}
