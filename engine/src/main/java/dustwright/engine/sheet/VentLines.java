package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.hazard.DustCard;
import dustwright.engine.hazard.Protection;
import dustwright.engine.hazard.VentEn14491;
import dustwright.engine.hazard.VentMethod;
import dustwright.engine.hazard.Vents;
import dustwright.engine.plant.Limit;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.Area;
import dustwright.engine.quantity.Count;
import dustwright.engine.quantity.Force;
import dustwright.engine.quantity.GaugePressure;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Volume;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The explosion vent of a receiver by two published methods side by side, and what it throws out. It holds where each method that is asked is in
 * range and asks no more; it fails where one asks more, if only for a weaker dust in its range; else nobody knows.
 */
final class VentLines {
    private static final String NOT_FOR_METAL =
            "Not by these equations: here comes a metal dust. Ask a specialist and the maker of the vent for an area from tests of this very"
                    + " dust, by the metal clauses of the standards, or take a collector that needs none, such as a wet one.";
    private static final Set<String> BY_TEST = Set.of("kst", "pmax");
    private static final double FIREBALL_K = 8;
    private static final double METAL_FIREBALL_K = 10;

    private final Protection stated;
    private final FlameVessel vessel;
    private final Writing writing;

    VentLines(Station station, Writing writing) {
        this.stated = station.receiver().protection();
        this.vessel = new FlameVessel(station, writing);
        this.writing = writing;
    }

    void write(List<Dust> all) {
        List<Dust> metals = all.stream().filter(d -> d.card().metal()).toList();
        List<Dust> burning = all.stream().filter(d -> !d.card().metal()).toList();
        metals.forEach(
                dust -> writing.unknown("vent-metal-" + dust.id(), "Explosion vent for " + dust.name(), NOT_FOR_METAL));
        if (vessel.volume().isEmpty()
                || vessel.slenderness().isEmpty()
                || stated.reduced().isEmpty()
                || stated.opens().isEmpty()) {
            String why =
                    "Enter \"reduced pressure\" and \"opens\" under \"explosion\" of the receiver, and its diameter, straight side and"
                            + " hopper, or \"volume\" and \"length to diameter\".";
            writing.unknown("vent", "Explosion vent", why);
            notSaid(metals.isEmpty() ? why : NOT_FOR_METAL);
            return;
        }
        vessel.write();
        List<VentSay> says = new ArrayList<>();
        burning.forEach(dust -> says.addAll(new VentAreas(dust, stated, vessel, writing).write()));
        standard();
        boolean flameless = stated.method()
                .filter(m -> m == Protection.Method.FLAMELESS_VENTING)
                .isPresent();
        if (flameless) {
            writing.unknown(
                    "vent-clear",
                    "Kept clear about the flameless device",
                    "Its listing says which distance, which room volume and what hot gas and pressure it lets out; reach of fireball and flame of an"
                            + " open vent do not hold for it. Ask its maker.");
        } else {
            fireball(vessel.volume().get(), all);
        }
        List<VentSay> asked = says.stream().filter(s -> counts(s.by())).toList();
        if (stated.opens().get().compareTo(stated.reduced().get()) > 0) {
            writing.none(
                    FindingCode.VENT_AREA,
                    Place.Kind.RECEIVER,
                    "vents that open above the pressure the vessel stands",
                    1,
                    Source.entered());
        } else {
            judged(asked, metals);
        }
        if (metals.isEmpty()) {
            effects(asked, flameless);
        }
        writing.words(
                "vent-limits",
                "What the vent does not do",
                "it protects this vessel only: without isolation the blast travels to people who hold hoses. Neither method credits the"
                        + " vacuum; EN 14491 is for a light panel, 0.5 kg/m² and less, or one of tested efficiency. Strength of the vessel, recoil, fireball and the final area need a specialist and the standard itself, with"
                        + " which these constants have not been compared",
                List.of(),
                Source.commonPractice());
    }

    // ---- which method is asked

    private boolean counts(VentMethod method) {
        return stated.vent().standard().map(s -> s == method).orElse(true);
    }

    private void standard() {
        stated.vent()
                .standard()
                .ifPresent(s -> writing.words(
                        "vent-standard",
                        "Standard that governs the site",
                        s.words() + ", as stated: the vent is held against it alone, the other stands beside it",
                        List.of(),
                        Source.entered()));
    }

