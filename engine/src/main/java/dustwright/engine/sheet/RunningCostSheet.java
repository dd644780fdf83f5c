package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.cost.Energy;
import dustwright.engine.cost.LifeCycle;
import dustwright.engine.discharge.WorkWeek;
import dustwright.engine.finding.Outcome;
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
import dustwright.engine.quantity.ElectricalEnergy;
import dustwright.engine.quantity.FreeAirVolume;
import dustwright.engine.quantity.Frequency;
import dustwright.engine.quantity.Money;
import dustwright.engine.quantity.Price;
import dustwright.engine.quantity.Quantity;
import dustwright.engine.quantity.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a year of the plant costs at its shifts, and its whole life in present value. Only what has a price is counted. */
final class RunningCostSheet {
    private static final Source DEFINITION = Source.published("definition");
    private static final Source NIST = Source.published("NIST Handbook 135");
    private static final double YEAR_s = 52 * WorkWeek.WEEK_s;

    private final Plant plant;
    private final Costs costs;
    private final List<DutyPoint> duties;
    private final DustWays ways;
    private final List<DustWeek> weeks;
    private final Writing writing = new Writing("");
    private final List<Term> yearly = new ArrayList<>();
    private final List<LifeCycle.Yearly> overYears = new ArrayList<>();
    private final List<LifeCycle.Once> once = new ArrayList<>();
    private final List<String> unpriced = new ArrayList<>();

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
        Optional<ElectricalEnergy> energy = energy();
        energyCost(energy);
        airCost();
        changes();
        upkeep();
        year();
        lifeCycle();
        return writing.sheet("running-cost", "Running cost", Place.Kind.PLANT);
    }

    // ---- energy and air

    private Optional<ElectricalEnergy> energy() {
        double total_J = 0;
        for (Station station : plant.stations()) {
            Outcome<List<Step>> outcome = new StationEnergy(plant, station, ways, costs).ofYear(duties);
            String what = "energy-" + station.id();
            String name = "Energy of " + station.id() + ", a year";
            if (outcome instanceof Outcome.NotSolved<List<Step>> why) {
                writing.unknown(what, name, why.why());
                unpriced.add("energy");
                return Optional.empty();
            }
            List<Step> steps = ((Outcome.Solved<List<Step>>) outcome).value();
            Quantity energy = steps.get(steps.size() - 1).result().value();
            writing.known(what, name, energy, steps);
            total_J += energy.si();
        }
        return Optional.of(new ElectricalEnergy(total_J));
    }

    private void energyCost(Optional<ElectricalEnergy> energy) {
        if (energy.isEmpty()) {
            return;
        }
        if (costs.electricity().isEmpty()) {
            missing("energy-cost", "Energy, a year", "electricity");
            return;
        }
        Price price = costs.electricity().get();
        double cost = Energy.cost(energy.get().joules() / 3.6e6, price.si() * 3.6e6);
        amount(
                "energy-cost",
                "Energy, a year",
                new Money(cost, price.currency()),
                costs.growth().value(),
                step(
                        "CST-12",
                        "cost = E price",
                        DEFINITION,
                        new Term("cost", "energy, a year", new Money(cost, price.currency())),
                        new Term("E", "energy of all stations, a year", energy.get()),
                        new Term("price", "of energy", price)));
    }

    private void airCost() {
        if (costs.compressedAir().isEmpty()) {
            missing("air-cost", "Compressed air, a year", "compressed air");
            return;
        }
        if (shifts().isEmpty()) {
            return;
        }
        Price price = costs.compressedAir().get();
        double year_m3 = shifts().get().weeksPerYear()
                * plant.stations().stream()
                        .mapToDouble(s -> AirUseSheet.perWeek_m3(plant, s, duties, ways, weeks))
                        .sum();
        Money cost = new Money(year_m3 * price.si(), price.currency());
        amount(
                "air-cost",
                "Compressed air, a year",
                cost,
                costs.growth().value(),
                step(
                        "CST-12",
                        "cost = V price",
                        DEFINITION,
                        new Term("cost", "compressed air, a year", cost),
                        new Term("V", "free air of pulses and seals, a year", new FreeAirVolume(year_m3)),
                        new Term("price", "of compressed air", price)));
    }

    private Optional<Shifts> shifts() {
        return plant.operation().shifts();
    }

    // ---- containers and work

    private void changes() {
        double perYear = 0;
        double change_s = 0;
        for (Station station : plant.stations()) {
            Optional<DustWeek> week = DustWeek.at(station, weeks);
            if (week.isPresent()) {
                double changes =
                        week.get().flow().changesPerWeek() * week.get().flow().weeks();
                perYear += changes;
                change_s += changes * week.get().line().change_s();
            }
        }
        if (perYear <= 0) {
            return;
        }
        Frequency often = new Frequency(perYear / YEAR_s);
        containers(often, perYear);
        labour(often, perYear, change_s / perYear);
    }

    private void containers(Frequency often, double perYear) {
        if (costs.container().isEmpty()) {
            missing("container-cost", "Containers, a year", "container");
            return;
        }
        Money each = costs.container().get();
        Money cost = new Money(perYear * each.amount(), each.currency());
        amount(
                "container-cost",
                "Containers, a year",
                cost,
                0,
                step(
                        "CST-12",
                        "cost = N price",
                        DEFINITION,
                        new Term("cost", "containers, a year", cost),
                        new Term("N", "changes, spread over the year", often),
                        new Term("price", "of one container", each)));
    }

    private void labour(Frequency often, double perYear, double change_s) {
        if (costs.labour().isEmpty()) {
            missing("labour-cost", "Work of changes, a year", "labour");
            return;
        }
        Price rate = costs.labour().get();
        Money cost = new Money(LifeCycle.changeLabour(perYear, change_s, rate.si() * 3600), rate.currency());
        amount(
                "labour-cost",
                "Work of changes, a year",
                cost,
                0,
                step(
                        "CST-25",
                        "cost = N t rate",
                        DEFINITION,
                        new Term("cost", "work of changes, a year", cost),
                        new Term("N", "changes, spread over the year", often),
                        new Term("t", "time of a change", new Duration(change_s)),
                        new Term("rate", "of labour", rate)));
    }

    private void upkeep() {
        costs.upkeep().ifPresent(rate -> {
            Money cost = new Money(rate.si() * YEAR_s, rate.currency());
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
            once.add(new LifeCycle.Once(each, year));
        }
    }

    private void amount(String what, String name, Money cost, double growth, Step step) {
        writing.known(what, name, cost, List.of(step));
        count(step.result().meaning(), cost, growth);
    }

    private void count(String meaning, Money cost, double growth) {
        yearly.add(new Term("cost", meaning, cost));
        overYears.add(new LifeCycle.Yearly(cost.amount(), growth));
    }

    private void missing(String what, String name, String key) {
        writing.unknown(what, name, "Enter \"" + key + "\" of the costs.");
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
        costs.residual().ifPresent(residual -> once.add(new LifeCycle.Once(-residual.amount(), years)));
        Money cost = new Money(LifeCycle.cost(first.amount(), once, overYears, rate, years), first.currency());
        List<Term> inputs = new ArrayList<>();
        inputs.add(new Term("I", "first cost", first));
        inputs.addAll(yearly);
        costs.residual().ifPresent(residual -> inputs.add(new Term("R", "worth at the end", residual)));
        inputs.add(new Term("d", "discount rate a year", costs.interest().get()));
        inputs.add(new Term("e", "growth of energy prices a year", costs.growth()));
        inputs.add(new Term("n", "years", new Ratio(years)));
        writing.known(
                "life-cycle-cost",
                "Life-cycle cost, present value" + note(),
                cost,
                List.of(new Step(
                        "CST-23",
                        "LCC = I + Σ cost UPV*(d, e, n) + Σ filters (1 + d)^−year − R (1 + d)^−n",
                        inputs,
                        new Term("LCC", "life-cycle cost in present value", cost),
                        NIST)));
    }
}
