package dustwright.studio;

import dustwright.engine.plant.Plant;
import dustwright.plantfile.Fault;
import dustwright.plantfile.PlantEditor;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.Reading;
import dustwright.studio.Kept.Alternative;
import dustwright.studio.Kept.Left;
import dustwright.studio.Kept.Revision;
import dustwright.studio.Kept.Step;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One plant on the desk: its working copy as text, what the text says, and the way back. Every change makes a new version; a change that
 * was thought out on an older one is refused, so that nobody overwrites another silently.
 */
final class Desk implements AutoCloseable {
    /** Letters of what a step did, where it is told. */
    private static final int SHORT = 120;

    private final Path file;
    private final Path folder;
    private final Kept kept;
    private final Clock clock;
    private Copy copy;

    /**
     * The working copy.
     *
     * @param reading what the text says; while it has faults, what it last said without
     * @param faults what is wrong in the text now
     * @param at the step one stands on
     * @param left how many steps that had been taken back it left behind
     */
    record Copy(Step at, Reading.@Nullable Read reading, List<Fault> faults, int left) {
        Copy {
            faults = List.copyOf(faults);
        }

        int step() {
            return at.number();
        }

        long version() {
            return at.version();
        }

        String text() {
            return at.text();
        }

        Optional<Plant> plant() {
            return Optional.ofNullable(reading).map(Reading.Read::plant);
        }
    }

    /** What a change was thought out on, and by whom; nobody's name where nobody signs in. */
    record On(long version, String by) {}

    /**
     * What a change came to: the new copy, or why there is none.
     *
     * @param whose name to be given where the step of somebody else is meant to be taken back; else empty
     */
    record Changed(Copy copy, Optional<String> why, boolean stale, String whose) {
        Changed(Copy copy, Optional<String> why, boolean stale) {
            this(copy, why, stale, "");
        }
    }

    private Desk(Path file, Kept kept, Clock clock, Copy copy) {
        this.file = file;
        this.folder = Optional.ofNullable(file.toAbsolutePath().getParent()).orElse(file);
        this.kept = kept;
        this.clock = clock;
        this.copy = copy;
    }

    /**
     * Puts a plant file on the desk where it was left; if the file was changed outside since, its text is the next step. Of two studios
     * that open a plant at once the second finds what the first one kept.
     */
    static Desk open(Path file, Kept kept, Clock clock) throws IOException {
        String outside = Files.readString(file);
        Desk desk = new Desk(file, kept, clock, new Copy(new Step(0, 0, "", "", "", "", "", 0), null, List.of(), 0));
        if (kept.version() == 0) {
            desk.take("", "opened", outside, PlantReader.read(outside, desk.folder), Optional.of(outside));
        }
        desk.copy();
        if (!outside.equals(kept.outside().orElse(""))) {
            desk.take(
                    "",
                    "read from the file, which was changed outside",
                    outside,
                    PlantReader.read(outside, desk.folder),
                    Optional.of(outside));
            desk.copy();
        }
        return desk;
    }

    /** The working copy as it is kept now, whichever studio changed it last. */
    synchronized Copy copy() {
        if (kept.version() != copy.version()) {
            copy = kept.now().map(this::read).orElse(copy);
        }
        return copy;
    }

    String fileName() {
        return String.valueOf(file.getFileName());
    }

    /** Where the plant file lies; what a team keeps beside it lies there too. */
    Path folder() {
        return folder;
    }

    /**
     * Replaces the value at a path of the plant file.
     *
     * @param was what a page showed when one began to type; another value there by now is not overwritten
     * @param plain where it is one text, not a list or a mapping
     */
    synchronized Changed set(On on, String path, Optional<String> was, String value, boolean plain) {
        if (on.version() != copy().version()) {
            return stale();
        }
        Optional<String> now = written(path);
        if (was.isPresent() && now.isPresent() && !was.equals(now)) {
            return new Changed(
                    copy,
                    Optional.of(
                            "Somebody set this to " + now.get()
                                    + " in the meantime. Nothing was overwritten: Enter again puts yours in its place, Esc leaves it."),
                    true);
        }
        return edited(
                on.by(),
                path + ": " + value,
                path,
                PlantEditor.set(
                        copy.text(),
                        path,
                        plain ? new PlantEditor.Value.Plain(value) : new PlantEditor.Value.Flow(value)));
    }

