package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.bagging.BulkBag;
import dustwright.engine.bagging.Container;
import dustwright.engine.discharge.Discharge;
import dustwright.engine.discharge.DischargeLine;
import dustwright.engine.discharge.DustFlow;
import dustwright.engine.discharge.WorkWeek;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.plant.Limit;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Shifts;
import dustwright.engine.quantity.Duration;
import dustwright.engine.quantity.Frequency;
import dustwright.engine.quantity.Mass;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.WorkingTime;
import dustwright.engine.receiver.HoldUp;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Changes of containers in an ordinary week, and the work they cost. */
final class ChangeLines {
    private static final Source MASS_BALANCE = Source.published("mass balance");
    private static final Source NOBODY_HELD = Source.ownReading(
            "a valve that takes what is fed, and a receiver that holds what a change brings, hold nobody");
    private static final Source EVENTS =
            Source.ownReading("mass balance from event to event; all clean together at the end of each shift");

    private final Plant plant;
    private final Container container;
    private final DustWeek dust;
    private final DustFlow flow;
    private final Writing writing;

    ChangeLines(Plant plant, Container container, DustWeek dust, Writing writing) {
        this.plant = plant;
        this.container = container;
        this.dust = dust;
        this.flow = dust.flow();
        this.writing = writing;
    }

    void write() {
        figure("dust-week", "Dust picked up in a week", new Mass(flow.collected_kg() / flow.weeks()), "mean of a year");
        writing.known("changes", "Changes a week", changes(), changeSteps());
        Overload.of(plant.station(dust.station()), dust).ifPresent(this::notOverloaded);
        life();
        changeTime();
        waiting();
        duringChange();
        standingBy();
        notInflated();
    }

    private void notOverloaded(Overload over) {
        List<Step> steps = new ArrayList<>(changeSteps());
        steps.addAll(over.steps());
        writing.known(
                "changes-to-load",
                "Changes a week were none filled above its safe working load; all else here is as it is filled",
                Overload.frequency(over.changesPerWeek()),
                steps);
    }

    private Frequency changes() {
        return new Frequency(dust.changesPerWeek() / WorkWeek.WEEK_s);
    }

    /** Of all dust that came in: a count of whole changes would hang on how full the last container stands at the end of the year. */
    private List<Step> changeSteps() {
        Mass all = new Mass(flow.collected_kg());
        return List.of(
                events(all, "dust that came in, all weeks"),
                step(
                        "DIS-6",
                        "N = m_in / (weeks m)",
                        MASS_BALANCE,
                        new Term("N", "changes a week, mean of the weeks worked", changes()),
                        new Term("m_in", "dust that came in, all weeks", all),
                        new Term("weeks", "gone through", new Ratio(flow.weeks())),
                        new Term(
                                "m",
                                "dust a container takes (BAG-4)",
                                new Mass(dust.line().container_kg()))));
    }

    private void changeTime() {
        WorkingTime time = new WorkingTime(dust.changesPerWeek() * dust.line().change_s());
        List<Step> steps = new ArrayList<>(changeSteps());
        steps.add(step(
                "DIS-6",
                "t = N t_c",
                MASS_BALANCE,
                new Term("t", "time to change, a week", time),
                new Term("N", "changes a week", changes()),
                new Term("t_c", "time of a change", new Duration(dust.line().change_s()))));
        writing.known("change-time", "Time to change, a week", time, steps);
    }

    /** A figure that comes out of the weeks gone through. */
    private Step events(Quantity value, String meaning) {
        DischargeLine line = dust.line();
        List<Term> inputs = new ArrayList<>();
        dust.week().stretches().stream()
                .findFirst()
                .ifPresent(s -> inputs.add(new Term("feed", "while users vacuum", new MassFlow(s.feed_kgPerS()))));
        inputs.add(new Term(
                "t_week",
                "for cleaning in a week, at most",
                new WorkingTime(dust.week().cleaning_s())));
        line.valve_kgPerS()
                .ifPresent(valve -> inputs.add(new Term("valve", "discharge of the full valve", new MassFlow(valve))));
        inputs.add(new Term("H", "dust the receiver holds to its high level", new Mass(line.hopper_kg())));
        inputs.add(new Term("m", "dust a container takes", new Mass(line.container_kg())));
        inputs.add(new Term("t_c", "time of a change", new Duration(line.change_s())));
        inputs.add(new Term("weeks", "gone through", new Ratio(flow.weeks())));
        counted(inputs);
        return new Step(
                "DIS-3",
                "dR/dt = in − out, dC/dt = out, followed from event to event: a count over the weeks, no single formula",
                inputs,
                new Term("result", meaning, value),
                EVENTS);
    }

