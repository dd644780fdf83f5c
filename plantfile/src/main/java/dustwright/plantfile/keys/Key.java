package dustwright.plantfile.keys;

/**
 * One key of a group.
 *
 * @param name as written in the file
 * @param shape what its value looks like
 * @param need whether it must be there
 * @param help one sentence for the key reference
 */
public record Key(String name, Shape shape, Need need, String help) {
    static Key required(String name, Shape shape, String help) {
        return new Key(name, shape, new Need.Required(), help);
    }

    static Key optional(String name, Shape shape, String help) {
        return new Key(name, shape, new Need.Optional(), help);
    }

    static Key otherwise(String name, Shape shape, String text, dustwright.engine.finding.Source basis, String help) {
        return new Key(name, shape, new Need.Default(text, basis), help);
    }

    static Key derived(String name, Shape shape, String words, dustwright.engine.finding.Source basis, String help) {
        return new Key(name, shape, new Need.Derived(words, basis), help);
    }
}