    /** Adds a part at a path, or takes one away. */
    synchronized Changed edit(On on, String what, String path, Function<String, PlantEditor.Edit> change) {
        return on.version() == copy().version() ? edited(on.by(), what, path, change.apply(copy.text())) : stale();
    }

    private Changed edited(String by, String what, String path, PlantEditor.Edit edit) {
        return edit instanceof PlantEditor.Edit.Done done
                ? checked(by, what, done.text(), Fault::text)
                : refused(path + ": " + ((PlantEditor.Edit.Refused) edit).why());
    }

    private Optional<String> written(String path) {
        return PlantEditor.values(copy.text(), path.substring(0, Math.max(0, path.lastIndexOf('.')))).stream()
                .filter(value -> value.path().equals(path))
                .map(PlantEditor.Written::text)
                .findFirst();
    }

    /** What a hand draws: all its edits are one step. */
    synchronized Changed draw(On on, String what, Consumer<Pencil> hand) {
        if (on.version() != copy().version()) {
            return stale();
        }
        if (!copy.faults().isEmpty()) {
            return refused("the text has faults: mend them before drawing on");
        }
        Pencil pencil = new Pencil(copy.text(), folder);
        try {
            hand.accept(pencil);
        } catch (Pencil.Cannot cannot) {
            return refused(cannot.why());
        }
        return checked(on.by(), what, pencil.text(), Pencil::drawn);
    }

    /** A change by hand must leave a plant that can be read. */
    private Changed checked(String by, String what, String text, Function<Fault, String> words) {
        Reading reading = PlantReader.read(text, folder);
        if (reading instanceof Reading.Faults wrong) {
            return refused(words.apply(wrong.faults().get(0)));
        }
        return taken(by, what, text, reading);
    }

    private Changed taken(String by, String what, String text, Reading reading) {
        return take(by, what, text, reading, Optional.empty()) ? new Changed(copy, Optional.empty(), false) : stale();
    }

    /** Takes the whole text as typed, faults and all: work in between is kept too. */
    synchronized Changed type(On on, String text) {
        if (on.version() != copy().version()) {
            return stale();
        }
        if (text.length() > PlantReader.LARGEST_bytes) {
            return refused("the text is larger than a plant file may be");
        }
        return text.equals(copy.text())
                ? new Changed(copy, Optional.empty(), false)
                : taken(on.by(), "typed", text, PlantReader.read(text, folder));
    }

    /**
     * One step back, or forth again. A step of somebody else is taken back on purpose only.
     *
     * @param over whose step is meant to be taken back, where it is somebody else's
     */
    synchronized Changed walk(On on, int steps, String over) {
        if (on.version() != copy().version()) {
            return stale();
        }
        Optional<Step> there = kept.step(copy.step() + steps);
        if (there.isEmpty()) {
            return refused(steps < 0 ? "there is no step before this one" : "there is no step after this one");
        }
        String author = copy.at().author();
        if (steps < 0 && !author.isEmpty() && !People.same(author, on.by()) && !People.same(author, over)) {
            return new Changed(
                    copy,
                    Optional.of("Step " + copy.step() + " was made by " + author + ": "
                            + shortened(copy.at().what()) + ". Nothing was taken back."),
                    false,
                    author);
        }
        Step step = there.get();
        Step next = new Step(
                step.number(),
                on.version() + 1,
                step.what(),
                step.text(),
                step.author(),
                step.at(),
                on.by(),
                step.floor());
        if (!kept.stand(on.version(), next)) {
            return stale();
        }
        copy = read(next);
        return new Changed(copy, Optional.empty(), false);
    }

