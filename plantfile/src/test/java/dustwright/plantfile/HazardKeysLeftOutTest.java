package dustwright.plantfile;

import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.States;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Outcome;
import dustwright.engine.hazard.DustFamily;
import dustwright.engine.hazard.PublishedDust;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.DutyPointSolver;
import dustwright.engine.plant.Plant;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.sheet.DustWays;
import dustwright.engine.sheet.Sheets;
import dustwright.plantfile.keys.Group;
import dustwright.plantfile.keys.Key;
import dustwright.plantfile.keys.Need;
import dustwright.plantfile.keys.PlantKeys;
import dustwright.plantfile.keys.Shape;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.Yaml;

/**
 * Law: what is left out of a dust, a receiver or a part that dust rubs on is never judged better than the worst that could be said there. Plants
 * are the examples with some hazard keys changed or left out at random; seeds are fixed.
 */
class HazardKeysLeftOutTest {
    private static final int CASES = 240;
    private static final long SEED = 20_261_126;

    private static final Set<FindingCode> ABOUT = EnumSet.range(FindingCode.DUSTS_TOGETHER, FindingCode.LINER_STATIC);

    static {
        ABOUT.add(FindingCode.PANEL_AREA);
    }

    /** Groups all of whose optional keys are hazard keys, by the path to them; a star is every name. */
    private static final List<String> GROUPS = List.of(
            "dusts/*/explosion",
            "stations/*/receiver/explosion",
            "stations/*/receiver/explosion/protection device",
            "stations/*/receiver/explosion/inlet device",
            "stations/*/receiver/explosion/return device",
            "stations/*/receiver/explosion/valve device");

    /** Hazard keys that stand among others. */
    private static final List<String> SINGLE = List.of(
            "dusts/*/combustible",
            "stations/*/filter/dissipative",
            "stations/*/filter/food contact",
            "stations/*/safety filter/class",
            "stations/*/rotary valve/vanes",
            "stations/*/rotary valve/tip gap",
            "stations/*/container/type",
            "stations/*/container/liner",
            "stations/*/container/liner type",
            "stations/*/container/vapour",
            "stations/*/container/material",
            "stations/*/container/resistance",
            "hoses/*/resistance",
            "tubes/*/material",
            "tubes/*/resistance",
            "tools/*/material",
            "tools/*/resistance");

    /** Not asked: left out, they are taken from the vessel as it is drawn, which is no guess that a stated one could be worse than. */
    private static final Set<String> NOT_ASKED = Set.of("volume", "length to diameter");

    private record At(List<String> path, Key key) {
        /** The path without the names that people gave: a key of the file, whatever it stands in. */
        String pattern() {
            List<String> parts = new ArrayList<>(path);
            parts.set(1, "*");
            return String.join("/", parts);
        }

        String name() {
            return path.get(path.size() - 1);
        }
    }

    // ---- the plant as a tree

    @SuppressWarnings("unchecked")
    private static Map<String, Object> map(Object tree) {
        return (Map<String, Object>) tree;
    }

    private static Object in(Map<String, Object> tree, String name) {
        return Objects.requireNonNull(tree.get(name), name);
    }

