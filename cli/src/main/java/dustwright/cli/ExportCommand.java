package dustwright.cli;

import dustwright.documents.control.Lists;
import dustwright.documents.papers.PaperKinds;
import dustwright.documents.report.PaperSize;
import dustwright.engine.interlock.DeviceFault;
import dustwright.engine.interlock.Sequence;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes what a panel builder and a programmer need. */
@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        header = "Write a control sequence as papers, workbook, program and model.",
        description = {
            "",
            "Into FOLDER: control.html and control.pdf (operations in sentences, steps, matrix, signals, alarms, times, shop test),",
            "control.xlsx (the tables), sequence.st (Structured Text after IEC 61131-3), sequence.xml (the same block as PLCopen TC6 XML),",
            "steps.svg, model.pml (for SPIN). All of it is made from the sequence, the same bytes each time but for the PDF's date;",
            "none of it is a certified safety design.",
            "",
            "  dustwright export examples/bakery/plant.yaml --out bakery-control",
            "  dustwright export examples/bakery/plant.yaml --faults --out bakery-control",
            ""
        })
final class ExportCommand implements Callable<Integer> {
    @SuppressWarnings("NullAway.Init")
    @Spec
    private CommandLine.Model.CommandSpec spec;

    @Mixin
    private SequenceArgument argument = new SequenceArgument();

    @Option(names = "--out", paramLabel = "FOLDER", description = "Where the files go. Default: the folder you are in.")
    private Path folder = Path.of("");

    @Option(
            names = "--faults",
            description =
                    "Also on paper and in the workbook: what is proven, and which single device that breaks defeats"
                            + " which property; every state is visited for each, which takes a minute or two.")
    private boolean faults;

    @Override
    public Integer call() {
        Sequence sequence = argument.read();
        try {
            NewFile.write(folder, PaperKinds.control(sequence, besides(sequence), PaperSize.of(argument.units())));
        } catch (IOException fault) {
            throw new BadInput("The files could not be written to " + folder.toAbsolutePath() + ": "
                    + NewFile.reason(fault) + ".");
        }
        spec.commandLine()
                .getOut()
                .println("Written to " + folder.toAbsolutePath()
                        + ": control.html, control.pdf, control.xlsx, sequence.st, sequence.xml, steps.svg, model.pml");
        return ExitCode.HOLDS;
    }

    private List<Lists.Rows> besides(Sequence sequence) {
        if (!faults) {
            return List.of();
        }
        Progress progress = new Progress(
                spec.commandLine().getErr(),
                "device faults",
                DeviceFault.of(sequence).size());
        List<Lists.Rows> tables = PaperKinds.faults(sequence, progress::done);
        progress.clear();
        return tables;
    }
}