    // ---- the verdict

    private void judged(List<VentSay> asked, List<Dust> metals) {
        Optional<Area> fitted = stated.vent().area();
        fitted.ifPresent(area -> writing.given("vent-fitted", "Vent area fitted", area));
        Optional<Area> effective = fitted.flatMap(this::effective);
        List<VentSay> named =
                asked.stream().filter(s -> s.dust().card().family().isPresent()).toList();
        // what is too small whole is too small whatever share of it counts
        List<VentSay> tooSmallBy = effective
                .or(() -> fitted)
                .map(area -> named.stream().filter(s -> s.tooSmall(area)).toList())
                .orElse(List.of());
        Optional<VentSay> hopeless =
                named.stream().filter(VentSay::noneIsEnough).findFirst();
        Optional<VentSay> beyond = tooSmallBy.stream().filter(s -> !s.inRange()).findFirst();
        Optional<VentSay> tooSmall =
                tooSmallBy.stream().max(Comparator.comparing((VentSay s) -> VentSay.area(s.least())));
        if (hopeless.isPresent()) {
            writing.none(
                    FindingCode.VENT_AREA,
                    Place.Kind.RECEIVER,
                    "vents behind a duct with which no area is enough for "
                            + hopeless.get().dust().name() + ", by "
                            + hopeless.get().by().words(),
                    1,
                    hopeless.get().by().source());
        } else if (beyond.isPresent()) {
            more(beyond.get());
        } else if (tooSmall.isPresent()) {
            decided(
                    effective.or(() -> fitted).get(),
                    tooSmall.get(),
                    tooSmall.get().least());
        } else if (!metals.isEmpty()) {
            notSaid(NOT_FOR_METAL);
        } else if (named.size() < asked.size()) {
            notSaid("Enter \"family\" under \"explosion\" of "
                    + asked.stream()
                            .map(VentSay::dust)
                            .filter(d -> d.card().family().isEmpty())
                            .map(Dust::name)
                            .distinct()
                            .collect(Collectors.joining("; "))
                    + ": a metal dust is not sized by these equations.");
        } else {
            weighed(asked, fitted, effective);
        }
    }

    /** Too small even for a weaker dust: how much more is asked nobody can say, so no figure is named that somebody might fit. */
    private void more(VentSay say) {
        writing.words(
                "vent-more",
                "Vent area that is asked, by " + say.by().words() + " for "
                        + say.dust().name(),
                "more than the fitted one, which is too small even for a weaker dust at the edge of the range: no figure. "
                        + say.why().orElse(""),
                List.of(),
                say.by().source());
        writing.none(
                FindingCode.VENT_AREA,
                Place.Kind.RECEIVER,
                "vents too small even for a weaker dust, at the edge of the range of "
                        + say.by().words(),
                1,
                say.by().source());
    }

    private void weighed(List<VentSay> asked, Optional<Area> fitted, Optional<Area> effective) {
        Optional<VentSay> governs = asked.stream()
                .filter(s -> !s.enough().isEmpty())
                .max(Comparator.comparing((VentSay s) -> VentSay.area(s.enough())));
        boolean eachSays = asked.stream().noneMatch(s -> s.enough().isEmpty());
        if (eachSays) {
            governs.filter(s -> !s.stronger())
                    .ifPresent(s -> writing.least(
                            "vent-governs",
                            "Vent area that is enough, by " + s.by().words() + " for "
                                    + s.dust().name() + ", which governs",
                            VentSay.area(s.enough()),
                            s.enough()));
        }
        if (fitted.isEmpty()) {
            governs.filter(s -> eachSays && !s.stronger())
                    .ifPresentOrElse(
                            s -> writing.unjudged(
                                    FindingCode.VENT_AREA,
                                    Place.Kind.RECEIVER,
                                    Side.AT_LEAST,
                                    new Limit<>(VentSay.area(s.enough()), s.by().source()),
                                    "Enter \"vent area\" under \"explosion\" of the receiver."),
                            () -> notSaid(
                                    eachSays && governs.isPresent()
                                            ? "Enter \"vent area\" under \"explosion\" of the receiver."
                                            : open(asked)));
        } else if (effective.isEmpty()) {
            notSaid(
                    "Enter \"vent efficiency\" under \"explosion\" of the receiver, the share of its area that the device counts for by"
                            + " its listing or test: a flameless device lets through less than an open vent, and so does a panel that does not"
                            + " get out of the way.");
        } else if (asked.stream().allMatch(s -> s.suffices(effective.get())) && governs.isPresent()) {
            enough(effective.get(), governs.get());
        } else {
            notSaid(open(
                    asked.stream().filter(s -> !s.suffices(effective.get())).toList()));
        }
    }

