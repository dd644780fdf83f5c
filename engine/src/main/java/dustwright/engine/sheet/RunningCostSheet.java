package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.cost.Energy;
import dustwright.engine.cost.LifeCycle;
import dustwright.engine.discharge.WorkWeek;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.plant.Costs;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Shifts;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.Duration;
import dustwright.engine.quantity.FreeAirVolume;
import dustwright.engine.quantity.Money;
import dustwright.engine.quantity.Price;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a year of the plant costs at its shifts, and its whole life in present value. Only what has a price is counted. */
final class RunningCostSheet {
    private static final Source DEFINITION = Source.published("definition");
    private static final String ENERGY_COST = "Energy, a year";

    private final Plant plant;
    private final Costs costs;
    private final List<DutyPoint> duties;
    private final DustWays ways;
    private final List<DustWeek> weeks;
    private final Writing writing = new Writing("");
    private final List<Term> yearly = new ArrayList<>();
    private final List<Growing> overYears = new ArrayList<>();
    private final List<Payment> once = new ArrayList<>();
    private final List<String> unpriced = new ArrayList<>();

    /** Changes a year of a station, as they stand in the sum of all. */
    private record Changed(Station station, Term number) {}

    private record Priced(Changed changed, Money price) {}

    /** A yearly cost at today's price and how that price grows. */
    private record Growing(Term cost, double growth) {}

    private RunningCostSheet(Plant plant, Costs costs, List<DutyPoint> duties, DustWays ways, List<DustWeek> weeks) {
        this.plant = plant;
        this.costs = costs;
        this.duties = duties;
        this.ways = ways;
        this.weeks = weeks;
    }

    static Optional<Sheet> of(Plant plant, List<DutyPoint> duties, DustWays ways, List<DustWeek> weeks) {
        return plant.operation()
                .costs()
                .filter(costs -> !plant.stations().isEmpty())
                .map(costs -> new RunningCostSheet(plant, costs, duties, ways, weeks).sheet());
    }

    private Sheet sheet() {
        Optional<Step> energy = energy();
        energyCost(energy);
        airCost();
        changes();
        upkeep();
        year();
        lifeCycle();
        leftOut();
        return writing.sheet("running-cost", "Running cost", Place.Kind.PLANT);
    }

    // ---- energy and air

    /** Of all parts, or nothing: a sum without one of them would be no year's energy. */
    private Optional<Step> energy() {
        List<YearlyEnergy.Part> parts = YearlyEnergy.parts(plant, costs, duties, ways, weeks);
        List<Term> known = new ArrayList<>();
        List<String> open = new ArrayList<>();
        for (YearlyEnergy.Part part : parts) {
            part.steps()
                    .match(
                            steps -> {
                                Term term = part.term().orElseThrow();
                                writing.known(part.id(), part.name(), term.value(), steps);
                                return known.add(term);
                            },
                            why -> {
                                writing.unknown(part.id(), part.name(), why);
                                return open.add(part.name());
                            });
        }
        if (!open.isEmpty()) {
            notCounted("energy-cost", ENERGY_COST, "Not known without: " + String.join("; ", open) + ".");
            return Optional.empty();
        }
        return Optional.of(new Step(
                "CST-11",
                "E = Σ E",
                known,
                new Term("E", "energy of all producers, fans and rotary valves, a year", YearlyEnergy.sum(known)),
                DEFINITION));
    }

    private void energyCost(Optional<Step> energy) {
        if (energy.isEmpty()) {
            return;
        }
        if (costs.electricity().isEmpty()) {
            missing("energy-cost", ENERGY_COST, "electricity");
            return;
        }
        Price price = costs.electricity().get();
        double cost = Energy.cost(energy.get().result().value().si() / 3.6e6, price.si() * 3.6e6);
        amount(
                "energy-cost",
                ENERGY_COST,
                new Money(cost, price.currency()),
                costs.growth().value(),
                energy.get(),
                step(
                        "CST-12",
                        "cost = E price",
                        DEFINITION,
                        new Term("cost", "energy, a year", new Money(cost, price.currency())),
                        energy.get().result(),
                        new Term("price", "of energy", price)));
    }

