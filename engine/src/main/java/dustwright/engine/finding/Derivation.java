package dustwright.engine.finding;

import java.util.List;
import java.util.function.Supplier;

/**
 * The chain of steps by which a value was found, first step first, and where its limit comes from. Thousands of findings are judged and
 * a few are read, so the steps are written down when somebody asks for them; they depend on nothing that can change.
 */
public final class Derivation {
    private final Supplier<List<Step>> writing;
    private final Source limitSource;

    /**
     * A derivation whose steps are written down when asked for.
     *
     * @param writing gives the same steps every time
     */
    public Derivation(Supplier<List<Step>> writing, Source limitSource) {
        this.writing = writing;
        this.limitSource = limitSource;
    }

    /** A derivation with its steps. */
    public Derivation(List<Step> steps, Source limitSource) {
        this(asSupplier(List.copyOf(steps)), limitSource);
    }

    private static Supplier<List<Step>> asSupplier(List<Step> steps) {
        return () -> steps;
    }

    public List<Step> steps() {
        return List.copyOf(writing.get());
    }

    public Source limitSource() {
        return limitSource;
    }
}
