package dustwright.engine.discharge;

import dustwright.engine.discharge.DustFlow.Moment;
import dustwright.engine.discharge.WorkWeek.Stretch;
import dustwright.engine.quantity.Range;

/**
 * Follows the dust from event to event (equations DIS-3 to DIS-5). Between two events every rate is constant, so amounts run straight
 * and the next event is computed, not searched: there is no time step, and no error of one.
 *
 * <pre>
 * d(receiver)/dt = in − out        d(container)/dt = out
 * in  = feed while users vacuum, at most out while the receiver stands at its high level; 0 when a stated mass is picked up
 * out = valve while dust lies over it, else in, at most the valve; 0 while a container is changed
 * </pre>
 */
public final class Discharge {
    /** Share of a stated mass, or of a container's, that is rounding: what is full at the end of work is changed after it [-]. */
    private static final double SAME = 1e-12;

    private static final Range WEEKS = new Range("the dust's way", "weeks", "-", 1, 5200);

    private final DischargeLine line;
    private final Tally tally;
    private final double drawnUntil_s;

    private double now_s;
    private double receiver_kg;
    private double container_kg;
    private boolean changing;
    private double changeLeft_s;
    private boolean high;
    /** What is still to be picked up in this stretch, and how much of it is only rounding. */
    private double left_kg;

    private double rounding_kg;

    private Discharge(DischargeLine line, double drawnUntil_s) {
        this.line = line;
        this.tally = new Tally();
        this.drawnUntil_s = drawnUntil_s;
        this.high = line.hopper_kg() == 0;
    }

    /** What ends a stretch of constant rates. */
    private enum Event {
        FEED_CHANGES,
        PICKED_UP,
        CONTAINER_FULL,
        CONTAINER_CHANGED,
        HIGH_LEVEL,
        RECEIVER_EMPTY
    }

    /** The next event and how long until then. */
    private record Next(Event event, double wait_s) {
        Next or(Event other, double other_s) {
            return other_s < wait_s ? new Next(other, Math.max(0, other_s)) : this;
        }
    }

    /**
     * Goes through a number of equal weeks, from an empty receiver and an empty container.
     *
     * @param weeks 1 to 5200
     * @param drawnWeeks first weeks whose course is kept; 0 for none
     */
    public static DustFlow over(DischargeLine line, WorkWeek week, int weeks, int drawnWeeks) {
        WEEKS.check(weeks);
        Discharge discharge = new Discharge(line, drawnWeeks * WorkWeek.WEEK_s);
        for (int n = 0; n < weeks; n++) {
            double start_s = n * WorkWeek.WEEK_s;
            for (Stretch stretch : week.stretches()) {
                discharge.goOn(0, start_s + stretch.from_s());
                discharge.clean(stretch, start_s + stretch.to_s());
            }
            discharge.goOn(0, start_s + WorkWeek.WEEK_s);
        }
        discharge.mark(false);
        return discharge.tally.flow(weeks, weeks * week.asked_kg(), discharge.container_kg, discharge.receiver_kg);
    }

    private void clean(Stretch stretch, double until_s) {
        left_kg = stretch.goal_kg().orElse(Double.POSITIVE_INFINITY);
        rounding_kg = SAME * stretch.goal_kg().orElse(0);
        goOn(stretch.feed_kgPerS(), until_s);
        tally.cleaned();
    }

    /** With one feed up to a time, or until nothing is left to pick up. */
    private void goOn(double feed_kgPerS, double until_s) {
        while (now_s < until_s) {
            double wanted = left_kg > rounding_kg ? feed_kgPerS : 0;
            double offered = usersWait() ? 0 : wanted;
            double out = out_kgPerS(offered);
            double in = high ? Math.min(offered, out) : offered;
            mark(in > 0);
            Next next = next(in, out, until_s);
            tally.went(in, wanted, next.wait_s(), changing && usersWait());
            move(in, out, next);
            now_s = next.event() == Event.FEED_CHANGES ? until_s : now_s + next.wait_s();
        }
    }

    private boolean usersWait() {
        return changing && (!line.vacuumingGoesOn() || line.valve_kgPerS().isEmpty());
    }

    private double out_kgPerS(double in) {
        if (changing) {
            return 0;
        }
        if (line.valve_kgPerS().isEmpty()) {
            return in;
        }
        double valve = line.valve_kgPerS().getAsDouble();
        return receiver_kg > 0 ? valve : Math.min(valve, in);
    }

    private Next next(double in, double out, double until_s) {
        Next next = new Next(Event.FEED_CHANGES, until_s - now_s);
        if (in > 0) {
            next = next.or(Event.PICKED_UP, left_kg / in);
        }
        if (in > out) {
            next = next.or(Event.HIGH_LEVEL, (line.hopper_kg() - receiver_kg) / (in - out));
        } else if (out > in) {
            next = next.or(Event.RECEIVER_EMPTY, receiver_kg / (out - in));
        }
        if (out > 0) {
            next = next.or(Event.CONTAINER_FULL, (line.container_kg() - container_kg) / out);
        }
        return changing ? next.or(Event.CONTAINER_CHANGED, changeLeft_s) : next;
    }

    /** Amounts run to the event, and what the event sets is set exactly. */
    private void move(double in, double out, Next next) {
        double came_kg = in * next.wait_s();
        double went_kg = out * next.wait_s();
        changeLeft_s -= next.wait_s();
        switch (next.event()) {
            case CONTAINER_FULL -> {
                went_kg = line.container_kg() - container_kg;
                came_kg = in == out ? went_kg : came_kg;
            }
            case RECEIVER_EMPTY -> went_kg = receiver_kg + came_kg;
            case HIGH_LEVEL -> came_kg = line.hopper_kg() - receiver_kg + went_kg;
            case PICKED_UP -> {
                came_kg = left_kg;
                went_kg = in == out ? came_kg : went_kg;
            }
            case FEED_CHANGES, CONTAINER_CHANGED -> {}
        }
        left_kg -= came_kg;
        container_kg += went_kg;
        receiver_kg = Math.max(0, receiver_kg + (came_kg - went_kg));
        high = line.hopper_kg() == 0 || next.event() == Event.HIGH_LEVEL || (high && in >= out);
        switch (next.event()) {
            case CONTAINER_FULL -> changeBegins(now_s + next.wait_s());
            case CONTAINER_CHANGED -> changing = false;
            case HIGH_LEVEL -> {
                receiver_kg = line.hopper_kg();
                tally.highLevel(changing);
            }
            case RECEIVER_EMPTY -> receiver_kg = 0;
            case FEED_CHANGES, PICKED_UP -> {
                if (container_kg >= (1 - SAME) * line.container_kg()) {
                    changeBegins(now_s + next.wait_s());
                }
            }
        }
        tally.came(came_kg, receiver_kg);
    }

    private void changeBegins(double at_s) {
        markAt(at_s, false);
        changing = true;
        changeLeft_s = line.change_s();
        tally.change(at_s, container_kg, high && line.hopper_kg() > 0);
        container_kg = 0;
    }

    private void mark(boolean collecting) {
        markAt(now_s, collecting);
    }

    private void markAt(double at_s, boolean collecting) {
        if (drawnUntil_s > 0 && at_s <= drawnUntil_s) {
            tally.mark(new Moment(at_s, receiver_kg, container_kg, collecting, changing));
        }
    }
}