    private void airCost() {
        if (costs.compressedAir().isEmpty()) {
            missing("air-cost", "Compressed air, a year", "compressed air");
            return;
        }
        if (shifts().isEmpty()) {
            missing("air-cost", "Compressed air, a year", "shifts", "the usage");
            return;
        }
        Price price = costs.compressedAir().get();
        int weeksPerYear = shifts().get().weeksPerYear();
        List<Term> perWeek = new ArrayList<>();
        List<String> open = new ArrayList<>();
        for (Station station : plant.stations()) {
            AirUseSheet.OfWeek air = AirUseSheet.ofWeek(plant, station, duties, ways, weeks);
            perWeek.add(new Term(
                    "V(" + station.id() + ")",
                    "free air of pulses, seals and bags in a week",
                    new FreeAirVolume(air.known_m3())));
            air.open().forEach(part -> open.add(part + ", " + station.id()));
        }
        if (!open.isEmpty()) {
            notCounted(
                    "air-cost",
                    "Compressed air, a year",
                    "Not known without: " + String.join("; ", open)
                            + ". The sheet of compressed air says what to enter.");
            return;
        }
        double year_m3 =
                weeksPerYear * perWeek.stream().mapToDouble(t -> t.value().si()).sum();
        List<Term> inputs = new ArrayList<>(perWeek);
        inputs.add(new Term("n", "weeks worked in a year", new Ratio(weeksPerYear)));
        Step volume = new Step(
                "CST-16",
                "V = n Σ V",
                inputs,
                new Term("V", "free air of pulses, seals and bags, a year", new FreeAirVolume(year_m3)),
                DEFINITION);
        Money cost = new Money(year_m3 * price.si(), price.currency());
        amount(
                "air-cost",
                "Compressed air, a year",
                cost,
                costs.growth().value(),
                volume,
                step(
                        "CST-12",
                        "cost = V price",
                        DEFINITION,
                        new Term("cost", "compressed air, a year", cost),
                        volume.result(),
                        new Term("price", "of compressed air", price)));
    }

    private Optional<Shifts> shifts() {
        return plant.operation().shifts();
    }

    // ---- containers and work

    private void changes() {
        List<String> unknown = plant.stations().stream()
                .filter(s -> s.container().isPresent() && DustWeek.at(s, weeks).isEmpty())
                .map(Station::id)
                .toList();
        if (!unknown.isEmpty()) {
            String why = "How many containers " + String.join(", ", unknown)
                    + " fills in a week is not known: its sheet of the week's dust says what to enter.";
            notCounted("container-cost", "Containers, a year", why);
            notCounted("labour-cost", "Work of changes, a year", why);
            return;
        }
        List<Changed> perStation = new ArrayList<>();
        double change_s = 0;
        for (Station station : plant.stations()) {
            Optional<DustWeek> week = DustWeek.at(station, weeks);
            if (week.isPresent()) {
                double changes = week.get().changesPerWeek() * week.get().flow().weeks();
                perStation.add(new Changed(
                        station,
                        new Term(
                                "N(" + station.id() + ")",
                                "changes a year, those of a week (DIS-6) times "
                                        + week.get().flow().weeks() + " weeks",
                                new Ratio(changes))));
                change_s += changes * week.get().line().change_s();
            }
        }
        double perYear = perStation.stream()
                .mapToDouble(changed -> changed.number().value().si())
                .sum();
        if (perYear <= 0) {
            return;
        }
        Step all = new Step(
                "DIS-6",
                "N = Σ N",
                perStation.stream().map(Changed::number).toList(),
                new Term("N", "changes a year", new Ratio(perYear)),
                DEFINITION);
        containers(all, perStation);
        labour(all, change_s / perYear);
        plant.stations().forEach(this::notInflated);
        plant.stations().forEach(this::overloaded);
    }

    /** Fuller than its safe working load a container makes changes seem rare: what they cost when none is; said beside the sums. */
    private void overloaded(Station station) {
        Optional<Overload> over = DustWeek.at(station, weeks).flatMap(week -> Overload.of(station, week));
        if (over.isEmpty()) {
            return;
        }
        String id = "overload-cost-" + station.id();
        String name = "More for containers and changes of " + station.id()
                + " were none filled above its safe working load, a year, not in the sums";
        Optional<Money> price = each(station);
        if (price.isEmpty() || costs.labour().isEmpty()) {
            writing.unknown(id, name, "Enter \"container\" and \"labour\" of the costs.");
            return;
        }
        DustWeek week = DustWeek.at(station, weeks).orElseThrow();
        Money each = price.get();
        Price rate = costs.labour().get();
        Duration change = new Duration(week.line().change_s());
        int weeksPerYear = week.flow().weeks();
        Ratio more = new Ratio((over.get().changesPerWeek() - week.changesPerWeek()) * weeksPerYear);
        Money cost = new Money(
                more.value() * each.amount() + LifeCycle.changeLabour(more.value(), change.seconds(), rate.si() * 3600),
                each.currency());
        List<Step> steps = new ArrayList<>(over.get().steps());
        steps.add(step(
                "DIS-6",
                "N_more = (N_SWL − N) weeks",
                DEFINITION,
                new Term("N_more", "changes more in a year", more),
                steps.get(0).result(),
                new Term("N", "changes as it is filled", Overload.frequency(week.changesPerWeek())),
                new Term("weeks", "of a year", new Ratio(weeksPerYear))));
        steps.add(step(
                "CST-27",
                "cost = N_more (price + t rate)",
                DEFINITION,
                new Term("cost", "containers and changes more, a year", cost),
                new Term("N_more", "changes more in a year", more),
                new Term("price", "of one container", each),
                new Term("t", "time of a change", change),
                new Term("rate", "of labour", rate)));
        writing.known(id, name, cost, steps);
    }

