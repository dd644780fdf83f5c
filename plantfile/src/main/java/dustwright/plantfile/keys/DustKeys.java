package dustwright.plantfile.keys;

import static dustwright.plantfile.keys.Amounts.*;

import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.engine.hazard.DustCard;
import dustwright.engine.hazard.DustCard.Sample;
import dustwright.engine.hazard.DustFamily;
import dustwright.engine.hazard.PublishedDust;
import dustwright.engine.receiver.AirToCloth;
import dustwright.plantfile.keys.Shape.ListOf;
import dustwright.plantfile.keys.Shape.Sourced;
import dustwright.plantfile.keys.Shape.Word;
import java.util.Arrays;
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

    static final Group EXPLOSION = new Group(
            "a dust's explosion card",
            Place.Kind.DUST,
            List.of(
                    Key.optional(
                            "family",
                            new Word(Arrays.stream(DustFamily.values())
                                    .map(DustFamily::words)
                                    .toList()),
                            "What it is made of: it decides the group, and with what it must not be collected."),
                    Key.optional(
                            "explodes like",
                            new Word(PublishedDust.severities()),
                            "Published dust that stands in for Kst, Pmax and MEC that are not tested: plausible values of another sample."),
                    Key.optional(
                            "ignites like",
                            new Word(PublishedDust.sensitivities()),
                            "Published dust that stands in for MIE, MIT, LIT and MEC that are not tested: plausible values of another sample."),
                    Key.optional(
                            "like because",
                            new Shape.Text(300),
                            "Why these published dusts may stand for it, and who says so; without it nothing is taken from them."),
                    Key.optional("kst", new Sourced(KST), "Explosion constant Kst."),
                    Key.optional(
                            "pmax",
                            new Sourced(EXPLOSION_PRESSURE),
                            "Greatest explosion pressure, over the barometer."),
                    Key.optional("mie", new Sourced(IGNITION_ENERGY), "Least ignition energy of a cloud."),
                    Key.optional("mit", new Sourced(IGNITION), "Least ignition temperature of a cloud."),
                    Key.optional("lit", new Sourced(IGNITION), "Least ignition temperature of a 5 mm layer."),
                    Key.optional("mec", new Sourced(EXPLOSIBLE), "Least explosible concentration."),
                    Key.optional("conductive", new Shape.YesNo(), "Whether its resistivity is 1 kohm m or less."),
                    Key.optional("food", new Shape.YesNo(), "Whether it goes into food or touches it."),
                    Key.optional("toxic", new Shape.YesNo(), "Whether it is toxic."),
                    Key.optional(
                            "sensitizing",
                            new Shape.YesNo(),
                            "Whether it is sensitizing to lungs or skin, or carcinogenic, by its safety data sheet: flour, enzymes, hardwood, cement, some pigments are."),
                    Key.optional(
                            "hygiene",
                            new Word(Arrays.stream(DustCard.Hygiene.values())
                                    .map(Enum::name)
                                    .toList()),
                            "Dust class L, M or H, by the owner's hygienist."),
                    Key.optional("sample size", SAMPLE_SIZE, "Median size of the sample that the values are of."),
                    Key.optional("sample moisture", MOISTURE, "Moisture of that sample, by mass."),
                    Key.otherwise(
                            "sample",
                            new Word(Arrays.stream(Sample.values())
                                    .map(Sample::words)
                                    .toList()),
                            Sample.PUBLISHED.words(),
                            Source.ownReading("nobody says that this dust was tested"),
                            "Whose dust the values belong to: only a test of the own dust counts."),
                    Key.optional("report", new Shape.Text(200), "Test report: laboratory, number, date."),
                    Key.optional(
                            "insulating",
                            new Shape.YesNo(),
                            "Whether its resistivity is above 10 Gohm m, by the `report` of the own dust: its heap then keeps its charge."),
                    Key.optional(
                            "heap judged",
                            new Shape.Text(300),
                            "Specialist who has judged its heap against cone discharges, with report and measures.")),
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
