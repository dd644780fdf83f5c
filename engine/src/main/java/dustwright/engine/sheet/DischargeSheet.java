package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.bagging.BagFill;
import dustwright.engine.conveying.Dust;
import dustwright.engine.discharge.DustFlow;
import dustwright.engine.finding.Derivation;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.plant.Limit;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Shifts;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.Density;
import dustwright.engine.quantity.Mass;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.WorkingTime;
import dustwright.engine.rotaryvalve.RotaryValve;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The dust's way over the week: from the inlets through receiver and valve into containers, and the work that changes cost. */
final class DischargeSheet {
    private static final Source MASS_BALANCE = Source.published("mass balance");
    private static final String NO_CONTAINER =
            "No bulk bag or drum is described: what leaves the receiver goes elsewhere. Enter \"container\" of the station if it goes into one.";

    private static final String NO_VALVE =
            "No rotary valve is described. Enter \"rotary valve\" of the station, or leave \"valve capacity\" out.";

    private final Plant plant;
    private final Station station;
    private final StationDust load;
    private final Writing writing;

    private DischargeSheet(Plant plant, Station station, DustWays ways) {
        this.plant = plant;
        this.station = station;
        this.load = ways.to(station);
        this.writing = new Writing(station.id());
    }

    static Sheet of(Plant plant, Station station, DustWays ways, List<DustWeek> weeks) {
        return new DischargeSheet(plant, station, ways).sheet(DustWeek.at(station, weeks));
    }

    private Sheet sheet(Optional<DustWeek> week) {
        arrival();
        if (noContainer()) {
            plant.operation()
                    .asked()
                    .sockVelocity()
                    .ifPresent(limit -> writing.unjudged(
                            FindingCode.SOCK_VELOCITY, Place.Kind.CONTAINER, Side.AT_MOST, limit, NO_CONTAINER));
        }
        if (plant.stations().stream().allMatch(s -> s.rotaryValve().isEmpty())) {
            plant.requirements()
                    .receiver()
                    .valveCapacity()
                    .ifPresent(limit -> writing.unjudged(
                            FindingCode.VALVE_CAPACITY, Place.Kind.STATION, Side.AT_LEAST, limit, NO_VALVE));
        }
        Optional<Double> loose_kgPerM3 = load.loose_kgPerM3(plant);
        loose_kgPerM3.ifPresent(this::rates);
        Optional<Shifts> shifts = plant.operation().shifts();
        shifts.filter(s -> load.cleaning_s().isPresent()).ifPresent(s -> cleaning(s, week.map(DustWeek::flow)));
        shifts.filter(s -> !load.pickingUp().withoutFeed().isEmpty())
                .ifPresent(s -> writing.unjudged(
                        FindingCode.CLEANING_TIME,
                        Place.Kind.USAGE,
                        Side.AT_MOST,
                        new Limit<>(new WorkingTime(s.length().seconds()), Source.entered()),
                        load.whyNothing()));
        if (shifts.isPresent() && week.isPresent()) {
            new ChangeLines(plant, station.container().orElseThrow(), week.get(), writing).write();
        } else {
            writing.unknown("changes", "Changes a week", why(shifts));
            plant.operation()
                    .asked()
                    .containerLife()
                    .filter(limit -> station.container().isPresent() || noContainer())
                    .ifPresent(limit -> writing.unjudged(
                            FindingCode.CONTAINER_LIFE, Place.Kind.CONTAINER, Side.AT_LEAST, limit, why(shifts)));
        }
        return writing.sheet("discharge", "Dust over the week", Place.Kind.CONTAINER);
    }

    private boolean noContainer() {
        return plant.stations().stream().allMatch(s -> s.container().isEmpty());
    }

    private String why(Optional<Shifts> shifts) {
        if (station.container().isEmpty()) {
            return NO_CONTAINER;
        }
        if (shifts.isEmpty()) {
            return "Enter \"shifts\" of the usage: how many, and what is cleaned in each.";
        }
        if (!station.rotaryValve().stream().allMatch(RotaryValve::fillKnown)) {
            return RotaryValveSheet.TOO_FAST;
        }
        if (!load.pickingUp().withoutFeed().isEmpty()) {
            return load.whyNothing();
        }
        return load.rate_kgPerS() > 0 ? "Enter the \"bulk density\" of every dust that comes here." : load.whyNothing();
    }

    // ---- what arrives

