package dustwright.engine;

import dustwright.engine.conveying.CarryingVelocity;
import dustwright.engine.conveying.Dust;
import dustwright.engine.conveying.LevelFriction;
import dustwright.engine.conveying.Particle;
import dustwright.engine.conveying.RiserFoot;
import dustwright.engine.conveying.SolidsDrop;
import dustwright.engine.conveying.SolidsFriction;
import dustwright.engine.conveying.SolidsPath;
import dustwright.engine.conveying.VelocityLaw;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.network.DustStream;
import dustwright.engine.network.LegResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.Ratio;
import java.util.ArrayList;
import java.util.List;

/** The lines of a calculation sheet that say what dust adds to a piece, beside those of the air. */
final class SolidsWorkings {
    static final Source LEAST_DROP = Source.ownReading(
            "least drop of air and dust together where a piece rises; below it one drop has two flows and the lower one chokes");
    private static final Source RHODES =
            Source.published("Rhodes, Introduction to Particle Technology, pneumatic transport");
    private static final Source MOMENTUM =
            Source.published("momentum balance; Zenz and Othmer: the full momentum, not the half of one textbook");

    private final Plant plant;
    private final Workings air;

    SolidsWorkings(Plant plant) {
        this(plant, new Workings(plant));
    }

    SolidsWorkings(Plant plant, Workings air) {
        this.plant = plant;
        this.air = air;
    }

    Workings air() {
        return air;
    }

    /** Dust per air. */
    void loading(LegResult leg) {
        List<Term> inputs = new ArrayList<>();
        for (DustStream stream : leg.streams()) {
            inputs.add(solids(stream));
        }
        inputs.add(new Term("w", "air", new MassFlow(Math.abs(leg.flow().kgPerSecond()))));
        air.add(
                "CON-2",
                "μ_s = Σ m_s / w",
                inputs,
                new Term("μ_s", "loading ratio", new Ratio(leg.loading())),
                MOMENTUM);
    }

    /** Every part of what dust adds to the drop of a piece. */
    void drop(LegResult leg) {
        loading(leg);
        leg.streams().stream()
                .flatMap(stream -> stream.drop().stream())
                .findFirst()
                .ifPresent(drop -> meanVelocity(leg, drop));
        for (DustStream stream : leg.streams()) {
            stream.drop().ifPresent(drop -> parts(leg, stream, drop));
        }
    }

    private void meanVelocity(LegResult leg, SolidsDrop drop) {
        AbsolutePressure mean = new AbsolutePressure(
                (leg.pressureFrom().pascals() + leg.pressureTo().pascals()) / 2);
        air.velocity(leg, mean, drop.gasVelocity(), drop.held() ? "_air" : "_m", "at the mean pressure");
    }

    private void parts(LegResult leg, DustStream stream, SolidsDrop drop) {
        Dust dust = plant.dust(stream.dust());
        Particle particle = dust.particle().orElseThrow();
        SolidsPath path = drop.path();
        velocities(drop, particle);
        Term solids = solids(stream);
        Term area = new Term("A", "cross-section", leg.bore().circle());
        Term level = new Term("c", "velocity of the dust, level", drop.particleLevel());
        Term bore = new Term("D", "bore", leg.bore());
        if (drop.acceleration().pascals() > 0) {
            add(drop, "CON-32", "Δp_a = (m_s/A) c", List.of(solids, area, level), "a", drop.acceleration(), MOMENTUM);
        }
        if (drop.frictionLevel().pascals() > 0) {
            levelFriction(leg, stream, drop, particle, dust.levelFriction());
        }
        if (drop.frictionUpright().pascals() > 0) {
            Term length = new Term("L_up", "upright tube", new Length(path.rising_m() + path.falling_m()));
            add(
                    drop,
                    "CON-34",
                    "Δp_u = 0.057 (m_s/A) L_up √(g/D)",
                    List.of(solids, area, length, bore),
                    "u",
                    drop.frictionUpright(),
                    Source.published("Konno and Saito, J. Chem. Eng. Japan 2, 1969, 211-217, as in Rhodes"));
        }
        if (drop.lift().pascals() > 0) {
            Term lift = new Term("Δz", "height lifted", new Length(path.lift_m()));
            Term rising = new Term(
                    "c_r", "velocity of the dust, rising", drop.particleRising().orElseThrow());
            add(
                    drop,
                    "CON-37",
                    "Δp_l = (m_s/A) g Δz / c_r",
                    List.of(solids, area, lift, rising),
                    "l",
                    drop.lift(),
                    RHODES);
        }
        if (drop.bends().pascals() > 0) {
            List<Term> inputs = new ArrayList<>(List.of(
                    solids,
                    area,
                    level,
                    new Term("s", "summed slowing before level or falling tube", new Ratio(path.bendsLevel()))));
            if (path.bendsRising() > 0) {
                inputs.add(new Term("s_r", "summed slowing before rising tube", new Ratio(path.bendsRising())));
                inputs.add(new Term(
                        "c_r",
                        "velocity of the dust, rising",
                        drop.particleRising().orElseThrow()));
            }
            add(
                    drop,
                    "CON-38",
                    "Δp_b = (m_s/A) (c s + c_r s_r), each bend slowing by 1 − 0.75^(α/90°)",
                    inputs,
                    "b",
                    drop.bends(),
                    Source.commonPractice());
        }
        air.add(
                "CON-39",
                "Δps = Δp_a + Δp_f + Δp_u + Δp_l + Δp_b",
                List.of(
                        new Term("Δp_a", name("a"), drop.acceleration()),
                        new Term("Δp_f", name("f"), drop.frictionLevel()),
                        new Term("Δp_u", name("u"), drop.frictionUpright()),
                        new Term("Δp_l", name("l"), drop.lift()),
                        new Term("Δp_b", name("b"), drop.bends())),
                new Term("Δps", "what " + stream.dust() + " adds", drop.total()),
                MOMENTUM);
    }