    private static String shortened(String what) {
        return what.length() <= SHORT ? what : what.substring(0, SHORT) + "…";
    }

    /** Steps that were taken back and then left behind by another change, newest first. */
    List<Left> left() {
        return kept.left();
    }

    /** Makes a step that was left behind the next one, with the floor plan it had. */
    synchronized Changed takeUp(On on, long left) {
        if (on.version() != copy().version()) {
            return stale();
        }
        Optional<Kept.Held> held = kept.held(left);
        if (held.isEmpty()) {
            return refused("There is no such step that was left behind.");
        }
        String text = held.get().text();
        Step next = step(on.by(), "taken up again", text, held.get().floor());
        return take(next, reading(text), Optional.empty()) ? new Changed(copy, Optional.empty(), false) : stale();
    }

    /** What accepting came to: the revision, or why there is none. */
    record Accepted(Optional<Revision> revision, String why, boolean stale) {}

    /** Why the working copy can be no revision as it stands; empty where it can. */
    private String unacceptable() {
        if (!copy.faults().isEmpty()) {
            return "The text has faults: mend them first.";
        }
        return revisions().stream()
                .findFirst()
                .filter(last -> last.text().equals(copy.text()))
                .map(last -> "This is revision " + last.number() + " already: nothing was changed since.")
                .orElse("");
    }

    /** Makes the working copy a revision that nobody changes any more. */
    synchronized Accepted accept(long version, String author, String note) {
        boolean late = version != copy().version();
        String why = late ? "" : unacceptable();
        if (!why.isEmpty()) {
            return new Accepted(Optional.empty(), "Nothing was accepted. " + why, false);
        }
        Optional<Revision> revision = late ? Optional.empty() : kept.accept(version, now(), author, note, copy.text());
        return revision.isPresent()
                ? new Accepted(revision, "", false)
                : new Accepted(
                        revision,
                        "Nothing was accepted: the plant changed in the meantime. This page now shows it.",
                        true);
    }

    /** Signs a revision off, or refuses it with a reason; says why neither was done. */
    Optional<String> sign(long revision, String person, String note, boolean refused) {
        Optional<Revision> asked =
                revisions().stream().filter(r -> r.number() == revision).findFirst();
        if (asked.isEmpty()) {
            return Optional.of("There is no revision " + revision + ".");
        }
        if (People.same(asked.get().author(), person)) {
            return Optional.of("Whoever accepted a revision does not sign it off: somebody else does.");
        }
        if (refused && note.isBlank()) {
            return Optional.of("A revision is refused with a reason: write it into the note.");
        }
        return kept.sign(asked.get().number(), new Kept.Signed(person, now(), note, refused))
                ? Optional.empty()
                : Optional.of("You signed this revision off, or refused it, before; that stands.");
    }

    private String now() {
        return Instant.now(clock).truncatedTo(ChronoUnit.SECONDS).toString();
    }

    List<Revision> revisions() {
        return kept.revisions();
    }

    /** What changed since the last accepted revision. */
    Since since() {
        return revisions().stream()
                .findFirst()
                .map(revision -> Since.of(revision, copy().text()))
                .orElse(Since.NEVER);
    }

    /** Keeps the working copy by a name, or says why not. */
    synchronized Optional<String> keepAs(long version, String name) {
        if (version != copy().version()) {
            return stale().why();
        }
        if (!copy.faults().isEmpty()) {
            return Optional.of("The text has faults: mend them before keeping it as an alternative.");
        }
        return kept.keep(new Alternative(name, now(), copy.text()))
                ? Optional.empty()
                : Optional.of("There is an alternative \"" + name + "\". Take another name, or let go of it first.");
    }

    synchronized void letGo(String alternative) {
        kept.letGo(alternative);
    }

    synchronized List<Alternative> alternatives() {
        return kept.alternatives();
    }

    Optional<FloorPlan> floorPlan() {
        return kept.floorPlan(copy().at().floor());
    }

