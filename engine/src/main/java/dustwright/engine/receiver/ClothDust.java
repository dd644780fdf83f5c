package dustwright.engine.receiver;

import dustwright.engine.quantity.CakeResistance;
import java.util.Optional;

/**
 * What a dust is like on filter cloth; absent where not known.
 *
 * @param factorMaterial the material of the factor method's list that it is like
 * @param ratioDust the dust of the table of ratios that it is like
 * @param cake specific resistance of its cake, K_2
 * @param sticky whether it cakes or smears
 */
public record ClothDust(
        Optional<String> factorMaterial,
        Optional<String> ratioDust,
        Optional<CakeResistance> cake,
        Optional<Boolean> sticky) {
    /** Nothing known. */
    public static final ClothDust UNKNOWN =
            new ClothDust(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
