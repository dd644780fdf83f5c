package dustwright.cli;

import dustwright.documents.answers.CoverJson;
import dustwright.documents.answers.CoverText;
import dustwright.documents.papers.PaperKinds;
import dustwright.documents.report.CoverPage;
import dustwright.documents.report.PaperSize;
import dustwright.documents.report.ReportPdf;
import dustwright.documents.writing.Show;
import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.coverage.ByHand;
import dustwright.engine.coverage.Carry;
import dustwright.engine.coverage.CarryBySize;
import dustwright.engine.coverage.Coverage;
import dustwright.engine.coverage.Effort;
import dustwright.engine.coverage.Judging;
import dustwright.engine.coverage.Judgings;
import dustwright.engine.coverage.Question;
import dustwright.engine.coverage.Remedy;
import dustwright.engine.plant.Plant;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.UnitSystem;
import dustwright.engine.receiver.FilterCondition;
import dustwright.plantfile.Catalogue;
import dustwright.plantfile.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Finds whether every requirement holds whichever inlets are open. */
@Command(
        name = "cover",
        mixinStandardHelpOptions = true,
        header = "Find the worst set of open inlets for every requirement, over all sets of so many users.",
        description = {
            "",
            "verify checks the sets somebody wrote down; cover speaks of all of them: whichever so many of the inlets are",
            "open, filter clean and dirty, within what the zones of the plant file allow. Every requirement that verify judges",
            "in a state is checked, with the same limits, and named with the set in which it comes nearest to its limit.",
            "What the sheets of the equipment judge does not go by sets: what they leave open for the sets of the plant",
            "file is listed beside, and the exit code is 0 only where both hold, as with verify.",
            "",
            "  dustwright cover examples/bakery/plant.yaml",
            "  dustwright cover examples/bakery/plant.yaml --users 1..4 --zones off",
            "",
            "  dustwright cover examples/bakery/plant.yaml --carry 6",
            "",
            "Stopped with Ctrl-C or by --time-limit it still writes what it has shown; with --format json that can be taken up by --resume.",
            ""
        })
final class CoverCommand implements Callable<Integer> {
    private static final int STEPS = 1000;

    @SuppressWarnings("NullAway.Init")
    @Spec
    private CommandLine.Model.CommandSpec spec;

    @Mixin
    private PlantArgument plantArgument = new PlantArgument();

    @Option(
            names = "--users",
            paramLabel = "3|1..4|1,3",
            hideParamSyntax = true,
            description = "Inlets open at once. Default: one up to the simultaneous users of the plant file.")
    private @Nullable String users;

    @Option(
            names = "--zones",
            paramLabel = "on|off",
            defaultValue = "on",
            description = "Whether the limits of the zones count. Default: on.")
    private String zones = "on";

    @Option(
            names = "--filter",
            paramLabel = "clean|normal|dirty",
            description = "Condition of the filter. Default: clean and dirty, each by itself.")
    private @Nullable FilterCondition filter;

    @Option(
            names = "--most-sets",
            paramLabel = "N",
            defaultValue = "20000",
            description = "Where no bound is valid, sets are solved one by one up to this number. Default: 20000.")
    private long mostSets = 20_000;

    @Option(
            names = "--threads",
            paramLabel = "N",
            description = "Threads that work at once; the answer does not depend on it. Default: one per core.")
    private int threads = Runtime.getRuntime().availableProcessors();

    @Option(
            names = "--count",
            description = "Solve every set and say how many do not hold, up to the number of --most-sets.")
    private boolean count;

    @Option(
            names = "--carry",
            paramLabel = "N",
            description = {
                "Besides, how many users the plant really carries, whoever they are: asked from one up to N, for the whole plant",
                "and for every zone by itself."
            })
    private int carry;

    @Option(
            names = "--sizes",
            description = {
                "With --carry: besides, how many users it carries with each machine of the catalogue that is of a kind the plant has",
                "in service, in the place of every producer."
            })
    private boolean sizes;

    @Option(
            names = "--remedies",
            description = {
                "Where some set does not hold: what comes of the trade's remedies, each covered anew: fewer users, speed or held",
                "vacuum, a bleed at the far end of the slowest run, a smaller tube with fewer users, separate headers, a purge after",
                "each shift. Takes that many runs more."
            })
    private boolean remedies;

    @Option(
            names = "--by-hand",
            description = {
                "Besides, what a person can check of the worst set of all: which inlet harms it how much, what is lost piece by piece",
                "on the way, and what becomes of its margin when one of its inlets is shut and another opened instead."
            })
    private boolean byHand;

    @Option(
            names = "--time-limit",
            paramLabel = "SECONDS",
            description = "Stop after so many seconds and write what is shown by then; it can be taken up by --resume.")
    private @Nullable Double timeLimit_s;

    @Option(
            names = "--resume",
            paramLabel = "FILE",
            description =
                    "Take up a run that was stopped: an answer of this command in JSON. What it shows is not proven again.")
    private @Nullable Path resume;

    @Option(
            names = "--report",
            paramLabel = "FOLDER",
            description =
                    "Besides, write coverage.html and coverage.pdf there: matrix by inlet and run, the worst state drawn and by hand.")
    private @Nullable Path report;

    @Mixin
    private OutputOptions output = new OutputOptions();

