package dustwright.engine.receiver;

import dustwright.engine.quantity.Angle;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Volume;

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

    /** Volume from the outlet up to a height, which may lie in the cylinder above (equation RCV-8). */
    public Volume volumeUpTo(Length height, Length shell) {
        double inCone_m = Math.min(height.metres(), heightTo(shell).metres());
        return new Volume(HoldUp.workingVolume_m3(
                diameterAt(new Length(inCone_m)).metres(), outlet.metres(), inCone_m, height.metres() - inCone_m));
    }
}