    /** Bags and their changes for not inflating; said beside the sums and in none of them. */
    private void notInflated(Station station) {
        Optional<DustWeek> week = DustWeek.at(station, weeks);
        Optional<FillsShort> fills =
                week.flatMap(w -> FillsShort.of(station.container().orElseThrow(), w));
        Optional<Money> price = each(station);
        if (fills.isEmpty() || price.isEmpty() || costs.labour().isEmpty()) {
            return;
        }
        Money each = price.get();
        Price rate = costs.labour().get();
        Duration change = new Duration(week.get().line().change_s());
        Ratio bags = new Ratio(fills.get().more().perSecond()
                * WorkWeek.WEEK_s
                * week.get().flow().weeks());
        Money cost = new Money(
                bags.value() * each.amount() + LifeCycle.changeLabour(bags.value(), change.seconds(), rate.si() * 3600),
                each.currency());
        List<Step> steps = new ArrayList<>(fills.get().steps());
        steps.add(step(
                "CST-27",
                "cost = N (price + t rate)",
                DEFINITION,
                new Term("cost", "bags and changes for not inflating, a year", cost),
                new Term("N", "bags more in a year of " + week.get().flow().weeks() + " weeks (BAG-20)", bags),
                new Term("price", "of one container", each),
                new Term("t", "time of a change", change),
                new Term("rate", "of labour", rate)));
        writing.known(
                "short-cost-" + station.id(),
                fills.get().name() + ", a year" + (fills.get().inflated() ? "" : ", in the sums already"),
                cost,
                steps);
    }

    /** Price of one container of a station. */
    private Optional<Money> each(Station station) {
        return station.container().flatMap(container -> costs.each(container.kind()));
    }

    private void containers(Step changes, List<Changed> perStation) {
        List<Priced> priced = perStation.stream()
                .flatMap(changed -> each(changed.station()).map(price -> new Priced(changed, price)).stream())
                .toList();
        if (priced.size() < perStation.size()) {
            missing("container-cost", "Containers, a year", "container");
            return;
        }
        Money cost = new Money(
                priced.stream()
                        .mapToDouble(p ->
                                p.changed().number().value().si() * p.price().amount())
                        .sum(),
                priced.get(0).price().currency());
        Term sum = new Term("cost", "containers, a year", cost);
        amount("container-cost", "Containers, a year", cost, 0, changes, sum(sum, changes, priced));
    }

    private static Step sum(Term sum, Step changes, List<Priced> priced) {
        Money first = priced.get(0).price();
        if (priced.stream().allMatch(p -> p.price().equals(first))) {
            return step(
                    "CST-12",
                    "cost = N price",
                    DEFINITION,
                    sum,
                    changes.result(),
                    new Term("price", "of one container", first));
        }
        List<Term> inputs = new ArrayList<>();
        for (Priced p : priced) {
            Station station = p.changed().station();
            inputs.add(p.changed().number());
            inputs.add(new Term(
                    "price(" + station.id() + ")",
                    "of one " + station.container().orElseThrow().kind().words(),
                    p.price()));
        }
        return new Step("CST-12", "cost = Σ N price", inputs, sum, DEFINITION);
    }

    private void labour(Step changes, double change_s) {
        if (costs.labour().isEmpty()) {
            missing("labour-cost", "Work of changes, a year", "labour");
            return;
        }
        Price rate = costs.labour().get();
        Money cost = new Money(
                LifeCycle.changeLabour(changes.result().value().si(), change_s, rate.si() * 3600), rate.currency());
        amount(
                "labour-cost",
                "Work of changes, a year",
                cost,
                0,
                changes,
                step(
                        "CST-25",
                        "cost = N t rate",
                        DEFINITION,
                        new Term("cost", "work of changes, a year", cost),
                        changes.result(),
                        new Term("t", "time of a change", new Duration(change_s)),
                        new Term("rate", "of labour", rate)));
    }

