package dustwright.studio;

import static dustwright.studio.Exchange.answer;
import static dustwright.studio.Exchange.show;

import dustwright.documents.drawing.CurveChart;
import dustwright.documents.drawing.MarginClass;
import dustwright.documents.drawing.WeekChart;
import dustwright.documents.hazard.HazardLists;
import dustwright.documents.report.DerivationBlock;
import dustwright.documents.report.SheetBlock;
import dustwright.documents.writing.Element;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.States;
import dustwright.engine.StationCurves;
import dustwright.engine.Study;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.sheet.Sheet;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What each piece of equipment comes to, in the set of the plan or over all sets asked: system against producer, the dust's week, the
 * sheets and what they are held against. One study is made at a time; one of a plant that has gone on meanwhile is not finished.
 */
final class Machines {
    private static final int MOST_KEPT = 6;

    private final Supplier<Desk.Copy> now;

    /** Studies that were asked for last: each of a version and its states. */
    private final Map<Asked, Studied> studied = new LinkedHashMap<>();

    private record Asked(long version, List<State> states) {}

    private record Studied(Study study, List<StationCurves> curves) {}

    /**
     * What a page gets.
     *
     * @param sets how many sets the figures are over
     * @param unsolved of these without an answer, with the reason
     * @param why there is no sheet, where there is none
     */
    record View(
            long version,
            String set,
            int sets,
            String unsolved,
            List<Drawn> charts,
            List<Drawn> weeks,
            String caution,
            List<Piece> sheets,
            List<Checked> findings,
            String why) {}

    /** A drawing and what it shows; under a title where it has one. */
    record Drawn(String title, String markup, String caption) {}

    /**
     * One sheet.
     *
     * @param markup every line of it with a button that opens how it came about
     */
    record Piece(
            String id, String title, String margin, String marginClass, String glyph, boolean dust, String markup) {}

    /** What a sheet is held against, as a row of the margin column. */
    record Checked(String sheet, SetView.Row row) {}

    /** The plant has gone on while somebody waited. */
    static final class Gone extends RuntimeException {
        private static final long serialVersionUID = 1;

        Gone() {
            super("The plant has gone on meanwhile.");
        }
    }

    Machines(Supplier<Desk.Copy> now) {
        this.now = now;
    }

    void routes(JavalinConfig config, BiFunction<Context, Plant, SetView.Asked> asked) {
        config.routes.get("/api/machines", request -> {
            Desk.Copy copy = now.get();
            Plant plant = Studio.known(copy);
            boolean all = overAll(request);
            SetView.Asked set = asked.apply(request, plant);
            Studied known = study(copy.version(), plant, states(all, plant, set));
            answer(request, view(copy.version(), all ? "" : words(known.study()), known, set.show()));
        });
        config.routes.get("/api/machines/derivation", request -> {
            Desk.Copy copy = now.get();
            Plant plant = Studio.known(copy);
            Study study = study(copy.version(), plant, states(overAll(request), plant, asked.apply(request, plant)))
                    .study();
            String markup = derivation(request, study)
                    .orElseThrow(() -> new NotFoundResponse("No sheet of this plant has such a figure."));
            request.contentType("text/html; charset=utf-8").result(markup);
        });
        config.routes.exception(Gone.class, (gone, request) -> {
            request.status(409);
            answer(request, Map.of("why", String.valueOf(gone.getMessage())));
        });
    }

    private static boolean overAll(Context request) {
        return "all".equals(request.queryParam("sets"));
    }

    private static List<State> states(boolean all, Plant plant, SetView.Asked set) {
        return all ? States.usual(plant) : List.of(set.state(plant));
    }

    private static String words(Study study) {
        return study.states().get(0).state().name();
    }

    private synchronized Studied study(long version, Plant plant, List<State> states) {
        Asked asked = new Asked(version, states);
        Studied known = studied.remove(asked);
        Studied study = known == null ? made(asked, plant) : known;
        studied.put(asked, study);
        if (studied.size() > MOST_KEPT) {
            studied.remove(studied.keySet().iterator().next());
        }
        return study;
    }

    private Studied made(Asked asked, Plant plant) {
        stillHere(asked.version());
        try {
            Study solved = Study.of(plant, asked.states(), done -> {
                if (now.get().version() != asked.version()) {
                    throw new CancellationException();
                }
            });
            stillHere(asked.version());
            CompletableFuture<List<StationCurves>> curves =
                    CompletableFuture.supplyAsync(() -> StationCurves.of(plant, solved.states()));
            Study sheets = solved.withSheets();
            return new Studied(sheets, curves.join());
        } catch (CancellationException gone) {
            throw new Gone();
        }
    }

    private void stillHere(long version) {
        if (now.get().version() != version) {
            throw new Gone();
        }
    }

