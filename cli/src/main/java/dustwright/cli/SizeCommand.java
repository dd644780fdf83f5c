package dustwright.cli;

import dustwright.documents.answers.ChangesJson;
import dustwright.documents.answers.ChangesText;
import dustwright.documents.answers.SizeBesides;
import dustwright.documents.answers.SizeJson;
import dustwright.documents.answers.SizeText;
import dustwright.documents.answers.SizeWords;
import dustwright.documents.papers.PaperKinds;
import dustwright.documents.report.PaperSize;
import dustwright.documents.report.ReportPdf;
import dustwright.documents.report.SizePage;
import dustwright.documents.writing.Show;
import dustwright.engine.SizingRules;
import dustwright.engine.Study;
import dustwright.engine.coverage.Question;
import dustwright.engine.finding.Finding;
import dustwright.engine.plant.Plant;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.sizing.Choice;
import dustwright.engine.sizing.Curve;
import dustwright.engine.sizing.Design;
import dustwright.engine.sizing.Escape;
import dustwright.engine.sizing.OneChange;
import dustwright.engine.sizing.OpenSizes;
import dustwright.engine.sizing.Patience;
import dustwright.engine.sizing.Search;
import dustwright.engine.sizing.Sizing;
import dustwright.plantfile.PlantEditor;
import dustwright.plantfile.Reading;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
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

/** Chooses sizes. */
@Command(
        name = "size",
        mixinStandardHelpOptions = true,
        header = "Choose the cheapest sizes for which every requirement holds, whichever inlets are open.",
        description = {
            "",
            "What may be chosen, and at what price, stands under \"sizing\" in the plant file: tubes for groups of runs, hoses,",
            "one of several vacuum producers, the cloth area. A size that is not named there stays as it is. Cost is what is",
            "bought, and the energy of the design sets over the years of the comparison where the costs say enough. Sizes are",
            "held to every requirement of a state; what the sheets of the design found leave open is listed beside, and the",
            "exit code is 0 only where they leave nothing open.",
            "",
            "  dustwright size examples/bakery-unsized/plant.yaml",
            "  dustwright size examples/bakery-unsized/plant.yaml --write sized.yaml",
            "  dustwright size examples/bakery-unsized/plant.yaml --curve --report sizes",
            "  dustwright size examples/bakery/plant.yaml --one-change",
            "",
            "Stopped with Ctrl-C or by --minutes it still writes what it has, and says that it is partial;",
            "with --format json that can be taken up by --resume.",
            ""
        })
final class SizeCommand implements Callable<Integer> {
    private static final double HUNDRED = 100;
    private static final double MINUTE_s = 60;

    @SuppressWarnings("NullAway.Init")
    @Spec
    private CommandLine.Model.CommandSpec spec;

    @Mixin
    private PlantArgument plantArgument = new PlantArgument();

    @Option(
            names = "--users",
            paramLabel = "N",
            description = "Up to so many inlets open at once. Default: the simultaneous users of the plant file.")
    private @Nullable Integer users;

    @Option(
            names = "--zones",
            paramLabel = "on|off",
            defaultValue = "on",
            description = "Whether the limits of the zones count. Default: on.")
    private String zones = "on";

    @Option(
            names = "--gap",
            paramLabel = "PERCENT",
            defaultValue = "0",
            description =
                    "End once the design found is shown to be this near to the cheapest. Default: 0, the cheapest.")
    private double gap_percent;

    @Option(
            names = "--minutes",
            paramLabel = "M",
            defaultValue = "10",
            description = "End then with the best design found and what is shown of it. Default: 10.")
    private double minutes = 10;

    @Option(
            names = "--most-sets",
            paramLabel = "N",
            defaultValue = "20000",
            description = "Where no bound is valid, sets are solved one by one up to this number. Default: 20000.")
    private long mostSets = 20_000;

    @Option(names = "--write", paramLabel = "FILE", description = "Write the plant file with the chosen sizes here.")
    private @Nullable Path write;

    @Option(
            names = "--curve",
            description = "Besides, what it costs to carry one user, two, and so on up to the users asked.")
    private boolean curve;

    @Option(
            names = "--remedies",
            description = {
                "Where no choice holds: size anew after each of the trade's remedies: fewer users, speed or held vacuum, a bleed at",
                "the far end of the slowest run. Takes that many searches more."
            })
    private boolean remedies;

    @Option(
            names = "--one-change",
            description = {
                "Choose nothing: for the plant as it stands, what any single change does by itself, one other size or speed.",
                "For an enlarged plant: will the pump do it, and if not, what is changed first?"
            })
    private boolean oneChange;