    /** What was counted in the weeks gone through; any figure of a week is one of these over the weeks. */
    private void counted(List<Term> inputs) {
        inputs.add(
                new Term("n_change", "changes counted", new Ratio(flow.changes().size())));
        inputs.add(new Term("n_high", "times the receiver reached its high level", new Ratio(flow.highLevels())));
        inputs.add(new Term("t_vac", "users vacuumed", new WorkingTime(flow.vacuumed_s())));
        inputs.add(new Term("t_change", "waited for changes", new WorkingTime(flow.waitedForChange_s())));
        inputs.add(new Term("t_high", "waited for the receiver", new WorkingTime(flow.waitedForLevel_s())));
        inputs.add(new Term("m_asked", "dust there was to pick up", new Mass(flow.asked_kg())));
        inputs.add(new Term("m_in", "dust that came in", new Mass(flow.collected_kg())));
    }

    private void figure(String what, String name, Quantity value, String meaning) {
        writing.known(what, name, value, List.of(events(value, meaning)));
    }

    private void life() {
        if (dust.changesPerWeek() <= 0) {
            return;
        }
        Duration life = new Duration(WorkWeek.WEEK_s / dust.changesPerWeek());
        List<Step> steps = new ArrayList<>(changeSteps());
        steps.add(step(
                "DIS-6",
                "t = 1 / N",
                MASS_BALANCE,
                new Term("t", "mean time from change to change, weeks worked", life),
                new Term("N", "changes", changes())));
        writing.known("life", "Calendar time from change to change, weeks worked", life, steps);
        worked();
        plant.operation().asked().containerLife().ifPresent(limit -> asked(life, limit, steps));
    }

    /** Nights and days off left out. */
    private void worked() {
        Shifts shifts = plant.operation().shifts().orElseThrow();
        WorkingTime worked = new WorkingTime(shifts.perWeek() * shifts.length().seconds());
        WorkingTime between = new WorkingTime(worked.seconds() / dust.changesPerWeek());
        List<Step> steps = new ArrayList<>(changeSteps());
        steps.add(step(
                "DIS-6",
                "t = t_shifts / N",
                MASS_BALANCE,
                new Term("t", "shift time from change to change", between),
                new Term("t_shifts", "shifts of a week, one after another", worked),
                new Term("N", "changes a week", new Ratio(dust.changesPerWeek()))));
        writing.known("life-worked", "Shift time from change to change, nights and days off left out", between, steps);
    }

    /** What an inflated bag does not reach, one that fills short does not either; that it lasts is known of the inflated one only. */
    private void asked(Duration life, Limit<Duration> limit, List<Step> steps) {
        boolean mayFillShort =
                container.bag().filter(BulkBag::fillsByUnknownShare).isPresent();
        if (mayFillShort && life.compareTo(limit.value()) >= 0) {
            writing.unjudged(
                    FindingCode.CONTAINER_LIFE,
                    Place.Kind.CONTAINER,
                    dust.set(),
                    Side.AT_LEAST,
                    limit,
                    "A bag that is not inflated fills short, by how much is not stated: enter \"fill without inflation\", or"
                            + " \"inflation\" of its stand.");
            return;
        }
        writing.asked(FindingCode.CONTAINER_LIFE, Place.Kind.CONTAINER, dust.set(), Side.AT_LEAST, life, limit, steps);
    }

    // ---- waiting

    private void waiting() {
        figure(
                "waited-change",
                "Vacuuming lost to changes, a week",
                new WorkingTime(flow.waitedForChange_s() / flow.weeks()),
                "users wait while a container is changed");
        WorkingTime high = new WorkingTime(flow.waitedForLevel_s() / flow.weeks());
        String meaning = "users wait while the receiver stands at its high level";
        figure("waited-level", "Vacuuming lost to a high receiver, a week", high, meaning);
        if (high.seconds() > 0) {
            writing.asked(
                    FindingCode.HELD_AT_LEVEL,
                    Place.Kind.RECEIVER,
                    dust.set(),
                    Side.AT_MOST,
                    high,
                    new Limit<>(new WorkingTime(0), NOBODY_HELD),
                    List.of(events(high, meaning)));
        }
        int users = Math.max(1, plant.usage().simultaneousUsers());
        WorkingTime work = new WorkingTime(users * flow.waited_s() / flow.weeks());
        writing.known(
                "work-lost",
                "Work lost by all users, a week",
                work,
                List.of(
                        events(new WorkingTime(flow.waited_s() / flow.weeks()), "time users wait in a week"),
                        step(
                                "DIS-7",
                                "t_work = users · t",
                                MASS_BALANCE,
                                new Term("t_work", "work lost", work),
                                new Term("users", "who vacuum at once", new Ratio(users)),
                                new Term("t", "time they wait", new WorkingTime(flow.waited_s() / flow.weeks())))));
        Mass left = new Mass(dust.leaves() ? (flow.asked_kg() - flow.collected_kg()) / flow.weeks() : 0);
        writing.known(
                "left",
                plant.operation().shifts().orElseThrow().cleaning() instanceof Shifts.Cleaning.PickedUp
                        ? "Left on the floor of what is stated as picked up, a week; no cost counts it"
                        : "Dust left on the floor, a week",
                left,
                List.of(
                        events(new Mass(flow.collected_kg()), "dust that came in, all weeks"),
                        step(
                                "DIS-8",
                                "m = (m_asked − m_in) / weeks",
                                MASS_BALANCE,
                                new Term("m", "what the waiting time would have brought", left),
                                new Term("m_asked", "dust there was to pick up", new Mass(flow.asked_kg())),
                                new Term("m_in", "dust that came in", new Mass(flow.collected_kg())),
                                new Term("weeks", "gone through", new Ratio(flow.weeks())))));
    }

