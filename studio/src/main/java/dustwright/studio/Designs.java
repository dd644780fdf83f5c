package dustwright.studio;

import static dustwright.studio.Exchange.answer;
import static dustwright.studio.Exchange.body;
import static dustwright.studio.Exchange.neededNumber;
import static dustwright.studio.Exchange.neededText;
import static dustwright.studio.Exchange.show;

import dustwright.documents.drawing.MarginClass;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.Comparison;
import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Outcome;
import dustwright.engine.plant.Plant;
import dustwright.engine.sheet.Answer;
import dustwright.engine.tubing.Inlet;
import dustwright.engine.tubing.Run;
import dustwright.plantfile.Reading;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;

/** Alternatives of a design, two designs side by side, and a plant that stands beside what is to become of it. */
final class Designs {
    private static final int LONGEST_NAME = 60;
    private static final int MOST_KEPT = 6;
    private static final int MOST_ROWS = 80;
    private static final double SEEN = 0.005;

    /** Of the sheet with cost and energy. */
    private static final String COST = "running-cost";

    private final Desk desk;

    /** Studies that were asked for last: a study of the same plant is the same study. */
    private final Map<Plant, Study> studied = new LinkedHashMap<>();

    Designs(Desk desk) {
        this.desk = desk;
    }

    /** An alternative without its text. */
    record Named(String name, String at) {}

    /**
     * Two designs side by side.
     *
     * @param pieces tubes and inlets that are not the same in both
     * @param cost what cost and energy come to, where it differs
     * @param slight figures that differ by less than half a per cent
     */
    record Beside(
            Side before,
            Side after,
            List<Since.Piece> pieces,
            List<Row> findings,
            int more,
            List<Figure> cost,
            List<Figure> figures,
            int moreFigures,
            List<Figure> slight) {}

    /** One of the two. */
    record Side(String name, String verdict, String drawing, String set, String why) {}

    /** A requirement that comes out differently. */
    record Row(String claim, String kind, String place, boolean turns, Judged before, Judged after) {}

    /** How it comes out. */
    record Judged(String words, String margin, String marginClass, String glyph) {
        static final Judged NONE = new Judged("not asked", "", "unknown", "");
    }

    /** A figure that differs. */
    record Figure(String sheet, String name, String before, String after) {}

    void routes(JavalinConfig config, BiFunction<Context, Plant, SetView.Asked> asked) {
        config.routes.get(
                "/api/alternatives",
                request -> answer(
                        request,
                        desk.alternatives().stream()
                                .map(a -> new Named(a.name(), a.at()))
                                .toList()));
        config.routes.post("/api/alternative", request -> {
            var body = body(request);
            String name = neededText(body, "name").strip();
            long version = neededNumber(body, "version");
            Optional<String> why = name.isEmpty() || name.length() > LONGEST_NAME
                    ? Optional.of("An alternative has a name, up to " + LONGEST_NAME + " letters.")
                    : desk.keepAs(version, name);
            if (why.isPresent()) {
                request.status(422);
            }
            answer(request, Map.of("why", why.orElse("")));
        });
        config.routes.post("/api/alternative/letgo", request -> {
            desk.letGo(neededText(body(request), "name"));
            answer(request, Map.of("why", ""));
        });
        config.routes.post("/api/alternative/text", request -> {
            String name = neededText(body(request), "name");
            answer(
                    request,
                    Map.of(
                            "text",
                            desk.alternatives().stream()
                                    .filter(a -> a.name().equals(name))
                                    .map(Kept.Alternative::text)
                                    .findFirst()
                                    .orElseThrow(
                                            () -> new NotFoundResponse("No alternative is called " + name + "."))));
        });
        config.routes.get("/api/extension", this::extension);
        config.routes.get("/api/compare", request -> {
            Plant before = design(request, "before");
            Plant after = design(request, "after");
            answer(request, beside(request, before, after, asked));
        });
    }

    private void extension(Context request) {
        Study today = study(design(request, "today"));
        answer(request, Extension.of(today, study(design(request, "then")), show(request)));
    }

    private Plant design(Context request, String which) {
        String named = Optional.ofNullable(request.queryParam(which)).orElse("now");
        return desk.design(named)
                .map(Reading.Read::plant)
                .orElseThrow(() -> new NotFoundResponse("There is no design \"" + named + "\" without faults."));
    }

