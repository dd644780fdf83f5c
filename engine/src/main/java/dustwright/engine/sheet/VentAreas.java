package dustwright.engine.sheet;

import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.hazard.CloudLaws;
import dustwright.engine.hazard.DustCard;
import dustwright.engine.hazard.Explosion;
import dustwright.engine.hazard.Protection;
import dustwright.engine.hazard.Protection.Vent;
import dustwright.engine.hazard.VentEn14491;
import dustwright.engine.hazard.VentMethod;
import dustwright.engine.hazard.VentNfpa68;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.Duration;
import dustwright.engine.quantity.ExplosionConstant;
import dustwright.engine.quantity.GaugePressure;
import dustwright.engine.quantity.OutOfRangeException;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Volume;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The vent areas that one dust asks, by two published methods side by side. Outside its range a method gives no number. */
final class VentAreas {
    private static final String NO_KST =
            "Kst 0 is stated, that is no explosion in the test, of a dust that is treated as combustible: look once more at the test, its sample"
                    + " and the unit.";
    private static final double LIGHT_PANEL_kgPerM2 = 0.5;

    private final Dust dust;
    private final Vent vent;
    private final Explosion stated;
    private final Explosion prudent;
    private final Optional<Explosion> atLeast;
    private final Writing writing;

    /** For one dust in a vessel: what is stated of it, and the larger of what is stated and drawn. */
    VentAreas(Dust dust, Protection protection, FlameVessel vessel, Writing writing) {
        this.dust = dust;
        this.vent = protection.vent();
        this.stated = explosion(
                protection, vessel.volume().orElseThrow(), vessel.slenderness().orElseThrow());
        this.prudent = noWeakerThanEntered(explosion(protection, vessel.largest(), vessel.mostSlender()));
        this.atLeast = asEntered();
        this.writing = writing;
    }

    private Explosion explosion(Protection protection, Volume volume, Ratio slenderness) {
        return new Explosion(
                volume.cubicMetres(),
                dust.card().kstOrWorst().pascalMetresPerSecond(),
                dust.card().greatestOrWorst().pascals(),
                protection.opens().orElseThrow().pascals(),
                protection.reduced().orElseThrow().pascals(),
                slenderness.value());
    }

    /** What is entered and does not count is a lower bound: a coarse or damp sample explodes more weakly than what lies in the filter. */
    private Explosion noWeakerThanEntered(Explosion e) {
        DustCard entered = dust.enteredCard();
        return e.of(
                Math.max(e.kst_PaMPerS(), entered.kst().map(k -> k.value().si()).orElse(0.0)),
                Math.max(
                        e.greatest_Pa(),
                        entered.greatest().map(p -> p.value().si()).orElse(0.0)));
    }

    /** The explosion by values that are known or entered at all: no vent is too small only because nobody has tested the dust. */
    private Optional<Explosion> asEntered() {
        Optional<Double> kst = dust.card()
                .kst()
                .or(() -> dust.enteredCard().kst())
                .map(k -> k.value().si());
        Optional<Double> greatest = dust.card()
                .greatest()
                .or(() -> dust.enteredCard().greatest())
                .map(p -> p.value().si());
        return kst.flatMap(k -> greatest.map(p -> stated.of(k, p)));
    }

    /** Writes both areas and what both methods say of the vent. */
    List<VentSay> write() {
        List<VentSay> says = new ArrayList<>();
        Optional<Area> en = bare(VentMethod.EN_14491);
        says.add(say(VentMethod.EN_14491));
        Optional<Area> nfpa = bare(VentMethod.NFPA_68);
        if (en.isPresent() && nfpa.isPresent()) {
            differ(en.get(), nfpa.get());
        }
        nfpa.ifPresent(area -> new VentCorrections(dust, stated, vent, writing).apply(area, new ArrayList<>()));
        says.add(say(VentMethod.NFPA_68));
        rise();
        return says;
    }

    // ---- the figures of the methods

