package dustwright.engine.plant;

import java.util.List;

/** Inlets that the customer agreed may be open together. */
public record DesignSet(String name, List<String> open) {
    public DesignSet {
        open = List.copyOf(open);
    }
}
