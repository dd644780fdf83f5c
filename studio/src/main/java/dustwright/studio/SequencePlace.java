package dustwright.studio;

import static dustwright.studio.Exchange.answer;
import static dustwright.studio.Exchange.body;
import static dustwright.studio.Exchange.neededNumber;
import static dustwright.studio.Exchange.neededText;

import com.fasterxml.jackson.databind.JsonNode;
import dustwright.documents.control.ProofText;
import dustwright.engine.interlock.Options;
import dustwright.engine.interlock.Proof;
import dustwright.engine.interlock.Sequence;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.plantfile.Fault;
import dustwright.plantfile.PlantReader;
import dustwright.plantfile.SequenceReader;
import dustwright.plantfile.SequenceReading;
import dustwright.plantfile.SequenceText;
import dustwright.studio.Kept.Edited;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Semaphore;

/** The sequence behind the panel as a page edits it: its text, what is wrong in it, what a proof says of it. */
final class SequencePlace {
    private static final int WIDTH = 92;

    private final Desk desk;
    /** A proof takes a core for some seconds. */
    private final Semaphore proving = new Semaphore(1);

    SequencePlace(Desk desk) {
        this.desk = desk;
    }

    /**
     * A station's sequence.
     *
     * @param number of its last edit, 0 for none
     * @param own true where somebody's edit counts, not the sequence the plant begins with
     * @param extras what can be added to a sequence to begin with
     */
    record View(
            String station,
            int number,
            boolean own,
            String at,
            String author,
            String text,
            List<Extra> extras,
            List<Earlier> earlier) {}

    /** Something no plant file says. */
    record Extra(String name, String words) {}

    /** An edit that can be looked at again; empty text for the plant's own. */
    record Earlier(int number, String at, String author, String text) {}

    private record Line(int line, String text) {}

    void routes(JavalinConfig config) {
        config.routes.get("/api/sequence", this::view);
        config.routes.get("/api/sequence/plain", this::plain);
        config.routes.post("/api/sequence", this::take);
        config.routes.post("/api/sequence/prove", this::prove);
    }

    private Station station(Plant plant, String asked) {
        Station station = Panel.station(plant, asked);
        Sequences.unable(station).ifPresent(why -> {
            throw new Panel.Refused(why);
        });
        return station;
    }

    private static String asked(Context request, String key) {
        return Optional.ofNullable(request.queryParam(key)).orElse("");
    }

    private void view(Context request) {
        Plant plant = Studio.known(desk.copy());
        answer(request, view(plant, station(plant, asked(request, "station"))));
    }

    private View view(Plant plant, Station station) {
        List<Edited> edits = desk.sequences().edits(station);
        Edited last = edits.stream().findFirst().orElse(Edited.NEVER);
        return new View(
                station.id(),
                last.number(),
                !last.text().isEmpty(),
                last.at(),
                last.author(),
                Sequences.text(plant, station, last),
                Arrays.stream(Options.Extra.values())
                        .map(e -> new Extra(e.name(), words(e)))
                        .toList(),
                edits.stream()
                        .skip(1)
                        .map(e -> new Earlier(e.number(), e.at(), e.author(), e.text()))
                        .toList());
    }

    private static String words(Options.Extra extra) {
        return switch (extra) {
            case ISOLATION -> "explosion isolation valve that reports whether it is ready";
            case MANUAL_CLEANING -> "filters cleaned by hand";
            case IDLE -> "inlet switches";
            case DUMP_GATES -> "double dump gates in place of a rotary valve";
            case SHUT_OFF -> "valve between receiver and producer";
            case PURGE -> "purge at STOP";
        };
    }

    /** The sequence the plant begins with, with some extras: to be looked at, nothing is kept. */
    private void plain(Context request) {
        Plant plant = Studio.known(desk.copy());
        Station station = station(plant, asked(request, "station"));
        Set<Options.Extra> extras = EnumSet.noneOf(Options.Extra.class);
        String wanted = asked(request, "extras");
        for (Options.Extra extra : Options.Extra.values()) {
            if (Arrays.asList(wanted.split(",", -1)).contains(extra.name())) {
                extras.add(extra);
            }
        }
        request.contentType("text/plain; charset=utf-8")
                .result(SequenceText.of(Sequences.plain(plant, station, extras)));
    }

    /** Keeps a text that has no faults; an empty one goes back to the plant's own. */
    private void take(Context request) {
        JsonNode body = body(request);
        String asked = neededText(body, "station");
        long number = neededNumber(body, "number");
        String typed = neededText(body, "text");
        Plant plant = Studio.known(desk.copy());
        Station station = station(plant, asked);
        if (!typed.isEmpty() && read(request, typed).isEmpty()) {
            return;
        }
        String author = Guard.person(request).map(People.Person::name).orElse("");
        if (!desk.sequences().edit(station, (int) Math.min(number, Integer.MAX_VALUE - 1), author, typed)) {
            request.status(409);
            answer(
                    request,
                    Map.of(
                            "why",
                            "This sequence was edited elsewhere in the meantime. Nothing was overwritten: your text stays here, the other"
                                    + " one is under Earlier once this page has asked anew.",
                            "faults",
                            List.of()));
            return;
        }
        answer(request, view(plant, station));
    }

    /** The sequence, or nothing where the page was told its faults. */
    private static Optional<Sequence> read(Context request, String typed) {
        if (typed.length() > PlantReader.LARGEST_bytes) {
            request.status(422);
            answer(request, Map.of("why", "This is larger than a sequence file may be.", "faults", List.of()));
            return Optional.empty();
        }
        SequenceReading reading = SequenceReader.read(typed);
        if (reading instanceof SequenceReading.Faults wrong) {
            request.status(422);
            List<Fault> faults = wrong.faults();
            answer(
                    request,
                    Map.of(
                            "why",
                            faults.size() == 1 ? "The text has a fault." : "The text has " + faults.size() + " faults.",
                            "faults",
                            faults.stream()
                                    .map(f -> new Line(f.line(), f.text()))
                                    .toList()));
            return Optional.empty();
        }
        return Optional.of(((SequenceReading.Read) reading).sequence());
    }

    /** Visits every state a text can reach, kept or not. */
    private void prove(Context request) {
        Optional<Sequence> sequence = read(request, neededText(body(request), "text"));
        if (sequence.isEmpty()) {
            return;
        }
        if (!proving.tryAcquire()) {
            throw new Panel.Refused("Another sequence is being proven; ask again in a few seconds.");
        }
        try {
            Proof proof = Proof.of(sequence.get(), Proof.Adversary.PLAIN);
            answer(request, Map.of("holds", proof.holds(), "text", ProofText.of(proof, false, WIDTH)));
        } finally {
            proving.release();
        }
    }
}