    private static Map<String, Object> example(String name) {
        try {
            return map(new Yaml().load(Files.readString(Path.of("..", "examples", name, "plant.yaml"))));
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private static Optional<Map<String, Object>> parent(Map<String, Object> tree, List<String> path) {
        Map<String, Object> at = tree;
        for (String name : path.subList(0, path.size() - 1)) {
            if (!(at.get(name) instanceof Map)) {
                return Optional.empty();
            }
            at = map(at.get(name));
        }
        return Optional.of(at);
    }

    private static Map<String, Object> with(Map<String, Object> tree, List<String> path, Optional<Object> value) {
        Map<String, Object> copy = new LinkedHashMap<>(tree);
        if (path.size() > 1) {
            copy.put(path.get(0), with(map(in(copy, path.get(0))), path.subList(1, path.size()), value));
        } else if (value.isPresent()) {
            copy.put(path.get(0), value.get());
        } else {
            copy.remove(path.get(0));
        }
        return copy;
    }

    /** Every hazard key this plant has a place for. */
    private static List<At> keys(Map<String, Object> tree) {
        List<At> keys = new ArrayList<>();
        for (String pattern : GROUPS) {
            for (List<String> path : paths(tree, pattern.split("/"))) {
                group(path).keys().stream()
                        .filter(k -> !(k.need() instanceof Need.Required) && !(k.shape() instanceof Shape.Keys))
                        .forEach(k -> keys.add(new At(
                                Stream.concat(path.stream(), Stream.of(k.name()))
                                        .toList(),
                                k)));
            }
        }
        for (String pattern : SINGLE) {
            String[] parts = pattern.split("/");
            for (List<String> path : paths(tree, Arrays.copyOf(parts, parts.length - 1))) {
                group(path, tree)
                        .key(parts[parts.length - 1])
                        .ifPresent(k -> keys.add(new At(
                                Stream.concat(path.stream(), Stream.of(k.name()))
                                        .toList(),
                                k)));
            }
        }
        return keys.stream().filter(k -> !NOT_ASKED.contains(k.name())).toList();
    }

    private static List<List<String>> paths(Map<String, Object> tree, String[] pattern) {
        List<List<String>> paths = new ArrayList<>(List.of(List.of()));
        for (String part : pattern) {
            List<List<String>> further = new ArrayList<>();
            for (List<String> path : paths) {
                Object here = path.isEmpty()
                        ? tree
                        : parent(tree, path)
                                .map(p -> p.get(path.get(path.size() - 1)))
                                .orElse(null);
                if (here instanceof Map) {
                    map(here).keySet().stream()
                            .filter(name -> part.equals("*") || part.equals(name))
                            .forEach(name -> further.add(Stream.concat(path.stream(), Stream.of(name))
                                    .toList()));
                }
            }
            paths = further;
        }
        return paths;
    }

    private static Group group(List<String> path) {
        return group(path, Map.of());
    }

    private static Group group(List<String> path, Map<String, Object> tree) {
        Group group = PlantKeys.TOP;
        for (int n = 0; n < path.size(); n++) {
            Shape shape = group.key(path.get(n)).orElseThrow().shape();
            if (shape instanceof Shape.Named named) {
                n++;
                shape = named.entry();
            }
            if (shape instanceof Shape.Kinds kinds) {
                String kind = String.valueOf(in(map(in(parent(tree, path).orElseThrow(), "container")), "kind"));
                group = kinds.groups().stream()
                        .filter(g -> ((Shape.Word) g.key("kind").orElseThrow().shape())
                                .words()
                                .contains(kind))
                        .findFirst()
                        .orElseThrow();
            } else {
                group = ((Shape.Keys) shape).group();
            }
        }
        return group;
    }

    // ---- what may be said there

    /** Admissible values of a key, the worst and the best among them; of what stands in only what is of the dust's kind. */
    private static List<Object> values(Map<String, Object> tree, At at) {
        Shape shape = at.key().shape() instanceof Shape.Sourced sourced
                ? sourced.value()
                : at.key().shape();
        if (shape instanceof Shape.YesNo) {
            return List.of(true, false);
        }
        if (shape instanceof Shape.Word word) {
            List<Object> words = word.words().stream()
                    .filter(w -> ofItsKind(tree, at, w))
                    .map(w -> (Object) w)
                    .toList();
            // of a long list every tenth: published dusts differ by figures only
            return IntStream.range(0, words.size())
                    .filter(n -> words.size() < 20 || n % 10 == 0)
                    .mapToObj(words::get)
                    .toList();
        }
        if (shape instanceof Shape.Whole whole) {
            return List.of(whole.least(), whole.greatest());
        }
        if (shape instanceof Shape.Amount amount) {
            Shape.Range range = amount.ranges().get(0);
            return List.of(range.least(), amount.example(), range.greatest());
        }
        if (shape instanceof Shape.Text) {
            return List.of("invented");
        }
        // mains of the station: some without the device, or all
        List<Object> mains = mains(tree, at);
        return mains.size() > 1 ? List.of(mains.subList(0, 1), mains) : List.of(mains);
    }

    private static List<Object> mains(Map<String, Object> tree, At at) {
        String station = at.path().get(1);
        return map(in(tree, "runs")).entrySet().stream()
                .filter(run -> in(map(run.getValue()), "to").equals(station))
                .map(run -> (Object) run.getKey())
                .toList();
    }

    private static boolean ofItsKind(Map<String, Object> tree, At at, String published) {
        boolean severity = at.name().equals("explodes like");
        if (!severity && !at.name().equals("ignites like")) {
            return true;
        }
        Object family = parent(tree, at.path()).orElseThrow().get("family");
        PublishedDust dust = severity ? PublishedDust.severity(published) : PublishedDust.sensitivity(published);
        return Stream.of(DustFamily.values())
                .filter(f -> f.words().equals(family))
                .anyMatch(dust::isOfKind);
    }

    /** Every hazard key there is, as {@link At#pattern} writes it. */
    private static Set<String> offered() {
        Set<String> offered = new TreeSet<>(SINGLE);
        for (String pattern : GROUPS) {
            group(List.of(pattern.split("/"))).keys().stream()
                    .filter(k -> !(k.need() instanceof Need.Required) && !(k.shape() instanceof Shape.Keys))
                    .filter(k -> !NOT_ASKED.contains(k.name()))
                    .forEach(k -> offered.add(pattern + "/" + k.name()));
        }
        return offered;
    }

    /** What contradicts something else that is stated is not admissible: leaving it out takes a contradiction away. */
    private static boolean contradicts(Map<String, Object> tree, At at) {
        Map<String, Object> beside = parent(tree, at.path()).orElseThrow();
        if (at.path().get(0).equals("dusts") && at.path().size() == 4) {
            Object combustible =
                    parent(tree, at.path().subList(0, 3)).orElseThrow().get("combustible");
            boolean ownWithoutReport = at.name().equals("sample") && !beside.containsKey("report");
            return ownWithoutReport || Boolean.FALSE.equals(combustible) || "no".equals(combustible);
        }
        return at.name().equals("liner type") && "none".equals(beside.get("liner"));
    }

    /** A published dust of its kind stands in for a value that is left out: that is what it is for. */
    private static boolean standsIn(Map<String, Object> tree, At at) {
        return VALUES.containsKey(at.name())
                && at.path().get(0).equals("dusts")
                && parent(tree, at.path()).orElseThrow().keySet().stream().anyMatch(k -> k.endsWith("like"));
    }

    private static final Map<String, String> VALUES = Map.of(
            "kst",
            "115 bar.m/s",
            "pmax",
            "9 bar",
            "mie",
            "50 mJ",
            "mit",
            "400 degC",
            "lit",
            "300 degC",
            "mec",
            "60 g/m3");

    /** The same plant with values of its own dusts, tested, in place of what stood in. */
    private static Map<String, Object> tested(Map<String, Object> example) {
        Map<String, Object> tree = example;
        for (List<String> card : paths(example, new String[] {"dusts", "*", "explosion"})) {
            Map<String, Object> own =
                    new LinkedHashMap<>(map(in(parent(example, card).orElseThrow(), "explosion")));
            if (own.keySet().removeIf(k -> k.endsWith(" like") || k.equals("like because"))) {
                own.putAll(VALUES);
            }
            own.put("sample", "own dust, tested");
            own.put("report", "laboratory, number, date: invented");
            own.put("sample size", "0.005 mm");
            own.put("sample moisture", "3 %");
            tree = with(tree, card, Optional.of(own));
        }
        for (List<String> receiver : paths(tree, new String[] {"stations", "*", "receiver", "explosion"})) {
            for (String device : List.of("protection device", "inlet device", "return device", "valve device")) {
                List<String> path =
                        Stream.concat(receiver.stream(), Stream.of(device)).toList();
                if (!parent(tree, path).orElseThrow().containsKey(device)) {
                    tree = with(tree, path, Optional.of(Map.of("kst", "300 bar.m/s")));
                }
            }
        }
        return tree;
    }

    // ---- verdicts

    private enum Verdict {
        FAILS,
        NOT_KNOWN,
        HOLDS
    }

    private static Verdict verdict(Finding finding) {
        return finding.fails() ? Verdict.FAILS : finding.decided() ? Verdict.HOLDS : Verdict.NOT_KNOWN;
    }

    /** Verdicts of the sheets with all inlets shut, by requirement and place; empty where the file has faults. */
    private static Optional<Map<String, Verdict>> verdicts(Map<String, Object> tree) {
        if (!(PlantReader.read(new Yaml().dump(tree)) instanceof Reading.Read read)) {
            return Optional.empty();
        }
        Plant plant = read.plant();
        List<DutyPoint> duties = new ArrayList<>();
        if (DutyPointSolver.solve(plant, States.open(plant, List.of(), FilterCondition.NORMAL))
                instanceof Outcome.Solved<DutyPoint> solved) {
            duties.add(solved.value());
        }
        Map<String, Verdict> verdicts = new TreeMap<>();
        Sheets.of(
                        plant,
                        Sheets.Solved.of(duties),
                        DustWays.of(plant, open -> new Outcome.NotSolved<>("not asked")),
                        List.of())
                .forEach(sheet -> sheet.findings().stream()
                        .filter(f -> ABOUT.contains(f.code()))
                        .forEach(f -> verdicts.merge(
                                f.code() + " " + f.where(), verdict(f), (a, b) -> a.compareTo(b) < 0 ? a : b)));
        return Optional.of(verdicts);
    }

    private static List<Map<String, Object>> examples() {
        return Stream.of("bakery-one-main", "supplement", "plastics", "cement-packing", "aluminium-finishing")
                .map(HazardKeysLeftOutTest::example)
                .toList();
    }

    /** What holds without a key and does not with some value of it. */
    private static Set<String> better(Map<String, Object> tree, At at) {
        Set<String> better = new TreeSet<>();
        Optional<Map<String, Verdict>> left = verdicts(with(tree, at.path(), Optional.empty()));
        if (left.isEmpty()) {
            return better;
        }
        for (Object value : values(tree, at)) {
            verdicts(with(tree, at.path(), Optional.of(value)))
                    .ifPresent(said -> said.forEach((where, verdict) -> {
                        if (verdict != Verdict.HOLDS
                                && left.get().getOrDefault(where, Verdict.HOLDS) == Verdict.HOLDS) {
                            better.add(at.path() + ": " + where + " is " + verdict + " with " + value
                                    + ", and not so without");
                        }
                    }));
        }
        return better;
    }

    @Test
    void no_key_that_is_left_out_of_an_example_is_judged_better_than_the_worst_that_could_be_said() {
        Set<String> better = new TreeSet<>();
        for (Map<String, Object> tree : examples()) {
            Set<String> asked = new TreeSet<>();
            keys(tree).stream()
                    .filter(at -> !contradicts(tree, at) && !standsIn(tree, at))
                    .filter(at -> asked.add(at.pattern()))
                    .forEach(at -> better.addAll(better(tree, at)));
        }
        assertThat(better).isEmpty();
    }

    /**
     * What comes in unnamed may be any dust: no verdict about dust holds then, whatever the named ones are, and none vanishes. Once with the first
     * inlet unnamed, once with all; where a file names the dust elsewhere, that it is picked up nowhere is a fault.
     */
    @Test
    void an_inlet_that_names_no_dust_is_never_judged_by_the_dusts_of_the_others() {
        int judged = 0;
        for (Map<String, Object> tree : examples()) {
            Set<String> named = verdicts(tree).orElseThrow().keySet();
            List<String> ids = List.copyOf(map(in(tree, "inlets")).keySet());
            for (List<String> without : List.of(ids.subList(0, 1), ids)) {
                Optional<Map<String, Verdict>> unnamed = verdicts(unnamed(tree, without));
                judged += unnamed.isPresent() ? 1 : 0;
                unnamed.ifPresent(verdicts -> {
                    assertThat(verdicts.keySet())
                            .anyMatch(where -> where.startsWith("DUST_NOT_NAMED"))
                            .containsAll(named.stream()
                                    .filter(where ->
                                            !where.startsWith("FOOD_CONTACT") && !where.startsWith("METAL_DRY"))
                                    .toList());
                    assertThat(verdicts.entrySet())
                            .as("a dust's own card apart")
                            .filteredOn(said -> !said.getKey().startsWith("DUST_CARD"))
                            .noneMatch(said -> said.getValue() == Verdict.HOLDS);
                });
            }
        }
        assertThat(judged).isGreaterThan(6);
    }

    private static Map<String, Object> unnamed(Map<String, Object> tree, List<String> ids) {
        Map<String, Object> inlets = new LinkedHashMap<>(map(in(tree, "inlets")));
        for (String id : ids) {
            Map<String, Object> inlet = new LinkedHashMap<>(map(in(inlets, id)));
            inlet.keySet().removeAll(List.of("dust", "feed"));
            inlets.put(id, inlet);
        }
        return with(tree, List.of("inlets"), Optional.of(inlets));
    }

    @Test
    void what_is_left_out_is_never_judged_better_than_the_worst_that_could_be_said() {
        List<Map<String, Object>> examples = examples();
        SplittableRandom random = new SplittableRandom(SEED);
        List<Map<String, Object>> plants = Stream.concat(
                        examples.stream(), examples.stream().map(HazardKeysLeftOutTest::tested))
                .toList();
        Set<String> better = new TreeSet<>();
        Set<String> asked = new TreeSet<>();
        for (int n = 0; n < CASES; n++) {
            Map<String, Object> tree = changed(plants.get(n % plants.size()), random);
            List<At> keys = keys(tree).stream()
                    .filter(at -> !contradicts(tree, at) && !standsIn(tree, at))
                    .toList();
            List<At> fresh =
                    keys.stream().filter(at -> !asked.contains(at.pattern())).toList();
            List<At> among = fresh.isEmpty() ? keys : fresh;
            At at = among.get(random.nextInt(among.size()));
            if (verdicts(with(tree, at.path(), Optional.empty())).isEmpty()) {
                continue;
            }
            asked.add(at.pattern());
            better.addAll(better(tree, at));
        }
        System.out.println("[law] " + CASES + " plants, " + asked.size() + " keys left out: " + asked);
        assertThat(better).isEmpty();
        assertThat(asked).containsExactlyElementsOf(offered());
    }

    /** Up to four hazard keys changed or left out. */
    private static Map<String, Object> changed(Map<String, Object> example, SplittableRandom random) {
        Map<String, Object> tree = example;
        for (int n = random.nextInt(5); n > 0; n--) {
            List<At> keys = keys(tree);
            At at = keys.get(random.nextInt(keys.size()));
            List<Object> values = values(tree, at);
            Map<String, Object> next = with(
                    tree,
                    at.path(),
                    random.nextInt(4) == 0 || values.isEmpty()
                            ? Optional.empty()
                            : Optional.of(values.get(random.nextInt(values.size()))));
            if (PlantReader.read(new Yaml().dump(next)) instanceof Reading.Read) {
                tree = next;
            }
        }
        return tree;
    }
}
