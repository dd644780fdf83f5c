package dustwright.engine.interlock;

import dustwright.engine.interlock.Sequence.Exit;
import dustwright.engine.interlock.Sequence.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Steps of a default sequence and the ways between them. */
final class DefaultSteps extends Fitted {
    /** A cloth that must be cleaned first needs air for it. */
    private static final String CLEANABLE = "not (filter_uncleaned and not air_good)";

    private final List<String> turning;
    /** What keeps the producer unloaded until START. */
    private final String hold;

    private final String holdOrHigh;
    /** What ends a run without a closing clean. */
    private final String lost;

    private final String noAir;
    private final String stopNow;
    /** What must be so before the vent shuts. */
    private final String ready;

    /** On while users can clean. */
    private final List<String> suction;

    /** On while the producer is to stay unloaded, besides what turns. */
    private final List<String> still;

    DefaultSteps(Options options) {
        super(options);
        boolean turns = turner.isPresent();
        turning = turns ? List.of("valve") : List.of();
        hold = turns ? "container_hold or soft_hold" : "soft_hold";
        holdOrHigh = turns ? hold + " or receiver_high" : hold;
        lost = turns ? "not air_enough" : "not air_enough or container_hold";
        noAir = lost + (has.twoProducers() ? " or not pump" : "");
        stopNow = "press_stop or " + lost;
        String open = has.shutOff() ? " and suction_open" : "";
        ready = (turns ? "vent_proved and motion and receiver_free" : "vent_proved") + open;
        List<String> pulling = new ArrayList<>(turning);
        pulling.add("vent_shut");
        if (has.drive()) {
            pulling.add("speed_up");
        }
        suction = List.copyOf(pulling);
        still = has.shutOff() ? List.of("suction_shut") : List.of();
    }

    private String orHigh(String when) {
        return turner.isPresent() ? "receiver_high or " + when : when;
    }

    List<Step> steps() {
        String resume = turner.isPresent()
                ? "waits and press_start and not container_hold and not soft_hold and " + CLEANABLE
                : "press_start and not soft_hold and " + CLEANABLE;
        List<String> keepRunning = join(pumps, turning);
        List<Step> steps = new ArrayList<>();
        steps.addAll(starting());
        steps.addAll(runUp());
        steps.addAll(vacuuming());
        if (has.purge()) {
            steps.add(purging());
        }
        steps.addAll(cleaning());
        steps.add(new Step(
                "holding",
                "vent open, producer unloaded",
                still,
                keepRunning,
                Optional.empty(),
                turner.isPresent()
                        ? exits(
                                "tripped",
                                "trip",
                                "run_on",
                                "press_stop or unloaded_out or " + noAir,
                                "warning",
                                resume,
                                "vacuuming",
                                "not waits and receiver_clear and motion and vent_proved"
                                        + (has.shutOff() ? " and suction_open" : ""))
                        : exits(
                                "tripped",
                                "trip",
                                "run_on",
                                "press_stop or unloaded_out or " + noAir,
                                "warning",
                                resume)));
        steps.add(
                turner.isPresent()
                        ? new Step(
                                "run_on",
                                "producer off, the " + turner() + (gates() ? " empty" : " empties") + " the receiver",
                                List.of(),
                                turning,
                                Optional.of("run_on"),
                                exits("tripped", "trip", "standing", "time_out and (not receiver_high or not valve)"))
                        : new Step(
                                "run_on",
                                "producer off, it coasts to a stand",
                                List.of(),
                                List.of(),
                                Optional.of("rest"),
                                exits("tripped", "trip", "standing", "time_out")));
        steps.add(new Step(
                "tripped",
                "a fault, until RESET",
                List.of(),
                keepRunning,
                Optional.empty(),
                exits("standing", "not trip")));
        return steps.stream().map(this::withLines).toList();
    }

