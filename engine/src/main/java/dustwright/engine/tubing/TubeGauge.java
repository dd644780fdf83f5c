package dustwright.engine.tubing;

import dustwright.engine.quantity.Units;
import dustwright.engine.reference.ReferenceTable;

/** Wall thickness by gauge number: the same number is another thickness for tube and for each kind of sheet. */
public enum TubeGauge {
    /** Tube: Birmingham wire gauge. */
    TUBE("tube_in"),
    /** Uncoated steel sheet: Manufacturers' Standard Gauge, 41.82 lb/ft² per inch. */
    SHEET("sheet_in"),
    /** Galvanized sheet, zinc included. */
    GALVANIZED_SHEET("galvanized_sheet_in"),
    /** Stainless sheet. */
    STAINLESS_SHEET("stainless_sheet_in");

    private static final ReferenceTable GAUGES = ReferenceTable.bundled("tubing/gauges.csv");

    private final String column;

    TubeGauge(String column) {
        this.column = column;
    }

    /**
     * Thickness of a gauge number [m].
     *
     * @param gauge 10 to 14, 16, 18 or 20
     * @source tube: Machinery's Handbook; sheet: Manufacturers' Standard, galvanized and stainless gauges, partly from memory
     */
    public double thickness_m(int gauge) {
        return GAUGES.row("gauge", gauge).number(column) * Units.INCH_m;
    }
}