    private void arrival() {
        if (load.rate_kgPerS() <= 0) {
            writing.unknown("rate", "Largest rate of dust", load.whyNothing());
            plant.requirements()
                    .loadingRatio()
                    .ifPresent(limit -> writing.unjudged(
                            FindingCode.LOADING_RATIO, Place.Kind.STATION, Side.AT_MOST, limit, load.whyNothing()));
            return;
        }
        MassFlow rate = new MassFlow(load.rate_kgPerS());
        List<Term> feeds = new ArrayList<>();
        load.rates()
                .forEach((dust, kgPerS) -> feeds.add(
                        new Term("ṁ_" + dust, "feed of " + plant.dust(dust).name(), new MassFlow(kgPerS))));
        Step sum = new Step(
                "DIS-1", "ṁ = Σ feed of the open inlets", feeds, new Term("ṁ", "largest rate", rate), MASS_BALANCE);
        writing.known("rate", "Largest rate of dust, " + load.set(), rate, List.of(sum));
        List<Dust> without = load.withoutDensity(plant);
        if (!without.isEmpty()) {
            String names = String.join(", ", without.stream().map(Dust::name).toList());
            writing.unknown(
                    "loose", "Loose bulk density of what comes", "Enter the \"bulk density\" of " + names + ".");
        }
    }

    private void rates(double loose_kgPerM3) {
        Density loose = new Density(loose_kgPerM3);
        List<Term> parts = new ArrayList<>();
        for (Map.Entry<String, Double> part : load.shiftMix().entrySet()) {
            Dust dust = plant.dust(part.getKey());
            if (part.getValue() > 0) {
                parts.add(new Term(
                        "x_" + dust.id(), "share of " + dust.name(), new Ratio(part.getValue() / load.mixed())));
                parts.add(new Term(
                        "ρ_" + dust.id(),
                        "its bulk density",
                        dust.looseBulkDensity().orElseThrow()));
            }
        }
        Step mix = new Step(
                "DIS-2",
                "1/ρ = Σ x_i/ρ_i",
                parts,
                new Term("ρ", "loose bulk density of what comes", loose),
                Source.ownReading("bulk volumes add"));
        writing.known(
                "loose",
                load.shiftMix().values().stream().filter(kg -> kg > 0).count() > 1
                        ? "Loose bulk density of what comes, one mix all week"
                        : "Loose bulk density of what comes",
                loose,
                List.of(mix));
        station.rotaryValve().ifPresent(valve -> {
            if (!valve.fillKnown()) {
                writing.unknown("valve", "The full valve discharges of the week's dust", RotaryValveSheet.TOO_FAST);
                return;
            }
            writing.tried(
                    "valve",
                    "The full valve discharges of the week's dust",
                    () -> List.of(
                            mix,
                            step(
                                    "RTV-1",
                                    "ṁ = V_rev n fill ρ_B",
                                    Source.published("geometry"),
                                    new Term(
                                            "ṁ",
                                            "discharge",
                                            new MassFlow(DustWeek.valve_kgPerS(valve, loose_kgPerM3))),
                                    new Term("V_rev", "volume of all pockets", valve.swept()),
                                    new Term("n", "speed of the rotor", valve.speed()),
                                    new Term("fill", "share of the pockets", new Ratio(valve.fill())),
                                    new Term("ρ_B", "loose bulk density", loose))));
        });
        station.container()
                .filter(container -> station.rotaryValve().stream().allMatch(RotaryValve::fillKnown))
                .ifPresent(container -> fillTime(mix, BaggingSheet.taken_kg(container, loose_kgPerM3), loose_kgPerM3));
    }

    /** No faster than the full valve discharges, whatever is fed. */
    private void fillTime(Step mix, double taken_kg, double loose_kgPerM3) {
        Mass taken = new Mass(taken_kg);
        double valve_kgPerS = station.rotaryValve()
                .map(valve -> DustWeek.valve_kgPerS(valve, loose_kgPerM3))
                .orElse(Double.MAX_VALUE);
        boolean valveLimits = valve_kgPerS < load.rate_kgPerS();
        MassFlow rate = new MassFlow(Math.min(valve_kgPerS, load.rate_kgPerS()));
        writing.tried(
                "fill-time",
                valveLimits
                        ? "Time to fill one as fast as the valve discharges"
                        : "Time to fill one at the largest rate",
                () -> List.of(
                        mix,
                        step(
                                "BAG-8",
                                "t = m / ṁ",
                                MASS_BALANCE,
                                new Term(
                                        "t",
                                        "vacuuming from change to change",
                                        new WorkingTime(
                                                BagFill.changeInterval_s(taken.kilograms(), rate.kgPerSecond()))),
                                new Term("m", "dust a container takes (BAG-4)", taken),
                                new Term("ṁ", valveLimits ? "full valve (RTV-1)" : "largest rate", rate))));
    }