    /** Where the dust lies outside the range and a stronger one at its edge asks no more, the vent does, and no figure is named for this dust. */
    private void enough(Area effective, VentSay governs) {
        if (!governs.stronger()) {
            decided(effective, governs, governs.enough());
            return;
        }
        writing.words(
                "vent-enough",
                "Vent area that is asked, by " + governs.by().words() + " for "
                        + governs.dust().name(),
                "no more than the fitted one, which is enough even for a stronger dust at the edge of the range: no figure. "
                        + governs.why().orElse(""),
                List.of(),
                governs.by().source());
        writing.none(
                FindingCode.VENT_AREA,
                Place.Kind.RECEIVER,
                "vents too small for a stronger dust, at the edge of the range of "
                        + governs.by().words(),
                0,
                governs.by().source());
    }

    /** Why nobody knows: a method that gives no number, or a vent that would do only with what is stated to lessen it. */
    private String open(List<VentSay> notEnough) {
        List<String> whys = notEnough.stream()
                .flatMap(s -> s.why().stream()
                        .map(why -> "Not known by " + s.by().words() + " for "
                                + s.dust().name() + ": " + why))
                .distinct()
                .toList();
        if (whys.isEmpty()) {
            return notEvenSo(notEnough);
        }
        List<String> untested = untested(notEnough);
        if (!untested.isEmpty()) {
            return String.join(" ", untested) + " Meanwhile: " + String.join(" ", whys);
        }
        return String.join(" ", whys)
                + (stated.vent().standard().isEmpty()
                        ? " State which standard governs the site, \"vent standard\", take another method than venting, or ask a"
                                + " specialist."
                        : " Take another method than venting, or ask a specialist.");
    }

    /** Which tests are missing: the worst case stands in for them meanwhile. */
    private static List<String> untested(List<VentSay> notEnough) {
        List<String> why = new ArrayList<>();
        notEnough.stream().map(VentSay::dust).distinct().forEach(dust -> {
            List<String> keys = dust.card().missing().stream()
                    .map(DustCard.Missing::key)
                    .filter(BY_TEST::contains)
                    .toList();
            if (!keys.isEmpty()) {
                why.add("Have " + dust.name() + " tested and enter \"" + String.join("\" and \"", keys)
                        + "\" of a fine and dry sample with its report: the vent is not shown large enough for the worst case that stands in"
                        + " for them.");
            }
        });
        return why;
    }

    /** Each method has its number, and the vent does only by what is left out or stated to lessen it. */
    private String notEvenSo(List<VentSay> notEnough) {
        List<String> why = new ArrayList<>();
        why.addAll(untested(notEnough));
        List<String> left = stated.vent().left();
        if (!left.isEmpty()) {
            why.add("Enter " + String.join(" and ", left)
                    + " under \"explosion\" of the receiver: a heavy panel, air above 20 m/s in the vessel and a duct, 0 m where there is"
                    + " none, ask for a larger vent, and this one is not large enough whatever they are; a panel above 50 kg/m² is outside"
                    + " both methods.");
        }
        List<String> credits = new ArrayList<>(vessel.statedSmaller());
        stated.vent().share().ifPresent(s -> credits.add("\"cloud share\""));
        if (!credits.isEmpty()) {
            why.add("It would do only by what is stated to lessen it, " + String.join(", ", credits)
                    + ": a specialist justifies that, by name, or the vent is made for the whole vessel.");
        }
        return why.isEmpty()
                ? "No area is enough with this duct: shorten or widen it, or use another method than venting."
                : String.join(" ", why);
    }

    /** What the fitted vents count for; empty where nobody has said by which share that is less. */
    private Optional<Area> effective(Area fitted) {
        Optional<Ratio> efficiency = stated.vent().efficiency();
        if (efficiency.isEmpty()) {
            return Optional.empty();
        }
        Area area = new Area(fitted.squareMetres() * efficiency.get().value());
        writing.known(
                "vent-effective", "Vent area that counts", area, List.of(counted(area, fitted, efficiency.get())));
        return Optional.of(area);
    }

