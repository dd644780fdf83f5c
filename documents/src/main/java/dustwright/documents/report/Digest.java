package dustwright.documents.report;

import dustwright.engine.StateAnswer;
import dustwright.engine.Study;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Outcome;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.producer.VacuumProducer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What a reader looks for first in a study: the worst state, findings put together by place, which of them get a letter. */
public final class Digest {
    private static final int MOST_LETTERS = 7;

    private final Study study;
    private final List<Group> groups;

    public Digest(Study study) {
        this.study = study;
        this.groups = grouped(study);
    }

    /** The findings of one kind at one place over all states: the worst of them, how many fail or are not known, in how many states it was asked. */
    public record Group(Finding worst, int failing, int states) {}

    public Study study() {
        return study;
    }

    /** Smallest margin first; equal margins in the order of states and of the plant file. */
    public List<Group> groups() {
        return groups;
    }

    /** The failing groups, or the tightest ones where all hold, that the first page lists and the drawing marks. */
    public List<Group> lettered() {
        boolean anyFails = anyDoubt();
        return groups.stream()
                .filter(g -> anyFails ? g.failing() > 0 : !g.worst().nothingByDesign())
                .limit(MOST_LETTERS)
                .toList();
    }

    /** The same, what is at one place together, places in the order of their worst. */
    List<List<Group>> letteredByPlace() {
        Map<String, List<Group>> byPlace = new LinkedHashMap<>();
        lettered()
                .forEach(g -> byPlace.computeIfAbsent(g.worst().where().id(), id -> new ArrayList<>())
                        .add(g));
        return List.copyOf(byPlace.values());
    }

    /** The tightest finding that is known, other than what stops at its limit by design. */
    Optional<Finding> tightest() {
        return groups.stream()
                .map(Group::worst)
                .filter(f -> f.decided() && !f.nothingByDesign())
                .findFirst();
    }

    /** Place id by letter: one letter for each place. */
    public Map<String, String> letters() {
        Map<String, String> letters = new LinkedHashMap<>();
        for (Group group : lettered()) {
            String place = group.worst().where().id();
            if (!letters.containsValue(place)) {
                letters.put(Character.toString('a' + letters.size()), place);
            }
        }
        return letters;
    }

    /** Letter of a place. */
    public Optional<String> letter(String place) {
        return letters().entrySet().stream()
                .filter(e -> e.getValue().equals(place))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    /** The solved state with the smallest margin; the first solved one where nothing was asked. */
    public Optional<StateAnswer> worstState() {
        List<StateAnswer> solved =
                study.states().stream().filter(Digest::isSolved).toList();
        return solved.stream().min(Comparator.comparingDouble(Digest::leastMargin));
    }

    /** Of the solved states with most inlets open the one whose dust is carried worst; empty where no two inlets are open at once. */
    public Optional<StateAnswer> mostUsers() {
        int most = study.states().stream()
                .filter(Digest::isSolved)
                .mapToInt(s -> s.state().open().size())
                .max()
                .orElse(0);
        return most < 2
                ? Optional.empty()
                : study.states().stream()
                        .filter(s -> isSolved(s) && s.state().open().size() == most)
                        .min(Comparator.comparingDouble(
                                s -> slowest(s).map(Finding::margin).orElse(Double.MAX_VALUE)));
    }

    /** Says where fewer inlets were open at once than the plant file's users: what was not asked cannot hold. */
    public Optional<String> usersNotAsked() {
        int users = study.plant().usage().simultaneousUsers();
        int open = study.states().stream()
                .mapToInt(s -> s.state().open().size())
                .max()
                .orElse(0);
        return open >= users
                ? Optional.empty()
                : Optional.of(users + " users at once are not asked. No set opens more than " + open
                        + "; name the inlets under \"design sets\".");
    }

    /** Says which producers stand by and run in no set asked: nothing is judged of them. */
    public Optional<String> standbyNotAsked() {
        Set<String> ran = study.states().stream()
                .flatMap(s -> s.state().runningProducers().stream())
                .collect(Collectors.toSet());
        List<String> idle = study.plant().stations().stream()
                .flatMap(station -> station.producers().stream())
                .filter(producer -> producer.standby() && !ran.contains(producer.id()))
                .map(VacuumProducer::id)
                .toList();
        return idle.isEmpty()
                ? Optional.empty()
                : Optional.of(String.join(", ", idle)
                        + (idle.size() == 1 ? " stands by and runs" : " stand by and run")
                        + " in no set asked, so nothing is judged of what it can do alone; ask again with --running "
                        + String.join(",", idle) + ".");
    }

    /** Says where no piece was asked to carry dust, so that velocity was not judged at all. */
    public Optional<String> transportNotAsked() {
        boolean asked = study.states().stream().anyMatch(s -> slowest(s).isPresent());
        return asked || study.plant().inlets().isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "No inlet picks up a dust, so no velocity that carries dust is checked; name one under \"dusts\".");
    }

    /** The dusts whose loss is not known in some set that feeds them, one finding each; empty where every loss is known. */
    public List<Finding> undecided() {
        return groups.stream().map(Group::worst).filter(f -> !f.decided()).toList();
    }

    /** The tightest transport velocity of a state. */
    public static Optional<Finding> slowest(StateAnswer answer) {
        return answer.findings().stream()
                .filter(f -> f.code() == FindingCode.TRANSPORT_VELOCITY)
                .min(Comparator.comparingDouble(Finding::margin));
    }

    public static Optional<DutyPoint> duty(StateAnswer answer) {
        return answer.duty().match(Optional::of, why -> Optional.empty());
    }

    public static boolean isSolved(StateAnswer answer) {
        return answer.duty() instanceof Outcome.Solved;
    }

    static double leastMargin(StateAnswer answer) {
        return answer.findings().stream().mapToDouble(Finding::margin).min().orElse(Double.MAX_VALUE);
    }

    public long checked() {
        return study.findings().count();
    }

    public long failing() {
        return study.findings().filter(Finding::fails).count();
    }

    /** Whether anything is known not to hold, or not known at all. */
    public boolean anyDoubt() {
        return study.findings().anyMatch(f -> !f.holds());
    }

    private static List<Group> grouped(Study study) {
        Map<String, List<Finding>> byPlace = new LinkedHashMap<>();
        for (Finding finding : study.worstFirst()) {
            String key = finding.code() + "/" + finding.where();
            byPlace.computeIfAbsent(key, k -> new ArrayList<>()).add(finding);
        }
        return byPlace.values().stream()
                .map(all -> new Group(
                        all.get(0), (int) all.stream().filter(f -> !f.holds()).count(), all.size()))
                .toList();
    }
}