    private Beside beside(Context request, Plant before, Plant after, BiFunction<Context, Plant, SetView.Asked> asked) {
        Show show = show(request);
        Study was = study(before);
        Study is = study(after);
        Comparison comparison = Comparison.of(was, is);
        List<Row> rows = comparison.findings().stream()
                .filter(Designs::seen)
                .map(j -> row(j, show))
                .toList();
        List<Figure> others =
                figures(comparison, f -> f.change() >= SEEN && !f.sheetId().equals(COST), show);
        List<Figure> cost =
                figures(comparison, f -> f.change() >= SEEN && f.sheetId().equals(COST), show);
        return new Beside(
                side(was, asked.apply(request, before)),
                side(is, asked.apply(request, after)),
                pieces(before, after),
                rows.stream().limit(MOST_ROWS).toList(),
                Math.max(0, rows.size() - MOST_ROWS),
                cost,
                others.stream().limit(MOST_ROWS).toList(),
                Math.max(0, others.size() - MOST_ROWS),
                figures(comparison, f -> f.change() < SEEN, show));
    }

    private static List<Figure> figures(Comparison comparison, Predicate<Comparison.Figure> which, Show show) {
        return comparison.figures().stream()
                .filter(which)
                .map(f -> new Figure(f.sheet(), f.name(), words(f.before(), show), words(f.after(), show)))
                .filter(f -> !f.before().equals(f.after()))
                .toList();
    }

    private static List<Since.Piece> pieces(Plant before, Plant after) {
        List<Since.Piece> pieces =
                new ArrayList<>(Since.different("run", byId(before.runs(), Run::id), byId(after.runs(), Run::id)));
        pieces.addAll(Since.different("inlet", byId(before.inlets(), Inlet::id), byId(after.inlets(), Inlet::id)));
        return pieces;
    }

    private static <T> Map<String, T> byId(List<T> pieces, Function<T, String> id) {
        Map<String, T> named = new LinkedHashMap<>();
        pieces.forEach(piece -> named.put(id.apply(piece), piece));
        return named;
    }

    private Study study(Plant plant) {
        synchronized (studied) {
            Study known = studied.remove(plant);
            Study study =
                    known != null ? known : Study.of(plant, States.usual(plant)).withSheets();
            studied.put(plant, study);
            if (studied.size() > MOST_KEPT) {
                studied.remove(studied.keySet().iterator().next());
            }
            return study;
        }
    }

    private static Side side(Study study, SetView.Asked asked) {
        SetView.View view = SetView.solve(study.plant(), asked).view(0, SetView.Part.ALL);
        List<Finding> findings = study.worstPerPlace();
        long fails = findings.stream().filter(Finding::fails).count();
        long open = findings.stream().filter(f -> !f.holds() && !f.fails()).count();
        long unsolved = study.states().stream()
                .filter(a -> !(a.duty() instanceof Outcome.Solved))
                .count();
        String verdict = study.holds()
                ? "Every requirement holds in the sets compared; not every set there is was looked at."
                : Wording.counted(fails, "requirement does not hold", "requirements do not hold")
                        + (open == 0 ? "" : ", " + Wording.counted(open, "is not known", "are not known"))
                        + (unsolved == 0 ? "" : ", no answer for " + Wording.counted(unsolved, "set", "sets"))
                        + ".";
        return new Side(study.plant().name(), verdict, view.drawing(), view.set(), view.why());
    }

    private static boolean seen(Comparison.Judged judged) {
        return judged.verdictDiffers()
                || Math.abs(judged.before().map(Finding::margin).orElse(0.0)
                                - judged.after().map(Finding::margin).orElse(0.0))
                        >= SEEN;
    }

    private static Row row(Comparison.Judged judged, Show show) {
        Finding any = judged.any();
        return new Row(
                Wording.claim(any),
                any.where().kind().name().toLowerCase(Locale.ROOT),
                any.where().id(),
                judged.verdictDiffers(),
                judged(judged.before(), show),
                judged(judged.after(), show));
    }

    private static Judged judged(Optional<Finding> finding, Show show) {
        return finding.map(f -> new Judged(
                        Wording.valueAndLimit(f, show),
                        Show.margin(f),
                        MarginClass.of(f).name().toLowerCase(Locale.ROOT),
                        MarginClass.of(f).glyph(f.side())))
                .orElse(Judged.NONE);
    }

    private static String words(Optional<Answer> answer, Show show) {
        return answer.map(a -> Wording.answer(a, show)).orElse("none");
    }
}
