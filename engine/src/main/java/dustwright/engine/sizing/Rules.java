package dustwright.engine.sizing;

import dustwright.engine.coverage.Judging;
import dustwright.engine.coverage.Question;
import dustwright.engine.plant.Plant;
import java.util.OptionalDouble;

/** What a design is held to and what it costs to run; the same code that judges a plant as it stands. */
public interface Rules {
    /** Requirements of one state of a plant. */
    Judging judging(Plant plant);

    /** The sets a design has to cover. */
    Question question(Plant plant);

    /** Present value of what the plant costs to run and depends on its sizes [currency]; empty where it is not known. */
    OptionalDouble running(Plant plant);

    /**
     * Whether the running cost of a fit is not above that of any design with smaller tubes and hoses and the same producers and cloth: true
     * where the producers' power falls with the vacuum.
     */
    boolean widestRunsCheapest(Plant plant);
}
