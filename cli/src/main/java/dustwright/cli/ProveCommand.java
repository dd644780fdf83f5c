package dustwright.cli;

import dustwright.documents.control.ProofText;
import dustwright.engine.interlock.DeviceFault;
import dustwright.engine.interlock.FaultTable;
import dustwright.engine.interlock.Proof;
import dustwright.engine.interlock.Sequence;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Visits every state a sequence can reach. */
@Command(
        name = "prove",
        mixinStandardHelpOptions = true,
        header = "Visit every state a control sequence can reach, and judge each by what must never happen.",
        description = {
            "",
            "The plant may do anything at any scan: probes, contacts, buttons, loss of power, times out early or late. What",
            "does not hold is told as the shortest story that leads to it.",
            "",
            "  dustwright prove examples/bakery/plant.yaml",
            "  dustwright prove bakery-sequence.yaml --faults",
            ""
        })
final class ProveCommand implements Callable<Integer> {
    @SuppressWarnings("NullAway.Init")
    @Spec
    private CommandLine.Model.CommandSpec spec;

    @Mixin
    private SequenceArgument argument = new SequenceArgument();

    @Option(
            names = "--bad",
            paramLabel = "1|2",
            description = "How many contacts may be bad in one scan, besides one event. Default: 1.")
    private int bad = 1;

    @Option(names = "--pairs", description = "Two events and two bad contacts in one scan; takes minutes.")
    private boolean pairs;

    @Option(names = "--faults", description = "Also: which single device that breaks defeats which property.")
    private boolean faults;

    @Option(names = "--logic", description = "Print each property in logic too.")
    private boolean logic;

    @Override
    public Integer call() {
        Sequence sequence = argument.read();
        Proof proof = Proof.of(sequence, adversary());
        tell(ProofText.of(proof, logic, Terminal.width()));
        if (faults) {
            tell(ProofText.faultsHead(DeviceFault.of(sequence).size(), Terminal.width()));
            FaultTable.of(sequence, row -> tell(ProofText.fault(row, Terminal.width())));
        }
        return proof.holds() ? ExitCode.HOLDS : ExitCode.DOES_NOT_HOLD;
    }

    /** At once, since what follows may take a while. */
    private void tell(String lines) {
        spec.commandLine().getOut().print(lines);
        spec.commandLine().getOut().flush();
    }

    private Proof.Adversary adversary() {
        if (bad != 1 && bad != 2) {
            throw new BadInput("--bad " + bad + ": say 1 or 2.");
        }
        return pairs ? Proof.Adversary.PAIRS : bad == 2 ? Proof.Adversary.TWO_BAD : Proof.Adversary.PLAIN;
    }
}
