package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.hazard.CloudLaws;
import dustwright.engine.hazard.DustCard;
import dustwright.engine.hazard.Explosion;
import dustwright.engine.hazard.Protection;
import dustwright.engine.hazard.VentEn14491;
import dustwright.engine.hazard.VentNfpa68;
import dustwright.engine.hazard.Vents;
import dustwright.engine.plant.Limit;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.Count;
import dustwright.engine.quantity.Duration;
import dustwright.engine.quantity.ExplosionConstant;
import dustwright.engine.quantity.Force;
import dustwright.engine.quantity.GaugePressure;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.OutOfRangeException;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Volume;
import dustwright.engine.receiver.Hopper;
import dustwright.engine.receiver.Receiver;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** The explosion vent of a receiver by two published methods side by side, and what it throws out. Outside its range a method gives no number. */
final class VentLines {
    private static final Source OWN_SHAPE =
            Source.ownReading("geometry; the whole vessel counts, and its whole height over its diameter");
    private static final String NOT_FOR_METAL =
            "Not by these equations: here comes a metal dust. Ask a specialist and the maker of the vent for an area from tests of this very"
                    + " dust, by the metal clauses of the standards, or take a collector that needs none, such as a wet one.";
    private static final double FIREBALL_K = 8;
    private static final double METAL_FIREBALL_K = 10;

    private final Receiver receiver;
    private final Protection stated;
    private final Writing writing;

    VentLines(Receiver receiver, Writing writing) {
        this.receiver = receiver;
        this.stated = receiver.protection();
        this.writing = writing;
    }

    void write(List<Dust> all) {
        List<Dust> metals = all.stream().filter(d -> d.card().metal()).toList();
        List<Dust> burning = all.stream().filter(d -> !d.card().metal()).toList();
        metals.forEach(
                dust -> writing.unknown("vent-metal-" + dust.id(), "Explosion vent for " + dust.name(), NOT_FOR_METAL));
        Optional<Volume> volume = stated.volume().or(this::volume);
        Optional<Ratio> slenderness = stated.slenderness().or(this::slenderness);
        if (volume.isEmpty()
                || slenderness.isEmpty()
                || stated.reduced().isEmpty()
                || stated.opens().isEmpty()) {
            String why =
                    "Enter \"reduced pressure\" and \"opens\" under \"explosion\" of the receiver, and its diameter, straight side and"
                            + " hopper, or \"volume\" and \"length to diameter\".";
            writing.unknown("vent", "Explosion vent", why);
            writing.notSaid(
                    FindingCode.VENT_AREA,
                    Place.Kind.RECEIVER,
                    VentEn14491.SOURCE,
                    metals.isEmpty() ? why : NOT_FOR_METAL);
            return;
        }
        shape(volume.get(), slenderness.get());
        List<Area> areas = new ArrayList<>();
        List<Step> steps = new ArrayList<>();
        boolean eachSaid = true;
        for (Dust dust : burning) {
            eachSaid &= areas(dust, volume.get(), slenderness.get(), areas, steps);
        }
        behindDuct();
        fireball(volume.get(), all);
        boolean allSaid = eachSaid && metals.isEmpty();
        Optional<Area> largest = allSaid ? areas.stream().max(Area::compareTo) : Optional.empty();
        largest.ifPresentOrElse(
                area -> judged(area, volume.get(), burning, steps.get(areas.indexOf(area))),
                () -> writing.notSaid(
                        FindingCode.VENT_AREA,
                        Place.Kind.RECEIVER,
                        VentEn14491.SOURCE,
                        metals.isEmpty()
                                ? "For a dust here neither method gives a number for this vessel and its duct: take another method than"
                                        + " venting, or a specialist."
                                : NOT_FOR_METAL));
        writing.words(
                "vent-limits",
                "What the vent does not do",
                "it protects this vessel only: without isolation the blast travels to people who hold hoses. Neither method credits the"
                        + " vacuum; EN 14491 is for a light panel, 0.5 kg/m² and less, or one of tested efficiency. Strength of the vessel, recoil, fireball and the final area need a specialist and the standard itself, with"
                        + " which these constants have not been compared",
                List.of(),
                Source.commonPractice());
    }