    // ---- the receiver during a change

    private void duringChange() {
        if (dust.line().valve_kgPerS().isEmpty()) {
            writing.words(
                    "during-change",
                    "During a change",
                    "users wait: the dust falls straight into the container, which stands under vacuum",
                    List.of(),
                    EVENTS);
            return;
        }
        if (dust.holdUp().isEmpty()) {
            writing.unknown(
                    "during-change",
                    "Receiver during a change",
                    "How much it holds is not known, so users wait while a container is changed. Enter the receiver's"
                            + " hopper and the height of its level probe.");
            return;
        }
        double rate_kgPerS = dust.largest().kgPerSecond();
        if (rate_kgPerS <= 0 || dust.line().hopper_kg() <= 0) {
            return;
        }
        Duration time = new Duration(HoldUp.timeToHighLevel_s(
                dust.holdUp().get().cubicMetres(), dust.loose().kgPerCubicMetre(), rate_kgPerS));
        List<Step> steps = List.of(step(
                "RCV-9",
                "t = V ρ_B / ṁ",
                MASS_BALANCE,
                new Term("t", "until the receiver is at its high level", time),
                new Term("V", "volume up to the highest level", dust.holdUp().get()),
                new Term("ρ_B", "loose bulk density", dust.loose()),
                new Term("ṁ", "largest rate", new MassFlow(rate_kgPerS))));
        writing.known("time-to-high", "If users went on in a change, high level after", time, steps);
        if (container.changing().vacuumingGoesOn()) {
            goesOn(time, steps);
        } else {
            goingOn();
        }
    }

    private void goesOn(Duration time, List<Step> steps) {
        Limit<Duration> limit = new Limit<>(container.changing().time(), Source.entered());
        if (plant.station(dust.station()).receiver().knownAbove() || time.compareTo(limit.value()) < 0) {
            writing.asked(
                    FindingCode.RECEIVER_DURING_CHANGE,
                    Place.Kind.RECEIVER,
                    dust.set(),
                    Side.AT_LEAST,
                    time,
                    limit,
                    steps);
        } else {
            writing.unjudged(
                    FindingCode.RECEIVER_DURING_CHANGE,
                    Place.Kind.RECEIVER,
                    dust.set(),
                    Side.AT_LEAST,
                    limit,
                    ReceiverSheet.ABOVE);
        }
    }

    /** What it would save to go on while a container is changed. */
    private void goingOn() {
        DustFlow other = Discharge.over(dust.line().withVacuumingGoingOn(true), dust.week(), flow.weeks(), 0);
        WorkingTime saved = new WorkingTime((flow.waited_s() - other.waited_s()) / flow.weeks());
        writing.known(
                "going-on-saves",
                "Going on in a change would save, a week",
                saved,
                List.of(
                        events(new WorkingTime(flow.waited_s() / flow.weeks()), "waiting when vacuuming stops"),
                        events(new WorkingTime(other.waited_s() / flow.weeks()), "waiting when it goes on"),
                        step("DIS-7", "t = t_stops − t_goes", MASS_BALANCE, new Term("t", "vacuuming saved", saved))));
    }

    private void standingBy() {
        Optional<Integer> count = container.changing().standingBy();
        if (count.isEmpty() || dust.changesPerWeek() <= 0) {
            return;
        }
        if (count.get() == 0) {
            writing.words(
                    "standing-by",
                    "Containers standing by",
                    "none: every change waits until one is brought, longer than the stated time of a change",
                    List.of(),
                    Source.entered());
            return;
        }
        Duration lasts = new Duration(count.get() * WorkWeek.WEEK_s / dust.changesPerWeek());
        List<Step> steps = new ArrayList<>(changeSteps());
        steps.add(step(
                "DIS-6",
                "t = n / N",
                MASS_BALANCE,
                new Term("t", "until the last one is in use", lasts),
                new Term("n", "standing by", new Ratio(count.get())),
                new Term("N", "changes", changes())));
        writing.known("standing-by", "Containers standing by last", lasts, steps);
    }

    // ---- without inflation

    private void notInflated() {
        FillsShort.of(container, dust).ifPresent(fills -> {
            List<Step> steps = new ArrayList<>();
            steps.add(events(fills.week(), "dust picked up in a week, mean of a year"));
            steps.addAll(fills.steps());
            writing.known("short-costs", fills.name() + ", bags a week", fills.more(), steps);
        });
    }
}
