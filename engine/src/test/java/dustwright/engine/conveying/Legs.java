package dustwright.engine.conveying;

import dustwright.engine.air.Air;
import dustwright.engine.quantity.AbsolutePressure;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.Temperature;

/** Legs with dust for tests, in air of 101 325 Pa and 20 °C. */
final class Legs {
    static final Air AIR = new Air(new AbsolutePressure(101_325), new Temperature(293.15), 287.05287, 1.8134e-5);

    private Legs() {}

    static SolidsLoss loss(SolidsPath path, double bore_m, double size_m, double particleDensity) {
        return loss(path, bore_m, size_m, particleDensity, LevelFriction.HINKLE);
    }

    static SolidsLoss loss(
            SolidsPath path, double bore_m, double size_m, double particleDensity, LevelFriction friction) {
        double length_m = path.level_m() + path.rising_m() + path.falling_m();
        return new SolidsLoss(
                path,
                new Length(bore_m),
                Streams.particle(size_m, particleDensity),
                AIR,
                AirLoss.fixed(0.02, length_m / bore_m, 0.5),
                friction);
    }

    /** What one dust alone adds. */
    static SolidsLoss.Found found(SolidsLoss loss, double air, double density, double solids) {
        SolidsLoss.Found found = new SolidsLoss.Found();
        loss.evaluate(air, density, solids, solids, found);
        return found;
    }

    static double drop_Pa(SolidsLoss loss, double air, double density, double solids) {
        return found(loss, air, density, solids).drop_Pa;
    }
}