    /** EN 14491 has a term for the duct behind a vent; what it reads since its correction was not seen. */
    private void behindDuct() {
        if (stated.vent().ducted()) {
            writing.unknown(
                    "vent-en-duct",
                    "Vent area by EN 14491 with its duct",
                    "Not covered: the equation for ducts in the text of 2006 was corrected in 2008 and neither form was seen. The number"
                            + " above is without duct and is none behind one; take the standard's own text.");
        }
    }

    private Optional<Volume> volume() {
        return receiver.diameter()
                .flatMap(d -> receiver.straightSide()
                        .flatMap(side -> receiver.hopper()
                                .map(h -> h.volumeUpTo(new Length(h.heightTo(d).metres() + side.metres()), d))));
    }

    private Optional<Ratio> slenderness() {
        return receiver.diameter()
                .flatMap(d -> receiver.straightSide()
                        .map(side -> new Ratio(Math.max(
                                1,
                                (side.metres()
                                                + receiver.hopper()
                                                        .map(h -> cone_m(h, d))
                                                        .orElse(0.0))
                                        / d.metres()))));
    }

    private static double cone_m(Hopper hopper, Length diameter) {
        return hopper.heightTo(diameter).metres();
    }

    private void shape(Volume volume, Ratio slenderness) {
        if (stated.volume().isPresent()) {
            writing.given("flame-volume", "Volume the flame may fill", volume);
        } else {
            writing.known(
                    "flame-volume",
                    "Volume the flame may fill, filters not taken off",
                    volume,
                    List.of(step(
                            "HAZ-19",
                            "V = π/4 D² H + π/12 h (D² + D d + d²)",
                            OWN_SHAPE,
                            new Term("V", "cylinder and cone", volume),
                            diameter(),
                            straight(),
                            cone(),
                            new Term(
                                    "d",
                                    "outlet of the cone",
                                    receiver.hopper().orElseThrow().outlet()))));
        }
        if (stated.slenderness().isPresent()) {
            writing.given("flame-slenderness", "Length over diameter", slenderness);
        } else {
            writing.known(
                    "flame-slenderness",
                    "Length over diameter, the prudent reading",
                    slenderness,
                    List.of(step(
                            "HAZ-19",
                            "L/D = max(1, (H + h)/D)",
                            OWN_SHAPE,
                            new Term("L/D", "whole height over diameter", slenderness),
                            diameter(),
                            straight(),
                            cone())));
        }
    }

    private Term diameter() {
        return new Term("D", "diameter", receiver.diameter().orElseThrow());
    }

    private Term straight() {
        return new Term("H", "straight side", receiver.straightSide().orElseThrow());
    }

    private Term cone() {
        return new Term(
                "h",
                receiver.hopper().isPresent() ? "height of the cone, from its wall angle" : "no cone",
                receiver.hopper()
                        .map(h -> h.heightTo(receiver.diameter().orElseThrow()))
                        .orElse(new Length(0)));
    }

    /** The areas one dust asks for; false where no method says how large the vent with its duct must be. */
    private boolean areas(Dust dust, Volume volume, Ratio slenderness, List<Area> areas, List<Step> steps) {
        DustCard card = dust.card();
        Explosion e = new Explosion(
                volume.cubicMetres(),
                card.kstOrWorst().pascalMetresPerSecond(),
                card.greatestOrWorst().pascals(),
                stated.opens().orElseThrow().pascals(),
                stated.reduced().orElseThrow().pascals(),
                slenderness.value());
        boolean tested = card.kst().isPresent() && card.greatest().isPresent();
        String of = dust.name() + (tested ? "" : ", worst case while not tested");
        Optional<Area> en = area(
                "vent-en-" + dust.id(),
                "Vent area by EN 14491, " + of,
                "HAZ-1",
                "A = [3.264e-5 Pmax Kst Pred^−0.569 + 0.27 (Pstat − 0.1) Pred^−0.5] V^0.753 k, pressures in bar, k = 1 + (0.758 − 4.305"
                        + " log10 Pred) log10 L/D",
                VentEn14491.SOURCE,
                e,
                VentEn14491::area_m2,
                steps);
        en.ifPresent(areas::add);
        List<Step> nfpaSteps = new ArrayList<>();
        Optional<Area> nfpa = area(
                "vent-nfpa-" + dust.id(),
                "Vent area by NFPA 68, " + of,
                "HAZ-2",
                "A = 1e-4 (1 + 1.54 Pstat^(4/3)) Kst V^(3/4) √(Pmax/Pred − 1) k, pressures in bar, k = 1 + 0.6 (L/D − 2)^0.75 exp(−0.95"
                        + " Pred²) above L/D 2",
                VentNfpa68.SOURCE,
                e,
                VentNfpa68::area_m2,
                nfpaSteps);
        if (en.isPresent() && nfpa.isPresent()) {
            differ(dust, e, en.get(), nfpa.get());
        }
        Optional<Area> corrected =
                nfpa.flatMap(bare -> new VentCorrections(dust, e, stated.vent(), writing).apply(bare, nfpaSteps));
        corrected.ifPresent(area -> {
            areas.add(area);
            steps.add(nfpaSteps.get(nfpaSteps.size() - 1));
        });
        rise(dust, e);
        // EN's number is without duct, so behind a duct it says nothing
        return corrected.isPresent() || (en.isPresent() && !stated.vent().ducted());
    }