    @Option(
            names = "--resume",
            paramLabel = "FILE",
            description = {
                "Take up a search that was stopped: an answer of this command in JSON. Its design is proven anew first, and sets that",
                "were bad are asked first; nothing else in it is taken as shown."
            })
    private @Nullable Path resume;

    @Option(
            names = "--report",
            paramLabel = "FOLDER",
            description = "Also write size.html, size.pdf and size.json there.")
    private @Nullable Path report;

    @Mixin
    private OutputOptions output = new OutputOptions();

    @Override
    public Integer call() {
        Reading.Read reading = plantArgument.read();
        Plant plant = reading.plant();
        OpenSizes open = reading.open();
        if (open.choices().isEmpty() && !oneChange) {
            throw new BadInput(
                    "Nothing is open to choice in this plant file. Name what may be chosen, with prices, under"
                            + " \"sizing\"; docs/plant-file.md explains it.");
        }
        SizingRules rules = rules(plant);
        if (report != null) {
            ReportPdf.prepare(); // while the program is being ended it could not be loaded any more
        }
        SizeJson.Begun begun = begun(plant, open);
        Progress progress = new Progress(spec.commandLine().getErr(), "designs", 0);
        LastWords last = LastWords.within(minutes * MINUTE_s);
        Patience patience = new Patience(
                gap_percent / HUNDRED,
                Runtime.getRuntime().availableProcessors(),
                mostSets,
                last::stopped,
                progress::say,
                begun.learnt(),
                begun.options());
        try {
            return oneChange ? changes(reading, rules, patience, progress) : sizes(reading, rules, patience, progress);
        } finally {
            last.said();
        }
    }

    private int changes(Reading.Read reading, SizingRules rules, Patience patience, Progress progress) {
        OneChange.Changes changes = OneChange.of(reading.plant(), reading.open().choices(), rules, patience);
        List<Finding> inSheets = Study.openInSheets(reading.plant(), most(reading.plant()));
        progress.clear();
        print(
                output.json()
                        ? ChangesJson.of(reading.plant(), reading.open(), changes, inSheets)
                        : ChangesText.of(
                                reading.plant(),
                                reading.open(),
                                changes,
                                inSheets,
                                output.units(reading),
                                Terminal.width()));
        return changes.holdsNow() && inSheets.isEmpty() ? ExitCode.HOLDS : ExitCode.DOES_NOT_HOLD;
    }

    private int sizes(Reading.Read reading, SizingRules rules, Patience patience, Progress progress) {
        Plant plant = reading.plant();
        OpenSizes open = reading.open();
        Optional<Curve> along = curve
                ? Optional.of(Curve.of(plant, open.choices(), most(plant), n -> rules(plant, n), patience))
                : Optional.empty();
        Sizing sizing = along.map(c -> c.points().get(c.points().size() - 1).sizing())
                .orElseGet(() -> Search.of(plant, open.choices(), rules, patience));
        List<Escape> escapes = remedies ? Escape.of(plant, open.choices(), rules, sizing, patience) : List.of();
        progress.clear();
        SizeBesides besides = new SizeBesides(
                along,
                escapes,
                sizing.best()
                        .map(best -> Study.openInSheets(best.plant(), most(plant)))
                        .orElse(List.of()));
        Question question = rules.question(plant);
        print(
                output.json()
                        ? SizeJson.of(plant, open, sizing, besides)
                        : SizeText.of(plant, open, question, sizing, besides, output.units(reading), Terminal.width()));
        if (write != null && sizing.best().isPresent()) {
            written(open, sizing.best().get(), write);
        }
        if (report != null) {
            Show show = new Show(output.units(reading));
            SizeWords words = new SizeWords(plant, open, question, sizing, show);
            reported(
                    SizePage.of(plant, open, sizing, besides, words, show),
                    SizeJson.of(plant, open, sizing, besides),
                    PaperSize.of(output.units(reading)),
                    report);
        }
        return sizing.best().isPresent() && besides.openInSheets().isEmpty() ? ExitCode.HOLDS : ExitCode.DOES_NOT_HOLD;
    }

    private void print(String text) {
        spec.commandLine().getOut().println(text.stripTrailing());
        spec.commandLine().getOut().flush();
    }

    private void reported(SizePage page, String json, PaperSize paper, Path folder) {
        try {
            NewFile.write(folder, PaperKinds.sizing(page, json, paper));
        } catch (IOException fault) {
            throw new BadInput("The pages could not be written to " + folder.toAbsolutePath() + ": "
                    + NewFile.reason(fault) + ".");
        }
        print("Written: " + folder.resolve("size.html") + ", size.pdf, size.json");
    }