    /** A producer that runs is open to the line, on which the vent stands; each line valve follows its producer. */
    private Step withLines(Step step) {
        if (!has.twoProducers()) {
            return step;
        }
        List<String> lines = pumps.stream()
                .filter(p -> step.on().contains(p) || step.keep().contains(p))
                .map(p -> "line_" + p.substring(5))
                .toList();
        return new Step(step.name(), step.words(), join(step.on(), lines), step.keep(), step.time(), step.exits());
    }

    /** From rest to the producer's start. */
    private List<Step> starting() {
        String breakOff = "press_stop or " + lost + " or unloaded_out or ((" + hold + ") and not pump)";
        List<Step> steps = new ArrayList<>();
        steps.add(new Step(
                "standing",
                "all off, vent open",
                turner.isPresent() ? List.of() : List.of("lid_free"),
                List.of(),
                Optional.empty(),
                exits(
                        "tripped",
                        "trip",
                        "warning",
                        "press_start and not container_hold and not soft_hold and air_enough and vent_proved and rested"
                                + " and not starts_used and " + CLEANABLE)));
        steps.add(new Step(
                "warning",
                "horn before anything turns",
                List.of("horn"),
                join(pumps, turning),
                Optional.of("horn"),
                exits(
                        "tripped",
                        "trip",
                        "run_on",
                        breakOff,
                        "holding",
                        hold,
                        turner.isPresent() ? "valve_proving" : "run_up",
                        "time_out")));
        turner.ifPresent(t -> steps.add(new Step(
                "valve_proving",
                "the " + t + (gates() ? " cycle and empty the receiver" : " turns and empties the receiver"),
                turning,
                pumps,
                Optional.empty(),
                exits(
                        "tripped",
                        "trip",
                        "run_on",
                        breakOff,
                        "holding",
                        hold,
                        "run_up",
                        "motion and not receiver_high and receiver_free"))));
        return steps;
    }

    private List<Step> runUp() {
        String stopOrNoPump = stopNow + " or ((" + holdOrHigh + ") and not pump)";
        List<Step> steps = new ArrayList<>();
        if (has.twoProducers()) {
            steps.add(new Step(
                    "run_up",
                    "the first producer starts unloaded",
                    join(List.of("pump_1"), turning),
                    List.of("pump_2"),
                    Optional.of("stagger"),
                    exits(
                            "tripped",
                            "trip",
                            "run_on",
                            stopNow + " or " + holdOrHigh,
                            "run_up_2",
                            "time_out and " + ready)));
            steps.add(new Step(
                    "run_up_2",
                    "the second producer starts unloaded",
                    join(List.of("pump_2"), turning),
                    List.of("pump_1"),
                    runUpTime(),
                    exits(
                            "tripped",
                            "trip",
                            "run_on",
                            stopOrNoPump,
                            "holding",
                            holdOrHigh + " or (filter_uncleaned and not air_good)",
                            "settling",
                            runUpDone() + " and filter_uncleaned and " + ready,
                            "vacuuming",
                            runUpDone() + " and " + ready)));
        } else {
            steps.add(new Step(
                    "run_up",
                    "the producer starts unloaded",
                    join(pumps, turning),
                    List.of(),
                    runUpTime(),
                    exits(
                            "tripped",
                            "trip",
                            "run_on",
                            stopNow,
                            "holding",
                            holdOrHigh + " or (filter_uncleaned and not air_good)",
                            "settling",
                            runUpDone() + " and filter_uncleaned and " + ready,
                            "vacuuming",
                            runUpDone() + " and " + ready)));
        }
        return steps;
    }

