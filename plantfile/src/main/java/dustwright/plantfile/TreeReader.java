package dustwright.plantfile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.events.SequenceStartEvent;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.ReaderException;
import org.yaml.snakeyaml.reader.StreamReader;
import org.yaml.snakeyaml.scanner.ScannerException;

/**
 * Makes a {@link Tree} from YAML events. What a plant file has no use for is refused where it stands: anchors and aliases (an alias bomb
 * never unfolds), tags, a second document, keys that are not words, nesting without end.
 */
final class TreeReader {
    /** A plant file nests six deep; this leaves room and keeps the stack small. */
    private static final int DEEPEST = 20;

    private static final Last LAST = new Last();

    private final String beginning;
    private final Parser parser;
    private final Offsets offsets;
    private final List<Fault> faults = new ArrayList<>();

    private TreeReader(String text, String beginning) {
        this.beginning = beginning;
        LoaderOptions options = new LoaderOptions();
        options.setProcessComments(false);
        options.setCodePointLimit(Integer.MAX_VALUE);
        parser = new ParserImpl(new StreamReader(text), options);
        offsets = new Offsets(text);
    }

    /** The tree of a plant file, absent when the text is not a YAML mapping; faults are added to the list. */
    static Optional<Tree.Entries> read(String text, Faults faults) {
        return read(text, "dustwright: 1", faults);
    }

    /** The tree of a file that begins as said, absent when the text is not a YAML mapping; faults are added to the list. */
    static Optional<Tree.Entries> read(String text, String beginning, Faults faults) {
        Optional<Tree.Entries> known = LAST.of(text);
        if (known.isPresent()) {
            return known;
        }
        try {
            TreeReader reader = new TreeReader(text, beginning);
            Optional<Tree> tree = reader.document();
            reader.faults.forEach(faults::add);
            if (tree.isEmpty()) {
                return Optional.empty();
            }
            if (tree.get() instanceof Tree.Entries top) {
                if (reader.faults.isEmpty()) {
                    LAST.keep(text, top);
                }
                return Optional.of(top);
            }
            Span span = tree.get().span();
            faults.add(new Fault(
                    span.line(),
                    span.column(),
                    "",
                    "the file holds " + tree.get().words() + " at the top",
                    "keys and values, beginning with \"" + beginning + "\"",
                    Optional.empty()));
            return Optional.empty();
        } catch (Refused refused) {
            faults.add(refused.fault);
        } catch (MarkedYAMLException e) {
            faults.add(syntax(text, e));
        } catch (ReaderException e) {
            faults.add(unprintable(text, e));
        } catch (YAMLException e) {
            faults.add(new Fault(0, 0, "", "not valid YAML: " + firstLine(e.getMessage()), "", Optional.empty()));
        }
        return Optional.empty();
    }

    /** The last texts without a fault with their trees, which nobody changes: an edit reads the text before and the text after several times. */
    private static final class Last {
        private static final int KEPT = 4;
        private static final int LONGEST = 1_000_000;

        private final Map<String, Tree.Entries> trees = new LinkedHashMap<>();

        synchronized Optional<Tree.Entries> of(String text) {
            return Optional.ofNullable(trees.get(text));
        }

        synchronized void keep(String text, Tree.Entries tree) {
            if (text.length() > LONGEST) {
                return;
            }
            trees.put(text, tree);
            if (trees.size() > KEPT) {
                trees.remove(trees.keySet().iterator().next());
            }
        }
    }

    private Optional<Tree> document() {
        parser.getEvent();
        if (parser.checkEvent(Event.ID.StreamEnd)) {
            faults.add(new Fault(
                    1, 1, "", "the file is empty", "a file beginning with \"" + beginning + "\"", Optional.empty()));
            return Optional.empty();
        }
        parser.getEvent();
        Tree tree = node(0);
        parser.getEvent();
        if (!parser.checkEvent(Event.ID.StreamEnd)) {
            Event more = parser.peekEvent();
            throw refuse(more, "a second document in one file", "one document in one file");
        }
        return Optional.of(tree);
    }

    private Tree node(int depth) {
        Event event = parser.getEvent();
        if (depth > DEEPEST) {
            throw refuse(event, "nested more than " + DEEPEST + " deep", "a file as the key reference shows it");
        }
        if (event.is(Event.ID.Alias)) {
            throw refuse(event, "an alias (*name)", "the value itself: these files do without anchors and aliases");
        }
        if (((NodeEvent) event).getAnchor() != null) {
            throw refuse(event, "an anchor (&name)", "the value itself: these files do without anchors and aliases");
        }
        if (event instanceof ScalarEvent scalar) {
            return scalar(scalar);
        }
        if (event instanceof SequenceStartEvent list) {
            refuseTag(list, list.getTag());
            return items(list, depth);
        }
        MappingStartEvent mapping = (MappingStartEvent) event;
        refuseTag(mapping, mapping.getTag());
        return entries(mapping, depth);
    }

