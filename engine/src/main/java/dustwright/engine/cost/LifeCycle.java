package dustwright.engine.cost;

import dustwright.engine.quantity.Range;
import java.util.List;

/**
 * Present value of what a plant costs over its years. Discount and price growth are real rates or nominal rates, never mixed; money is
 * in the plant's own currency.
 */
public final class LifeCycle {
    private static final Range RATE = new Range("present value", "d", "1/year", 0, 0.5);
    private static final Range GROWTH = new Range("present value", "e", "1/year", -0.2, 0.5);
    private static final Range YEARS = new Range("present value", "n", "year", 0, 100);
    private static final Range MONEY = new Range("life-cycle cost", "amount", "currency", -1e12, 1e12);

    private LifeCycle() {}

    /**
     * Present value of one unit paid once after some years [-] (equation CST-19).
     *
     * <pre>
     * SPV = (1 + d)^−n
     * </pre>
     *
     * @param rate d [1/year], 0 to 0.5
     * @param years n
     * @source NIST Handbook 135
     * @example single(0.03, 20) = 0.553676
     */
    public static double single(double rate, double years) {
        return Math.pow(1 + RATE.check(rate), -YEARS.check(years));
    }

    /**
     * Present value of one unit paid every year [-] (equation CST-20); n without discount.
     *
     * <pre>
     * UPV = (1 − (1+d)^−n)/d
     * </pre>
     *
     * @param rate d [1/year], 0 to 0.5
     * @param years n
     * @source NIST Handbook 135
     * @example uniform(0.03, 20) = 14.8775
     */
    public static double uniform(double rate, double years) {
        return growing(rate, 0, years);
    }

    /**
     * Present value of a yearly amount whose price grows, by its price today [-] (equation CST-21); n where growth equals discount.
     *
     * <pre>
     * UPV* = (1+e)/(d−e) [ 1 − ((1+e)/(1+d))^n ]
     * </pre>
     *
     * @param rate d [1/year], 0 to 0.5
     * @param growth e of the price [1/year], −0.2 to 0.5
     * @param years n
     * @source NIST Handbook 135; close to e = d written with expm1, which keeps its digits
     * @example growing(0.03, 0.01, 20) = 16.3827
     */
    public static double growing(double rate, double growth, double years) {
        double logRatio = Math.log1p(GROWTH.check(growth)) - Math.log1p(RATE.check(rate));
        YEARS.check(years);
        if (logRatio == 0) {
            return years;
        }
        // (1+e)/(d−e) = q/(1−q) with q = (1+e)/(1+d)
        double q = Math.exp(logRatio);
        return q * Math.expm1(years * logRatio) / Math.expm1(logRatio);
    }

    /**
     * Yearly amount that repays one unit [1/year] (equation CST-22).
     *
     * <pre>
     * CRF = 1/UPV
     * </pre>
     *
     * @param rate d [1/year]
     * @param years n, above 0
     * @source definition
     * @example capitalRecovery(0.06, 10) = 0.135868
     */
    public static double capitalRecovery(double rate, double years) {
        return 1 / uniform(rate, new Range("capital recovery", "n", "year", 0.01, 100).check(years));
    }

    /** An amount paid once in a year of the study; a residual value is negative. */
    public record Once(double amount, double year) {
        public Once {
            MONEY.check(amount);
            YEARS.check(year);
        }
    }

    /** A yearly amount at today's prices and how its price grows. */
    public record Yearly(double amount, double growth) {
        public Yearly {
            MONEY.check(amount);
            GROWTH.check(growth);
        }
    }

    /**
     * Life-cycle cost in present value [currency] (equation CST-23).
     *
     * <pre>
     * LCC = I + Σ amount SPV(year) + Σ amount UPV*(e)
     * </pre>
     *
     * @param initial I, first cost [currency]
     * @param once replacements, and the residual value as a negative amount
     * @param yearly energy, labour, upkeep
     * @param rate d [1/year]
     * @param years n of the study
     * @source NIST Handbook 135
     */
    public static double cost(double initial, List<Once> once, List<Yearly> yearly, double rate, double years) {
        double sum = MONEY.check(initial);
        for (Once payment : once) {
            sum += payment.amount() * single(rate, payment.year());
        }
        for (Yearly payment : yearly) {
            sum += payment.amount() * growing(rate, payment.growth(), years);
        }
        return sum;
    }

    /**
     * Simple payback [year] (equation CST-24): without discount.
     *
     * <pre>
     * t = extra first cost / yearly saving
     * </pre>
     *
     * @param extra first cost [currency], not below 0
     * @param saving a year [currency/year], above 0: what saves nothing pays nothing back
     * @source definition
     * @example payback_years(7000, 6000) = 1.16667
     */
    public static double payback_years(double extra, double saving) {
        Range positive = new Range("simple payback", "amount", "currency", 1e-6, 1e12);
        return (extra == 0 ? 0 : positive.check(extra)) / positive.check(saving);
    }

    /**
     * Yearly labour of changing containers [currency/year] (equation CST-25).
     *
     * <pre>
     * cost = N t rate
     * </pre>
     *
     * @param changes N in a year
     * @param change_s t of one change [s]
     * @param rate_perHour of labour [currency/h]
     * @source definition
     * @example changeLabour(3203, 720, 35) = 22421
     */
    public static double changeLabour(double changes, double change_s, double rate_perHour) {
        return new Range("change labour", "N", "1/year", 0, 1e7).check(changes)
                * new Range("change labour", "t", "s", 0, 86_400).check(change_s)
                / 3600
                * MONEY.check(rate_perHour);
    }
}
