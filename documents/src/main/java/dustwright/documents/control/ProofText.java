package dustwright.documents.control;

import dustwright.documents.writing.Figures;
import dustwright.documents.writing.Wording;
import dustwright.engine.interlock.FaultTable;
import dustwright.engine.interlock.Proof;
import dustwright.engine.interlock.Property;
import dustwright.engine.interlock.Sequence;
import dustwright.engine.interlock.Story;
import dustwright.engine.interlock.Times;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What a proof came to, in lines for a terminal. */
public final class ProofText {
    /** What a proof of a model is not. */
    public static final String CAUTION =
            "This judges the model under the assumptions named, not the plant, the wiring, the valve or the person. It is a"
                    + " design aid: the risk assessment sets what must be reached, and tests on the finished panel show whether it is. Local code,"
                    + " the authority having jurisdiction and a licensed engineer decide.";

    private static final int NARROWEST = 60;
    private static final String FURTHER = "  ";

    private final StringBuilder text = new StringBuilder();

    private final int width;

    private ProofText(int width) {
        this.width = Math.max(width, NARROWEST);
    }

    /**
     * The proof in lines.
     *
     * @param logic whether each property is also printed in logic
     * @param width signs in a line
     */
    public static String of(Proof proof, boolean logic, int width) {
        ProofText writer = new ProofText(width);
        writer.head(proof);
        boolean first = !proof.holds() && !proof.unjudged().isEmpty();
        if (first) {
            writer.line("");
            writer.line(
                    "Read first: the sequence has names that the properties do not know. What follows judges the names they know;"
                            + " where a device was given another name, give it its own back.");
            writer.names(proof);
        }
        for (Property.Kind kind : Property.Kind.values()) {
            writer.kind(proof, kind, logic);
        }
        writer.times(proof);
        writer.rest(proof);
        if (!first) {
            writer.names(proof);
        }
        writer.line("");
        writer.line(CAUTION);
        return writer.text.toString();
    }

    /** What stands above the table of device faults. */
    public static String faultsHead(int count, int width) {
        ProofText writer = new ProofText(width);
        writer.line("");
        writer.line("One device breaks at any time and stays broken: what it defeats, and how it is noticed; "
                + Wording.counted(count, "fault", "faults") + ", every state is visited for each");
        return writer.text.toString();
    }

    /** One device fault in lines. */
    public static String fault(FaultTable.Row row, int width) {
        ProofText writer = new ProofText(width);
        writer.line("  " + row.fault().words());
        writer.line("      defeats: " + Lists.defeats(row));
        writer.line("      " + row.fault().test());
        return writer.text.toString();
    }

    private void head(Proof proof) {
        line(proof.sequence().title());
        line(grouped(proof.states()) + " states, all of them visited; " + grouped(proof.scans())
                + " scans carried out; up to "
                + Wording.counted(proof.mostEvents(), "event", "events") + " and "
                + Wording.counted(proof.mostBad(), "bad contact", "bad contacts") + " in one scan");
        long hold = proof.verdicts().stream().filter(Proof.Verdict::holds).count();
        line(hold + " of " + proof.verdicts().size() + " properties hold; "
                + proof.times().stream().filter(Times.Judged::holds).count() + " of "
                + proof.times().size()
                + " times are as is usual");
    }

    private void kind(Proof proof, Property.Kind kind, boolean logic) {
        List<Proof.Verdict> verdicts = proof.verdicts().stream()
                .filter(v -> v.property().kind() == kind)
                .toList();
        if (verdicts.isEmpty()) {
            return;
        }
        line("");
        line(kind.words());
        for (Proof.Verdict verdict : verdicts) {
            line("  " + (verdict.holds() ? "holds  " : "BROKEN ")
                    + verdict.property().words() + " [" + verdict.property().id() + "]"
                    + (verdict.without().isEmpty()
                            ? ""
                            : "; not judged, since there is no such contact: " + String.join(", ", verdict.without())));
            if (logic) {
                line("           " + verdict.property().logic());
            }
            story(verdict.story());
        }
    }

