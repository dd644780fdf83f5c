package dustwright.engine.sizing;

import dustwright.engine.coverage.Answer.Worst;
import dustwright.engine.coverage.Coverage;
import dustwright.engine.coverage.Question;
import dustwright.engine.coverage.Remedy;
import dustwright.engine.plant.Plant;
import dustwright.engine.sizing.Trials.Failing;
import dustwright.engine.sizing.Trials.Tried;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one single change does for a plant that stands: another size for one choice, or another speed or a bleed; everything else stays.
 *
 * @param what the change, for people
 * @param price of what is bought new [currency]; empty where it has no price in the plant file
 * @param failing requirements and places that do not hold in some set found
 * @param worst the least margin found
 * @param proven whether the count is of all sets, by a proof; else of the sets that were asked, and more may fail
 */
public record OneChange(String what, OptionalDouble price, int failing, Optional<Worst> worst, boolean proven) {
    private static final Comparator<OneChange> BEST_FIRST = Comparator.comparingInt(OneChange::failing)
            .thenComparing(OneChange::proven, Comparator.reverseOrder())
            .thenComparing(OneChange::margin, Comparator.reverseOrder())
            .thenComparingDouble(c -> c.price().orElse(0));

    /** So many that hold in every set asked get a proof. */
    private static final int PROOFS = 3;

    /**
     * The plant as it stands and every single change, best first.
     *
     * @param present the plant as it stands
     * @param changes fewest failing places first, then the greatest least margin, then the lowest price
     * @param partial whether the work was stopped: then proofs are missing
     */
    public record Changes(OneChange present, List<OneChange> changes, boolean partial) {
        public Changes {
            changes = List.copyOf(changes);
        }

        /** Whether the plant holds as it stands. */
        public boolean holdsNow() {
            return present.failing == 0 && present.proven;
        }
    }

    /** A change with the plant it makes. */
    private record Made(String what, OptionalDouble price, Plant plant) {}

    /** Tries every single change. */
    public static Changes of(Plant plant, List<Choice> choices, Rules rules, Patience patience) {
        Question question = rules.question(plant);
        Trials trials = new Trials(Parts.whole(plant, choices, question), rules, patience);
        trials.suspect(patience.suspected().stream()
                .filter(set -> question.users().contains(set.size()) && question.allowsZones(plant, set))
                .toList());
        Tried present = trials.judged(plant);
        Coverage coverage = present.coverage().orElseThrow();
        List<Made> made = new ArrayList<>();
        for (Choice choice : choices) {
            made.addAll(sizes(plant, choice));
        }
        for (Remedy.Change change : Remedy.changes(plant, coverage)) {
            if (change.question().users().equals(coverage.question().users())
                    && change.plant().bleeds().equals(plant.bleeds())) {
                made.add(new Made(change.what(), OptionalDouble.empty(), change.plant()));
            }
        }
        List<OneChange> tried = new ArrayList<>();
        int proofs = 0;
        for (Asked one : mostPromisingFirst(made, trials)) {
            // proofs teach sets: what held before is asked in them too
            Asked now = one.holds() && proofs > 0 ? Asked.of(one.change, trials) : one;
            boolean worthProof =
                    now.holds() && proofs < PROOFS && !patience.stop().getAsBoolean();
            proofs += worthProof ? 1 : 0;
            tried.add(worthProof ? proven(now.change, trials) : now.told());
        }
        tried.sort(BEST_FIRST);
        return new Changes(
                told("as it stands", OptionalDouble.empty(), coverage),
                tried,
                patience.stop().getAsBoolean());
    }

    private double margin() {
        return worst.map(w -> w.finding().margin()).orElse(0.0);
    }

    /** What the sets asked first say of a change: the worst at every place, worst first. */
    private record Asked(Made change, List<Failing> worst) {
        static Asked of(Made change, Trials trials) {
            return new Asked(change, trials.worstOf(change.plant));
        }

        boolean holds() {
            return places() == 0 && !worst.isEmpty();
        }

        int places() {
            return (int)
                    worst.stream().filter(f -> !f.worst().finding().holds()).count();
        }

        double margin() {
            return worst.isEmpty() ? Double.NEGATIVE_INFINITY : worst.get(0).margin();
        }

        OneChange told() {
            return new OneChange(
                    change.what,
                    change.price,
                    places(),
                    worst.stream().findFirst().map(Failing::worst),
                    false);
        }
    }

    /** So that proofs go to them. */
    private static List<Asked> mostPromisingFirst(List<Made> made, Trials trials) {
        return made.stream()
                .map(one -> Asked.of(one, trials))
                .sorted(Comparator.comparing((Asked a) -> a.worst.isEmpty())
                        .thenComparingInt(Asked::places)
                        .thenComparingDouble(a -> -a.margin())
                        .thenComparingDouble(a -> a.change.price().orElse(0)))
                .toList();
    }

    private static List<Made> sizes(Plant plant, Choice choice) {
        Space space = new Space(plant, List.of(choice));
        List<Made> made = new ArrayList<>();
        for (int option = 0; option < space.options(0).size(); option++) {
            Plant sized = space.with(space.fit(new int[] {option}));
            boolean stands = choice instanceof Choice.Producers
                    ? Parts.running(sized).equals(Parts.running(plant)) // those that stand by are no change
                    : sized.equals(plant);
            if (!stands) {
                made.add(new Made(
                        choice.id() + " " + space.options(0).get(option).id(),
                        OptionalDouble.of(space.cost(0, option)),
                        sized));
            }
        }
        return made;
    }

    private static OneChange proven(Made made, Trials trials) {
        return told(made.what, made.price, trials.judged(made.plant).coverage().orElseThrow());
    }

    private static OneChange told(String what, OptionalDouble price, Coverage coverage) {
        List<Worst> worst = coverage.worstPerPlace();
        long failing = worst.stream().filter(w -> !w.finding().holds()).count();
        boolean decided = coverage.holds() || failing > 0;
        return new OneChange(what, price, (int) failing, worst.stream().findFirst(), decided);
    }
}