    private SizeJson.Begun begun(Plant plant, OpenSizes open) {
        if (resume == null) {
            return new SizeJson.Begun(List.of(), List.of());
        }
        try {
            return SizeJson.begun(Files.readString(resume), plant, open);
        } catch (IOException unreadable) {
            throw new BadInput("--resume " + resume + " could not be read.");
        } catch (IllegalArgumentException notOurs) {
            throw new BadInput("--resume " + resume + ": " + notOurs.getMessage() + ".");
        }
    }

    private int most(Plant plant) {
        return users == null ? plant.usage().simultaneousUsers() : users;
    }

    private SizingRules rules(Plant plant) {
        int most = most(plant);
        if (most < 1 || most > plant.inlets().size()) {
            throw new BadInput(
                    "--users " + most + ": there are 1 to " + plant.inlets().size() + " inlets to open.");
        }
        if (!(gap_percent >= 0 && gap_percent < HUNDRED)) {
            throw new BadInput("--gap " + gap_percent + ": say a share of the cost from 0 to below 100 percent.");
        }
        if (mostSets < 1) {
            throw new BadInput("--most-sets " + mostSets + ": say how many sets may be solved one by one, 1 or more.");
        }
        if (!(minutes > 0)) {
            throw new BadInput("--minutes " + minutes + ": say a time greater than 0.");
        }
        if (oneChange && (curve || remedies || write != null || report != null)) {
            throw new BadInput("--one-change answers by itself: leave out --curve, --remedies, --write and --report.");
        }
        return rules(plant, most);
    }

    private SizingRules rules(Plant plant, int most) {
        Map<String, Integer> limits = switch (zones) {
            case "on" -> Question.zonesOf(plant);
            case "off" -> Map.of();
            default -> throw new BadInput("--zones " + zones + ": say on or off.");
        };
        return new SizingRules(
                IntStream.rangeClosed(1, most).boxed().toList(),
                limits,
                List.of(FilterCondition.CLEAN, FilterCondition.DIRTY));
    }

    // ---- the plant file with its sizes

    private void written(OpenSizes open, Design best, Path to) {
        String text = plantArgument.text();
        for (int v = 0; v < open.choices().size(); v++) {
            text = with(text, open.choices().get(v), best.options().get(v));
        }
        String sized = text;
        try {
            NewFile.write(to, out -> out.write(sized.getBytes(StandardCharsets.UTF_8)));
        } catch (IOException fault) {
            throw new BadInput("The plant file could not be written to " + to + ": " + NewFile.reason(fault) + ".");
        }
        spec.commandLine().getOut().println("Written: " + to);
    }

    private static String with(String text, Choice choice, String option) {
        String edited = text;
        if (choice instanceof Choice.Tubes tubes) {
            for (String run : tubes.runs()) {
                edited = set(edited, "runs." + run + ".tube", option);
            }
        } else if (choice instanceof Choice.Hoses hoses) {
            for (String inlet : hoses.inlets()) {
                edited = set(edited, "inlets." + inlet + ".hose", option);
            }
        } else if (choice instanceof Choice.Producers producers) {
            for (Choice.Priced candidate : producers.options()) {
                String path = "stations." + producers.id() + ".producers." + candidate.id();
                edited = standby(edited, path, !candidate.id().equals(option));
            }
        } else if (choice instanceof Choice.Cloth cloth) {
            int n = cloth.options().stream().map(Choice.Priced::id).toList().indexOf(option);
            edited = set(
                    edited,
                    "stations." + cloth.id() + ".filter.cloth",
                    cloth.areas().get(n).squareMetres() + " m2");
        }
        return edited;
    }

    private static String standby(String text, String path, boolean standsBy) {
        PlantEditor.Value value = new PlantEditor.Value.Plain(standsBy ? "yes" : "no");
        PlantEditor.Edit edit = PlantEditor.set(text, path + ".standby", value);
        if (!(edit instanceof PlantEditor.Edit.Done)) {
            edit = PlantEditor.add(text, path, "standby", value);
        }
        return done(edit);
    }

    private static String set(String text, String path, String value) {
        return done(PlantEditor.set(text, path, new PlantEditor.Value.Plain(value)));
    }

    private static String done(PlantEditor.Edit edit) {
        if (edit instanceof PlantEditor.Edit.Done done) {
            return done.text();
        }
        throw new BadInput(
                "The sizes could not be written: " + ((PlantEditor.Edit.Refused) edit).why() + ". Enter them by hand.");
    }
}
