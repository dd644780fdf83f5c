package dustwright.plantfile;

import dustwright.engine.interlock.Expr;
import dustwright.engine.interlock.ExprText;
import dustwright.engine.quantity.Duration;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.rehearsal.PlantFault;
import dustwright.engine.rehearsal.Script;
import dustwright.plantfile.keys.RehearsalKeys;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads a rehearsal script as strictly as a plant file: a {@link Script}, or all faults together, each with its line. Never an exception. */
public final class RehearsalReader {
    private static final Pattern CLOCK = Pattern.compile("([01][0-9]|2[0-3]):([0-5][0-9])");

    private final Section top;
    private final SourceMap lines;
    private final Faults faults;

    private RehearsalReader(Section top, SourceMap lines, Faults faults) {
        this.top = top;
        this.lines = lines;
        this.faults = faults;
    }

    /** Reads a file. */
    public static RehearsalReading read(Path file) {
        FileText text = FileText.of(file);
        return text.text()
                .map(RehearsalReader::read)
                .orElseGet(
                        () -> new RehearsalReading.Faults(text.fault().stream().toList()));
    }

    /** Reads the text of a script. */
    public static RehearsalReading read(String text) {
        Faults faults = new Faults();
        Optional<Tree.Entries> tree = TreeReader.read(text, "rehearsal: 1", faults);
        if (tree.isEmpty()) {
            return new RehearsalReading.Faults(faults.inOrderOfTheFile());
        }
        Section top = new Checker(faults, new Taken(), Optional::empty).group(tree.get(), RehearsalKeys.TOP, "", "");
        if (!faults.none()) {
            return new RehearsalReading.Faults(faults.inOrderOfTheFile());
        }
        Script script = new RehearsalReader(top, new SourceMap(tree.get()), faults).script();
        return faults.none()
                ? new RehearsalReading.Read(script)
                : new RehearsalReading.Faults(faults.inOrderOfTheFile());
    }

    private Script script() {
        List<Script.Act> acts = top.sections("acts").stream().flatMap(this::act).toList();
        for (int i = 1; i < acts.size(); i++) {
            if (acts.get(i).at_s() < acts.get(i - 1).at_s()) {
                fault("acts[" + i + "].at", "it happens before the act above it", "acts in the order of time");
            }
        }
        return new Script(
                top.get("title", String.class),
                begins_s(),
                top.get("lasts", Duration.class).si(),
                top.find("seed", Integer.class).orElse(1),
                top.find("feed", Ratio.class).map(Ratio::value).orElse(1.0),
                top.find("container full after", Duration.class).map(Duration::si),
                top.find("receiver high after", Duration.class).map(Duration::si),
                people(),
                acts,
                words("sees"),
                words("does"),
                top.sections("must").stream().flatMap(this::must).toList());
    }

    private double begins_s() {
        Matcher clock = CLOCK.matcher(top.get("begins", String.class));
        if (!clock.matches()) {
            fault("begins", "this is no time of day", "hours and minutes such as \"01:40\"");
            return 0;
        }
        return 3600.0 * Integer.parseInt(clock.group(1)) + 60.0 * Integer.parseInt(clock.group(2));
    }

    private Optional<Script.Answering> people() {
        Optional<Double> least = top.find("people come after", Duration.class).map(Duration::si);
        Optional<Double> greatest = top.find("people come by", Duration.class).map(Duration::si);
        if (least.isPresent() != greatest.isPresent()) {
            fault(
                    least.isPresent() ? "people come after" : "people come by",
                    "only one end of the time people take",
                    "\"people come after\" and \"people come by\"");
            return Optional.empty();
        }
        if (least.isPresent() && least.get() > greatest.orElseThrow()) {
            fault(
                    "people come by",
                    "people come by a time before the one after which they come",
                    "a time that is not shorter");
            return Optional.empty();
        }
        return least.map(l -> new Script.Answering(l, greatest.orElseThrow()));
    }

    private Stream<Script.Act> act(Section s) {
        double at_s = s.get("at", Duration.class).si();
        long kinds =
                Stream.of("press", "breaks", "mended", "users").filter(s::has).count();
        if (kinds != 1) {
            fault(s.path(), "an act is one thing", "one of \"press\", \"breaks\", \"mended\", \"users\"");
            return Stream.empty();
        }
        return Stream.of(
                        s.find("press", String.class).map(b -> (Script.Act) new Script.Act.Press(at_s, b)),
                        s.find("breaks", String.class).flatMap(PlantFault::of).map(f ->
                                (Script.Act) new Script.Act.Breaks(at_s, f)),
                        s.find("mended", String.class).flatMap(PlantFault::of).map(f ->
                                (Script.Act) new Script.Act.Mended(at_s, f)),
                        s.find("users", String.class)
                                .map(w -> (Script.Act) new Script.Act.Users(at_s, w.equals("begin"))))
                .flatMap(Optional::stream);
    }

    private Stream<Script.Must> must(Section s) {
        if (Stream.of("sometime", "never", "at the end").filter(s::has).count() != 1) {
            fault(s.path(), "a demand is one thing", "one of \"sometime\", \"never\", \"at the end\"");
            return Stream.empty();
        }
        return Stream.of(
                        condition(s, "sometime", Script.When.SOMETIME),
                        condition(s, "never", Script.When.NEVER),
                        condition(s, "at the end", Script.When.AT_THE_END))
                .flatMap(Optional::stream);
    }

    private Optional<Script.Must> condition(Section s, String key, Script.When when) {
        return s.find(key, String.class).map(text -> {
            try {
                return new Script.Must(when, ExprText.read(text));
            } catch (ExprText.Bad bad) {
                fault(
                        s.path() + "." + key,
                        String.valueOf(bad.getMessage()),
                        "names joined by and, or, not and brackets");
                return new Script.Must(when, Expr.Constant.NO);
            }
        });
    }

    private List<String> words(String key) {
        return top.items(key).stream().map(String::valueOf).toList();
    }

    private void fault(String path, String message, String expected) {
        faults.add(lines.value(path).orElse(top.span()), path, message, expected);
    }
}
