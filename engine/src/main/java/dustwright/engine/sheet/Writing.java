package dustwright.engine.sheet;

import dustwright.engine.finding.Derivation;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.plant.Limit;
import dustwright.engine.quantity.Count;
import dustwright.engine.quantity.OutOfRangeException;
import dustwright.engine.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/** A sheet of one station's equipment, or of the plant, while it is being written. */
final class Writing {
    private final String station;
    private final List<Entry> entries = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    Writing(String station) {
        this.station = station;
    }

    /** The finished sheet. */
    Sheet sheet(String what, String title, Place.Kind about) {
        return new Sheet(id(what), title, new Place(about, station), entries, findings);
    }

    void given(String what, String name, Quantity value) {
        given(what, name, value, Source.entered());
    }

    void given(String what, String name, Quantity value, Source source) {
        entries.add(Entry.given(id(what), name, value, source));
    }

    void known(String what, String name, Quantity value, List<Step> steps) {
        entries.add(Entry.known(id(what), name, value, steps));
    }

    void least(String what, String name, Quantity value, List<Step> steps) {
        entries.add(Entry.least(id(what), name, value, steps));
    }

    void words(String what, String name, String text, List<Step> steps, Source source) {
        entries.add(Entry.words(id(what), name, text, steps, source));
    }

    void unknown(String what, String name, String why) {
        entries.add(Entry.unknown(id(what), name, why));
    }

    /**
     * A figure by formulas that may refuse what lies outside their range: then it is not known, and the entry says which range.
     *
     * @param steps the last one's result is the figure
     */
    Optional<Quantity> tried(String what, String name, Supplier<List<Step>> steps) {
        try {
            List<Step> done = steps.get();
            Quantity value = done.get(done.size() - 1).result().value();
            known(what, name, value, done);
            return Optional.of(value);
        } catch (OutOfRangeException outside) {
            unknown(what, name, "Outside its formula: " + outside.getMessage() + ".");
            return Optional.empty();
        }
    }

    /** A requirement whose value is that of an entry, and so is its derivation. */
    void asked(
            FindingCode code,
            Place.Kind part,
            String state,
            Side side,
            Quantity value,
            Limit<? extends Quantity> limit) {
        asked(code, part, state, side, value, limit, stepsTo(value));
    }

    /** A requirement with its own steps. */
    void asked(
            FindingCode code,
            Place.Kind part,
            String state,
            Side side,
            Quantity value,
            Limit<? extends Quantity> limit,
            List<Step> steps) {
        findings.add(Finding.of(
                code,
                new Place(part, station),
                state,
                side,
                value,
                limit.value(),
                new Derivation(steps, limit.source())));
    }

    /** A limit that is asked and whose figure is not known in any set. */
    void unjudged(FindingCode code, Place.Kind part, Side side, Limit<? extends Quantity> limit, String why) {
        unjudged(code, part, Sheet.ANY_SET, side, limit, why);
    }

    /** A limit that is asked and whose figure is not known in the set that governs. */
    void unjudged(
            FindingCode code, Place.Kind part, String state, Side side, Limit<? extends Quantity> limit, String why) {
        findings.add(Finding.unjudged(code, new Place(part, station), state, side, limit.value(), limit.source(), why));
    }

    /** A conflict that is looked for and about which nobody can say: why, and what to enter. */
    void notSaid(FindingCode code, Place.Kind part, Source source, String why) {
        notSaid(code, new Place(part, station), source, why);
    }

    /** The same about another place than the sheet's own. */
    void notSaid(FindingCode code, Place place, Source source, String why) {
        findings.add(Finding.unjudged(code, place, Sheet.ANY_SET, Side.AT_MOST, new Count(0), source, why));
    }

    /** What holds by figures that do not hold here is not known: why, and what to do. */
    void unsettled(Set<FindingCode> codes, String why) {
        findings.replaceAll(finding -> codes.contains(finding.code()) && finding.decided() && finding.holds()
                ? Finding.unjudged(
                        finding.code(),
                        finding.where(),
                        finding.state(),
                        finding.side(),
                        finding.limit(),
                        finding.derivation().limitSource(),
                        why)
                : finding);
    }

    /** A finding that is about another place than the sheet's own. */
    void add(Finding finding) {
        findings.add(finding);
    }

    /** A conflict, counted: none may there be. */
    void none(FindingCode code, Place.Kind part, String what, int count, Source source) {
        none(code, new Place(part, station), what, count, source);
    }

    /** The same about another place than the sheet's own. */
    void none(FindingCode code, Place place, String what, int count, Source source) {
        Count number = new Count(count);
        Step step = step("HAZ-21", "N = 0", source, new Term("N", what, number));
        findings.add(Finding.of(
                code, place, Sheet.ANY_SET, Side.AT_MOST, number, new Count(0), new Derivation(List.of(step), source)));
    }

    /** Conflicts, named one by one: none may there be. */
    void none(FindingCode code, Place.Kind part, String what, List<String> found, Source source) {
        none(code, part, found.isEmpty() ? what : what + ": " + String.join("; ", found), found.size(), source);
    }

    /** The derivation of an entry that has this value. */
    List<Step> stepsTo(Quantity value) {
        return entries.stream()
                .filter(entry -> entry.answer() instanceof Answer.Known known
                        && known.value().equals(value))
                .findFirst()
                .map(entry -> entry.derivation().steps().isEmpty()
                        ? List.of(stated(
                                "x", entry.name(), value, entry.derivation().limitSource()))
                        : entry.derivation().steps())
                .orElse(List.of());
    }

    /** A value that is as stated, and nothing to compute. */
    static Step stated(String symbol, String name, Quantity value, Source source) {
        return step(Step.STATED, symbol + " as stated", source, new Term(symbol, name, value));
    }

    /** A stated value, and the steps to what it is held against. */
    static List<Step> statedThen(Step stated, List<Step> steps) {
        List<Step> all = new ArrayList<>(List.of(stated));
        all.addAll(steps);
        return all;
    }

    static Step step(String equation, String formula, Source source, Term result, Term... inputs) {
        return new Step(equation, formula, List.of(inputs), result, source);
    }

    private String id(String what) {
        return station.isEmpty() ? what : what + "/" + station;
    }
}
