package dustwright.plantfile;

import dustwright.engine.quantity.QuantityText;
import dustwright.plantfile.keys.Key;
import dustwright.plantfile.keys.Need;
import dustwright.plantfile.keys.Shape;
import java.util.stream.Collectors;

/** What belongs at a place, in words and as an example. */
final class Examples {
    private Examples() {}

    /** In words with an example: "a length such as 25 ft". */
    static String expected(Shape shape) {
        if (shape instanceof Shape.Amount amount) {
            return QuantityText.withArticle(QuantityText.words(amount.kinds())) + " such as " + amount.example();
        }
        if (shape instanceof Shape.Whole whole) {
            return whole.least() == whole.greatest()
                    ? Integer.toString(whole.least())
                    : "a whole number from " + whole.least() + " to " + whole.greatest();
        }
        if (shape instanceof Shape.Id id) {
            return "the id of a " + id.target().words();
        }
        if (shape instanceof Shape.Word word) {
            return "one of " + Names.oneOf(word.words());
        }
        if (shape instanceof Shape.ListOf list) {
            return "a list such as " + of(list);
        }
        return "for example " + of(shape);
    }

    /** As one would write it. */
    static String of(Shape shape) {
        if (shape instanceof Shape.Amount amount) {
            return amount.example();
        }
        if (shape instanceof Shape.Whole whole) {
            return Integer.toString(whole.least());
        }
        if (shape instanceof Shape.Word word) {
            return word.words().get(0);
        }
        if (shape instanceof Shape.YesNo) {
            return "no";
        }
        if (shape instanceof Shape.Id id) {
            return "<" + id.target().words() + ">";
        }
        if (shape instanceof Shape.Coordinates || shape instanceof Shape.CoordinatesOrNothing) {
            return "[4.5, 2, 6]";
        }
        if (shape instanceof Shape.ListOf list) {
            return "[" + of(list.item()) + "]";
        }
        if (shape instanceof Shape.Parts parts) {
            return parts.parts().stream().map(Examples::of).collect(Collectors.joining(", ", "[", "]"));
        }
        if (shape instanceof Shape.Sourced sourced) {
            return of(sourced.value());
        }
        if (shape instanceof Shape.Keys keys) {
            return keys.group().keys().stream()
                    .filter(k -> k.need() instanceof Need.Required)
                    .map((Key k) -> k.name() + ": " + of(k.shape()))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        if (shape instanceof Shape.Named named) {
            return "{<id>: " + of(named.entry()) + "}";
        }
        if (shape instanceof Shape.Kinds kinds) {
            return of(new Shape.Keys(kinds.groups().get(0)));
        }
        return "text";
    }
}
