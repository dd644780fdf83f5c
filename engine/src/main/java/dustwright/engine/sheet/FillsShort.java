package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.bagging.BagFill;
import dustwright.engine.bagging.BulkBag;
import dustwright.engine.bagging.Container;
import dustwright.engine.discharge.DustFlow;
import dustwright.engine.discharge.WorkWeek;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Frequency;
import dustwright.engine.quantity.Mass;
import dustwright.engine.quantity.Ratio;
import java.util.List;
import java.util.Optional;

/**
 * Bags that are inflated, had they not been; or the other way round. The dust of the mean week is the same in both: a mass balance, not a
 * count of whole changes.
 *
 * @param inflated whether the plant's own bags are inflated before filling
 * @param week dust picked up in a week, mean of a year
 * @param full dust an inflated bag takes
 * @param fillsShort dust one takes that is not inflated
 */
record FillsShort(
        boolean inflated, Ratio share, Container container, Density loose, Mass week, Mass full, Mass fillsShort) {
    private static final Source MASS_BALANCE = Source.published("mass balance");

    /** Absent where no share is stated that fills without inflation. */
    static Optional<FillsShort> of(Container container, DustWeek dust) {
        Optional<BulkBag> bag =
                container.bag().filter(b -> b.shareWithoutInflation().isPresent());
        if (bag.isEmpty()) {
            return Optional.empty();
        }
        boolean inflated = bag.get().stand().inflation().isPresent();
        Ratio share = bag.get().shareWithoutInflation().get();
        double full_m3 = container.volume().cubicMetres();
        double loose_kgPerM3 = dust.loose().kgPerCubicMetre();
        DustFlow flow = dust.flow();
        return Optional.of(new FillsShort(
                inflated,
                share,
                container,
                dust.loose(),
                new Mass(flow.collected_kg() / flow.weeks()),
                new Mass(BaggingSheet.taken_kg(container, full_m3, loose_kgPerM3)),
                new Mass(BaggingSheet.taken_kg(
                        container, BagFill.notInflated_m3(full_m3, share.value()), loose_kgPerM3))));
    }

    String name() {
        return inflated ? "Not inflating would cost" : "Not inflating costs";
    }

    /** Bags more in a week. */
    Frequency more() {
        double perWeek = BagFill.moreForFillingShort(week.kilograms(), full.kilograms(), fillsShort.kilograms());
        return new Frequency(perWeek / WorkWeek.WEEK_s);
    }

    /** From the share that fills to the bags it costs. */
    List<Step> steps() {
        return List.of(
                step(
                        "BAG-7",
                        "m_short = what share V takes",
                        Source.ownReading("a stated share; no published figure"),
                        new Term("m_short", "dust a bag takes that is not inflated (BAG-4)", fillsShort),
                        new Term("share", "stated share that fills", share),
                        new Term("V", "volume to the level probe", container.volume()),
                        new Term("ρ_B", "loose bulk density", loose)),
                step(
                        "BAG-20",
                        "ΔN = M (1/m_short − 1/m)",
                        MASS_BALANCE,
                        new Term("ΔN", "more bags for not inflating them", more()),
                        new Term("M", "dust of a week", week),
                        new Term("m_short", "dust a bag takes that is not inflated", fillsShort),
                        new Term("m", "dust an inflated bag takes", full)));
    }
}
