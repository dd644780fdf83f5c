package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.hazard.Explosion;
import dustwright.engine.hazard.Protection.Vent;
import dustwright.engine.hazard.VentMethod;
import dustwright.engine.hazard.VentNfpa68;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.ClothLoad;
import dustwright.engine.quantity.Count;
import dustwright.engine.quantity.ExplosionConstant;
import dustwright.engine.quantity.GaugePressure;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.OutOfRangeException;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Volume;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What NFPA 68 adds to its vent area: air that moves, a heavy panel, part of the volume, a duct. Each only where it is stated. */
final class VentCorrections {
    private static final double MOVES_OFF = 1;
    private static final double HINGED = 1.1;

    private final Dust dust;
    private final Explosion e;
    private final Vent vent;
    private final Writing writing;
    private boolean none;

    VentCorrections(Dust dust, Explosion e, Vent vent, Writing writing) {
        this.dust = dust;
        this.e = e;
        this.vent = vent;
        this.writing = writing;
    }

    /**
     * The area with every correction that applies, its step last in the list; empty where no area is enough or none is needed.
     *
     * @param bare without corrections
     */
    Optional<Area> apply(Area bare, List<Step> steps) {
        freePanel();
        notStated();
        List<Step> factors = new ArrayList<>();
        try {
            moving().ifPresent(factors::add);
            inertia().ifPresent(factors::add);
            share().ifPresent(factors::add);
        } catch (OutOfRangeException outside) {
            writing.unknown(
                    "vent-corrected-" + dust.id(),
                    "Vent area by NFPA 68 with its corrections, " + dust.name(),
                    "Outside the equation's range, so no number: " + outside.getMessage() + ".");
            return Optional.empty();
        }
        double factor =
                factors.stream().mapToDouble(f -> f.result().value().si()).reduce(1, (a, b) -> a * b);
        if (factor == 0) {
            writing.words(
                    "vent-corrected-" + dust.id(),
                    "Vent area by NFPA 68 with its corrections, " + dust.name(),
                    "none asked: so small a cloud does not reach Pred in this volume. Only a specialist may rely on that",
                    factors,
                    VentNfpa68.SOURCE);
            return Optional.empty();
        }
        Area corrected = factors.isEmpty() ? bare : corrected(bare, factor, factors, steps);
        return duct(corrected, steps);
    }

    private Area corrected(Area bare, double factor, List<Step> factors, List<Step> steps) {
        Area area = new Area(bare.squareMetres() * factor);
        List<Term> inputs = new ArrayList<>(List.of(new Term("A", "without corrections", bare)));
        factors.forEach(f -> inputs.add(f.result()));
        Step product = new Step(
                "HAZ-22",
                "A_c = A × every k that is stated",
                inputs,
                new Term("A_c", "vent area with corrections", area),
                VentNfpa68.SOURCE);
        List<Step> all = new ArrayList<>(factors);
        all.add(product);
        steps.add(product);
        writing.least(
                "vent-corrected-" + dust.id(), "Vent area by NFPA 68 with its corrections, " + dust.name(), area, all);
        return area;
    }

    private Optional<Step> moving() {
        return vent.moving()
                .map(v -> step(
                        "HAZ-7",
                        "k_turb = 1 + 0.7 (v − 20 m/s)/36 above 20 m/s, else 1",
                        VentNfpa68.SOURCE,
                        new Term(
                                "k_turb",
                                "air that moves",
                                new Ratio(VentNfpa68.turbulenceFactor(v.metresPerSecond()))),
                        new Term("v", "air in the vessel", v)));
    }

    private Optional<Step> inertia() {
        double hinge = vent.hinged().orElse(true) ? HINGED : MOVES_OFF;
        return vent.panel()
                .map(mass -> step(
                        "HAZ-8",
                        "k_mass = F_sh [1 + 0.0075 M^0.6 √Kst/(n^0.3 V Pred^0.2)] above M_T, else 1; "
                                + VentMethod.IN_BAR + ", Kst then at least 75",
                        VentNfpa68.SOURCE,
                        new Term(
                                "k_mass",
                                vent.hinged().isPresent() ? "heavy panel" : "heavy panel, taken as hinged",
                                new Ratio(VentNfpa68.inertiaFactor(
                                        mass.kgPerSquareMetre(),
                                        e.kst_PaMPerS(),
                                        vent.count(),
                                        e.volume_m3(),
                                        e.reduced_Pa(),
                                        hinge))),
                        new Term("M", "mass of the panel over its area", mass),
                        new Term("M_T", "mass up to which it counts as light", freeMass()),
                        kst(),
                        vents(),
                        volume(),
                        reduced(),
                        new Term("F_sh", "1 for a panel that moves off, 1.1 for one on a hinge", new Ratio(hinge))));
    }

