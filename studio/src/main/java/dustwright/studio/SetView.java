package dustwright.studio;

import dustwright.documents.drawing.Layout;
import dustwright.documents.drawing.MarginClass;
import dustwright.documents.drawing.PlantDrawing;
import dustwright.documents.drawing.PlantViews;
import dustwright.documents.drawing.ProfileChart;
import dustwright.documents.drawing.SheetScale;
import dustwright.documents.report.DerivationBlock;
import dustwright.documents.writing.Show;
import dustwright.documents.writing.Wording;
import dustwright.engine.PressureProfile;
import dustwright.engine.StateAnswer;
import dustwright.engine.States;
import dustwright.engine.Study;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.Outcome;
import dustwright.engine.finding.Place;
import dustwright.engine.network.DutyPoint;
import dustwright.engine.network.State;
import dustwright.engine.network.StationResult;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.receiver.FilterCondition;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** One set of open inlets as the plan shows it: drawing, findings, profile, title block. */
final class SetView {
    private static final int MOST_LETTERS = 7;

    /**
     * What a page asks for.
     *
     * @param all whether findings that only hold are listed too, not counted alone
     * @param along piece whose way the profile follows; the tightest way for none
     */
    record Asked(
            List<String> open,
            FilterCondition filter,
            boolean dust,
            boolean isometric,
            Show show,
            boolean all,
            Optional<Place> along) {
        State state(Plant plant) {
            State state = States.open(plant, open, filter);
            return dust ? state : States.withoutDust(state);
        }
    }

    /**
     * What a page gets.
     *
     * @param drawn number of the drawing, by which a page says that it has it; 0 for none
     * @param station the set as a step of the users scale, which shows it where it is none of the worst; none where nothing is written
     * @param rest how many findings are not prominent
     */
    record View(
            long version,
            String set,
            List<String> open,
            boolean solved,
            String why,
            long drawn,
            String drawing,
            SheetScale sheet,
            String profile,
            Readings readings,
            List<Sets.Station> station,
            List<Row> findings,
            long rest,
            List<Cell> block) {
        /** The same for a page that has a drawing. */
        View since(Drawings drawings, long had) {
            if (drawing.isEmpty()) {
                return this;
            }
            Drawings.Told told = drawings.told(drawing, had);
            return new View(
                    version,
                    set,
                    open,
                    solved,
                    why,
                    told.number(),
                    told.lines(),
                    sheet,
                    profile,
                    readings,
                    station,
                    findings,
                    rest,
                    block);
        }
    }

    /**
     * One finding in the margin column.
     *
     * @param letter on the drawing; empty for none
     * @param prominent listed one by one; the others are counted
     * @param bar where the value stands on a scale from −50 to +50 % of the limit, 0 to 1; says nothing where the class is unknown
     */
    record Row(
            String id,
            String letter,
            String kind,
            String place,
            String claim,
            String figures,
            String margin,
            String marginClass,
            String glyph,
            boolean holds,
            boolean prominent,
            double bar) {
        static Row of(Finding finding, String letter, Show show) {
            MarginClass marginClass = MarginClass.of(finding);
            boolean prominent = SetView.prominent(finding);
            return new Row(
                    finding.id(),
                    prominent ? letter : "",
                    finding.where().kind().name().toLowerCase(Locale.ROOT),
                    finding.where().id(),
                    Wording.claim(finding),
                    Wording.valueAndLimit(finding, show),
                    Show.margin(finding),
                    marginClass.name().toLowerCase(Locale.ROOT),
                    marginClass.glyph(finding.side()),
                    finding.holds(),
                    prominent,
                    Math.max(0, Math.min(1, 0.5 + finding.margin())));
        }
    }

    /** One field of the title block. */
    record Cell(String name, String value) {}

    private final Plant plant;
    private final Asked asked;
    private final StateAnswer answer;
    private final List<Finding> findings;
    private final Layout layout;

    SetView(Plant plant, Asked asked, StateAnswer answer) {
        this.plant = plant;
        this.asked = asked;
        this.answer = answer;
        this.findings = answer.findings().stream()
                .sorted(Comparator.comparingDouble(Finding::margin))
                .toList();
        Layout plan = Layout.plan(plant);
        this.layout = asked.isometric() && plan.kind() == Layout.Kind.PLAN ? Layout.isometric(plant) : plan;
    }

    static SetView solve(Plant plant, Asked asked) {
        return new SetView(
                plant,
                asked,
                Study.of(plant, List.of(asked.state(plant))).states().get(0));
    }

