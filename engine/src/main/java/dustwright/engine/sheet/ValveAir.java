package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.air.Air;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.network.StationResult;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.rotaryvalve.RotaryValve;
import java.util.List;

/**
 * Air that leaks up through a rotary valve in a solved state.
 *
 * @param gaps step to the air through its clearances
 * @param pockets step to the air in its returning pockets
 */
record ValveAir(Step gaps, Step pockets, StationResult result) {
    private static final Source NOZZLE = Source.published("Perry's Chemical Engineers' Handbook, flow through nozzles");
    private static final Source MILLS =
            Source.published("Mills, Pneumatic Conveying Design Guide: returning pockets, each full of air from below");
    private static final Source REFERENCE = Source.ownReading("reference state of free air: 101 325 Pa, 20 °C, dry");

    static ValveAir of(RotaryValve valve, Air air, StationResult result) {
        MassFlow clearance =
                new MassFlow(valve.clearanceAir_kgPerS(result.receiver().pascals(), air));
        MassFlow returning = new MassFlow(valve.pocketAir_kgPerS(air));
        Step gaps = step(
                "RV-1",
                "isentropic nozzle of Cd A from the room into the receiver",
                NOZZLE,
                new Term("w_gap", "air through the clearances", clearance),
                new Term("A", "area of the gaps", valve.clearance()),
                new Term("Cd", "discharge coefficient", new Ratio(valve.dischargeCoefficient())),
                new Term("p_a", "site barometer", air.ambient()),
                new Term("p", "static pressure in the receiver", result.receiver()));
        Step pockets = step(
                "RV-2",
                "w = V n ρ_a",
                MILLS,
                new Term("w_pocket", "air in the returning pockets", returning),
                new Term("V", "volume of all pockets", valve.swept()),
                new Term("n", "speed of the rotor", valve.speed()),
                new Term(
                        "ρ_a",
                        "density of the room's air",
                        new Density(air.density_kgPerM3(air.ambient().pascals()))));
        return new ValveAir(gaps, pockets, result);
    }

    /** Its gaps alone, as free air. */
    List<Step> throughGaps() {
        return List.of(gaps, freeAir("w_gap", gaps.result()));
    }

    /** Its returning pockets alone, as free air. */
    List<Step> inPockets() {
        return List.of(pockets, freeAir("w_pocket", pockets.result()));
    }

    /** Both. */
    List<Step> all() {
        return List.of(
                gaps,
                pockets,
                step(
                        "AIR-2",
                        "Q = (w_gap + w_pocket)/ρ_ref, ρ_ref at 101 325 Pa, 20 °C, dry",
                        REFERENCE,
                        new Term("Q", "free air that leaks up", FreeAirFlow.of(result.rotaryValve())),
                        gaps.result(),
                        pockets.result(),
                        reference()));
    }

    private static Step freeAir(String symbol, Term mass) {
        return freeAir("free air that leaks up", symbol, mass.meaning(), (MassFlow) mass.value());
    }

    /** A mass flow said as free air. */
    static Step freeAir(String meaning, String symbol, String what, MassFlow mass) {
        return step(
                "AIR-2",
                "Q = " + symbol + "/ρ_ref, ρ_ref at 101 325 Pa, 20 °C, dry",
                REFERENCE,
                new Term("Q", meaning, FreeAirFlow.of(mass)),
                new Term(symbol, what, mass),
                reference());
    }

    private static Term reference() {
        return new Term("ρ_ref", "reference density", new Density(FreeAirFlow.REFERENCE_DENSITY_kgPerM3));
    }
}
