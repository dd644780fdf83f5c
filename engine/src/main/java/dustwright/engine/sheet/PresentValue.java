package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.cost.LifeCycle;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.quantity.Money;
import dustwright.engine.quantity.Ratio;
import java.util.ArrayList;
import java.util.List;

/** The life-cycle cost, one factor and one present value to each part of it. */
final class PresentValue {
    private static final Source NIST = Source.published("NIST Handbook 135");

    private final double rate;
    private final int years;
    private final Term discount;
    private final Term life;
    private final String currency;
    private final Money first;
    private final List<LifeCycle.Yearly> overYears = new ArrayList<>();
    private final List<LifeCycle.Once> payments = new ArrayList<>();
    private final List<Step> steps = new ArrayList<>();
    private final List<Term> parts = new ArrayList<>();

    PresentValue(double rate, int years, Money first) {
        this.rate = rate;
        this.years = years;
        this.discount = new Term("d", "discount rate a year", new Ratio(rate));
        this.life = new Term("n", "years", new Ratio(years));
        this.first = first;
        this.currency = first.currency();
        parts.add(new Term("I", "first cost", first));
    }

    /** A yearly cost at today's price, whose price grows. */
    void yearly(Term cost, double growth) {
        overYears.add(new LifeCycle.Yearly(cost.value().si(), growth));
        Ratio factor = new Ratio(LifeCycle.growing(rate, growth, years));
        Term named = new Term("UPV*", "present value of one a year, " + cost.meaning(), factor);
        if (growth == 0) {
            steps.add(step("CST-20", "UPV* = (1 − (1+d)^−n)/d; n without discount", NIST, named, discount, life));
        } else {
            steps.add(step(
                    "CST-21",
                    "UPV* = (1+e)/(d−e) [1 − ((1+e)/(1+d))^n]; n where e = d",
                    NIST,
                    named,
                    discount,
                    new Term("e", "growth of the price a year", new Ratio(growth)),
                    life));
        }
        add(cost, named, factor.value());
    }

    void once(Payment payment) {
        payments.add(new LifeCycle.Once(payment.amount(), payment.year()));
        Ratio factor = new Ratio(LifeCycle.single(rate, payment.year()));
        Term named = new Term("SPV", "present value of one, " + payment.what(), factor);
        steps.add(step(
                "CST-19",
                "SPV = (1+d)^−n",
                NIST,
                named,
                discount,
                new Term("n", "years until then", new Ratio(payment.year()))));
        add(new Term("cost", payment.what(), new Money(payment.amount(), currency)), named, factor.value());
    }

    private void add(Term cost, Term factor, double value) {
        Term part = new Term("PV", cost.meaning(), new Money(cost.value().si() * value, currency));
        steps.add(step("CST-23", "PV = cost × factor", NIST, part, cost, factor));
        parts.add(part);
    }

    Money total() {
        return new Money(LifeCycle.cost(first.amount(), payments, overYears, rate, years), currency);
    }

    /** All steps, the sum last. */
    List<Step> steps() {
        List<Step> all = new ArrayList<>(steps);
        all.add(new Step(
                "CST-23", "LCC = I + Σ PV", parts, new Term("LCC", "life-cycle cost in present value", total()), NIST));
        return all;
    }
}
