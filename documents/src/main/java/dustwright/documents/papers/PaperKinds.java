package dustwright.documents.papers;

import dustwright.documents.control.Lists;
import dustwright.documents.control.Lists.Rows;
import dustwright.documents.control.ProjectExchange;
import dustwright.documents.control.StateDiagram;
import dustwright.documents.control.StructuredText;
import dustwright.documents.control.Workbooks;
import dustwright.documents.hazard.HazardLists;
import dustwright.documents.report.ControlReport;
import dustwright.documents.report.CoverPage;
import dustwright.documents.report.HazardPapers;
import dustwright.documents.report.Origin;
import dustwright.documents.report.PaperSize;
import dustwright.documents.report.Report;
import dustwright.documents.report.ReportPdf;
import dustwright.documents.report.SizePage;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.Study;
import dustwright.engine.interlock.FaultTable;
import dustwright.engine.interlock.Promela;
import dustwright.engine.interlock.Proof;
import dustwright.engine.interlock.Sequence;
import dustwright.engine.review.HazardStudy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import java.util.stream.Stream;

/** The packages of papers, each file with its name and what it is. */
public final class PaperKinds {
    private PaperKinds() {}

    /** The verification report. */
    public static List<Paper> report(Report report, PaperSize size) {
        List<Paper> papers = new ArrayList<>();
        papers.add(Paper.text("report.html", "the report as a page of its own", report::html));
        papers.add(new Paper("report.pdf", "the report on paper", out -> ReportPdf.write(report, size, out)));
        report.drawing()
                .ifPresent(drawing ->
                        papers.add(Paper.text("drawing.svg", "the plant drawn by its margins", () -> drawing)));
        return papers;
    }

    /** What a safety engineer reads. */
    public static List<Paper> hazards(Study study, HazardStudy review, Show show, Origin origin, PaperSize size) {
        HazardPapers papers = HazardPapers.of(study, review, show, origin);
        List<Rows> tables = List.of(
                HazardLists.findings(study, show),
                HazardLists.lines(study, show),
                HazardLists.study(review),
                HazardLists.matrix(review.notes().matrix()),
                HazardLists.earthing(study.plant(), show),
                HazardLists.taken(study.plant()));
        List<String> cautions = new ArrayList<>(List.of(HazardLists.CAUTION, Wording.SCREENING));
        HazardLists.untested(study.plant()).ifPresent(cautions::add);
        return List.of(
                Paper.text("hazards.html", "dusts, what was checked, hazard study, earthing test list", papers::html),
                new Paper("hazards.pdf", "the same on paper", out -> papers.pdf(size, out)),
                new Paper("hazards.xlsx", "its tables as a workbook", out -> Workbooks.write(tables, cautions, out)));
    }

    /** What a panel builder and a programmer need. */
    public static List<Paper> control(Sequence sequence, PaperSize size) {
        return control(sequence, List.of(), size);
    }

    /**
     * What a panel builder and a programmer need.
     *
     * @param besides further tables, what was proven and what a device fault defeats
     */
    public static List<Paper> control(Sequence sequence, List<Rows> besides, PaperSize size) {
        ControlReport report = ControlReport.of(sequence, besides);
        List<Rows> tables =
                Stream.concat(Lists.all(sequence).stream(), besides.stream()).toList();
        return List.of(
                Paper.text("control.html", "operations in sentences, steps, matrix, signals, shop test", report::html),
                new Paper("control.pdf", "the same on paper", out -> report.pdf(size, out)),
                new Paper("control.xlsx", "its tables as a workbook", out -> Workbooks.write(tables, out)),
                Paper.text(
                        "sequence.st",
                        "the program as Structured Text after IEC 61131-3",
                        () -> StructuredText.of(sequence)),
                Paper.text("sequence.xml", "the same block as PLCopen TC6 XML", () -> ProjectExchange.of(sequence)),
                Paper.text(
                        "steps.svg",
                        "the diagram of steps",
                        () -> StateDiagram.svg(sequence).markup()),
                Paper.text(
                        "model.pml", "the sequence as a model for SPIN", () -> Promela.of(sequence, Optional.empty())));
    }

    /**
     * What is proven of a sequence, and which property a single device that breaks defeats: every state is visited for each fault.
     *
     * @param known told how many faults are known
     */
    public static List<Rows> faults(Sequence sequence, IntConsumer known) {
        AtomicInteger rows = new AtomicInteger();
        return List.of(
                Lists.proven(Proof.of(sequence, Proof.Adversary.PLAIN)),
                Lists.faults(FaultTable.of(sequence, row -> known.accept(rows.incrementAndGet()))));
    }

    /** The proof over all sets of open inlets. */
    public static List<Paper> coverage(CoverPage page, PaperSize size) {
        return List.of(
                new Paper("coverage.pdf", "the proof on paper", out -> page.pdf(size, out)),
                Paper.text("coverage.html", "matrix by inlet and run, the worst set drawn and by hand", page::html));
    }

    /** The cheapest sizes that are covered. */
    public static List<Paper> sizing(SizePage page, String json, PaperSize size) {
        return List.of(
                new Paper("size.pdf", "the search on paper", out -> page.pdf(size, out)),
                Paper.text("size.html", "the design, what binds it and what it costs", page::html),
                Paper.text("size.json", "the same for a program", () -> json));
    }
}
