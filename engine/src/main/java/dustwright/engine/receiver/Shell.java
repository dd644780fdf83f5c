package dustwright.engine.receiver;

import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Ratio;

/**
 * Wall of a receiver against vacuum.
 *
 * @param rings stiffening rings, evenly spaced between the cylinder's ends
 * @param factor margin between collapse and allowed vacuum [-]
 */
public record Shell(Length thickness, ShellMaterial material, int rings, Ratio factor) {
    /** Length between two stiff places of a cylinder: its ends and the rings. */
    public Length unsupported(Length straightSide) {
        return new Length(straightSide.metres() / (rings + 1));
    }
}