    /** The search lets every time end in any scan; how long they are is judged here, and what follows for the reaction. */
    private void times(Proof proof) {
        line("");
        line("times, which the search leaves open; ranges are common practice without a published source");
        proof.times().stream().filter(t -> !t.holds()).forEach(t -> line("  OUTSIDE " + t.words()));
        if (proof.times().stream().allMatch(Times.Judged::holds)) {
            line("  holds  All " + proof.times().size() + " times, numbers and orders among them are as is usual");
        }
        line(
                "  Longest time from what brings a cause about until the outputs follow, two scans included, without the travel of devices:");
        Times.reactions(proof.sequence()).stream()
                .collect(Collectors.groupingBy(Times.Reaction::time_s, TreeMap::new, Collectors.toList()))
                .forEach((time_s, alike) -> line("    " + Lists.seconds(Lists.tenths(time_s)) + ": "
                        + alike.stream().map(Times.Reaction::message).collect(Collectors.joining("; "))));
    }

    private void rest(Proof proof) {
        line("");
        proof.stepsNeverReached().forEach(s -> line("BROKEN step " + s + " is never reached, whatever happens"));
        if (!proof.timelessLoop().isEmpty()) {
            line("BROKEN the steps " + String.join(", ", proof.timelessLoop())
                    + " follow each other for ever although nothing happens and no time passes");
        }
        if (proof.deadEnd().scans().isEmpty()) {
            line(
                    "holds  From every state vacuuming is regained when contacts are good again and a person presses what the lamps ask for");
        } else {
            line(
                    "BROKEN From this state vacuuming is not regained, though all contacts are good and a person follows the lamps");
            story(proof.deadEnd());
        }
        if (proof.cakedForEver().scans().isEmpty()) {
            line(
                    "holds  A filter drop that stays too high until the filters are cleaned: START leads to the cleaning and back to vacuuming");
        } else {
            line(
                    "BROKEN From this state START is accepted again and again while the filter drop stays too high, and the filters are never cleaned");
            story(proof.cakedForEver());
        }
        counts(proof);
        if (!proof.doNotApply().isEmpty()) {
            line("Not judged, since the sequence has no such device: "
                    + proof.doNotApply().stream().map(Property::id).collect(Collectors.joining(", ")));
        }
    }

    private void names(Proof proof) {
        if (!proof.absent().isEmpty()) {
            line(
                    "Properties also speak of these, which the sequence does not have under that name; what is not there is taken as healthy, never pressed, never"
                            + " on: " + String.join(", ", proof.absent()));
        }
        if (!proof.unjudged().isEmpty()) {
            line(
                    "No property speaks of these contacts, outputs and lamps, so nothing is proven of what they are for (of such an output only that it is off after an emergency stop and at rest): "
                            + String.join(", ", proof.unjudged()));
        }
    }

    /** What is counted is judged where a property knows the count by its name; the window it is counted in is not. */
    private void counts(Proof proof) {
        String logic = proof.verdicts().stream().map(v -> v.property().logic()).collect(Collectors.joining(" "));
        List<String> counts = proof.sequence().rules().stream()
                .filter(r -> r instanceof Sequence.Rule.Times)
                .map(Sequence.Rule::name)
                .toList();
        if (counts.isEmpty()) {
            return;
        }
        String unknown =
                counts.stream().filter(n -> !logic.contains("event_" + n)).collect(Collectors.joining(", "));
        line("Not judged: that counts are forgotten when they should"
                + (unknown.isEmpty() ? "" : ", and that these go up when they should: " + unknown)
                + ". The search takes every count as full or not in any scan, and judges what goes up and what follows from"
                + " it. Try them in a rehearsal and on the finished panel: " + String.join(", ", counts));
    }

    private void story(Story story) {
        for (int i = 0; i < story.scans().size(); i++) {
            Story.Scan scan = story.scans().get(i);
            String happens = scan.happens().isEmpty() ? "a scan passes" : String.join("; ", scan.happens());
            String changes = scan.changes().isEmpty() ? "" : "  -> " + String.join(", ", scan.changes());
            line("         " + (i + 1) + ". " + happens + "  [" + scan.step() + "]" + changes);
        }
    }

    /** A count in thousands as on paper, with a space a terminal shows. */
    private static String grouped(long count) {
        return Figures.count(count).replace('\u202F', ' ');
    }

    /** A line wrapped at spaces; what follows is set in a little further than its beginning. */
    private void line(String line) {
        String indent = " ".repeat(line.length() - line.stripLeading().length());
        StringBuilder out = new StringBuilder(indent);
        boolean empty = true;
        for (String word : line.stripLeading().split(" ", -1)) {
            if (!empty && out.length() + 1 + word.length() > width) {
                text.append(out.toString().stripTrailing()).append('\n');
                out = new StringBuilder(indent).append(FURTHER);
                empty = true;
            }
            out.append(empty ? "" : " ").append(word);
            empty = false;
        }
        text.append(out.toString().stripTrailing()).append('\n');
    }
}
