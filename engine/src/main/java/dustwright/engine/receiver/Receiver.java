package dustwright.engine.receiver;

import dustwright.engine.hazard.Protection;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Volume;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The vessel that separates, filters and holds. What is not known is absent, and what would need it is then said to be unknown.
 *
 * @param diameter of the shell
 * @param elementsDownTo height above the hopper's outlet down to which the filter elements hang; dust must not stand there
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
        Optional<Length> elementsDownTo,
        Optional<Area> freeArea,
        Optional<Length> straightSide,
        Optional<Shell> shell,
        Optional<Hopper> hopper,
        Optional<ReceiverInlet> inlet,
        Optional<LevelProbe> probe,
        Ratio preSeparation,
        Protection protection) {

    /**
     * Volume from the hopper's outlet up to the level probe, or to elements or inlet where they reach lower (equation RCV-8); absent
     * where one of its measures is not known.
     */
    public Optional<Volume> workingVolume() {
        return highestLevel().flatMap(height -> diameter.flatMap(d -> hopper.map(cone -> cone.volumeUpTo(height, d))));
    }

    /** Height above the outlet up to which dust may stand: the probe's, or that of elements or inlet where they are known to reach lower. */
    public Optional<Length> highestLevel() {
        return probe.flatMap(LevelProbe::height)
                .map(height ->
                        lowestAbove().filter(low -> low.compareTo(height) < 0).orElse(height));
    }

    /** The lower of what is known of elements and inlet. */
    public Optional<Length> lowestAbove() {
        return Stream.concat(elementsDownTo.stream(), inlet.flatMap(ReceiverInlet::lowEdge).stream())
                .min(Comparator.naturalOrder());
    }

    /** Whether both elements and inlet are known to begin at some height. */
    public boolean knownAbove() {
        return elementsDownTo.isPresent()
                && inlet.flatMap(ReceiverInlet::lowEdge).isPresent();
    }

    /** A receiver of which no more than this is known. */
    public Receiver(Optional<Length> diameter, Optional<Area> freeArea) {
        this(
                diameter,
                Optional.empty(),
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
