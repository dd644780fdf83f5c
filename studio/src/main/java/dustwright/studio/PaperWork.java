package dustwright.studio;

import dustwright.documents.answers.CoverText;
import dustwright.documents.answers.SizeBesides;
import dustwright.documents.answers.SizeJson;
import dustwright.documents.answers.SizeWords;
import dustwright.documents.control.Lists;
import dustwright.documents.hazard.HazardLists;
import dustwright.documents.papers.Paper;
import dustwright.documents.papers.PaperKinds;
import dustwright.documents.report.CoverPage;
import dustwright.documents.report.Origin;
import dustwright.documents.report.PaperSize;
import dustwright.documents.report.Report;
import dustwright.documents.report.SizePage;
import dustwright.documents.writing.Show;
import dustwright.engine.SizingRules;
import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.coverage.ByHand;
import dustwright.engine.coverage.Coverage;
import dustwright.engine.coverage.Effort;
import dustwright.engine.coverage.Judging;
import dustwright.engine.coverage.Question;
import dustwright.engine.interlock.DeviceFault;
import dustwright.engine.interlock.Sequence;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.UnitSystem;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.review.Controlled;
import dustwright.engine.review.Deviation;
import dustwright.engine.review.HazardStudy;
import dustwright.engine.review.Notes;
import dustwright.engine.sizing.OpenSizes;
import dustwright.engine.sizing.Patience;
import dustwright.engine.sizing.Search;
import dustwright.engine.sizing.Sizing;
import dustwright.plantfile.HazardStudyReader;
import dustwright.plantfile.HazardStudyReading;
import dustwright.plantfile.HazardStudyText;
import dustwright.plantfile.Reading;
import dustwright.plantfile.SequenceText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Makes one package of papers of a plant, as the commands do with what they take where nothing else is said.
 *
 * @param hazardStudy what a team has written beside the plant file; need not be there
 * @param sequences by what stations are controlled
 * @param watch told how far it is
 */