    private void upkeep() {
        costs.upkeep().ifPresent(rate -> {
            Money cost = new Money(rate.si() * Units.YEAR_s, rate.currency());
            writing.known("upkeep-cost", "Other upkeep, a year", cost, List.of());
            count("other upkeep", cost, 0);
        });
        if (costs.filterSet().isPresent() && costs.filterYears().isPresent()) {
            Money set = costs.filterSet().get();
            filters(set, costs.filterYears().get());
        } else {
            missing("filter-cost", "Filter elements, mean of a year", "filter set\" and \"filter years");
        }
    }

    /** Paid each time a set is worn out; a year's share stands in the running cost. */
    private void filters(Money set, int lasts) {
        double each = set.amount() * plant.stations().size();
        Money cost = new Money(each / lasts, set.currency());
        Step step = step(
                "CST-12",
                "cost = n price / years",
                DEFINITION,
                new Term("cost", "filter elements, mean of a year", cost),
                new Term("n", "stations", new Ratio(plant.stations().size())),
                new Term("price", "of a set, fitted", set),
                new Term("years", "a set lasts", new Ratio(lasts)));
        writing.known("filter-cost", "Filter elements, mean of a year", cost, List.of(step));
        yearly.add(step.result());
        for (int year = lasts; year < costs.years().orElse(0); year += lasts) {
            once.add(new Payment("filter elements in year " + year, each, year));
        }
    }

    private void amount(String what, String name, Money cost, double growth, Step... steps) {
        writing.known(what, name, cost, List.of(steps));
        count(steps[steps.length - 1].result().meaning(), cost, growth);
    }

    private void count(String meaning, Money cost, double growth) {
        Term term = new Term("cost", meaning, cost);
        yearly.add(term);
        overYears.add(new Growing(term, growth));
    }

    private void missing(String what, String name, String key) {
        missing(what, name, key, "the costs");
    }

    private void missing(String what, String name, String key, String of) {
        notCounted(what, name, "Enter \"" + key + "\" of " + of + ".");
    }

    private void notCounted(String what, String name, String why) {
        writing.unknown(what, name, why);
        unpriced.add(name);
    }

    // ---- the year and the life

    private String note() {
        return unpriced.isEmpty() ? "" : " of what has a price";
    }

    private void year() {
        if (yearly.isEmpty()) {
            return;
        }
        Money first = (Money) yearly.get(0).value();
        Money sum = new Money(yearly.stream().mapToDouble(t -> t.value().si()).sum(), first.currency());
        writing.known(
                "year-cost",
                "Running cost, a year" + note(),
                sum,
                List.of(new Step(
                        "CST-12",
                        "cost = Σ cost",
                        yearly,
                        new Term("cost", "a year at today's prices", sum),
                        DEFINITION)));
    }

    private void lifeCycle() {
        if (costs.investment().isEmpty()
                || costs.interest().isEmpty()
                || costs.years().isEmpty()) {
            writing.unknown(
                    "life-cycle-cost",
                    "Life-cycle cost",
                    "Enter \"investment\", \"interest\" and \"years\" of the costs.");
            return;
        }
        Money first = costs.investment().get();
        double rate = costs.interest().get().value();
        int years = costs.years().get();
        costs.residual().ifPresent(residual -> once.add(new Payment("worth at the end", -residual.amount(), years)));
        PresentValue value = new PresentValue(rate, years, first);
        overYears.forEach(part -> value.yearly(part.cost(), part.growth()));
        once.forEach(value::once);
        writing.known("life-cycle-cost", "Life-cycle cost, present value" + note(), value.total(), value.steps());
    }

    /** What has no price here is named, so that nobody takes the sum for the whole. */
    private void leftOut() {
        List<String> names = new ArrayList<>(unpriced);
        List<String> waiting = plant.stations().stream()
                .filter(station -> StationEnergy.waitingLeftOut(plant, station, weeks))
                .map(Station::id)
                .toList();
        if (!unpriced.contains(ENERGY_COST) && !waiting.isEmpty()) {
            names.add("energy while users of " + String.join(", ", waiting) + " wait, which is not known");
        }
        if (weeks.stream().anyMatch(week -> week.flow().waited_s() > 0)) {
            names.add("work lost while users wait");
        }
        if (weeks.stream().anyMatch(DustWeek::leaves)) {
            names.add("picking up what the wait leaves on the floor");
        }
        if (!names.isEmpty()) {
            writing.words("left-out", "Not in these sums", String.join("; ", names), List.of(), DEFINITION);
        }
    }
}
