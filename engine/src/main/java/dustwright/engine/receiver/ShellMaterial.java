package dustwright.engine.receiver;

import dustwright.engine.finding.Source;
import dustwright.engine.quantity.Stress;

/** Metals of receivers with their stiffness at room temperature, usual handbook values. */
public enum ShellMaterial {
    CARBON_STEEL("carbon steel", 200e9, 0.3),
    STAINLESS_STEEL("stainless steel", 193e9, 0.3),
    ALUMINIUM("aluminium", 69e9, 0.33);

    /** Where the figures come from. */
    public static final Source SOURCE =
            Source.fromMemory("modulus and Poisson's ratio at room temperature, usual handbook values");

    private final String words;
    private final Stress modulus;
    private final double poisson;

    ShellMaterial(String words, double modulus_Pa, double poisson) {
        this.words = words;
        this.modulus = new Stress(modulus_Pa);
        this.poisson = poisson;
    }

    public String words() {
        return words;
    }

    /** E. */
    public Stress modulus() {
        return modulus;
    }

    /** ν [-]. */
    public double poisson() {
        return poisson;
    }
}
