package dustwright.plantfile;

import dustwright.plantfile.keys.Group;
import dustwright.plantfile.keys.Key;
import dustwright.plantfile.keys.Need;
import dustwright.plantfile.keys.PlantKeys;
import dustwright.plantfile.keys.Shape;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The declared keys as tables for people. */
final class KeyReference {
    private final StringBuilder page = new StringBuilder();
    private final Set<Group> done = new LinkedHashSet<>();

    private KeyReference() {}

    static String markdown() {
        return markdown(PlantKeys.TOP);
    }

    static String markdown(Group top) {
        KeyReference reference = new KeyReference();
        reference.section("the whole file", top);
        return reference.page.toString();
    }

    private void section(String where, Group group) {
        if (!done.add(group)) {
            return;
        }
        page.append(page.isEmpty() ? "" : "\n")
                .append("### ")
                .append(where.startsWith("the whole") ? "The whole file" : "`" + where + "`")
                .append("\n\n");
        page.append("| key | value | sensible range | if absent | meaning |\n|---|---|---|---|---|\n");
        List<Runnable> below = new ArrayList<>();
        for (Key key : group.keys()) {
            page.append("| `")
                    .append(key.name())
                    .append("` | ")
                    .append(value(key.shape()))
                    .append(" | ")
                    .append(range(key.shape()))
                    .append(" | ")
                    .append(absent(key.need()))
                    .append(" | ")
                    .append(key.help())
                    .append(" |\n");
            String path = where.startsWith("the whole") ? key.name() : where + "." + key.name();
            groups(key.shape(), path, below);
        }
        for (Group.Choice choice : group.choices()) {
            if (!choice.howMany().isEmpty()) {
                page.append("\n")
                        .append(choice.howMany())
                        .append(": ")
                        .append(choice.words())
                        .append(".\n");
            }
        }
        below.forEach(Runnable::run);
    }

    private void groups(Shape shape, String path, List<Runnable> below) {
        if (shape instanceof Shape.Keys keys) {
            below.add(() -> section(path, keys.group()));
        } else if (shape instanceof Shape.Named named) {
            groups(named.entry(), path + ".<id>", below);
        } else if (shape instanceof Shape.ListOf list) {
            groups(list.item(), path + "[n]", below);
        } else if (shape instanceof Shape.Kinds kinds) {
            for (Group group : kinds.groups()) {
                Shape.Word words = (Shape.Word) group.key("kind").orElseThrow().shape();
                below.add(() -> section(path + " of kind " + String.join(", ", words.words()), group));
            }
            if (!kinds.byModel().isEmpty()) {
                below.add(() -> page.append("\n### `" + path + "` by its model\n\n`model`, "
                        + value(kinds.byModel()
                                .get(0)
                                .key("model")
                                .orElseThrow()
                                .shape())
                        + ", in the place of `kind`: every figure comes from the model of the catalogue. Any key of its kind"
                        + " may stand beside it and then goes before the catalogue's; `hold`, `belt` or `coupled` takes the"
                        + " place of its speed. See [the catalogue](catalogue.md).\n"));
            }
        }
    }

    private static String value(Shape shape) {
        if (shape instanceof Shape.Amount amount) {
            return amount.kinds().stream().map(d -> d.words()).collect(Collectors.joining(" or ")) + ", `"
                    + amount.example() + "`";
        }
        if (shape instanceof Shape.Whole) {
            return "whole number";
        }
        if (shape instanceof Shape.Word word) {
            return word.words().stream().map(w -> "`" + w + "`").collect(Collectors.joining(", "));
        }
        if (shape instanceof Shape.YesNo) {
            return "`yes` or `no`";
        }
        if (shape instanceof Shape.Id id) {
            return "id of a " + id.target().words();
        }
        if (shape instanceof Shape.Text) {
            return "text";
        }
        if (shape instanceof Shape.Anything) {
            return "a value";
        }
        if (shape instanceof Shape.Coordinates) {
            return "`[x, y, z]`";
        }
        if (shape instanceof Shape.CoordinatesOrNothing) {
            return "`[x, y, z]` or `{}`";
        }
        if (shape instanceof Shape.ListOf list) {
            return "list of " + value(list.item());
        }
        if (shape instanceof Shape.Parts parts) {
            return "[" + parts.parts().stream().map(KeyReference::value).collect(Collectors.joining("; ")) + "]";
        }
        if (shape instanceof Shape.Sourced sourced) {
            return value(sourced.value());
        }
        if (shape instanceof Shape.Named named) {
            return "for each " + named.word() + " its id: " + value(named.entry());
        }
        return "keys, see below";
    }

    private static String range(Shape shape) {
        if (shape instanceof Shape.Amount amount) {
            return amount.ranges().stream()
                    .map(r -> r.least() + " to " + r.greatest())
                    .collect(Collectors.joining("; "));
        }
        if (shape instanceof Shape.Whole whole) {
            return whole.least() == whole.greatest()
                    ? Integer.toString(whole.least())
                    : whole.least() + " to " + whole.greatest();
        }
        if (shape instanceof Shape.Text text) {
            return "up to " + text.longest() + " characters";
        }
        if (shape instanceof Shape.Sourced sourced) {
            return range(sourced.value());
        }
        if (shape instanceof Shape.ListOf list) {
            return list.least() > 0 ? "at least " + list.least() : "";
        }
        return "";
    }

    private static String absent(Need need) {
        if (need instanceof Need.Required) {
            return "**required**";
        }
        if (need instanceof Need.Default otherwise) {
            return "`" + otherwise.text() + "` (" + otherwise.basis().text() + basis(otherwise.basis()) + ")";
        }
        if (need instanceof Need.Derived derived) {
            return derived.words() + " (" + derived.basis().text() + ")";
        }
        return "–";
    }

    private static String basis(dustwright.engine.finding.Source source) {
        return source.confidence() == dustwright.engine.finding.Confidence.FROM_MEMORY ? "; from memory" : "";
    }
}
