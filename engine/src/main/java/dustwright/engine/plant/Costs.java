package dustwright.engine.plant;

import dustwright.engine.bagging.Container;
import dustwright.engine.quantity.Money;
import dustwright.engine.quantity.Price;
import dustwright.engine.quantity.Ratio;
import java.util.Optional;

/**
 * What the owner pays, in one currency. What is absent is not known, and then no sum that needs it is given.
 *
 * @param container one bag, and one drum where none is stated for those
 * @param drum one drum; absent where it is that of a container
 * @param filterSet one set of filter elements
 * @param filterYears years a set lasts
 * @param labour an hour of work
 * @param upkeep a year of upkeep
 * @param investment first cost of the whole system
 * @param residual what it is worth at the end
 * @param interest discount rate a year, real where the growth of prices is real [-]
 * @param growth of energy prices a year [-]
 * @param years of the comparison
 * @param motorEfficiency where the motor's own is not known [-]
 * @param driveEfficiency of belts and drive together [-]
 */
public record Costs(
        Optional<Price> electricity,
        Optional<Price> compressedAir,
        Optional<Money> container,
        Optional<Money> drum,
        Optional<Money> filterSet,
        Optional<Integer> filterYears,
        Optional<Price> labour,
        Optional<Price> upkeep,
        Optional<Money> investment,
        Optional<Money> residual,
        Optional<Ratio> interest,
        Ratio growth,
        Optional<Integer> years,
        Optional<Ratio> motorEfficiency,
        Ratio driveEfficiency) {
    /** Price of one container of a kind; absent where not stated. */
    public Optional<Money> each(Container.Kind kind) {
        return kind == Container.Kind.DRUM ? drum.or(() -> container) : container;
    }
}