    private void velocities(SolidsDrop drop, Particle particle) {
        Term gas = new Term(
                "v_m",
                drop.held() ? "velocity of least drop, where dust is held" : "gas velocity at the mean pressure",
                drop.takenAt());
        levelSpeed(gas, drop, particle);
        drop.particleRising()
                .ifPresent(rising -> air.add(
                        "CON-31",
                        "c_r = v_m − U_T",
                        List.of(gas),
                        new Term("c_r", "velocity of the dust, rising", rising),
                        RHODES));
    }

    /** As measured, by the law, or at its end for particles beyond it. */
    private void levelSpeed(Term gas, SolidsDrop drop, Particle particle) {
        Term level = new Term("c", "velocity of the dust, level", drop.particleLevel());
        if (particle.levelSpeed().isPresent()) {
            air.add(
                    "CON-30",
                    "c = v_m s",
                    List.of(
                            gas,
                            new Term(
                                    "s",
                                    "velocity of the dust in level tubes over that of the air",
                                    particle.levelSpeed().get())),
                    level,
                    Source.entered());
            return;
        }
        boolean held = !SolidsFriction.known(particle);
        air.add(
                "CON-30",
                held
                        ? "c = v_m (1 − 0.75), 0.0638 d^0.3 ρ_p^0.5 above 0.75: not known, taken at the end of the law"
                        : "c = v_m (1 − 0.0638 d^0.3 ρ_p^0.5), d in m, ρ_p in kg/m³",
                List.of(
                        gas,
                        new Term("d", "particle size", particle.size()),
                        new Term("ρ_p", "particle density", particle.density())),
                level,
                held
                        ? Source.ownReading("an estimate for particles beyond the law")
                        : Source.published("Hinkle, modified by the Institute of Gas Technology 1978, as in Rhodes"));
    }

    private void levelFriction(
            LegResult leg, DustStream stream, SolidsDrop drop, Particle particle, LevelFriction form) {
        String formula = form == LevelFriction.YANG
                ? "Δp_f = 2 f_p (m_s/A) c L_lev/D, 4 f_p = 0.117 x (x v_m/√(g D))^-1.15, x = Σ m_s/(A ρ_p c)"
                : "Δp_f = 2 f_p (m_s/A) c L_lev/D, f_p = 3/8 (ρ_m/ρ_p)(D/d) C_D ((v_m − c)/c)²";
        double mean_Pa = (leg.pressureFrom().pascals() + leg.pressureTo().pascals()) / 2;
        List<Term> inputs = new ArrayList<>(List.of(
                solids(stream),
                new Term("A", "cross-section", leg.bore().circle()),
                new Term("D", "bore", leg.bore()),
                new Term("L_lev", "level tube", new Length(drop.path().level_m())),
                new Term("v_m", "gas velocity", drop.takenAt()),
                new Term("c", "velocity of the dust, level", drop.particleLevel()),
                new Term("ρ_p", "particle density", particle.density())));
        if (form == LevelFriction.HINKLE) {
            inputs.add(new Term("d", "particle size", particle.size()));
            inputs.add(new Term(
                    "ρ_m",
                    "air density at the mean pressure",
                    new Density(plant.site().air().density_kgPerM3(mean_Pa))));
        }
        add(drop, form.equation(), formula, inputs, "f", drop.frictionLevel(), form.source());
    }

