package dustwright.plantfile;

import dustwright.engine.quantity.QuantityText;
import dustwright.plantfile.keys.Shape;

/** Values of declared defaults. */
final class Defaults {
    private Defaults() {}

    static Object value(Shape shape, String text) {
        if (shape instanceof Shape.Amount amount
                && QuantityText.read(text, amount.kinds()) instanceof QuantityText.Read.Good good) {
            return good.quantity();
        }
        if (shape instanceof Shape.Whole) {
            return Integer.valueOf(text);
        }
        if (shape instanceof Shape.YesNo) {
            return text.equals("yes");
        }
        if (shape instanceof Shape.Word) {
            return text;
        }
        if (shape instanceof Shape.Sourced sourced) {
            return value(sourced.value(), text);
        }
        throw new IllegalStateException("default " + text + " does not fit its shape");
    }
}
