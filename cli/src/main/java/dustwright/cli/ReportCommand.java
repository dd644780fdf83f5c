package dustwright.cli;

import dustwright.documents.hazard.HazardLists;
import dustwright.documents.papers.Paper;
import dustwright.documents.papers.PaperKinds;
import dustwright.documents.report.PaperSize;
import dustwright.documents.report.Report;
import dustwright.documents.report.ReportPdf;
import dustwright.documents.writing.Show;
import dustwright.engine.Study;
import dustwright.engine.finding.Finding;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.UnitSystem;
import dustwright.plantfile.Reading;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes the report, as a page and as a PDF. */
@Command(
        name = "report",
        mixinStandardHelpOptions = true,
        header = "Write the report one hands to a colleague: a page and a PDF.",
        description = {
            "",
            "Checks the same states as verify and writes report.html, report.pdf and drawing.svg into FOLDER. The page",
            "needs no network. Files already there are replaced only when the new ones are complete.",
            "",
            "  dustwright report examples/bakery/plant.yaml --out bakery",
            ""
        })
final class ReportCommand implements Callable<Integer> {
    @SuppressWarnings("NullAway.Init")
    @Spec
    private CommandLine.Model.CommandSpec spec;

    @Mixin
    private PlantArgument plantArgument = new PlantArgument();

    @Mixin
    private StateOptions states = new StateOptions();

    @Option(
            names = "--units",
            paramLabel = "us|si",
            description = "Units of the report. Default: what the plant file asks for.")
    private @Nullable String units;

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Where the files go; made if it is not there. Default: the folder you are in.")
    private Path folder = Path.of("");

    @Option(
            names = "--paper",
            paramLabel = "a4|letter",
            description = "Paper of the PDF. Default: letter for US units, A4 for SI.")
    private @Nullable String paper;

    @Override
    public Integer call() {
        Reading.Read reading = plantArgument.read();
        ReportPdf.prepare();
        Plant plant = reading.plant();
        UnitSystem system = units == null ? reading.units() : OutputOptions.units(units);
        PaperSize size = paper(system);
        Study study = Asking.study(plant, states, spec.commandLine().getErr(), Study::withSheetsAndCurves);
        Report report = Report.of(study, new Show(system), plantArgument.origin());
        try {
            Files.createDirectories(folder);
            List<Paper> papers = PaperKinds.report(report, size);
            CompletableFuture<Void> page = CompletableFuture.runAsync(() -> page(papers));
            NewFile.write(folder, papers.stream().filter(ReportCommand::isPdf).toList());
            page.join();
        } catch (CompletionException pageFailed) {
            if (pageFailed.getCause() instanceof UncheckedIOException io && io.getCause() != null) {
                throw cannotWrite(io.getCause());
            }
            throw pageFailed;
        } catch (IOException pdfFailed) {
            throw cannotWrite(pdfFailed);
        }
        spec.commandLine()
                .getOut()
                .println(conclusion(study) + "Written: " + folder.resolve("report.html") + " and "
                        + folder.resolve("report.pdf"));
        return study.holds() ? ExitCode.HOLDS : ExitCode.DOES_NOT_HOLD;
    }

    /** The page and its drawing, written while the PDF is. */
    private void page(List<Paper> papers) {
        try {
            NewFile.write(folder, papers.stream().filter(p -> !isPdf(p)).toList());
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private static boolean isPdf(Paper paper) {
        return paper.name().endsWith(".pdf");
    }

    private static String conclusion(Study study) {
        if (!study.holds()) {
            boolean fails = study.findings().anyMatch(Finding::fails);
            return "Something " + (fails ? "does not hold" : "is not known") + ": see the first page. ";
        }
        return study.worstFirst().isEmpty()
                ? "Nothing is asked of it. "
                : "Everything asked holds. "
                        + HazardLists.untested(study.plant())
                                .map(words -> words + " ")
                                .orElse("");
    }

    private BadInput cannotWrite(IOException fault) {
        return new BadInput("The report could not be written to " + folder.toAbsolutePath() + ": "
                + NewFile.reason(fault) + ". Free space or give another folder with --out.");
    }

    private PaperSize paper(UnitSystem system) {
        if (paper == null) {
            return PaperSize.of(system);
        }
        return switch (paper.toLowerCase(Locale.ROOT)) {
            case "a4" -> PaperSize.A4;
            case "letter" -> PaperSize.LETTER;
            default -> throw new BadInput("--paper " + paper + ": say a4 or letter.");
        };
    }
}