    private static Step counted(Area area, Area fitted, Ratio efficiency) {
        return step(
                "HAZ-24",
                "A_eff = η A_v",
                Source.entered(),
                new Term("A_eff", "vent area that counts", area),
                new Term("A_v", "vent area fitted", fitted),
                new Term("η", "efficiency of the device as stated", efficiency));
    }

    private void decided(Area area, VentSay say, List<Step> steps) {
        List<Step> all = new ArrayList<>(steps);
        stated.vent()
                .efficiency()
                .ifPresentOrElse(
                        e -> all.add(counted(area, stated.vent().area().orElseThrow(), e)),
                        () -> all.add(step(
                                Step.STATED,
                                "A_v as stated",
                                Source.entered(),
                                new Term("A_v", "vent area fitted", area))));
        writing.asked(
                FindingCode.VENT_AREA,
                Place.Kind.RECEIVER,
                Sheet.ANY_SET,
                Side.AT_LEAST,
                area,
                new Limit<>(VentSay.area(steps), say.by().source()),
                all);
    }

    private void notSaid(String why) {
        writing.notSaid(FindingCode.VENT_AREA, Place.Kind.RECEIVER, VentEn14491.SOURCE, why);
    }

    // ---- what it throws out

    private void effects(List<VentSay> asked, boolean flameless) {
        Optional<Area> counted = stated.vent()
                .area()
                .or(() -> asked.stream()
                        .filter(s -> !s.enough().isEmpty() && !s.stronger())
                        .map(s -> VentSay.area(s.enough()))
                        .max(Area::compareTo));
        counted.ifPresent(area -> {
            strength(area, flameless);
            if (!flameless) {
                outside(
                        area,
                        vessel.volume().orElseThrow(),
                        stated.reduced().orElseThrow().pascals());
            }
        });
    }

    private void strength(Area area, boolean flameless) {
        writing.given(
                "vent-strength",
                "Pressure the vessel must stand while it vents, beside full vacuum",
                stated.reduced().orElseThrow());
        Force recoil = new Force(Vents.recoil_N(
                area.squareMetres(), stated.reduced().orElseThrow().pascals()));
        writing.known(
                "vent-recoil",
                flameless
                        ? "Recoil on vessel and frame of an open vent of this area; of the device its maker says"
                        : "Recoil on vessel and frame",
                recoil,
                List.of(step(
                        "HAZ-3",
                        "F = 1.19 A Pred",
                        Vents.EN_EFFECTS,
                        new Term("F", "recoil", recoil),
                        new Term("A", "vent area", area),
                        new Term("Pred", "the vessel stands", stated.reduced().orElseThrow()))));
    }

    private void fireball(Volume volume, List<Dust> burning) {
        boolean metal = burning.stream().anyMatch(d -> d.card().mayBeMetal());
        double k = metal ? METAL_FIREBALL_K : FIREBALL_K;
        Length fireball =
                new Length(Vents.fireball_m(volume.cubicMetres(), stated.vent().count(), k));
        writing.known(
                "vent-fireball",
                "Reach of the fireball",
                fireball,
                List.of(step(
                        "HAZ-4",
                        metal ? "D = 10 (V/n)^(1/3), a metal dust or family not stated" : "D = 8 (V/n)^(1/3)",
                        Vents.NFPA_FIREBALL,
                        new Term("D", "reach", fireball),
                        new Term("V", "volume the flame may fill", volume),
                        new Term("n", "vents", new Count(stated.vent().count())))));
        Length flame = new Length(Vents.flame_m(volume.cubicMetres()));
        Length clear = new Length(Math.max(fireball.metres(), flame.metres()));
        writing.least(
                "vent-clear",
                "Kept clear before the vent: nobody and nothing that burns within it",
                clear,
                List.of(step(
                        "HAZ-4",
                        "D_c = max(D, L)",
                        Vents.NFPA_FIREBALL,
                        new Term("D_c", "the longer reach", clear),
                        new Term("D", "reach of the fireball", fireball),
                        new Term("L", "length of a level flame", flame))));
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
        GaugePressure outside =
                new GaugePressure(Vents.outside_Pa(reduced_Pa, area.squareMetres(), volume.cubicMetres()));
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