    private Optional<Area> bare(VentMethod method) {
        boolean en = method == VentMethod.EN_14491;
        DustCard card = dust.card();
        boolean tested = card.kst().isPresent() && card.greatest().isPresent();
        String what = (en ? "vent-en-" : "vent-nfpa-") + dust.id();
        String name =
                "Vent area by " + method.words() + ", " + dust.name() + (tested ? "" : ", worst case while not tested");
        Optional<String> why = why(method);
        if (why.isPresent()) {
            writing.unknown(what, name, why.get());
            return Optional.empty();
        }
        Step step = step(method, stated);
        writing.least(what, name, (Area) step.result().value(), List.of(step));
        return Optional.of((Area) step.result().value());
    }

    /** Why a method is not made for this vent. */
    private Optional<String> scope(VentMethod method) {
        if (method == VentMethod.EN_14491) {
            if (vent.ducted()) {
                return Optional.of(
                        "Not covered, so no number: the equation for ducts in the text of 2006 was corrected in 2008 and neither form"
                                + " was seen. Take the standard's own text.");
            }
            if (vent.panel()
                    .filter(p -> p.kgPerSquareMetre() > LIGHT_PANEL_kgPerM2)
                    .isPresent()) {
                return Optional.of(
                        "Outside its scope, so no number: the equation is for a light panel, 0.5 kg/m² and less; a heavier one needs"
                                + " its tested efficiency and the standard's own text.");
            }
        }
        return Optional.empty();
    }

    /** Why a method gives no number for this dust, vessel and vent. */
    private Optional<String> why(VentMethod method) {
        Optional<String> scope = scope(method);
        if (scope.isPresent()) {
            return scope;
        }
        try {
            method.area_m2(stated);
            vent.panel().filter(panel -> method == VentMethod.NFPA_68).ifPresent(VentNfpa68::checkPanel);
            return Optional.empty();
        } catch (OutOfRangeException outside) {
            return Optional.of("Outside the equation's range, so no number: " + outside.getMessage() + ".");
        }
    }

    private static Step step(VentMethod method, Explosion e) {
        boolean en = method == VentMethod.EN_14491;
        return Writing.step(
                en ? "HAZ-1" : "HAZ-2",
                en
                        ? "A = [3.264e-5 Pmax Kst Pred^−0.569 + 0.27 (Pstat − 0.1) Pred^−0.5] V^0.753 k, "
                                + VentMethod.IN_BAR + ", k = 1 + (0.758 −" + " 4.305 log10 Pred) log10 L/D"
                        : "A = 1e-4 (1 + 1.54 Pstat^(4/3)) Kst V^(3/4) √(Pmax/Pred − 1) k, " + VentMethod.IN_BAR
                                + ", k = 1 + 0.6 (L/D − 2)^0.75" + " exp(−0.95 Pred²) above L/D 2",
                method.source(),
                new Term("A", "vent area without duct, light panel", new Area(method.area_m2(e))),
                new Term("V", "volume the flame may fill", new Volume(e.volume_m3())),
                new Term("Kst", "explosion constant", new ExplosionConstant(e.kst_PaMPerS())),
                new Term("Pmax", "greatest explosion pressure", new GaugePressure(e.greatest_Pa())),
                new Term("Pstat", "the vent opens at", new GaugePressure(e.opens_Pa())),
                new Term("Pred", "the vessel stands", new GaugePressure(e.reduced_Pa())),
                new Term("L/D", "length over diameter", new Ratio(e.slenderness())));
    }

    // ---- what follows for the vent

