package dustwright.engine.noise;

import dustwright.engine.quantity.Range;
import dustwright.engine.reference.ReferenceTable;
import java.util.List;

/**
 * A person's daily exposure to noise. Two rules that must not be mixed: OSHA halves the time for each 5 dB from 90 dBA, NIOSH for each
 * 3 dB from 85 dBA.
 */
public final class Exposure {
    /** Time-weighted average at which OSHA asks for a hearing conservation programme [dBA]. */
    public static final double OSHA_ACTION_LEVEL_dBA = 85;

    private static final ReferenceTable LIMITS = ReferenceTable.bundled("noise/permitted-exposure.csv");

    private static final Range LEVEL = new Range("noise exposure", "L", "dBA", 40, 160);
    private static final Range HOURS = new Range("noise exposure", "C", "h", 0, 24);
    private static final Range DOSE = new Range("noise dose", "D", "-", 1e-6, 1000);

    private Exposure() {}

    /** A rule of permitted time. */
    public enum Rule {
        OSHA(90, 5),
        NIOSH(85, 3);

        private final double criterion_dBA;
        private final double exchange_dB;

        Rule(double criterion_dBA, double exchange_dB) {
            this.criterion_dBA = criterion_dBA;
            this.exchange_dB = exchange_dB;
        }
    }

    /** A stretch of the day at one level. */
    public record Stretch(double level_dBA, double hours) {
        public Stretch {
            LEVEL.check(level_dBA);
            HOURS.check(hours);
        }
    }

    /**
     * Permitted time a day at a level [h] (equation CST-7).
     *
     * <pre>
     * OSHA T = 8 / 2^((L−90)/5)          NIOSH T = 8 / 2^((L−85)/3)
     * </pre>
     *
     * @param level_dBA L, slow response [dBA]
     * @source 29 CFR 1910.95 App. A; NIOSH 98-126
     * @example permitted_h(OSHA, 95) = 4
     */
    public static double permitted_h(Rule rule, double level_dBA) {
        return 8 / Math.pow(2, (LEVEL.check(level_dBA) - rule.criterion_dBA) / rule.exchange_dB);
    }

    /**
     * Dose of a day [-], 1 is the whole permitted dose (equation CST-8).
     *
     * <pre>
     * D = Σ C_i/T_i
     * </pre>
     *
     * @param day C_i hours at each level
     * @source 29 CFR 1910.95 App. A
     */
    public static double dose(Rule rule, List<Stretch> day) {
        double dose = 0;
        for (Stretch stretch : day) {
            dose += stretch.hours() / permitted_h(rule, stretch.level_dBA());
        }
        return dose;
    }

    /**
     * Eight-hour time-weighted average of an OSHA dose [dBA] (equation CST-9).
     *
     * <pre>
     * TWA = 16.61 log10 D + 90
     * </pre>
     *
     * @param dose D by OSHA's rule [-]
     * @source 29 CFR 1910.95 App. A
     * @example timeWeightedAverage_dBA(0.5) = 85.0
     */
    public static double timeWeightedAverage_dBA(double dose) {
        return 16.61 * Math.log10(DOSE.check(dose)) + 90;
    }

    /** Lower exposure action value of Directive 2003/10/EC, Article 3 [dBA]. */
    public static final double EU_LOWER_ACTION_dBA = 80;

    /** Upper exposure action value of Directive 2003/10/EC, Article 3 [dBA]. */
    public static final double EU_UPPER_ACTION_dBA = 85;

    /** Exposure limit value of Directive 2003/10/EC, Article 3, counted behind hearing protection [dBA]. */
    public static final double EU_LIMIT_dBA = 87;

    /**
     * Daily noise exposure level [dBA] (equation CST-26): equal energy, 3 dB for each doubling of time.
     *
     * <pre>
     * L_EX,8h = 10 log10[ Σ C_i/8 · 10^(L_i/10) ]
     * </pre>
     *
     * @param day C_i hours at each level L_i, at least one of them longer than none
     * @source Directive 2003/10/EC, Article 2 with ISO 1999 and ISO 9612
     */
    public static double daily_dBA(List<Stretch> day) {
        double energy = 0;
        for (Stretch stretch : day) {
            energy += stretch.hours() / 8 * Math.pow(10, stretch.level_dBA() / 10);
        }
        return 10 * Math.log10(new Range("daily noise exposure", "Σ C/8 · 10^(L/10)", "-", 1e-9, 1e16).check(energy));
    }

    /**
     * Permitted level for hours a day in OSHA's table [dBA] (equation CST-10), which rounds CST-7.
     *
     * @param hours one of the table's rows, 8 to 0.25 [h]
     * @source 29 CFR 1910.95 Table G-16
     * @example tabulatedLimit_dBA(4) = 95
     */
    public static double tabulatedLimit_dBA(double hours) {
        return LIMITS.row("hours", hours).number("level_dBA");
    }
}
