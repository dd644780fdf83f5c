package dustwright.engine.sizing;

import dustwright.engine.plant.Plant;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A plant with every choice made.
 *
 * @param options id of the option taken, choice by choice
 * @param firsts first cost of what was chosen, choice by choice [currency]
 * @param running present value of what it costs to run [currency]; empty where it is not known, then it does not count
 * @param plant with these sizes
 */
public record Design(List<String> options, List<Double> firsts, OptionalDouble running, Plant plant) {
    public Design {
        options = List.copyOf(options);
        firsts = List.copyOf(firsts);
    }

    /** First cost of all that was chosen [currency]. */
    public double first() {
        return firsts.stream().mapToDouble(first -> first).sum();
    }

    /** What is made least [currency]. */
    public double cost() {
        return first() + running.orElse(0);
    }
}
