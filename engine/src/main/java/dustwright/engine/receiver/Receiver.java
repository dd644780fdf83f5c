package dustwright.engine.receiver;

import dustwright.engine.hazard.Protection;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Volume;
import java.util.Optional;

/**
 * The vessel that separates, filters and holds. What is not known is absent, and what would need it is then said to be unknown.
 *
 * @param diameter of the shell
 * @param freeArea cross-section left between the filter elements; without it no velocity between them is said
 * @param straightSide height of the cylinder, from the hopper's top to the head
 * @param shell wall against vacuum
 * @param hopper cone below the cylinder
 * @param inlet where and how tubing enters
 * @param probe high-level probe
 * @param preSeparation share of the dust that falls out before the cloth [-]; 0 is the prudent reading
 * @param protection against a dust explosion
 */
public record Receiver(
        Optional<Length> diameter,
        Optional<Area> freeArea,
        Optional<Length> straightSide,
        Optional<Shell> shell,
        Optional<Hopper> hopper,
        Optional<ReceiverInlet> inlet,
        Optional<LevelProbe> probe,
        Ratio preSeparation,
        Protection protection) {

    /** Volume from the hopper's outlet up to the level probe (equation RCV-8); absent where one of its measures is not known. */
    public Optional<Volume> workingVolume() {
        return probe.flatMap(LevelProbe::height)
                .flatMap(height -> diameter.flatMap(d -> hopper.map(cone -> cone.volumeUpTo(height, d))));
    }

    /** A receiver of which no more than this is known. */
    public Receiver(Optional<Length> diameter, Optional<Area> freeArea) {
        this(
                diameter,
                freeArea,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                new Ratio(0),
                Protection.UNKNOWN);
    }
}
