package dustwright.plantfile.keys;

import static dustwright.plantfile.keys.Amounts.*;

import dustwright.engine.finding.Place;
import dustwright.engine.receiver.AirToCloth;
import dustwright.plantfile.keys.Shape.ListOf;
import dustwright.plantfile.keys.Shape.Word;
import java.util.List;

/** What a dust is like where it is filtered and stored. */
final class DustKeys {
    private DustKeys() {}

    static final Group ON_CLOTH = new Group(
            "a dust on cloth",
            Place.Kind.DUST,
            List.of(
                    Key.optional(
                            "factor material",
                            new Word(AirToCloth.materials()),
                            "Material of the pulse-jet factor method's list that it is like."),
                    Key.optional(
                            "ratio dust",
                            new Word(AirToCloth.tabulatedDusts()),
                            "Dust of the published table of air-to-cloth ratios that it is like."),
                    Key.optional(
                            "cake resistance",
                            CAKE,
                            "Specific resistance K2 of its cake: pressure drop over filtration velocity and dust per area; measure it on the cloth in use."),
                    Key.optional("sticky", new Shape.YesNo(), "Whether it cakes or smears.")),
            List.of());

    static final Group IN_HOPPER = new Group(
            "a dust in a hopper",
            Place.Kind.DUST,
            List.of(
                    Key.optional(
                            "wall friction",
                            WALL_FRICTION,
                            "Angle of friction against the hopper's wall, by a shear cell on that wall."),
                    Key.optional(
                            "effective angle",
                            INTERNAL_FRICTION,
                            "Effective angle of internal friction, by a shear cell."),
                    Key.optional(
                            "flow function",
                            new ListOf(new Shape.Parts(List.of(STRENGTH, STRENGTH)), 2),
                            "Measured points [consolidating stress, unconfined strength], by a shear cell."),
                    Key.optional("repose", REPOSE, "Angle of repose."),
                    Key.optional(
                            "largest lump",
                            LUMP,
                            "Largest piece that gets in: it must pass tool, hose and tubing, and the hopper's outlet.")),
            List.of());
}
