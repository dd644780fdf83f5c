package dustwright.engine.receiver;

import dustwright.engine.finding.Source;
import dustwright.engine.quantity.Stress;

/** Metals of receivers with stiffness and strength at room temperature, usual handbook values. */
public enum ShellMaterial {
    CARBON_STEEL("carbon steel", 200e9, 0.3, 235e6),
    STAINLESS_STEEL("stainless steel", 193e9, 0.3, 205e6),
    ALUMINIUM("aluminium", 69e9, 0.33, 125e6);

    /** Where the figures come from. */
    public static final Source SOURCE = Source.fromMemory(
            "modulus and Poisson's ratio at room temperature, usual handbook values; yield of S235, of 304 and of soft 5083");

    private final String words;
    private final Stress modulus;
    private final double poisson;
    private final Stress yieldStress;

    ShellMaterial(String words, double modulus_Pa, double poisson, double yield_Pa) {
        this.words = words;
        this.modulus = new Stress(modulus_Pa);
        this.poisson = poisson;
        this.yieldStress = new Stress(yield_Pa);
    }

    public String words() {
        return words;
    }

    /** E. */
    public Stress modulus() {
        return modulus;
    }

    /** σ_y. */
    public Stress yieldStress() {
        return yieldStress;
    }

    /** ν [-]. */
    public double poisson() {
        return poisson;
    }
}
