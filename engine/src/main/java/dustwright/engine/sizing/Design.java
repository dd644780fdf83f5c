package dustwright.engine.sizing;

import dustwright.engine.plant.Plant;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A plant with every choice made.
 *
 * @param options id of the option taken, choice by choice
 * @param first first cost of what was chosen [currency]
 * @param running present value of what it costs to run [currency]; empty where it is not known, then it does not count
 * @param plant with these sizes
 */
public record Design(List<String> options, double first, OptionalDouble running, Plant plant) {
    public Design {
        options = List.copyOf(options);
    }

    /** What is made least [currency]. */
    public double cost() {
        return first + running.orElse(0);
    }
}
