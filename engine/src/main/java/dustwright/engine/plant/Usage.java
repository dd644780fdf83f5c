package dustwright.engine.plant;

import java.util.List;

/** How the plant is used. Simultaneous users are asked, never inferred from the number of inlets. */
public record Usage(int simultaneousUsers, List<Zone> zones, List<DesignSet> designSets) {
    public Usage {
        zones = List.copyOf(zones);
        designSets = List.copyOf(designSets);
    }
}