    byte[] floorPicture() {
        return kept.floorPicture(copy().at().floor());
    }

    /** A number for the next floor plan. */
    long nextFloor() {
        return kept.nextFloor();
    }

    /**
     * Lays a floor plan, with a new picture where there is one, or takes it away: a step like any other.
     *
     * @param on number of the floor plan it was thought out on, 0 for none
     * @return false where another one lies there by now, or the plant was changed at that moment; then nothing was changed
     */
    synchronized boolean keepFloorPlan(
            String by, String what, long on, Optional<FloorPlan> plan, Optional<byte[]> picture) {
        if (copy().at().floor() != on) {
            return false;
        }
        long floor = plan.map(FloorPlan::number).orElse(0L);
        Optional<Kept.Laid> laid = plan.map(p -> new Kept.Laid(p, picture, on));
        return take(step(by, what, copy.text(), floor), reading(copy.text()), Optional.empty(), laid);
    }

    /** Control sequences of this plant's stations. */
    Sequences sequences() {
        return new Sequences(kept, clock);
    }

    /** A design by what a page calls it: {@code now}, {@code r3} for a revision, {@code a:name} for an alternative; empty where there is none. */
    synchronized Optional<Reading.Read> design(String asked) {
        if (asked.equals("now")) {
            return Optional.ofNullable(copy().reading());
        }
        Stream<String> text = asked.startsWith("a:")
                ? alternatives().stream()
                        .filter(a -> asked.equals("a:" + a.name()))
                        .map(Alternative::text)
                : revisions().stream()
                        .filter(r -> asked.equals("r" + r.number()))
                        .map(Revision::text);
        return text.map(t -> PlantReader.read(t, folder))
                .flatMap(r -> r instanceof Reading.Read read ? Stream.of(read) : Stream.empty())
                .findFirst();
    }

    /** Writes the working copy to the plant file; refused where the file was changed outside in between. */
    synchronized Optional<String> write(long version) throws IOException {
        if (version != copy().version()) {
            return stale().why();
        }
        if (Files.exists(file) && !Files.readString(file).equals(kept.outside().orElse(""))) {
            return Optional.of(
                    "The file was changed outside since it was read; nothing was written. Open the studio again to take"
                            + " that text as the next step, then go back one step if yours is the right one.");
        }
        WholeFile.put(file, copy.text());
        kept.written(copy.text());
        return Optional.empty();
    }

    @Override
    public void close() {
        kept.close();
    }

    /** False where another studio was quicker. */
    private boolean take(String by, String what, String text, Reading reading, Optional<String> outside) {
        return take(step(by, what, text, copy.at().floor()), reading, outside);
    }

    private Step step(String by, String what, String text, long floor) {
        return new Step(copy.step() + 1, copy.version() + 1, what, text, by, now(), by, floor);
    }

    private boolean take(Step step, Reading reading, Optional<String> outside) {
        return take(step, reading, outside, Optional.empty());
    }

    private boolean take(Step step, Reading reading, Optional<String> outside, Optional<Kept.Laid> laid) {
        Optional<Integer> left = kept.add(copy.version(), step, outside, laid);
        left.ifPresent(steps -> copy = said(step, reading, steps));
        return left.isPresent();
    }

    private Copy read(Step step) {
        return said(step, reading(step.text()), 0);
    }

    private Reading reading(String text) {
        return PlantReader.read(text, folder);
    }

    private Copy said(Step step, Reading reading, int left) {
        if (reading instanceof Reading.Read good) {
            return new Copy(step, good, List.of(), left);
        }
        return new Copy(step, copy.reading(), ((Reading.Faults) reading).faults(), left);
    }

    private Changed refused(String why) {
        return new Changed(copy, Optional.of(why), false);
    }

    private Changed stale() {
        return new Changed(
                copy(),
                Optional.of(
                        "The plant was changed elsewhere in the meantime; this page now shows it. Nothing was overwritten."),
                true);
    }
}