    /** Why isolation has to be quick, and why nobody runs from it. */
    private void rise(Dust dust, Explosion e) {
        String name = "Time from nothing to Pmax at the steepest rate, vessel shut, " + dust.name();
        if (e.kst_PaMPerS() == 0) {
            writing.unknown(
                    "rise-" + dust.id(),
                    name,
                    "Kst 0 is stated, that is no explosion in the test, of a dust that is treated as combustible: look once more at the test,"
                            + " its sample and the unit.");
            return;
        }
        Duration time = new Duration(e.greatest_Pa() / CloudLaws.rise_PaPerS(e.kst_PaMPerS(), e.volume_m3()));
        writing.known(
                "rise-" + dust.id(),
                name,
                time,
                List.of(step(
                        "HAZ-14",
                        "t = Pmax V^(1/3) / Kst",
                        Source.published("cube-root law, ASTM E1226, EN 14034-2"),
                        new Term("t", "time", time),
                        new Term("Pmax", "greatest explosion pressure", new GaugePressure(e.greatest_Pa())),
                        new Term("V", "volume the flame may fill", new Volume(e.volume_m3())),
                        new Term("Kst", "explosion constant", new ExplosionConstant(e.kst_PaMPerS())))));
    }

    private Optional<Area> area(
            String what,
            String name,
            String equation,
            String formula,
            Source source,
            Explosion e,
            ToDoubleFunction<Explosion> law,
            List<Step> steps) {
        try {
            Area area = new Area(law.applyAsDouble(e));
            Step step = step(
                    equation,
                    formula,
                    source,
                    new Term("A", "vent area without duct, light panel", area),
                    new Term("V", "volume the flame may fill", new Volume(e.volume_m3())),
                    new Term("Kst", "explosion constant", new ExplosionConstant(e.kst_PaMPerS())),
                    new Term("Pmax", "greatest explosion pressure", new GaugePressure(e.greatest_Pa())),
                    new Term("Pstat", "the vent opens at", new GaugePressure(e.opens_Pa())),
                    new Term("Pred", "the vessel stands", new GaugePressure(e.reduced_Pa())),
                    new Term("L/D", "length over diameter", new Ratio(e.slenderness())));
            steps.add(step);
            writing.known(what, name, area, List.of(step));
            return Optional.of(area);
        } catch (OutOfRangeException outside) {
            writing.unknown(what, name, "Outside the equation's range, so no number: " + outside.getMessage() + ".");
            return Optional.empty();
        }
    }

    private void differ(Dust dust, Explosion e, Area en, Area nfpa) {
        Ratio ratio = new Ratio(nfpa.squareMetres() / en.squareMetres());
        Ratio slenderEn = new Ratio(VentEn14491.slendernessFactor(e.reduced_Pa(), e.slenderness()));
        Ratio slenderNfpa = new Ratio(VentNfpa68.slendernessFactor(e.reduced_Pa(), e.slenderness()));
        writing.known(
                "vent-ratio-" + dust.id(),
                "Area by NFPA 68 over that by EN 14491; "
                        + (ratio.value() > 1 ? "NFPA 68" : "EN 14491")
                        + " governs. They are different expressions, and read slender vessels differently",
                ratio,
                List.of(step(
                        "HAZ-2",
                        "A_NFPA / A_EN",
                        VentNfpa68.SOURCE,
                        new Term("A_NFPA/A_EN", "ratio of areas", ratio),
                        new Term("A_NFPA", "by NFPA 68", nfpa),
                        new Term("A_EN", "by EN 14491", en),
                        new Term("k_EN", "factor for L/D in EN 14491", slenderEn),
                        new Term("k_NFPA", "factor for L/D in NFPA 68", slenderNfpa))));
    }

