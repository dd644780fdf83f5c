package dustwright.plantfile;

import dustwright.engine.conveying.Dust;
import dustwright.engine.conveying.DustClass;
import dustwright.engine.conveying.LevelFriction;
import dustwright.engine.conveying.Particle;
import dustwright.engine.conveying.SolidsFriction;
import dustwright.engine.finding.Source;
import dustwright.engine.hazard.DustCard;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Velocity;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Makes the dusts; lists what is left out where a dust that is fed has no particles stated. */
final class DustBinder {
    private final Section top;

    DustBinder(Section top) {
        this.top = top;
    }

    List<Dust> dusts() {
        return top.namedSections("dusts").stream().map(this::dust).toList();
    }

    private Dust dust(Section dust) {
        Optional<DustClass> dustClass = dust.find("class", String.class)
                .flatMap(words -> Arrays.stream(DustClass.values())
                        .filter(c -> c.words().equals(words))
                        .findFirst());
        Optional<Particle> particle = particle(dust);
        if (particle.isEmpty() && isFed(top, dust.id())) {
            dust.taken()
                    .record(
                            dust.group(),
                            dust.id(),
                            "what it adds to pressure drops is left out, and no saltation or choking velocity is computed,"
                                    + " until \"particle size\" and \"particle density\" are entered",
                            Source.ownReading("particles not stated"));
        }
        if (particle.filter(p -> !SolidsFriction.known(p)).isPresent() && isFed(top, dust.id())) {
            dust.taken()
                    .record(
                            dust.group(),
                            dust.id(),
                            "its particles are coarser and heavier than the law of their velocity is taken for (CON-30, lag above 0.75): they are"
                                    + " taken to move at a quarter of the air's velocity in level tubes, and what they add to pressure drops is"
                                    + " an estimate, until \"level speed\" is entered",
                            Source.ownReading("the end of the law's range"));
        }
        if (dustClass.isPresent()) {
            dust.taken()
                    .record(
                            dust.group(),
                            dust.id(),
                            "its class's least velocity, made for air near 1.2 kg/m³, is asked as it is in thinner air too; common"
                                    + " practice asks √(1.2/ρ) times as much there, which explain shows beside it",
                            Source.commonPractice());
        }
        return new Dust(
                dust.id(),
                dust.get("name", String.class),
                dustClass,
                dustClass.map(DustClass::minimum).orElseGet(() -> dust.get("minimum velocity", Velocity.class)),
                dustClass.isPresent() ? DustClass.SOURCE : Source.entered(),
                dust.find("bulk density", Density.class),
                dust.find("heaviest bulk density", Density.class),
                dust.find("tapped density", Density.class),
                particle,
                particle.map(p -> levelFriction(dust, p)).orElse(LevelFriction.YANG),
                dust.find("carrying velocity", Velocity.class),
                dust.find("combustible", Boolean.class),
                ReceiverBinder.onCloth(dust),
                ReceiverBinder.inHopper(dust),
                dust.section("explosion")
                        .map(card -> HazardBinder.card(card, particle.map(Particle::size)))
                        .orElse(DustCard.UNKNOWN));
    }

    private static Optional<Particle> particle(Section dust) {
        Optional<Density> density = dust.find("particle density", Density.class);
        return dust.find("particle size", Length.class)
                .flatMap(size -> density.map(d -> new Particle(size, d, dust.find("level speed", Ratio.class))));
    }

    private static LevelFriction levelFriction(Section dust, Particle particle) {
        Optional<String> stated = dust.find("level friction", String.class);
        if (stated.isPresent()) {
            return Worded.of(LevelFriction.values(), LevelFriction::words, stated.get());
        }
        LevelFriction usual = LevelFriction.usual(particle);
        dust.derive("level friction", usual.words());
        return usual;
    }

    /** Whether some inlet picks this dust up. */
    private static boolean isFed(Section top, String dust) {
        return top.namedSections("inlets").stream()
                .anyMatch(inlet ->
                        inlet.find("dust", String.class).filter(dust::equals).isPresent() && feeds(inlet));
    }

    /** Whether any dust of known rate is picked up in this plant. */
    static boolean anyFed(Section top) {
        return top.namedSections("inlets").stream().anyMatch(inlet -> inlet.has("dust") && feeds(inlet));
    }

    private static boolean feeds(Section inlet) {
        return inlet.find("feed", MassFlow.class)
                .filter(feed -> feed.kgPerSecond() > 0)
                .isPresent();
    }
}
