package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.conveying.Dust;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.plant.Limit;
import dustwright.engine.quantity.Temperature;
import dustwright.engine.receiver.FilterMedium;
import dustwright.engine.receiver.FilterMedium.Duty;
import dustwright.engine.receiver.FilterMedium.Reason;
import dustwright.engine.receiver.FilterService;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Which fibre and finish suit a filter, with the reasons, and whether the fitted one bears its heat. */
final class ClothChoice {
    private static final Source MEDIA = Source.published(
            "EPA fabric filter course (APTI 412), Table 4-1; potting, end caps and backing may bear less");

    private final Writing writing;
    private final FilterService service;
    private final Temperature continuous;
    private final Temperature surge;
    private final List<Dust> dusts;

    private ClothChoice(Writing writing, Arrivals arrivals) {
        this.writing = writing;
        this.service = arrivals.station().filter().service();
        this.continuous =
                service.continuous().orElse(arrivals.plant().site().air().temperature());
        this.surge = service.surge().filter(t -> t.compareTo(continuous) > 0).orElse(continuous);
        this.dusts = arrivals.dusts();
    }

    static void write(Writing writing, Arrivals arrivals) {
        ClothChoice choice = new ClothChoice(writing, arrivals);
        choice.choose();
        choice.fitted();
    }

    private Duty duty() {
        return new Duty(
                continuous.kelvin(),
                surge.kelvin(),
                !burning().isEmpty(),
                !sticking().isEmpty(),
                service.hotAndMoist());
    }

    private void choose() {
        Duty duty = duty();
        String chosen = FilterMedium.choose(duty)
                .map(medium -> medium.fibre() + ", good for the temperature in continuous service")
                .orElse("no fibre of the table bears this temperature");
        List<String> said = new ArrayList<>(List.of(chosen));
        if (!burning().isEmpty()) {
            said.add("a static-dissipative make with every cage bonded to ground, because of " + named(burning())
                    + " (combustible, or not tested)");
        }
        if (!sticking().isEmpty()) {
            said.add("a membrane or non-stick finish, because " + named(sticking()) + " cakes or smears");
        }
        List<Dust> unsaid = having(dust -> dust.onCloth().sticky().isEmpty());
        if (!unsaid.isEmpty()) {
            said.add("whether " + named(unsaid) + " cakes is not stated: enter \"sticky\" under \"on cloth\"");
        }
        said.add(Reason.ASK_MAKER.words());
        writing.words("medium", "Filter medium", String.join("; ", said) + ".", List.of(temperature()), MEDIA);
    }

    private Step temperature() {
        return step(
                "FLT-22",
                "polyester felt where it bears the duty, else the fibre with the lowest limit that does",
                MEDIA,
                new Term("T_surge", "highest temperature in surges", surge),
                new Term("T", "temperature at the cloth in continuous service", continuous));
    }

    private void fitted() {
        if (service.fibre().isEmpty()) {
            writing.notSaid(
                    FindingCode.FILTER_TEMPERATURE,
                    Place.Kind.FILTER,
                    MEDIA,
                    "Which fibre is fitted is not stated: enter \"fibre\" of the filter.");
        }
        service.fibre().ifPresent(fibre -> {
            FilterMedium medium = FilterMedium.named(fibre);
            Temperature most = new Temperature(medium.continuous_K());
            writing.known("temperature", "Temperature at the cloth", continuous, List.of(temperature()));
            writing.asked(
                    FindingCode.FILTER_TEMPERATURE,
                    Place.Kind.FILTER,
                    Sheet.ANY_SET,
                    Side.AT_MOST,
                    continuous,
                    new Limit<>(most, MEDIA));
            boolean dissipative = service.dissipative().orElse(false);
            String against = String.join(
                    "; ",
                    medium.reasons(duty()).stream()
                            .filter(reason -> reason != Reason.ASK_DISSIPATIVE || !dissipative)
                            .map(Reason::words)
                            .toList());
            writing.words("fitted", "Fitted: " + fibre, against + ".", List.of(), MEDIA);
            List<Reason> spoil = medium.reasons(duty()).stream()
                    .filter(reason -> reason.excludes() && reason != Reason.TOO_HOT_CONTINUOUS)
                    .toList();
            if (!spoil.isEmpty()) {
                writing.none(
                        FindingCode.FIBRE_UNFIT,
                        Place.Kind.FILTER,
                        "what spoils it: "
                                + String.join(
                                        "; ", spoil.stream().map(Reason::words).toList()),
                        spoil.size(),
                        MEDIA);
            }
        });
    }

    private List<Dust> burning() {
        return having(dust -> dust.burns());
    }

    private List<Dust> sticking() {
        return having(dust -> dust.onCloth().sticky().orElse(false));
    }

    private List<Dust> having(Predicate<Dust> property) {
        return dusts.stream().filter(property).toList();
    }

    private static String named(List<Dust> dusts) {
        return String.join(" and ", dusts.stream().map(Dust::name).toList());
    }
}
