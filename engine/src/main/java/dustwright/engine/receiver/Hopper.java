package dustwright.engine.receiver;

import dustwright.engine.quantity.Angle;
import dustwright.engine.quantity.Length;

/**
 * Cone below the receiver's cylinder.
 *
 * @param halfAngle of the wall from the vertical
 * @param outlet diameter of its lower end
 */
public record Hopper(Angle halfAngle, Length outlet) {
    /** Height of the cone up to a diameter. */
    public Length heightTo(Length diameter) {
        double wider_m = diameter.metres() - outlet.metres();
        return new Length(wider_m / 2 / Math.tan(halfAngle.radians()));
    }

    /** Diameter of the cone at a height above its outlet. */
    public Length diameterAt(Length height) {
        return new Length(outlet.metres() + 2 * height.metres() * Math.tan(halfAngle.radians()));
    }
}