    private List<Step> vacuuming() {
        List<Step> steps = new ArrayList<>();
        steps.add(new Step(
                "vacuuming",
                "vent shut: users can clean",
                suction,
                pumps,
                Optional.empty(),
                withMore(
                        has.manualCleaning()
                                ? exits(
                                        "tripped",
                                        "trip",
                                        "run_on",
                                        has.purge()
                                                ? noAir + " or (press_stop and (" + holdOrHigh + "))"
                                                : "press_stop or " + noAir,
                                        "holding",
                                        holdOrHigh,
                                        "settling",
                                        "press_clean and air_good")
                                : exits(
                                        "tripped",
                                        "trip",
                                        "run_on",
                                        noAir + " or (press_stop and (" + holdOrHigh + " or not air_good))",
                                        "holding",
                                        holdOrHigh,
                                        "settling",
                                        has.purge()
                                                ? "cleaning_due and air_good and not press_stop"
                                                : "press_stop or (cleaning_due and air_good)"))));
        if (has.idle()) {
            steps.add(new Step(
                    "idle",
                    "vent open, producer unloaded: nobody vacuums",
                    join(turning, still),
                    pumps,
                    Optional.of("idle_limit"),
                    exits(
                            "tripped",
                            "trip",
                            "run_on",
                            "press_stop or time_out or " + noAir,
                            "holding",
                            holdOrHigh,
                            "vacuuming",
                            "inlet_used and " + ready)));
        }
        return steps;
    }

    /** Air through the far-end bleed sweeps the line before the stop; a second STOP, or anything that holds, ends it at once. */
    private Step purging() {
        String ended = has.manualCleaning() ? "press_stop or time_out" : "(press_stop or time_out) and not air_good";
        List<Exit> exits = new ArrayList<>(
                exits("tripped", "trip", "run_on", noAir + " or " + holdOrHigh + " or (" + ended + ")"));
        if (!has.manualCleaning()) {
            exits.addAll(exits("settling", "press_stop or time_out"));
        }
        return new Step(
                "purging",
                "far-end bleed open, vent shut: air sweeps the line",
                join(suction, List.of("bleed_open")),
                pumps,
                Optional.of("purge"),
                exits);
    }

    /** Filters are cleaned with the producer off load. */
    private List<Step> cleaning() {
        List<Step> steps = new ArrayList<>();
        String cleaningStop = noAir + " or (stopping and (" + hold + "))";
        steps.add(new Step(
                "settling",
                "vent open, air comes to rest",
                join(turning, still),
                pumps,
                Optional.of("settle"),
                exits(
                        "tripped",
                        "trip",
                        "run_on",
                        cleaningStop,
                        "holding",
                        hold,
                        "dust_fall",
                        orHigh("not air_good"),
                        "pulsing",
                        "time_out and vent_proved")));
        steps.add(new Step(
                "pulsing",
                "filters are pulsed off load",
                join(join(turning, still), List.of("pulses")),
                pumps,
                Optional.empty(),
                exits(
                        "tripped",
                        "trip",
                        "run_on",
                        cleaningStop,
                        "holding",
                        hold,
                        "dust_fall",
                        orHigh("not air_good or pulsed" + (has.shutOff() ? " or not vent_proved" : "")))));
        steps.add(new Step(
                "dust_fall",
                "dust falls to the " + turner.orElse(container),
                join(turning, still),
                pumps,
                Optional.of("dust_fall"),
                exits(
                        "tripped", "trip",
                        "run_on", noAir + " or (stopping and (" + hold + " or time_out))",
                        "holding",
                                hold + " or (time_out and "
                                        + (turner.isPresent()
                                                ? "(receiver_high or filter_uncleaned))"
                                                : "filter_uncleaned)"),
                        "vacuuming", "time_out and " + ready)));
        return steps;
    }

    private Optional<String> runUpTime() {
        return has.drive() ? Optional.empty() : Optional.of("run_up");
    }

    private String runUpDone() {
        return has.drive() ? "at_speed_now" : "time_out";
    }

    /** With a purge STOP leads there; with inlet switches, vacuuming nobody uses ends by itself. */
    private List<Exit> withMore(List<Exit> exits) {
        List<Exit> all = new ArrayList<>(exits);
        if (has.purge()) {
            all.addAll(exits("purging", "press_stop"));
        }
        if (has.idle()) {
            all.addAll(exits("idle", "nobody_there"));
        }
        return all;
    }

    private static List<Exit> exits(String... toWhen) {
        List<Exit> exits = new ArrayList<>();
        for (int i = 0; i < toWhen.length; i += 2) {
            exits.add(new Exit(toWhen[i], Expr.of(toWhen[i + 1])));
        }
        return exits;
    }
}