    private Optional<Step> share() {
        return vent.share()
                .map(share -> step(
                        "HAZ-9",
                        "k_part = X^(−1/3) √((X − Π)/(1 − Π)), Π = Pred/Pmax; 0 where X ≤ Π",
                        VentNfpa68.SOURCE,
                        new Term(
                                "k_part",
                                "part of the volume",
                                new Ratio(VentNfpa68.partialVolumeFactor(
                                        share.value(), e.reduced_Pa(), e.greatest_Pa()))),
                        new Term("X", "share of the volume that can explode", share),
                        reduced(),
                        new Term("Pmax", "greatest explosion pressure", new GaugePressure(e.greatest_Pa()))));
    }

    /** Whether no area was enough behind the duct, once applied. */
    boolean noneIsEnough() {
        return none;
    }

    private void freePanel() {
        ClothLoad free = freeMass();
        writing.known(
                "panel-free-" + dust.id(),
                "Panel mass up to which NFPA 68 counts it as light, " + dust.name(),
                free,
                List.of(step(
                        "HAZ-8",
                        "M_T = (6.67 Pred^0.2 n^0.3 V / √Kst)^1.67, at most 40 kg/m²; " + VentMethod.IN_BAR,
                        VentNfpa68.SOURCE,
                        new Term("M_T", "threshold mass", free),
                        reduced(),
                        vents(),
                        volume(),
                        kst())));
    }

    private ClothLoad freeMass() {
        return new ClothLoad(
                VentNfpa68.heaviestFreePanel_kgPerM2(e.reduced_Pa(), vent.count(), e.volume_m3(), e.kst_PaMPerS()));
    }

    private Term reduced() {
        return new Term("Pred", "the vessel stands", new GaugePressure(e.reduced_Pa()));
    }

    private Term vents() {
        return new Term("n", "vents", new Count(vent.count()));
    }

    private Term volume() {
        return new Term("V", "volume the flame may fill", new Volume(e.volume_m3()));
    }

    private Term kst() {
        return new Term("Kst", "explosion constant", new ExplosionConstant(e.kst_PaMPerS()));
    }

    private void notStated() {
        List<String> open = new ArrayList<>();
        if (vent.moving().isEmpty()) {
            open.add("\"air in vessel\" (above 20 m/s it grows)");
        }
        if (vent.panel().isEmpty()) {
            open.add("\"panel\" (a heavy one opens late)");
        }
        if (!open.isEmpty()) {
            writing.unknown(
                    "vent-open-" + dust.id(),
                    "What could make the vent of NFPA 68 larger, " + dust.name(),
                    "Enter " + String.join(" and ", open) + " under \"explosion\" of the receiver.");
        }
    }

    private Optional<Area> duct(Area bare, List<Step> steps) {
        if (!vent.ducted()) {
            return Optional.of(bare);
        }
        Length duct = vent.duct().orElseThrow();
        String what = "vent-duct-" + dust.id();
        String name = "Vent area by NFPA 68 with its duct, " + dust.name();
        OptionalDouble ducted = VentNfpa68.withDuct_m2(e, bare.squareMetres(), duct.metres(), VentNfpa68.NO_DUCT_K);
        none = ducted.isEmpty();
        if (none) {
            writing.unknown(
                    what,
                    name,
                    "No area is enough with this duct: shorten or widen it, or use another method than venting.");
            return Optional.empty();
        }
        Area area = new Area(ducted.getAsDouble());
        Step step = step(
                "HAZ-10",
                "A_f = A (1 + 1.18 E1^0.8 E2^0.4) √(K/1.5), E1 = A_f L_d/V, E2 = 1e4 A_f/[(1 + 1.54 Pstat^(4/3)) Kst V^(3/4)],"
                        + " " + VentMethod.IN_BAR + "; A_f stands on both sides, the smaller root is meant",
                VentNfpa68.SOURCE,
                new Term("A_f", "vent area with duct", area),
                new Term("A", "without duct", bare),
                new Term("L_d", "length of the duct", duct),
                new Term("K", "vent alone; bends and screens ask more", new Ratio(VentNfpa68.NO_DUCT_K)),
                volume(),
                kst(),
                new Term("Pstat", "the vent opens at", new GaugePressure(e.opens_Pa())));
        steps.add(step);
        writing.least(what, name, area, List.of(step));
        return Optional.of(area);
    }
}
