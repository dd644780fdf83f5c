package dustwright.engine.electrical;

import dustwright.engine.reference.ReferenceTable;

/** Least nominal full-load efficiencies by class. Statutory floors: a maker's data sheet says what a motor has. */
public final class MotorEfficiency {
    private static final ReferenceTable PREMIUM = ReferenceTable.bundled("electrical/efficiency-premium-60hz.csv");
    private static final ReferenceTable ACT_1992 = ReferenceTable.bundled("electrical/efficiency-1992-60hz.csv");
    private static final ReferenceTable IE3 = ReferenceTable.bundled("electrical/efficiency-ie3-50hz.csv");

    private MotorEfficiency() {}

    /** How a motor is cooled. */
    public enum Cooling {
        OPEN("open"),
        ENCLOSED("enclosed");

        private final String column;

        Cooling(String column) {
            this.column = column;
        }
    }

    /**
     * Premium efficiency at 60 Hz [-] (equation ELE-16).
     *
     * @param horsepower [hp], one of the table's ratings 1 to 200
     * @param poles 2, 4 or 6
     * @source 10 CFR 431.25 Table 1 = NEMA MG 1 Table 12-12
     * @example premium(30, ENCLOSED, 4) = 0.936
     */
    public static double premium(double horsepower, Cooling cooling, int poles) {
        return PREMIUM.row("motor_hp", horsepower).number(cooling.column + "_" + poles) / 100;
    }

    /**
     * Efficiency of enclosed 4-pole motors of the 1992 Act at 60 Hz [-] (equation ELE-17): what stands in older plants.
     *
     * @param horsepower [hp], one of the table's ratings 1 to 200
     * @source 42 USC 6313(b)(1) = 10 CFR 431.25(a) of 2006
     * @example act1992(25) = 0.924
     */
    public static double act1992(double horsepower) {
        return ACT_1992.row("motor_hp", horsepower).number("enclosed_4") / 100;
    }

    /**
     * IE3 efficiency at 50 Hz [-] (equation ELE-18).
     *
     * @param kilowatts [kW], one of the table's ratings 0.75 to 160
     * @param poles 2, 4 or 6
     * @source IEC 60034-30-1 = Regulation (EU) 2019/1781 Annex I Table 2
     * @example ie3(22, 4) = 0.93
     */
    public static double ie3(double kilowatts, int poles) {
        return IE3.row("motor_kW", kilowatts).number(String.valueOf(poles)) / 100;
    }
}
