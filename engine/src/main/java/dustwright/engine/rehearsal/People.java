package dustwright.engine.rehearsal;

import dustwright.engine.interlock.Controller;
import dustwright.engine.interlock.Sequence;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** People who see lamps and, after a time of their own, do what the lamps ask for. */
final class People {
    /** Lamps and messages that say at rest that START does nothing yet: who reads them waits. */
    private static final List<String> START_IN_VAIN =
            List.of("lamp_cooling", "lamp_relief", "lamp_air", "vent_unproved", "resting", "starts", "stop_held");

    private final Script.Answering answering;
    private final Set<String> signals;
    private final Set<String> buttons;
    private final double change_s;
    private final SplittableRandom chance;
    private Optional<Intention> intention = Optional.empty();
    private long at_ms = Long.MAX_VALUE;
    private boolean changing;
    private boolean lockedOut;

    People(Script.Answering answering, Sequence sequence, double change_s, long seed) {
        this.answering = answering;
        signals = sequence.names().collect(Collectors.toCollection(HashSet::new));
        buttons = sequence.buttons().stream().map(Sequence.Button::name).collect(Collectors.toSet());
        this.change_s = change_s;
        chance = new SplittableRandom(seed);
    }

    /** What somebody is about to do, and the button for it. */
    enum Intention {
        LOCK_OUT("", "somebody comes, locks the valve out and looks for what is wrong"),
        WAIT("", "somebody comes and sees what still stands: no RESET until it is put right"),
        RESET("reset", "somebody looks after the fault and presses RESET"),
        CHANGE("container_change", "somebody comes for the full container and presses CHANGE"),
        PLACED("container_placed", "an empty container hangs, IN PLACE is pressed"),
        RESUME("start", "somebody reads PRESS START and presses START"),
        BEGIN("start", "somebody wants to vacuum and presses START"),
        END("stop", "nobody vacuums any more, somebody presses STOP");

        final String button;
        final String words;

        Intention(String button, String words) {
            this.button = button;
            this.words = words;
        }

        /** Whether a lamp or somebody with a hose in hand waits for it. */
        boolean isCall() {
            return this != END;
        }
    }

    long next_ms() {
        return at_ms;
    }

    /** The act that is due; what to do next is then seen afresh. */
    Optional<Intention> due(long now_ms) {
        if (now_ms < at_ms) {
            return Optional.empty();
        }
        Optional<Intention> due = intention;
        changing =
                due.equals(Optional.of(Intention.CHANGE)) || (changing && !due.equals(Optional.of(Intention.PLACED)));
        lockedOut = lockedOut || due.filter(d -> d.button.isEmpty()).isPresent();
        intention = Optional.empty();
        at_ms = Long.MAX_VALUE;
        return due;
    }

    /**
     * Looks at the lamps.
     *
     * @param inside whether something is wrong that is mended with hands in valve or hopper: nobody resets or starts until it is
     * @param stands whether something still stands that whoever comes sees: nobody resets until it is put right
     */
    void look(Controller controller, boolean work, boolean inside, boolean stands, long now_ms) {
        lockedOut = lockedOut && (inside || stands);
        Optional<Intention> wish = wish(controller, work, inside)
                .map(w -> w == Intention.RESET && stands ? Intention.WAIT : w)
                .filter(w -> w.button.isEmpty() || buttons.contains(w.button));
        if (!wish.equals(intention)) {
            intention = wish;
            at_ms = wish.map(w -> now_ms + wait_ms(w)).orElse(Long.MAX_VALUE);
        }
    }

    private Optional<Intention> wish(Controller controller, boolean work, boolean inside) {
        return lockedOut ? Optional.empty() : asked(controller, signals, work, inside, changing);
    }

    /** What the panel asks somebody to do now. */
    static Optional<Intention> asked(
            Controller controller, Set<String> signals, boolean work, boolean inside, boolean changing) {
        Predicate<String> lit = lamp -> signals.contains(lamp) && controller.is(lamp);
        if (lit.test("lamp_fault") && controller.step().equals("tripped")) {
            return Optional.of(inside ? Intention.LOCK_OUT : Intention.RESET);
        }
        if (lit.test("lamp_container_high") || lit.test("lamp_container_off") || lit.test("lamp_container_changing")) {
            return Optional.of(changing ? Intention.PLACED : Intention.CHANGE);
        }
        if (lit.test("lamp_press_start")) {
            return Optional.of(work ? Intention.RESUME : Intention.END);
        }
        if (work
                && controller.step().equals("standing")
                && START_IN_VAIN.stream().noneMatch(lit)) {
            return Optional.of(Intention.BEGIN);
        }
        return !work && controller.step().equals("vacuuming") ? Optional.of(Intention.END) : Optional.empty();
    }

    private long wait_ms(Intention wish) {
        return switch (wish) {
            case LOCK_OUT, WAIT, RESET, CHANGE -> between(answering.least_s(), answering.greatest_s());
            case PLACED -> Math.round(1000 * change_s);
            case RESUME, BEGIN -> between(20, 60);
            case END -> between(10, 30);
        };
    }

    private long between(double least_s, double greatest_s) {
        return Math.round(1000 * (least_s + (greatest_s - least_s) * chance.nextDouble()));
    }
}
