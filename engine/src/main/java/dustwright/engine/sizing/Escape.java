package dustwright.engine.sizing;

import dustwright.engine.coverage.Judging;
import dustwright.engine.coverage.Question;
import dustwright.engine.coverage.Remedy;
import dustwright.engine.plant.Plant;
import dustwright.engine.sizing.Deadlock.Nearest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Where no choice of sizes holds: what comes of sizing anew after one of the trade's remedies, fewer users, another speed or held vacuum, a
 * bleed at the far end of the slowest run. Never the relief valve: its air does not pass the tubing.
 *
 * @param what the change, for people
 * @param sizing what could then be chosen
 */
public record Escape(String what, Sizing sizing) {
    /**
     * Sized anew after each remedy: those with a design that holds first, cheapest first; then by how little the nearest design misses. What a
     * search that was stopped did not get to stands last and says so.
     */
    public static List<Escape> of(Plant plant, List<Choice> choices, Rules rules, Sizing without, Patience patience) {
        List<Escape> escapes = new ArrayList<>();
        Nearest nearest = without.deadlock().flatMap(Deadlock::nearest).orElse(null);
        if (nearest == null) {
            return escapes;
        }
        Patience asking = patience.asking(without.learnt());
        for (Remedy.Change change : Remedy.changes(plant, nearest.coverage())) {
            escapes.add(new Escape(
                    change.what(), Search.of(change.plant(), choices, new Changed(rules, change.question()), asking)));
        }
        escapes.sort(Comparator.comparing((Escape e) -> e.sizing.best().isEmpty())
                .thenComparingDouble(e -> e.sizing.best().map(Design::cost).orElse(0.0))
                .thenComparingDouble(Escape::misses));
        return escapes;
    }

    /** By how much the nearest design misses then; +∞ where none was looked for. */
    public double misses() {
        return sizing.deadlock().flatMap(Deadlock::nearest).map(Nearest::miss).orElse(Double.POSITIVE_INFINITY);
    }

    /** The same rules with another question. */
    private record Changed(Rules rules, Question asked) implements Rules {
        @Override
        public Judging judging(Plant plant) {
            return rules.judging(plant);
        }

        @Override
        public Question question(Plant plant) {
            return new Question(
                    asked.users(),
                    asked.atMost(),
                    asked.conditions().stream()
                            .map(c -> c.withRunning(Parts.running(plant)))
                            .toList());
        }

        @Override
        public OptionalDouble running(Plant plant) {
            return rules.running(plant);
        }

        @Override
        public boolean widestRunsCheapest(Plant plant) {
            return rules.widestRunsCheapest(plant);
        }
    }
}
