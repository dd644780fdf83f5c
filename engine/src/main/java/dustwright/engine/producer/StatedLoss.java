package dustwright.engine.producer;

import dustwright.engine.air.Air;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.PressureDifference;

/**
 * A part whose loss is stated at one flow: a safety filter, a silencer. The loss grows with the square of the flow and falls with
 * density; it is stated for air of one density ρ_at, and so is its flow (equation VLV-2).
 *
 * <pre>
 * in the suction line:      P1 − P2 = 2 p_a · loss · (ρ_at/ρ_a) · (w/w_at)²         (P = p²)
 * discharging to ambient:   Δp      = loss · (ρ_at/ρ_a) · (w/w_at)²
 * </pre>
 *
 * @param at mass flow at which the loss holds, said as free air
 * @param state air for which the loss holds
 */
public record StatedLoss(PressureDifference loss, FreeAirFlow at, State state) {
    /** Air for which a loss is stated. */
    public enum State {
        /** As makers rate it: 101 325 Pa, 20 °C, dry. */
        STANDARD("standard air"),
        /** The site's own air at its barometer. */
        SITE("site air");

        private final String words;

        State(String words) {
            this.words = words;
        }

        /** As the plant file has it. */
        public String words() {
            return words;
        }
    }

    public StatedLoss {
        if (!(at.cubicMetresPerSecond() > 0)) {
            throw new IllegalArgumentException("a loss is stated at a flow above zero");
        }
    }

    /** Density of the air for which the loss holds. */
    public Density density(Air air) {
        return new Density(
                switch (state) {
                    case STANDARD -> FreeAirFlow.REFERENCE_DENSITY_kgPerM3;
                    case SITE -> air.density_kgPerM3(air.ambient().pascals());
                });
    }

    /** Loss of the same mass flow in the site's air at its barometer. */
    public PressureDifference atSite(Air air) {
        return switch (state) {
            case STANDARD ->
                new PressureDifference(loss.pascals()
                        * density(air).kgPerCubicMetre()
                        / air.density_kgPerM3(air.ambient().pascals()));
            case SITE -> loss;
        };
    }

    /** Loss at ambient density over the square of the mass flow [Pa s²/kg²]. */
    public double perSquareFlow(Air air) {
        double at_kgPerS = at.cubicMetresPerSecond() * FreeAirFlow.REFERENCE_DENSITY_kgPerM3;
        return atSite(air).pascals() / (at_kgPerS * at_kgPerS);
    }

    /** Drop of pressure squared over the square of the mass flow in the suction line [Pa² s²/kg²]. */
    public double squaredPressurePerSquareFlow(Air air) {
        return 2 * air.ambient().pascals() * perSquareFlow(air);
    }
}