    private void add(
            SolidsDrop drop,
            String equation,
            String formula,
            List<Term> inputs,
            String part,
            PressureDifference value,
            Source source) {
        boolean slow = drop.gasVelocity().metresPerSecond() < dustwright.engine.conveying.SolidsLoss.STANDSTILL_mPerS;
        air.add(
                equation,
                slow ? formula + ", times v over 1 m/s next to rest" : formula,
                inputs,
                new Term("Δp_" + part, name(part), value),
                source);
    }

    private static String name(String part) {
        return switch (part) {
            case "a" -> "setting dust in motion";
            case "f" -> "friction of dust, level";
            case "u" -> "friction of dust, upright";
            case "l" -> "lifting dust";
            default -> "setting dust in motion again after bends";
        };
    }

    /** Velocity at the foot of the rise, and that of least drop there. */
    void leastDrop(LegResult leg, RiserFoot.Found foot) {
        if (foot.rise().before() > 0) {
            boolean forward = leg.flow().kgPerSecond() >= 0;
            air.add(
                    "CON-45",
                    "p_f = √(p_1² − s (p_1² − p_2²))",
                    List.of(
                            new Term("p_1", "pressure upstream", forward ? leg.pressureFrom() : leg.pressureTo()),
                            new Term(
                                    "s",
                                    "share of the tube before the rise",
                                    new Ratio(foot.rise().before())),
                            new Term("p_2", "pressure downstream", forward ? leg.pressureTo() : leg.pressureFrom())),
                    new Term("p_f", "pressure at the foot of the rise", foot.pressure()),
                    LEAST_DROP);
        }
        air.velocity(leg, foot.pressure(), foot.gas(), "_f", "at the foot of the rise");
        air.add(
                "CON-44",
                "at v_0: d/dv [ f ρ_f v²/(2 D) + Δps(v) per metre of the rise ] = 0",
                List.of(
                        new Term("f", "friction factor", new Ratio(leg.frictionFactor())),
                        new Term(
                                "ρ_f",
                                "air density at the foot of the rise",
                                new Density(plant.site()
                                        .air()
                                        .density_kgPerM3(foot.pressure().pascals()))),
                        new Term("D", "bore", leg.bore()),
                        new Term(
                                "i",
                                "height over length where it is steepest",
                                new Ratio(foot.rise().sine())),
                        new Term("m_s", "dust", leg.dust())),
                new Term("v_0", "velocity of least drop", foot.leastDrop()),
                LEAST_DROP);
    }

    /** The velocity that binds for the dust in a piece: stated for it, or a published law's. */
    void carryingVelocity(LegResult leg, CarryingVelocity.Binding binding) {
        binding.law()
                .ifPresentOrElse(
                        law -> lawVelocity(leg, binding, law),
                        () -> air.add(
                                Step.STATED,
                                "in place of the published laws",
                                List.of(),
                                new Term("U", "carrying velocity stated for " + binding.dust(), binding.velocity()),
                                Source.entered()));
    }

    private void lawVelocity(LegResult leg, CarryingVelocity.Binding binding, VelocityLaw law) {
        Particle particle = plant.dust(binding.dust()).particle().orElseThrow();
        air.add(
                law.equation(),
                "U by " + law.words(),
                List.of(
                        new Term("m_s", "all dust of known particles in the piece", leg.dust()),
                        new Term("d", "particle size of " + binding.dust(), particle.size()),
                        new Term("ρ_p", "particle density", particle.density()),
                        new Term(
                                "ρ",
                                "air density at the slowest point",
                                new Density(plant.site()
                                        .air()
                                        .density_kgPerM3(leg.upstream().pascals()))),
                        new Term("D", "bore", leg.bore())),
                new Term("U", "velocity by " + law.words(), binding.velocity()),
                law.source());
    }

    private static Term solids(DustStream stream) {
        return new Term("m_s", "dust " + stream.dust(), stream.flow());
    }
}