    /** How a finding of the set came about, as markup; empty when the set has no such finding. */
    Optional<String> derivation(String finding) {
        return findings.stream()
                .filter(f -> f.id().equals(finding))
                .findFirst()
                .map(f -> DerivationBlock.onPage(f, asked.show()).markup());
    }

    /** What is told of the set: its drawing, which comes first, or all that is written of it. */
    enum Part {
        ALL,
        DRAWING,
        WORDS
    }

    View view(long version, Part part) {
        boolean drawn = part != Part.WORDS;
        boolean written = part != Part.DRAWING;
        Map<String, String> letters = letters();
        Outcome<DutyPoint> duty = answer.duty();
        return new View(
                version,
                answer.state().name(),
                answer.state().open(),
                duty instanceof Outcome.Solved,
                duty.match(d -> "", why -> why),
                0,
                duty.match(d -> drawn ? drawing(d, letters) : "", why -> ""),
                SheetScale.of(layout),
                written ? profile() : "",
                duty.match(
                        d -> written ? Readings.of(plant, d, findings, asked.show()) : Readings.NONE,
                        why -> Readings.NONE),
                written ? List.of(Sets.shown(plant, answer)) : List.of(),
                written ? rows(letters) : List.of(),
                findings.stream().filter(finding -> !prominent(finding)).count(),
                written ? block() : List.of());
    }

    /** What a reader has to see one by one: what does not hold, is not known or is thin. */
    private static boolean prominent(Finding finding) {
        boolean thin = MarginClass.of(finding).compareTo(MarginClass.THIN) <= 0;
        return !finding.holds() || (thin && !finding.nothingByDesign());
    }

    /** Place by letter: of what fails; where all holds, of what is thin. */
    private Map<String, String> letters() {
        Map<String, String> letters = new LinkedHashMap<>();
        for (Finding finding : findings) {
            String place = finding.where().id();
            if (prominent(finding) && letters.size() < MOST_LETTERS && !letters.containsValue(place)) {
                letters.put(Character.toString('a' + letters.size()), place);
            }
        }
        return letters;
    }

    private String drawing(DutyPoint duty, Map<String, String> letters) {
        return PlantDrawing.live(PlantViews.state(plant, duty, answer.findings(), layout, letters, asked.show()))
                .lines();
    }

    /** The profile of the set along the way asked for. */
    String profile() {
        return asked
                .along()
                .map(place -> PressureProfile.through(plant, answer, place))
                .orElseGet(() -> PressureProfile.of(plant, answer))
                .stream()
                .findFirst()
                .map(profile -> ProfileChart.live(profile, asked.show()).svg().markup())
                .orElse("");
    }

    private List<Row> rows(Map<String, String> letters) {
        List<Row> rows = new ArrayList<>();
        for (Finding finding : findings) {
            if (!asked.all() && !prominent(finding)) {
                continue;
            }
            String place = finding.where().id();
            String letter = letters.entrySet().stream()
                    .filter(e -> e.getValue().equals(place))
                    .map(Map.Entry::getKey)
                    .findFirst()
                    .orElse("");
            rows.add(Row.of(finding, letter, asked.show()));
        }
        return rows;
    }

    private List<Cell> block() {
        return answer.duty()
                .match(
                        this::block,
                        why -> List.of(cell("Set shown", answer.state().name()), cell("State", "no answer")));
    }

    private List<Cell> block(DutyPoint duty) {
        Show show = asked.show();
        List<Cell> cells = new ArrayList<>();
        cells.add(cell(
                "Set shown",
                Wording.openInlets(answer.state()) + ", filter "
                        + asked.filter().name().toLowerCase(Locale.ROOT)
                        + (asked.dust() ? "" : ", no dust")));
        Sets.beyond(plant, answer.state().open()).ifPresent(why -> cells.add(cell("Not asked", why)));
        for (StationResult station : duty.stations()) {
            String name = duty.stations().size() > 1 ? ", " + station.id() : "";
            PressureDifference vacuum = new PressureDifference(
                    plant.site().air().ambient().pascals() - station.suction().pascals());
            cells.add(cell("Through the filter" + name, show.freeAirFull(station.throughFilter())));
            cells.add(cell("At the pump" + name, show.full(vacuum) + " below site"));
        }
        cells.add(cell("Site", show.full(plant.site().air().ambient())));
        cells.add(cell(
                "State",
                "solved, " + (duty.unchoked() && duty.dilute() ? "balance checked" : "no valid state: see findings")));
        return cells;
    }

    private static Cell cell(String name, String value) {
        return new Cell(name, value);
    }
}