    // ---- cleaning

    /** A stated mass takes longer than its rate says where users have to wait, and they go on until it is picked up. */
    private void cleaning(Shifts shifts, Optional<DustFlow> flow) {
        WorkingTime needed = new WorkingTime(load.cleaning_s().orElseThrow());
        if (shifts.cleaning() instanceof Shifts.Cleaning.Minutes) {
            writing.given("cleaning", "Cleaning in each shift", needed);
            return;
        }
        Mass picked = new Mass(load.mixed());
        Step byRate = step(
                "DIS-1",
                "t = m / ṁ",
                MASS_BALANCE,
                new Term("t", "cleaning in each shift, nobody waiting", needed),
                new Term("m", "picked up in each shift", picked),
                new Term("ṁ", "largest rate", new MassFlow(load.rate_kgPerS())));
        List<Step> cleaning =
                load.slowerThanItsRate() ? List.of(load.pickingUp().least().orElseThrow()) : List.of(byRate);
        writing.known("cleaning", "Cleaning in each shift, nobody waiting", needed, cleaning);
        WorkingTime shift = new WorkingTime(shifts.length().seconds());
        flow.ifPresentOrElse(
                f -> fits(needed, cleaning.get(0), f, shift), () -> fitsUnlessUsersWait(needed, cleaning, shift));
    }

    private void fits(WorkingTime needed, Step cleaning, DustFlow flow, WorkingTime shift) {
        WorkingTime longest = new WorkingTime(needed.seconds() + flow.longestWait_s());
        List<Step> steps = List.of(cleaning, longest(longest, needed, flow));
        cleaningWithWaits(longest, steps, flow);
        writing.asked(
                FindingCode.CLEANING_TIME,
                Place.Kind.USAGE,
                load.set(),
                Side.AT_MOST,
                longest,
                new Limit<>(shift, Source.entered()),
                steps);
    }

    /** How long users wait is not known: too long without waiting already is too long, and no more can be said. */
    private void fitsUnlessUsersWait(WorkingTime needed, List<Step> cleaning, WorkingTime shift) {
        Finding alone = Finding.of(
                FindingCode.CLEANING_TIME,
                new Place(Place.Kind.USAGE, station.id()),
                load.set(),
                Side.AT_MOST,
                needed,
                shift,
                new Derivation(cleaning, Source.entered()));
        writing.add(
                alone.fails()
                        ? alone
                        : Finding.unjudged(
                                alone.code(),
                                alone.where(),
                                alone.state(),
                                alone.side(),
                                shift,
                                Source.entered(),
                                "How long users wait is not known. "
                                        + why(plant.operation().shifts())));
    }

    private static Step longest(WorkingTime longest, WorkingTime needed, DustFlow flow) {
        return step(
                "DIS-9",
                "t_longest = t + t_wait",
                MASS_BALANCE,
                new Term("t_longest", "cleaning in the longest shift", longest),
                new Term("t", "cleaning in each shift, nobody waiting (DIS-1)", needed),
                new Term(
                        "t_wait",
                        "most that users wait in a shift, weeks gone through from event to event (DIS-3)",
                        new WorkingTime(flow.longestWait_s())));
    }

    private void cleaningWithWaits(WorkingTime longest, List<Step> steps, DustFlow flow) {
        writing.known("cleaning-longest", "Cleaning in the longest shift, with waiting", longest, steps);
        WorkingTime vacuuming = new WorkingTime(flow.vacuumed_s() / flow.weeks());
        WorkingTime waiting = new WorkingTime(flow.waited_s() / flow.weeks());
        WorkingTime week = new WorkingTime(vacuuming.seconds() + waiting.seconds());
        writing.known(
                "cleaning-week",
                "Cleaning in a week, with waiting",
                week,
                List.of(step(
                        "DIS-9",
                        "t = t_vac + t_wait",
                        MASS_BALANCE,
                        new Term("t", "cleaning in a week, mean of a year", week),
                        new Term("t_vac", "users vacuum (DIS-3)", vacuuming),
                        new Term("t_wait", "users wait (DIS-7)", waiting))));
    }
}