    @Override
    public Integer call() {
        if (sizes && carry < 1) {
            throw new BadInput("--sizes asks how many users are carried: say up to how many with --carry N.");
        }
        if (threads < 1) {
            throw new BadInput("--threads " + threads + ": say 1 or more.");
        }
        if (mostSets < 1) {
            throw new BadInput("--most-sets " + mostSets + ": say how many sets may be solved one by one, 1 or more.");
        }
        if (timeLimit_s != null && !(timeLimit_s > 0)) {
            throw new BadInput("--time-limit " + timeLimit_s + ": say a number of seconds above 0.");
        }
        Reading.Read reading = plantArgument.read();
        Plant plant = reading.plant();
        Question question = question(plant);
        if (report != null) {
            ReportPdf.prepare(); // while the program is being ended it could not be loaded any more
        }
        Progress progress = new Progress(spec.commandLine().getErr(), "parts of a thousand of this step", STEPS);
        List<Effort.Known> known = known(plant, question);
        LastWords last = timeLimit_s == null ? LastWords.endless() : LastWords.within(timeLimit_s);
        try {
            Effort effort = new Effort(
                    threads, mostSets, Effort.FEW, count, false, last::stopped, share -> told(progress, share), known);
            return covered(reading, question, effort, progress);
        } finally {
            last.said();
        }
    }

    private int covered(Reading.Read reading, Question question, Effort effort, Progress progress) {
        Plant plant = reading.plant();
        Judging judging = duty -> Study.judge(plant, duty);
        Coverage coverage = Coverage.of(plant, question, judging, effort);
        List<Carry> carried =
                carry < 1 ? List.of() : Carry.of(plant, question.conditions(), carry, judging, effort.withoutKnown());
        Judgings judgings = changed -> duty -> Study.judge(changed, duty);
        List<CarryBySize> bySize = sizes
                ? CarryBySize.of(
                        plant, machines(reading), question.conditions(), carry, judgings, effort.withoutKnown())
                : List.of();
        List<Remedy> tried = remedies && !coverage.holds() ? Remedy.of(plant, coverage, judgings, effort) : List.of();
        Optional<ByHand> hand = byHand || report != null ? ByHand.of(plant, coverage, judging) : Optional.empty();
        progress.clear();
        CoverText.Besides besides = new CoverText.Besides(
                carried, bySize, tried, hand, Study.openInSheets(plant, Collections.max(question.users())));
        if (report != null) {
            write(
                    report,
                    CoverPage.of(plant, coverage, besides, new Show(output.units(reading)), plantArgument.origin()),
                    output.units(reading));
        }
        String text = output.json()
                ? CoverJson.of(plant, plantArgument.mark(), coverage, besides)
                : CoverText.of(plant, coverage, besides, output.units(reading), Terminal.width());
        spec.commandLine().getOut().println(text.stripTrailing());
        spec.commandLine().getOut().flush();
        return coverage.holds() && besides.openInSheets().isEmpty() ? ExitCode.HOLDS : ExitCode.DOES_NOT_HOLD;
    }

    private static List<VacuumProducer> machines(Reading.Read reading) {
        return reading.catalogue().get().map(Catalogue::producers).orElse(List.of());
    }

    private static void write(Path folder, CoverPage page, UnitSystem units) {
        try {
            NewFile.write(folder, PaperKinds.coverage(page, PaperSize.of(units)));
        } catch (IOException fault) {
            throw new BadInput("The report could not be written to " + folder.toAbsolutePath() + ": "
                    + NewFile.reason(fault) + ".");
        }
    }

    private List<Effort.Known> known(Plant plant, Question question) {
        if (resume == null) {
            return List.of();
        }
        try {
            return CoverJson.known(Files.readString(resume), plant, plantArgument.mark(), question.atMost());
        } catch (IOException unreadable) {
            throw new BadInput("--resume " + resume + " could not be read.");
        } catch (IllegalArgumentException notOurs) {
            throw new BadInput("--resume " + resume + ": " + notOurs.getMessage() + ".");
        }
    }

    private static synchronized void told(Progress progress, double share) {
        progress.done((int) (STEPS * share));
    }

    private Question question(Plant plant) {
        if (plant.inlets().isEmpty()) {
            throw new BadInput("This plant has no inlets, so there are no sets of open inlets to speak of.");
        }
        Map<String, Integer> limits = switch (zones) {
            case "on" -> Question.zonesOf(plant);
            case "off" -> Map.of();
            default -> throw new BadInput("--zones " + zones + ": say on or off.");
        };
        List<FilterCondition> filters =
                filter == null ? List.of(FilterCondition.CLEAN, FilterCondition.DIRTY) : List.of(filter);
        return new Question(users(plant), limits, States.conditions(plant, filters));
    }

    private List<Integer> users(Plant plant) {
        if (users == null) {
            return IntStream.rangeClosed(1, plant.usage().simultaneousUsers())
                    .boxed()
                    .toList();
        }
        List<Integer> asked = new ArrayList<>();
        for (String part : users.split(",", -1)) {
            int dots = part.indexOf("..");
            int from = number(dots < 0 ? part : part.substring(0, dots));
            int to = dots < 0 ? from : number(part.substring(dots + 2));
            if (from < 1 || to < from || to > plant.inlets().size()) {
                throw new BadInput("--users " + users + ": there are 1 to "
                        + plant.inlets().size() + " inlets to open, such as --users 3 or --users 1..4.");
            }
            IntStream.rangeClosed(from, to).forEach(asked::add);
        }
        return asked;
    }

    private int number(String text) {
        try {
            return Integer.parseInt(text.strip());
        } catch (NumberFormatException noNumber) {
            throw new BadInput("--users " + users + ": say a number, a range or a list, such as 3, 1..4 or 1,3.");
        }
    }
}
