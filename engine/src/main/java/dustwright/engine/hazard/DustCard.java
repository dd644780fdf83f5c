package dustwright.engine.hazard;

import dustwright.engine.finding.Source;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.ExplosionConstant;
import dustwright.engine.quantity.GaugePressure;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.SparkEnergy;
import dustwright.engine.quantity.Temperature;
import java.util.Optional;

/**
 * How a dust ignites and explodes. What is absent is not known. Published values are of other people's samples: they show whether a
 * figure is plausible, and only a test of the customer's own dust counts.
 *
 * @param kst dust explosion constant
 * @param greatest explosion pressure Pmax
 * @param ignition least ignition energy of a cloud, MIE
 * @param cloud least ignition temperature of a cloud, MIT
 * @param layer least ignition temperature of a 5 mm layer, LIT
 * @param explosible least explosible concentration, MEC
 * @param conductive whether its resistivity is 1 kΩ m or less
 * @param food whether it goes into food again or touches it
 * @param toxic whether it is toxic or sensitizing
 * @param report test report: laboratory, number, date
 */
public record DustCard(
        Optional<DustFamily> family,
        Optional<Stated<ExplosionConstant>> kst,
        Optional<Stated<GaugePressure>> greatest,
        Optional<Stated<SparkEnergy>> ignition,
        Optional<Stated<Temperature>> cloud,
        Optional<Stated<Temperature>> layer,
        Optional<Stated<Density>> explosible,
        Optional<Boolean> conductive,
        Optional<Boolean> food,
        Optional<Boolean> toxic,
        Sample sample,
        Optional<String> report) {
    /** Nothing known. */
    public static final DustCard UNKNOWN = new DustCard(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Sample.PUBLISHED,
            Optional.empty());

    /** A value with where it comes from. */
    public record Stated<T extends Quantity>(T value, Source source) {}

    /** Whose dust the values belong to. */
    public enum Sample {
        OWN("own dust, tested"),
        PUBLISHED("published, other samples");

        private final String words;

        Sample(String words) {
            this.words = words;
        }

        /** As the plant file says it. */
        public String words() {
            return words;
        }
    }

    /** Greatest explosion constant either vent equation is published for: stands in while none is known. */
    public static final ExplosionConstant WORST_KST = new ExplosionConstant(800e5);
    /** Greatest explosion pressure either vent equation is published for: stands in while none is known. */
    public static final GaugePressure WORST_PRESSURE = new GaugePressure(12e5);
    /** Stands in while no least ignition energy is known: the most easily ignited step of the guidance. */
    public static final SparkEnergy WORST_IGNITION = new SparkEnergy(1e-3);

    /** Explosion constant, or the worst case while none is known. */
    public ExplosionConstant kstOrWorst() {
        return kst.map(Stated::value).orElse(WORST_KST);
    }

    /** Explosion pressure, or the worst case while none is known. */
    public GaugePressure greatestOrWorst() {
        return greatest.map(Stated::value).orElse(WORST_PRESSURE);
    }

    /** Least ignition energy, or the worst case while none is known. */
    public SparkEnergy ignitionOrWorst() {
        return ignition.map(Stated::value).orElse(WORST_IGNITION);
    }
}