record PaperWork(
        Reading.Read reading, UnitSystem units, Origin origin, Path hazardStudy, Sequences sequences, Watch watch) {
    private static final long MOST_SOLVED = 200_000;
    private static final double SOLVED = 0.6;
    private static final double MOST_MINUTES = 3;
    private static final double MINUTE_s = 60;
    private static final double NANO = 1e-9;
    private static final double WRITTEN = 0.9;

    /** Who waits for it. */
    interface Watch extends BooleanSupplier {
        /** How far it is: a share of the whole, and words. */
        void told(double share, String words);

        /** True once nobody waits any more. */
        @Override
        boolean getAsBoolean();
    }

    /** Why a package cannot be made, in words for the page. */
    static final class Refused extends RuntimeException {
        private static final long serialVersionUID = 1;

        Refused(String why) {
            super(why);
        }
    }

    private Plant plant() {
        return reading.plant();
    }

    private Show show() {
        return new Show(units);
    }

    private PaperSize size() {
        return PaperSize.of(units);
    }

    List<Paper> report() {
        Study study = solved().withSheetsAndCurves();
        watch.told(SOLVED, "all sets solved, writing");
        return PaperKinds.report(Report.of(study, show(), origin), size());
    }

    /** The states that are asked where nobody names others. */
    private Study solved() {
        List<State> states = States.usual(plant());
        return Study.of(plant(), states, done -> {
            if (watch.getAsBoolean()) {
                throw new CancellationException();
            }
            watch.told(SOLVED * done / states.size(), done + " of " + states.size() + " sets solved");
        });
    }

    List<Paper> hazards() {
        Study study = solved().withSheets();
        HazardLists.nothingToWrite(study).ifPresent(why -> {
            throw new Refused(why);
        });
        watch.told(SOLVED, "all sets solved, writing");
        List<Deviation> lines = HazardStudy.lines(plant(), study.worstPerPlace(), edited());
        boolean there = Files.exists(hazardStudy);
        HazardStudy review = HazardStudy.of(lines, there ? notes() : Notes.NONE);
        List<Paper> papers =
                new ArrayList<>(PaperKinds.hazards(study, review, show(), there ? originWithStudy() : origin, size()));
        papers.add(Paper.text(
                String.valueOf(hazardStudy.getFileName()),
                there
                        ? "the hazard study of the team with the rows of this plant, every word of theirs kept"
                        : "the hazard study for a team to write to",
                () -> there ? updated(lines) : HazardStudyText.fresh(plant().name(), lines)));
        return papers;
    }

    private Notes notes() {
        HazardStudyReading read = HazardStudyReader.read(hazardStudy);
        if (read instanceof HazardStudyReading.Read good) {
            return good.notes();
        }
        throw new Refused("The hazard study beside the plant file has faults. "
                + ((HazardStudyReading.Faults) read).faults().get(0).text());
    }

    private Origin originWithStudy() {
        try {
            return origin.with(String.valueOf(hazardStudy.getFileName()), Files.readAllBytes(hazardStudy));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private String updated(List<Deviation> lines) {
        try {
            return HazardStudyText.updated(Files.readString(hazardStudy), lines);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private Sequence controls(Station station) {
        return known(sequences.of(plant(), station));
    }

    private static Sequence known(Sequences.Control control) {
        return control.sequence().match(known -> known, why -> {
            throw new Refused(why);
        });
    }

    /** The stations whose sequence somebody edited. */
    private Map<String, Controlled> edited() {
        Map<String, Controlled> edited = new LinkedHashMap<>();
        for (Station station : plant().stations()) {
            Sequences.Control control = sequences.of(plant(), station);
            if (control.edit() > 0) {
                edited.put(station.id(), new Controlled(known(control), "the sequence of edit " + control.edit()));
            }
        }
        return edited;
    }

    List<Paper> control(Station station) {
        return control(controls(station), List.of());
    }

    List<Paper> controlWithFaults(Station station) {
        Sequence sequence = controls(station);
        int faults = DeviceFault.of(sequence).size();
        return control(sequence, PaperKinds.faults(sequence, known -> {
            if (watch.getAsBoolean()) {
                throw new CancellationException();
            }
            watch.told(WRITTEN * known / faults, known + " of " + faults + " device faults looked at");
        }));
    }

    private List<Paper> control(Sequence sequence, List<Lists.Rows> besides) {
        List<Paper> papers = new ArrayList<>(PaperKinds.control(sequence, besides, size()));
        papers.add(Paper.text(
                "sequence.yaml", "the sequence itself, to be edited and proven", () -> SequenceText.of(sequence)));
        return papers;
    }

    List<Paper> coverage() {
        List<Integer> users = users();
        List<State> conditions = States.conditions(plant(), List.of(FilterCondition.CLEAN, FilterCondition.DIRTY));
        Question question = new Question(users, Question.zonesOf(plant()), conditions);
        Judging judging = duty -> Study.judge(plant(), duty);
        Effort effort = new Effort(
                1,
                MOST_SOLVED,
                Effort.FEW,
                false,
                false,
                watch,
                share -> watch.told(WRITTEN * share, (int) (100 * share) + " % of the sets covered"),
                List.of());
        Coverage coverage = Coverage.of(plant(), question, judging, effort);
        if (watch.getAsBoolean()) {
            throw new CancellationException();
        }
        CoverText.Besides besides = new CoverText.Besides(
                List.of(),
                List.of(),
                List.of(),
                ByHand.of(plant(), coverage, judging),
                Study.openInSheets(plant(), users.size()));
        return PaperKinds.coverage(CoverPage.of(plant(), coverage, besides, show(), origin), size());
    }

    private List<Integer> users() {
        return IntStream.rangeClosed(1, plant().usage().simultaneousUsers())
                .boxed()
                .toList();
    }

    /** What the search has found after a few minutes is written, with what is shown of it by then. */
    List<Paper> sizing() {
        OpenSizes open = reading.open();
        SizingRules rules = new SizingRules(
                users(), Question.zonesOf(plant()), List.of(FilterCondition.CLEAN, FilterCondition.DIRTY));
        long began = System.nanoTime();
        BooleanSupplier enough =
                () -> watch.getAsBoolean() || (System.nanoTime() - began) * NANO > MOST_MINUTES * MINUTE_s;
        Patience patience = new Patience(
                0,
                1,
                MOST_SOLVED,
                enough,
                words -> watch.told(
                        Math.min(WRITTEN, (System.nanoTime() - began) * NANO / (MOST_MINUTES * MINUTE_s)), words),
                List.of(),
                List.of());
        Sizing sizing = Search.of(plant(), open.choices(), rules, patience);
        if (watch.getAsBoolean()) {
            throw new CancellationException();
        }
        int most = plant().usage().simultaneousUsers();
        SizeBesides besides = new SizeBesides(
                Optional.empty(),
                List.of(),
                sizing.best()
                        .map(best -> Study.openInSheets(best.plant(), most))
                        .orElse(List.of()));
        SizeWords words = new SizeWords(plant(), open, rules.question(plant()), sizing, show());
        return PaperKinds.sizing(
                SizePage.of(plant(), open, sizing, besides, words, show()),
                SizeJson.of(plant(), open, sizing, besides),
                size());
    }
}
