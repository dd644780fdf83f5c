package dustwright.engine.producer;

import dustwright.engine.finding.Confidence;
import dustwright.engine.finding.Source;
import java.util.List;

/**
 * A machine of a catalogue, by which a producer's figures are known.
 *
 * @param name of the model
 * @param catalogue name of the catalogue it stands in
 * @param stated where the catalogue has its figures from
 * @param invented true where the catalogue says its figures are invented
 * @param replaced keys whose figures the plant file states itself, in the place of the catalogue's
 * @param added keys that the plant file states and the catalogue does not
 */
public record Model(
        String name, String catalogue, String stated, boolean invented, List<String> replaced, List<String> added) {
    public Model {
        replaced = List.copyOf(replaced);
        added = List.copyOf(added);
    }

    /** A model as its catalogue has it. */
    public Model(String name, String catalogue, String stated, boolean invented) {
        this(name, catalogue, stated, invented, List.of(), List.of());
    }

    /** The same model with figures that a plant file states itself. */
    public Model with(List<String> replacing, List<String> adding) {
        return new Model(name, catalogue, stated, invented, replacing, adding);
    }

    /** Whether the figure of a key is the catalogue's. */
    public boolean gives(String key) {
        return !replaced.contains(key) && !added.contains(key);
    }

    /** The catalogue as the source of a figure. */
    public Source source() {
        return new Source(
                "model " + name + ", catalogue " + catalogue + (invented ? " (invented figures)" : " (" + stated + ")"),
                Confidence.CATALOGUE);
    }

    /** Where the figure of a key comes from. */
    public Source sourceOf(String key) {
        return gives(key) ? source() : Source.entered();
    }
}