    private VentSay say(VentMethod method) {
        Optional<String> why = why(method);
        if (scope(method).isPresent() || stated.kst_PaMPerS() == 0) {
            return new VentSay(
                    method, dust, List.of(), List.of(), why.or(() -> Optional.of(NO_KST)), true, false, false);
        }
        Optional<Explosion> weaker = atLeast.flatMap(method::noStronger);
        Corrected least = weaker.map(e -> corrected(method, e, vent)).orElse(Corrected.NOTHING);
        Optional<Explosion> stronger = method.noWeaker(prudent);
        Corrected enough = stronger.filter(
                        e -> vent.panel().isPresent() && vent.duct().isPresent())
                .map(e -> corrected(method, e, vent.atWorst()))
                .orElse(Corrected.NOTHING);
        return new VentSay(
                method,
                dust,
                least.steps(),
                enough.steps(),
                why,
                weaker.equals(atLeast),
                stronger.filter(e -> !e.equals(prudent)).isPresent(),
                least.noneIsEnough());
    }

    /**
     * The area a method asks with every correction.
     *
     * @param steps to it; none where the method gives no number, no area is enough or none needed
     * @param noneIsEnough whether that is because no area is, behind this duct
     */
    private record Corrected(List<Step> steps, boolean noneIsEnough) {
        static final Corrected NOTHING = new Corrected(List.of(), false);
    }

    private Corrected corrected(VentMethod method, Explosion e, Vent with) {
        try {
            List<Step> steps = new ArrayList<>(List.of(step(method, e)));
            if (method == VentMethod.EN_14491) {
                return new Corrected(steps, false);
            }
            Area bare = (Area) steps.get(0).result().value();
            VentCorrections corrections = new VentCorrections(dust, e, with, new Writing(""));
            boolean found = corrections.apply(bare, steps).isPresent();
            return new Corrected(found ? steps : List.of(), corrections.noneIsEnough());
        } catch (OutOfRangeException outside) {
            return Corrected.NOTHING;
        }
    }

    private void differ(Area en, Area nfpa) {
        Ratio ratio = new Ratio(nfpa.squareMetres() / en.squareMetres());
        Ratio slenderEn = new Ratio(VentEn14491.slendernessFactor(stated.reduced_Pa(), stated.slenderness()));
        Ratio slenderNfpa = new Ratio(VentNfpa68.slendernessFactor(stated.reduced_Pa(), stated.slenderness()));
        writing.known(
                "vent-ratio-" + dust.id(),
                String.format(
                        Locale.ROOT,
                        "Area by NFPA 68 over that by EN 14491, both without corrections. They are different expressions, and read slender"
                                + " vessels differently: factor %.2f and %.2f here",
                        slenderNfpa.value(),
                        slenderEn.value()),
                ratio,
                List.of(Writing.step(
                        "HAZ-2",
                        "A_NFPA / A_EN",
                        VentNfpa68.SOURCE,
                        new Term("A_NFPA/A_EN", "ratio of areas", ratio),
                        new Term("A_NFPA", "by NFPA 68", nfpa),
                        new Term("A_EN", "by EN 14491", en),
                        new Term("k_EN", "factor for L/D in EN 14491", slenderEn),
                        new Term("k_NFPA", "factor for L/D in NFPA 68", slenderNfpa))));
    }

    /** Why isolation has to be quick, and why nobody runs from it. */
    private void rise() {
        Explosion e = stated;
        String name = "Time from nothing to Pmax at the steepest rate, vessel shut, " + dust.name();
        if (e.kst_PaMPerS() == 0) {
            writing.unknown("rise-" + dust.id(), name, NO_KST);
            return;
        }
        Duration time = new Duration(e.greatest_Pa() / CloudLaws.rise_PaPerS(e.kst_PaMPerS(), e.volume_m3()));
        writing.known(
                "rise-" + dust.id(),
                name,
                time,
                List.of(Writing.step(
                        "HAZ-14",
                        "t = Pmax V^(1/3) / Kst",
                        Source.published("cube-root law, ASTM E1226, EN 14034-2"),
                        new Term("t", "time", time),
                        new Term("Pmax", "greatest explosion pressure", new GaugePressure(e.greatest_Pa())),
                        new Term("V", "volume the flame may fill", new Volume(e.volume_m3())),
                        new Term("Kst", "explosion constant", new ExplosionConstant(e.kst_PaMPerS())))));
    }
}
