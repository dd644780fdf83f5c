package dustwright.engine.hazard;

import dustwright.engine.finding.Source;
import java.util.Optional;

/**
 * The two published methods of sizing an explosion vent. Outside its range a method gives no number for a dust; what it still says is that a
 * dust asks no less than a weaker one in range and no more than a stronger one: by that, verdicts never improve as a dust grows stronger.
 */
public enum VentMethod {
    EN_14491("EN 14491", VentEn14491.SOURCE),
    NFPA_68("NFPA 68", VentNfpa68.SOURCE);

    /** How the formulas of both are written: their constants go with these units. */
    public static final String IN_BAR = "pressures and Kst over 1e5, that is in bar and bar m/s";

    private static final double LEAST_KST_Pa = 10e5;
    private static final double MOST_KST_Pa = 800e5;
    private static final double LEAST_GREATEST_Pa = 5e5;
    private static final double MOST_GREATEST_Pa = 12e5;
    private static final double EN_MOST_OF_WEAK_Pa = 10e5;
    private static final double EN_WEAK_TO_Pa = 300e5;
    /** Just past a bound that is not itself in range. */
    private static final double PAST = 1 + 1e-8;

    private final String words;
    private final Source source;

    VentMethod(String words, Source source) {
        this.words = words;
        this.source = source;
    }

    /** As the plant file says it. */
    public String words() {
        return words;
    }

    /** Where its constants come from. */
    public Source source() {
        return source;
    }

    /**
     * Vent area without corrections [m²].
     *
     * @throws dustwright.engine.quantity.OutOfRangeException outside the equation's range
     */
    public double area_m2(Explosion e) {
        return switch (this) {
            case EN_14491 -> VentEn14491.area_m2(e);
            case NFPA_68 -> VentNfpa68.area_m2(e);
        };
    }

    /** The same case with the strongest dust in range that is no stronger in Kst or Pmax; none where the dust is below the range. */
    public Optional<Explosion> noStronger(Explosion e) {
        if (e.kst_PaMPerS() < LEAST_KST_Pa || e.greatest_Pa() < LEAST_GREATEST_Pa) {
            return Optional.empty();
        }
        double kst_PaMPerS = Math.min(MOST_KST_Pa, e.kst_PaMPerS());
        return Optional.of(e.of(kst_PaMPerS, Math.min(mostGreatest_Pa(kst_PaMPerS), e.greatest_Pa())));
    }

    /** The same case with the weakest dust in range that is no weaker in Kst or Pmax; none where the dust is above the range. */
    public Optional<Explosion> noWeaker(Explosion e) {
        double least_Pa = this == NFPA_68 ? Math.max(LEAST_GREATEST_Pa, e.reduced_Pa() * PAST) : LEAST_GREATEST_Pa;
        double greatest_Pa = Math.max(least_Pa, e.greatest_Pa());
        double kst_PaMPerS = Math.max(LEAST_KST_Pa, e.kst_PaMPerS());
        if (greatest_Pa > mostGreatest_Pa(kst_PaMPerS)) {
            kst_PaMPerS = Math.max(kst_PaMPerS, EN_WEAK_TO_Pa * PAST);
        }
        return kst_PaMPerS > MOST_KST_Pa || greatest_Pa > MOST_GREATEST_Pa
                ? Optional.empty()
                : Optional.of(e.of(kst_PaMPerS, greatest_Pa));
    }

    private double mostGreatest_Pa(double kst_PaMPerS) {
        return this == EN_14491 && kst_PaMPerS <= EN_WEAK_TO_Pa ? EN_MOST_OF_WEAK_Pa : MOST_GREATEST_Pa;
    }
}