    private Tree.Scalar scalar(ScalarEvent event) {
        refuseTag(event, event.getTag());
        return new Tree.Scalar(event.getValue(), event.isPlain(), span(event.getStartMark(), event.getEndMark()));
    }

    private Tree items(SequenceStartEvent start, int depth) {
        List<Tree> items = new ArrayList<>();
        while (!parser.checkEvent(Event.ID.SequenceEnd)) {
            items.add(node(depth + 1));
        }
        Event end = parser.getEvent();
        return new Tree.Items(List.copyOf(items), start.isFlow(), span(start.getStartMark(), end.getEndMark()));
    }

    private Tree entries(MappingStartEvent start, int depth) {
        Map<String, Tree.Entry> entries = new LinkedHashMap<>();
        while (!parser.checkEvent(Event.ID.MappingEnd)) {
            Event keyEvent = parser.peekEvent();
            if (!(node(depth + 1) instanceof Tree.Scalar key)) {
                throw refuse(keyEvent, "a key that is itself a list or mapping", "a word as key");
            }
            Tree value = node(depth + 1);
            Tree.Entry earlier = entries.putIfAbsent(key.text(), new Tree.Entry(key, value));
            if (earlier != null) {
                faults.add(new Fault(
                        key.span().line(),
                        key.span().column(),
                        key.text(),
                        "\"" + Names.shortened(key.text()) + "\" stands here a second time; the first is on line "
                                + earlier.key().span().line(),
                        "each key and each id once",
                        Optional.empty()));
            }
        }
        Event end = parser.getEvent();
        return new Tree.Entries(
                List.copyOf(entries.values()), start.isFlow(), span(start.getStartMark(), end.getEndMark()));
    }

    private Span span(Mark start, Mark end) {
        return new Span(
                start.getLine() + 1, start.getColumn() + 1, offsets.of(start.getIndex()), offsets.of(end.getIndex()));
    }

    private void refuseTag(Event event, @Nullable String tag) {
        if (tag != null && !tag.equals("!")) {
            throw refuse(event, "a tag (" + Names.shortened(tag) + ")", "the plain value: these files do without tags");
        }
    }

    private static Refused refuse(Event event, String message, String expected) {
        Mark mark = event.getStartMark();
        return new Refused(
                new Fault(mark.getLine() + 1, mark.getColumn() + 1, "", message, expected, Optional.empty()));
    }

    private static Fault unprintable(String text, ReaderException e) {
        int at = Math.min(new Offsets(text).of(e.getPosition()), text.length());
        String before = text.substring(0, at);
        return new Fault(
                (int) before.chars().filter(c -> c == '\n').count() + 1,
                at - before.lastIndexOf('\n'),
                "",
                String.format(Locale.ROOT, "a character that YAML does not allow, U+%04X", e.getCodePoint()),
                "printable text",
                Optional.empty());
    }

    private static Fault syntax(String text, MarkedYAMLException e) {
        Mark mark = e.getProblemMark() == null ? e.getContextMark() : e.getProblemMark();
        int line = mark == null ? 0 : mark.getLine() + 1;
        int column = mark == null ? 0 : mark.getColumn() + 1;
        boolean tab = mark != null && e instanceof ScannerException && characterAt(text, mark) == '\t';
        String problem = e.getProblem() == null ? "cannot be read" : firstLine(e.getProblem());
        return tab
                ? new Fault(
                        line, column, "", "a tab character", "spaces: YAML indents with spaces only", Optional.empty())
                : new Fault(line, column, "", "not valid YAML: " + inWords(problem), "", Optional.empty());
    }

    /** What the parser calls a token, as people call it. */
    private static String inWords(String problem) {
        return problem.replace("<scalar>", "a further word: is a bracket or a comma missing before it?")
                .replace("<block end>", "the end of this part")
                .replace("<document end>", "the end of the file")
                .replace("<stream end>", "the end of the file")
                .replace("<block mapping start>", "a key")
                .replace("<block sequence start>", "a list");
    }

    private static char characterAt(String text, Mark mark) {
        int at = new Offsets(text).of(mark.getIndex());
        return at < text.length() ? text.charAt(at) : ' ';
    }

    private static String firstLine(@Nullable String message) {
        return message == null
                ? ""
                : Names.shortenedTo(message.lines().findFirst().orElse(""), 120);
    }

    /** A construct that ends the reading, with the fault to report. */
    private static final class Refused extends RuntimeException {
        private static final long serialVersionUID = 1;
        private final transient Fault fault;

        Refused(Fault fault) {
            super(fault.text(), null, false, false);
            this.fault = fault;
        }
    }
}
