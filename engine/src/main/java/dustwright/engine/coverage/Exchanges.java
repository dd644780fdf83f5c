package dustwright.engine.coverage;

import dustwright.engine.coverage.Answer.Worst;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Outcome;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.network.Network;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a person can check of a worst set: shut one of its inlets and open another instead, and the margin must not get smaller, whichever two
 * they are. It is no proof, for sets that differ in two inlets are not looked at; that is what bounds are for.
 *
 * @param worst the worst set of the requirement with the least margin of all
 * @param condition of filter and dust in which it stands
 * @param tried every exchange the zones allow, smallest margin first
 */
public record Exchanges(Worst worst, String condition, List<Exchange> tried) {
    /**
     * One exchange.
     *
     * @param margin of the same requirement at the same place
     */
    public record Exchange(String shut, String opened, double margin) {}

    public Exchanges {
        tried = List.copyOf(tried);
    }

    /** Exchanges in the worst set of the least margin of all; empty where nothing is checked. */
    public static Optional<Exchanges> of(Plant plant, Coverage coverage, Judging judging) {
        return coverage.answers().stream()
                .filter(answer -> answer.least().isPresent())
                .min(Comparator.comparingDouble(
                        answer -> answer.worst().get(0).finding().margin()))
                .flatMap(answer -> of(plant, coverage.question(), answer, judging));
    }

    private static Optional<Exchanges> of(Plant plant, Question question, Answer answer, Judging judging) {
        Worst worst = answer.worst().get(0);
        return question.conditions().stream()
                .filter(state -> ExactStates.words(state).equals(answer.condition()))
                .findFirst()
                .map(state -> new Exchanges(worst, answer.condition(), tried(plant, question, state, worst, judging)));
    }

    private static List<Exchange> tried(Plant plant, Question question, State condition, Worst worst, Judging judging) {
        DutyPointSolver solver = new DutyPointSolver(Network.compile(plant));
        List<Exchange> tried = new ArrayList<>();
        for (String shut : worst.open()) {
            for (var inlet : plant.inlets()) {
                List<String> open = new ArrayList<>(worst.open());
                open.set(open.indexOf(shut), inlet.id());
                if (!worst.open().contains(inlet.id()) && question.allowsZones(plant, open)) {
                    margin(solver.solve(condition.withOpen(open)), worst.finding(), judging)
                            .ifPresent(margin -> tried.add(new Exchange(shut, inlet.id(), margin)));
                }
            }
        }
        tried.sort(Comparator.comparingDouble(Exchange::margin));
        return tried;
    }

    /** Empty where the place has nothing to do with the set, or it has no answer. */
    private static Optional<Double> margin(Outcome<DutyPoint> duty, Finding of, Judging judging) {
        return duty.match(
                solved -> judging.of(solved).stream()
                        .filter(f -> f.code() == of.code() && f.where().equals(of.where()))
                        .map(Finding::margin)
                        .findFirst(),
                why -> Optional.<Double>empty());
    }
}
