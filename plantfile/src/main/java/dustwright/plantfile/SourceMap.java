package dustwright.plantfile;

import java.util.List;
import java.util.Optional;

/** Where each key and value stands in the text, by path: {@code runs.D1.fittings[0].k}. */
public final class SourceMap {
    private final Tree.Entries top;

    SourceMap(Tree.Entries top) {
        this.top = top;
    }

    /** Place of the value at a path. */
    public Optional<Span> value(String path) {
        return Paths.find(top, path).map(Paths.Found::value).map(Tree::span);
    }

    /** Keys below a path, in the order of the file; none where there is nothing of the kind. */
    List<String> keys(String path) {
        return Paths.find(top, path).map(Paths.Found::value).orElse(null) instanceof Tree.Entries entries
                ? entries.entries().stream().map(e -> e.key().text()).toList()
                : List.of();
    }

    /** Place of the key at a path; of the value, where a path ends in a list. */
    public Optional<Span> key(String path) {
        return Paths.find(top, path)
                .map(f -> f.entry()
                        .map(e -> e.key().span())
                        .orElseGet(() -> f.value().span()));
    }
}
