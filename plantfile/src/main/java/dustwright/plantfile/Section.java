package dustwright.plantfile;

import dustwright.engine.finding.Place;
import dustwright.engine.quantity.Ratio;
import dustwright.plantfile.keys.Group;
import dustwright.plantfile.keys.Key;
import dustwright.plantfile.keys.Need;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A group of keys that was checked: typed values by key. A key that is not there answers with its declared default, and the default
 * goes to the assumptions at that moment; so only defaults that were really used are listed.
 *
 * @param id id of the part this group describes or belongs to; empty for parts without one
 */
record Section(Group group, String id, String path, Span span, Map<String, Object> values, Taken taken) {
    /** By its path alone: the values of a section are many. */
    @Override
    public int hashCode() {
        return path.hashCode();
    }

    /** Place of this part, for assumptions and overrides. */
    Place place() {
        return new Place(group.place(), id);
    }

    boolean has(String key) {
        return values.containsKey(key);
    }

    <T> Optional<T> find(String key, Class<T> type) {
        return Optional.ofNullable(values.get(key)).map(type::cast);
    }

    /** The value, or the declared default, which is then on record. */
    <T> T get(String key, Class<T> type) {
        Object value = values.get(key);
        return type.cast(value != null ? value : takeDefault(key));
    }

    double number(String key) {
        return get(key, Ratio.class).value();
    }

    Optional<Section> section(String key) {
        return find(key, Section.class);
    }

    /** Entries of a list. */
    List<?> items(String key) {
        return find(key, List.class).<List<?>>map(list -> list).orElse(List.of());
    }

    List<Section> sections(String key) {
        return items(key).stream().map(Section.class::cast).toList();
    }

    /** Entries by id, in the order of the file. */
    Map<?, ?> named(String key) {
        return find(key, Map.class).<Map<?, ?>>map(map -> map).orElse(Map.of());
    }

    List<Section> namedSections(String key) {
        return named(key).values().stream().map(Section.class::cast).toList();
    }

    /** Puts a derived default on record, said with the value it came to. */
    void derive(String key, String value) {
        if (key(key).need() instanceof Need.Derived derived) {
            taken.record(group, id, key + " " + value, derived.basis());
        }
    }

    private Object takeDefault(String name) {
        Key key = key(name);
        if (!(key.need() instanceof Need.Default otherwise)) {
            throw new IllegalStateException(path + "." + name + " is neither there nor has it a default");
        }
        taken.record(group, id, name + " " + otherwise.text(), otherwise.basis());
        return Defaults.value(key.shape(), otherwise.text());
    }

    private Key key(String name) {
        return group.key(name).orElseThrow(() -> new IllegalStateException(group.words() + " has no key " + name));
    }
}