    private void judged(Area needed, Volume volume, List<Dust> burning, Step step) {
        String unnamed = burning.stream()
                .filter(d -> d.card().family().isEmpty())
                .map(Dust::name)
                .collect(Collectors.joining("; "));
        Area counted = stated.vent().area().orElse(needed);
        double reduced_Pa = stated.reduced().orElseThrow().pascals();
        Optional<Area> offered = stated.vent().area();
        if (offered.isEmpty() || !unnamed.isEmpty()) {
            writing.unjudged(
                    FindingCode.VENT_AREA,
                    Place.Kind.RECEIVER,
                    Side.AT_LEAST,
                    new Limit<>(needed, step.source()),
                    offered.isEmpty()
                            ? "Enter \"vent area\" under \"explosion\" of the receiver."
                            : "Enter \"family\" under \"explosion\" of " + unnamed
                                    + ": a metal dust is not sized by these equations.");
        }
        offered.ifPresent(fitted -> writing.given("vent-fitted", "Vent area fitted", fitted));
        offered.filter(fitted -> unnamed.isEmpty())
                .ifPresent(fitted -> writing.asked(
                        FindingCode.VENT_AREA,
                        Place.Kind.RECEIVER,
                        Sheet.ANY_SET,
                        Side.AT_LEAST,
                        fitted,
                        new Limit<>(needed, step.source()),
                        List.of(
                                step,
                                step(
                                        Step.STATED,
                                        "A_v as stated",
                                        Source.entered(),
                                        new Term("A_v", "vent area fitted", fitted)))));
        writing.given(
                "vent-strength",
                "Pressure the vessel must stand while it vents, beside full vacuum",
                stated.reduced().get());
        Force recoil = new Force(Vents.recoil_N(counted.squareMetres(), reduced_Pa));
        writing.known(
                "vent-recoil",
                "Recoil on vessel and frame",
                recoil,
                List.of(step(
                        "HAZ-3",
                        "F = 1.19 A Pred",
                        Vents.EN_EFFECTS,
                        new Term("F", "recoil", recoil),
                        new Term("A", "vent area", counted),
                        new Term("Pred", "the vessel stands", stated.reduced().get()))));
        outside(counted, volume, reduced_Pa);
    }

    private void fireball(Volume volume, List<Dust> burning) {
        boolean metal = burning.stream().anyMatch(d -> d.card().mayBeMetal());
        double k = metal ? METAL_FIREBALL_K : FIREBALL_K;
        Length fireball =
                new Length(Vents.fireball_m(volume.cubicMetres(), stated.vent().count(), k));
        writing.known(
                "vent-fireball",
                "Reach of the fireball, nobody and nothing that burns within it",
                fireball,
                List.of(step(
                        "HAZ-4",
                        metal ? "D = 10 (V/n)^(1/3), a metal dust or family not stated" : "D = 8 (V/n)^(1/3)",
                        Vents.NFPA_FIREBALL,
                        new Term("D", "reach", fireball),
                        new Term("V", "volume the flame may fill", volume),
                        new Term("n", "vents", new Count(stated.vent().count())))));
    }

    private void outside(Area area, Volume volume, double reduced_Pa) {
        Length flame = new Length(Vents.flame_m(volume.cubicMetres()));
        writing.known(
                "vent-flame",
                "Length of a level flame",
                flame,
                List.of(step(
                        "HAZ-5",
                        "L = min(30 m, 10 V^(1/3))",
                        Vents.EN_EFFECTS,
                        new Term("L", "flame", flame),
                        new Term("V", "volume the flame may fill", volume))));
        PressureDifference outside =
                new PressureDifference(Vents.outside_Pa(reduced_Pa, area.squareMetres(), volume.cubicMetres()));
        writing.known(
                "vent-outside",
                "Greatest pressure outside, a quarter of the flame away",
                outside,
                List.of(step(
                        "HAZ-6",
                        "p = 0.2 Pred A^0.1 V^0.18",
                        Vents.EN_EFFECTS,
                        new Term("p", "over the barometer", outside),
                        new Term("Pred", "the vessel stands", stated.reduced().orElseThrow()),
                        new Term("A", "vent area", area),
                        new Term("V", "volume the flame may fill", volume))));
    }
}
