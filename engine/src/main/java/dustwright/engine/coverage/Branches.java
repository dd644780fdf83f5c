package dustwright.engine.coverage;

import dustwright.engine.finding.Outcome;
import dustwright.engine.network.Network;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import java.math.BigInteger;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * Branch and bound where envelopes over all sets may not be relied on (decision record 61). Sets are split into boxes by whether an inlet is
 * open. In a box fewer states are possible, so what envelopes take for granted may hold there though it does not everywhere; where it
 * does, the box is shown by its envelopes, where it does not, it is split again, and a box of few sets is solved set by set. Every set
 * lies in exactly one box, so the worst of the boxes is the worst of all.
 */
final class Branches {
    /** Boxes looked at once the verdict is known to be that some set does not hold: only margins are left to find. */
    private static final long FURTHER_BOXES = 60;

    private final Plant plant;
    private final Network network;
    private final Question question;
    private final State condition;
    private final Judging judging;
    private final Effort effort;
    private final Watch watch;
    private final int users;
    private final long few;
    private final long mostBoxes;
    private long lastBox;

    private final Tally all = new Tally();
    private final Deque<Box> waiting = new ArrayDeque<>();
    private final Widening widening = Widening.none();
    private int boxes;
    private BigInteger open = BigInteger.ZERO;
    private String why = "";

    /**
     * What was found.
     *
     * @param tally of all states solved
     * @param widening margins that no set of the boxes shown falls below
     * @param boxes that were bounded or solved set by set
     * @param open sets of which nothing is shown
     * @param why in words, what kept them open, or empty
     */
    record Found(Tally tally, Widening widening, int boxes, BigInteger open, String why) {}

    /**
     * Branches over the sets of one number of users.
     *
     * @param question its numbers of users and conditions do not matter here
     * @param few sets that are solved one by one rather than bounded
     * @param mostBoxes looked at before the work is given up
     */
    Branches(
            Plant plant,
            Network network,
            Question question,
            State condition,
            int users,
            Judging judging,
            Effort effort,
            Watch watch,
            long few,
            long mostBoxes) {
        this.plant = plant;
        this.network = network;
        this.question = new Question(List.of(users), question.atMost(), List.of(condition));
        this.condition = condition;
        this.users = users;
        this.judging = judging;
        this.effort = effort;
        this.watch = watch;
        this.few = few;
        this.mostBoxes = mostBoxes;
        lastBox = mostBoxes;
    }

    /** Goes through the boxes; empty where splitting cannot help, because of what the tubing or the station is. */
    Optional<Found> find() {
        waiting.push(Box.all(plant));
        while (!waiting.isEmpty()) {
            watch.goOn();
            Box box = waiting.pop();
            BigInteger sets = box.sets(plant, question.atMost(), users);
            if (sets.signum() == 0) {
                continue;
            }
            boxes++;
            if (sets.compareTo(BigInteger.valueOf(few)) <= 0 && lastBox > 0) {
                solve(box, sets);
            } else if (boxes > lastBox) {
                leave(sets, "the work was given up after " + lastBox + " boxes of sets");
            } else if (!bound(box)) {
                return Optional.empty();
            }
            if (lastBox == mostBoxes && all.fails()) {
                lastBox = effort.verdictOnly() ? 0 : Math.min(mostBoxes, boxes + FURTHER_BOXES);
            }
        }
        return Optional.of(new Found(all, widening, boxes, open, why));
    }

    private void leave(BigInteger sets, String reason) {
        open = open.add(sets);
        why = why.isEmpty() ? reason : why;
    }

    private void solve(Box box, BigInteger sets) {
        if (all.solved() + sets.longValueExact() > effort.mostStates()) {
            leave(sets, "more than " + effort.mostStates() + " sets would have had to be solved one by one");
            return;
        }
        all.add(states().solve(new EverySet(plant, question, users, box), effort.threads()));
    }

    private ExactStates states() {
        return new ExactStates(plant, network, condition, judging, watch.still());
    }

    /** Bounds a box or splits it; false where it can be neither. */
    private boolean bound(Box box) {
        Outcome<Envelopes> envelopes =
                Envelopes.of(plant, network, question, List.of(condition), Envelopes.INTERVALS, box, watch.still());
        if (envelopes instanceof Outcome.NotSolved<Envelopes>) {
            OptionalInt rare = Envelopes.tooManyFeeds(plant, network, question, condition, box);
            rare.ifPresent(inlet -> split(box, inlet));
            return rare.isPresent();
        }
        Envelopes swept = ((Outcome.Solved<Envelopes>) envelopes).value();
        Envelopes.Found found = swept.extremes(condition, true);
        if (found.objection().any()) {
            split(box, inletBelow(box, swept, found));
            return true;
        }
        Tally here = states().solve(ListedSets.of(found.extremes(), users), effort.threads());
        Widening wider = Widening.of(here.worst(), found.extremes(), users);
        boolean shown = wider.of(here.worst()).stream().noneMatch(Answer.Worst::undecided);
        boolean ordered = found.extremes().stream().allMatch(e -> e.beyond() == 1);
        if (shown && here.gap() <= 1 && ordered) {
            all.add(here);
            widening.add(wider);
        } else {
            split(box, firstFree(box));
        }
        return true;
    }

    private int inletBelow(Box box, Envelopes swept, Envelopes.Found found) {
        OptionalInt below = swept.inletsBelow(
                        found.objected(), found.objection().node())
                .filter(box::free)
                .findFirst();
        return below.isPresent() ? below.getAsInt() : firstFree(box);
    }

    private int firstFree(Box box) {
        return IntStream.range(0, plant.inlets().size())
                .filter(box::free)
                .findFirst()
                .orElseThrow();
    }

    private void split(Box box, int inlet) {
        waiting.push(box.with(inlet, false));
        waiting.push(box.with(inlet, true));
    }
}
