package dustwright.engine;

import dustwright.engine.conveying.CarryingVelocity;
import dustwright.engine.conveying.Dust;
import dustwright.engine.conveying.LevelFriction;
import dustwright.engine.conveying.Particle;
import dustwright.engine.conveying.SolidsDrop;
import dustwright.engine.conveying.SolidsPath;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Term;
import dustwright.engine.network.DustStream;
import dustwright.engine.network.LegResult;
import dustwright.engine.plant.Plant;
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
            "least drop of air and dust together in a rising piece; below it one drop has two flows and the lower one chokes");
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
        air.add("CON-2", "μ = Σ m_s / w", inputs, new Term("μ", "loading ratio", new Ratio(leg.loading())), MOMENTUM);
    }

    /** Every part of what dust adds to the drop of a piece. */
    void drop(LegResult leg) {
        loading(leg);
        for (DustStream stream : leg.streams()) {
            stream.drop().ifPresent(drop -> parts(leg, stream, drop));
        }
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
            add(drop, "CON-32", "Δp = (m_s/A) c", List.of(solids, area, level), "a", drop.acceleration(), MOMENTUM);
        }
        if (drop.frictionLevel().pascals() > 0) {
            levelFriction(leg, stream, drop, particle, dust.levelFriction());
        }
        if (drop.frictionUpright().pascals() > 0) {
            Term length = new Term("L", "upright tube", new Length(path.rising_m() + path.falling_m()));
            add(
                    drop,
                    "CON-34",
                    "Δp = 0.057 (m_s/A) L √(g/D)",
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
                    "Δp = (m_s/A) g Δz / c_r",
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
                    new Term("s", "summed slowing before level stretches", new Ratio(path.bendsLevel()))));
            if (path.bendsRising() > 0) {
                inputs.add(new Term("s_r", "summed slowing before rising stretches", new Ratio(path.bendsRising())));
                inputs.add(new Term(
                        "c_r",
                        "velocity of the dust, rising",
                        drop.particleRising().orElseThrow()));
            }
            add(
                    drop,
                    "CON-38",
                    "Δp = (m_s/A) (c s + c_r s_r), each bend slowing by 1 − 0.75^(α/90°)",
                    inputs,
                    "b",
                    drop.bends(),
                    Source.commonPractice());
        }
        air.add(
                "CON-39",
                "Δps = acceleration + friction + lift + bends",
                List.of(
                        new Term("a", "acceleration", drop.acceleration()),
                        new Term("f", "friction", drop.friction()),
                        new Term("l", "lift", drop.lift()),
                        new Term("b", "bends", drop.bends())),
                new Term("Δps", "what " + stream.dust() + " adds", drop.total()),
                MOMENTUM);
    }

    private void velocities(SolidsDrop drop, Particle particle) {
        Term gas = new Term(
                "v",
                drop.held() ? "velocity of least drop, where dust is held" : "gas velocity at the mean pressure",
                drop.takenAt());
        air.add(
                "CON-30",
                "c = v (1 − 0.0638 d^0.3 ρ_p^0.5), d in m, ρ_p in kg/m³",
                List.of(
                        gas,
                        new Term("d", "particle size", particle.size()),
                        new Term("ρ_p", "particle density", particle.density())),
                new Term("c", "velocity of the dust, level", drop.particleLevel()),
                Source.published("Hinkle, modified by the Institute of Gas Technology 1978, as in Rhodes"));
        drop.particleRising()
                .ifPresent(rising -> air.add(
                        "CON-31",
                        "c_r = v − U_T",
                        List.of(gas),
                        new Term("c_r", "velocity of the dust, rising", rising),
                        RHODES));
    }

    private void levelFriction(
            LegResult leg, DustStream stream, SolidsDrop drop, Particle particle, LevelFriction form) {
        String formula = form == LevelFriction.YANG
                ? "Δp = 2 f_p (m_s/A) c L/D, 4 f_p = 0.117 x (x v/√(g D))^-1.15, x = Σ m_s/(A ρ_p c)"
                : "Δp = 2 f_p (m_s/A) c L/D, f_p = 3/8 (ρ/ρ_p)(D/d) C_D ((v − c)/c)²";
        double mean_Pa = (leg.pressureFrom().pascals() + leg.pressureTo().pascals()) / 2;
        List<Term> inputs = new ArrayList<>(List.of(
                solids(stream),
                new Term("A", "cross-section", leg.bore().circle()),
                new Term("D", "bore", leg.bore()),
                new Term("L", "level tube", new Length(drop.path().level_m())),
                new Term("v", "gas velocity", drop.takenAt()),
                new Term("c", "velocity of the dust, level", drop.particleLevel()),
                new Term("ρ_p", "particle density", particle.density())));
        if (form == LevelFriction.HINKLE) {
            inputs.add(new Term("d", "particle size", particle.size()));
            inputs.add(new Term(
                    "ρ",
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

    /** The velocity of least drop. */
    void leastDrop(LegResult leg, SolidsDrop drop) {
        air.add(
                "CON-42",
                "d/dv [ (f L/D + ΣK) ρ v²/2 + Δps(v) ] = 0",
                List.of(
                        new Term("L/D", "length over bore, bends' share included", new Ratio(leg.frictionLength())),
                        new Term("ΣK", "loss coefficients on this bore", new Ratio(leg.k())),
                        new Term("Δz", "height lifted", new Length(drop.path().lift_m())),
                        new Term("m_s", "dust", leg.dust())),
                new Term("v", "velocity of least drop", drop.leastDropVelocity().orElseThrow()),
                LEAST_DROP);
    }

    /** A published law's velocity for the dust in a piece. */
    void lawVelocity(LegResult leg, CarryingVelocity.Binding binding) {
        Particle particle = plant.dust(binding.dust()).particle().orElseThrow();
        air.add(
                binding.law().equation(),
                "U by " + binding.law().words(),
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
                new Term("U", "velocity by " + binding.law().words(), binding.velocity()),
                binding.law().source());
    }

    private static Term solids(DustStream stream) {
        return new Term("m_s", "dust " + stream.dust(), stream.flow());
    }
}
