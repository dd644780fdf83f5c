package dustwright.engine.conveying;

import dustwright.engine.finding.Source;
import dustwright.engine.hazard.DustCard;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Velocity;
import dustwright.engine.receiver.ClothDust;
import dustwright.engine.receiver.HopperDust;
import java.util.List;
import java.util.Optional;

/**
 * A dust the plant picks up.
 *
 * @param minimumVelocity least transport velocity, from the class or stated in the plant file
 * @param basis where the minimum velocity comes from
 * @param looseBulkDensity as it falls, at its lightest where it varies; absent where not known
 * @param heaviestBulkDensity loose too, at its heaviest; absent where it does not vary as far as is known
 * @param tappedBulkDensity after settling; absent where not known
 * @param particle absent where size or density of the particles is not known: what it costs to carry it is then unknown
 * @param levelFriction form of its friction in level tubes
 * @param carryingVelocity measured least velocity that keeps it from settling and from choking a riser; where present it counts instead of the published laws
 * @param combustible absent where nobody has tested it; it is then treated as combustible
 * @param onCloth what it is like on filter cloth
 * @param inHopper what it is like in a hopper
 * @param enteredCard how it ignites and explodes, as the plant file says
 */
public record Dust(
        String id,
        String name,
        Optional<DustClass> dustClass,
        Velocity minimumVelocity,
        Source basis,
        Optional<Density> looseBulkDensity,
        Optional<Density> heaviestBulkDensity,
        Optional<Density> tappedBulkDensity,
        Optional<Particle> particle,
        LevelFriction levelFriction,
        Optional<Velocity> carryingVelocity,
        Optional<Boolean> combustible,
        ClothDust onCloth,
        HopperDust inHopper,
        DustCard enteredCard) {

    /** No id of a plant file holds a space. */
    private static final String NOT_NAMED = "not named";

    /** What comes in at inlets whose dust nobody has named: it may be anything. */
    public static Dust notNamed(List<String> inlets) {
        return new Dust(
                NOT_NAMED,
                "the dust of " + String.join(", ", inlets) + ", which nobody has named",
                Optional.empty(),
                new Velocity(0),
                Source.ownReading("nobody has named it"),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                LevelFriction.HINKLE,
                Optional.empty(),
                Optional.empty(),
                ClothDust.UNKNOWN,
                HopperDust.UNKNOWN,
                DustCard.UNKNOWN);
    }

    /** Whether nobody has named it. */
    public boolean isNotNamed() {
        return id.equals(NOT_NAMED);
    }

    /** Whether it is treated as combustible: unless "no" is stated and shown, and nothing else that is stated speaks against it. */
    public boolean burns() {
        return combustible.orElse(true) || !enteredCard.shownInert();
    }

    /** How it ignites and explodes, as far as that may be relied on. */
    public DustCard card() {
        return enteredCard.relied(particle.map(Particle::size));
    }

    /** Loose bulk density at the heavy end of its range, which decides what a volume weighs; the light end decides what a mass takes. */
    public Optional<Density> heaviest() {
        return heaviestBulkDensity.or(() -> looseBulkDensity);
    }

    /** The largest piece that must pass: the largest lump, or a particle where no lump is stated; empty where neither is known. */
    public Optional<Length> largestPiece() {
        return inHopper.largestLump().or(() -> particle.map(Particle::size));
    }

    /** A dust of which no more than this is known. */
    public Dust(
            String id,
            String name,
            Optional<DustClass> dustClass,
            Velocity minimumVelocity,
            Source basis,
            Optional<Density> looseBulkDensity,
            Optional<Density> tappedBulkDensity,
            Optional<Particle> particle,
            LevelFriction levelFriction) {
        this(
                id,
                name,
                dustClass,
                minimumVelocity,
                basis,
                looseBulkDensity,
                Optional.empty(),
                tappedBulkDensity,
                particle,
                levelFriction,
                Optional.empty(),
                Optional.empty(),
                ClothDust.UNKNOWN,
                HopperDust.UNKNOWN,
                DustCard.UNKNOWN);
    }

    /** Whether what it costs to carry is known: particles are stated, and how fast they move in level tubes is measured or within CON-30. */
    public boolean lossKnown() {
        return particle.filter(SolidsFriction::known).isPresent();
    }
}