    private static View view(long version, String set, Studied known, Show show) {
        Study study = known.study();
        Map<String, List<Finding>> held = held(study);
        List<Sheet> dust = HazardLists.sheets(study);
        return new View(
                version,
                set,
                study.states().size(),
                unsolved(study),
                known.curves().stream()
                        .map(c -> new Drawn(
                                CurveChart.title(c, !set.isEmpty()),
                                CurveChart.of(c.chart(), show).svg().markup(),
                                CurveChart.caption(c.chart())))
                        .toList(),
                study.weeks().stream()
                        .map(w -> new Drawn("", WeekChart.of(w, show).svg().markup(), WeekChart.caption(w)))
                        .toList(),
                dust.isEmpty() ? "" : HazardLists.CAUTION,
                study.sheets().stream()
                        .sorted(Comparator.comparing(HazardLists::isOne))
                        .map(s -> piece(s, held.getOrDefault(s.id(), List.of()), show))
                        .toList(),
                study.sheets().stream()
                        .flatMap(s -> held.getOrDefault(s.id(), List.of()).stream()
                                .sorted(Comparator.comparingDouble(Machines::place))
                                .map(f -> new Checked(s.id(), SetView.Row.of(f, "", show))))
                        .filter(Machines.once())
                        .toList(),
                study.sheets().isEmpty() ? "This plant has no station and no dust, so there is no sheet." : "");
    }

    /**
     * What each sheet is held against, by its id: what it judges itself, and of its piece what the states judge, each requirement in the
     * worst of them. A piece of several sheets has the latter at the first.
     */
    private static Map<String, List<Finding>> held(Study study) {
        Map<String, List<Finding>> held = new LinkedHashMap<>();
        Map<Place, String> first = new HashMap<>();
        for (Sheet sheet : study.sheets()) {
            held.put(sheet.id(), new ArrayList<>(sheet.findings()));
            first.putIfAbsent(sheet.about(), sheet.id());
        }
        Map<String, Finding> worst = new LinkedHashMap<>();
        study.states().stream()
                .flatMap(s -> s.findings().stream())
                .filter(f -> first.containsKey(f.where()))
                .sorted(Comparator.comparingDouble(Machines::place))
                .forEach(f -> worst.putIfAbsent(f.code() + "/" + f.where(), f));
        worst.values()
                .forEach(f ->
                        Optional.ofNullable(first.get(f.where())).map(held::get).ifPresent(all -> all.add(f)));
        return held;
    }

    /** What reads the same of the same place in several sets stands there once. */
    private static Predicate<Checked> once() {
        Set<List<String>> said = new HashSet<>();
        return one -> said.add(List.of(
                one.sheet(), one.row().claim(), one.row().figures(), one.row().margin()));
    }

    /** Conflicts that were looked for and not found come last. */
    private static double place(Finding finding) {
        return finding.counted() && finding.holds() ? Double.MAX_VALUE : finding.margin();
    }

    private static String unsolved(Study study) {
        return study.states().stream()
                .flatMap(s -> s.duty()
                        .match(
                                duty -> Stream.<String>empty(),
                                why -> Stream.of("No answer for " + s.state().name() + ": " + why)))
                .limit(1)
                .collect(Collectors.joining());
    }

    private static Piece piece(Sheet sheet, List<Finding> held, Show show) {
        Optional<Finding> tightest =
                held.stream().filter(f -> !f.nothingByDesign()).min(Comparator.comparingDouble(Machines::place));
        MarginClass marginClass = tightest.map(MarginClass::of).orElse(MarginClass.UNKNOWN);
        return new Piece(
                sheet.id(),
                Wording.head(sheet),
                tightest.map(Show::margin).orElse(""),
                marginClass.name().toLowerCase(Locale.ROOT),
                tightest.isEmpty()
                        ? ""
                        : marginClass.glyph(tightest.map(Finding::side).orElse(Side.AT_LEAST)),
                HazardLists.isOne(sheet),
                SheetBlock.opening(sheet, show).elements().stream()
                        .map(Element::markup)
                        .collect(Collectors.joining()));
    }

    private static Optional<String> derivation(Context request, Study study) {
        String asked = Optional.ofNullable(request.queryParam("sheet")).orElse("");
        String figure = Optional.ofNullable(request.queryParam("figure")).orElse("");
        String finding = Optional.ofNullable(request.queryParam("finding")).orElse("");
        Show show = show(request);
        return study.sheets().stream()
                .filter(s -> s.id().equals(asked))
                .findFirst()
                .flatMap(s -> Stream.concat(
                                s.entries().stream()
                                        .filter(e -> e.id().equals(figure))
                                        .map(e -> DerivationBlock.onPage(s, e, show)),
                                held(study).getOrDefault(s.id(), List.of()).stream()
                                        .filter(f -> f.id().equals(finding))
                                        .map(f -> DerivationBlock.onPage(f, show)))
                        .findFirst())
                .map(Element::markup);
    }
}
