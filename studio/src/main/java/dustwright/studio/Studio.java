package dustwright.studio;

import static dustwright.studio.Exchange.answer;
import static dustwright.studio.Exchange.body;
import static dustwright.studio.Exchange.neededNumber;
import static dustwright.studio.Exchange.neededText;
import static dustwright.studio.Exchange.show;
import static dustwright.studio.Exchange.text;
import static dustwright.studio.Exchange.unfit;

import com.fasterxml.jackson.databind.JsonNode;
import dustwright.engine.finding.Place;
import dustwright.engine.plant.Plant;
import dustwright.engine.quantity.UnitSystem;
import dustwright.engine.receiver.FilterCondition;
import dustwright.engine.tubing.Inlet;
import dustwright.plantfile.PlaceText;
import dustwright.plantfile.Reading;
import dustwright.studio.Kept.Revision;
import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.compression.Gzip;
import io.javalin.config.JavalinConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** Serves one plant to the pages of this machine. */
public final class Studio implements AutoCloseable {
    private static final List<String> ASSETS = List.of(
            "studio.css",
            "panel.css",
            "people.css",
            "plan.js",
            "touch.js",
            "length.js",
            "lettering.js",
            "cross.js",
            "unsent.js",
            "drawing.js",
            "floorplan.js",
            "hand.js",
            "handpanel.js",
            "panel.js",
            "sequence.js",
            "compare.js",
            "machines.css",
            "machines.js",
            "papers.js",
            "terms.js",
            "terms.json",
            "print.css",
            "figures.js",
            "findingrow.js",
            "plate.js",
            "station.js",
            "element.js",
            "extend.js",
            "tour.js",
            "server.js",
            "people.js",
            "sign.js",
            "text.js");
    private static final String LOOPBACK = "127.0.0.1";
    private static final int OUTPUT_bytes = 1 << 19;
    /** How far the work behind the pages is; asking that does not hold it up. */
    private static final Set<String> BEHIND = Set.of("/api/sets", "/api/coverage", "/api/revision/coverage");

    static final int LARGEST_REQUEST_bytes = 8_000_000;
    private static final int LONGEST_NAME = 80;
    private static final int LONGEST_NOTE = 500;

    private final Desk desk;
    private volatile boolean closed;
    private final Solved solved = new Solved();
    private final Drawings drawings = new Drawings();
    private final Sets sets = new Sets();
    private final Covered covered = new Covered();
    /** Of revisions that somebody checks, by their numbers. */
    private final Map<Integer, Covered> checked = new ConcurrentHashMap<>();

    private final Panel panel = new Panel();
    private final Papers papers;
    private final Opening opening;
    private final Guard guard;
    private final SigningIn signingIn;
    private final Watch watch;
    private final Javalin server;

    private Studio(Desk desk, Store store, Opening opening) {
        this.desk = desk;
        this.opening = opening;
        this.papers = new Papers(desk, opening.program());
        People people = new People(store);
        this.guard = new Guard(people, !opening.onLoopback());
        this.signingIn = new SigningIn(people, guard);
        this.watch = new Watch(
                () -> desk.copy().version(),
                page -> !guard.signInAsked()
                        || guard.token(page).flatMap(people::of).isPresent());
        Javalin served = Javalin.create(config -> {
            routes(config);
            opening.certificate()
                    .ifPresent(c -> config.jetty.addConnector(
                            (jetty, usual) -> c.connector(jetty, usual, opening.address(), opening.port())));
        });
        this.server =
                opening.certificate().isPresent() ? served.start() : served.start(opening.address(), opening.port());
    }

    /**
     * How a plant is opened.
     *
     * @param name what the plant is called in the database; empty for the whole path of its file
     * @param address of this machine, at which to answer
     * @param port 0 for any that is free
     * @param program name and version for papers
     * @param demo for the demo plant, on which a tour of the studio begins by itself
     * @param certificate with which browsers speak HTTPS; without one they speak HTTP
     */
    public record Opening(
            Path plantFile,
            String name,
            String address,
            int port,
            String program,
            boolean demo,
            Optional<Certificate> certificate) {
        /** Without a certificate. */
        public Opening(Path plantFile, String name, String address, int port, String program, boolean demo) {
            this(plantFile, name, address, port, program, demo, Optional.empty());
        }

        /** Whether only this machine can ask. */
        public boolean onLoopback() {
            try {
                return InetAddress.getByName(address).isLoopbackAddress();
            } catch (UnknownHostException none) {
                return false;
            }
        }
    }

    /**
     * Opens a plant file for this machine alone.
     *
     * @param database where steps and revisions are kept; made where it is not there
     * @throws IOException when the plant file cannot be read
     */
    static Studio open(Path plantFile, Path database, int port, String program) throws IOException {
        return open(Store.open(database), new Opening(plantFile, "", LOOPBACK, port, program, false));
    }

    /** The same for the demo plant. */
    static Studio openDemo(Path plantFile, Path database, int port, String program) throws IOException {
        return open(Store.open(database), new Opening(plantFile, "", LOOPBACK, port, program, true));
    }

    /**
     * Opens a plant file and serves it.
     *
     * @param store where steps and revisions are kept; closed with the studio
     * @throws IOException when the plant file cannot be read
     * @throws Uninvited when other machines are to be answered and nobody is set up
     */
    public static Studio open(Store store, Opening opening) throws IOException {
        if (!opening.onLoopback() && !new People(store).any()) {
            throw new Uninvited();
        }
        String name = opening.name().isEmpty() ? Kept.nameOf(opening.plantFile()) : opening.name();
        return new Studio(Desk.open(opening.plantFile(), new Kept(store, name), Clock.systemUTC()), store, opening);
    }

    /** Other machines were to be answered, and nobody is set up who could sign in. */
    public static final class Uninvited extends RuntimeException {
        private static final long serialVersionUID = 1;

        Uninvited() {
            super("other machines get an answer only once people are set up");
        }
    }

    /** Address of the first page. */
    public String address() {
        String address = opening.address();
        return (opening.certificate().isPresent() ? "https://" : "http://")
                + (address.contains(":") ? "[" + address + "]" : address) + ":" + server.port() + "/";
    }

    /** Makes ready for quick edits, while nobody asks anything. */
    public void practise() {
        Practice.on(desk, () -> closed);
    }

    @Override
    public void close() {
        closed = true;
        watch.close();
        server.stop();
        sets.close();
        covered.close();
        checked.values().forEach(Covered::close);
        papers.close();
        desk.close();
    }

    private void routes(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.http.maxRequestSize = LARGEST_REQUEST_bytes;
        // A drawing goes out in one piece, and between two programs of one machine unpacked: both save time.
        config.jetty.modifyHttpConfiguration(http -> http.setOutputBufferSize(OUTPUT_bytes));
        config.http.compressionStrategy =
                opening.onLoopback() ? CompressionStrategy.NONE : new CompressionStrategy(null, new Gzip(1));
        config.routes.before(request -> {
            if (!BEHIND.contains(request.path())) {
                Turns.asked();
            }
        });
        config.routes.before(guard::check);
        config.routes.before(request -> {
            part(request);
            filter(request);
        });
        config.routes.get("/sign-in", request -> asset(request, "sign.html", "text/html; charset=utf-8"));
        signingIn.routes(config);
        config.routes.get("/", request -> asset(request, "plan.html", "text/html; charset=utf-8"));
        config.routes.get("/assets/{name}", this::asset);
        config.routes.get(
                "/api/openapi.yaml", request -> asset(request, "openapi.yaml", "application/yaml; charset=utf-8"));
        config.routes.get("/api/plant", request -> answer(request, plant(request)));
        config.routes.get("/api/set", this::set);
        config.routes.get("/api/profile", this::profile);
        config.routes.get(
                "/api/starter",
                request -> request.contentType("text/plain; charset=utf-8").result(starter()));
        config.routes.get("/api/sets", this::sets);
        config.routes.get("/api/coverage", this::coverage);
        config.routes.post("/api/coverage/stop", request -> {
            covered.stop(version(body(request)));
            answer(request, Map.of("why", ""));
        });
        config.routes.get("/api/derivation", this::derivation);
        config.routes.get(
                "/api/part", request -> Parts.part(request, desk.copy().text()));
        config.routes.get("/api/places", this::places);
        config.routes.get(
                "/api/text",
                request -> answer(
                        request, new Text(desk.copy().version(), desk.copy().text())));
        config.routes.get("/api/revisions", request -> answer(request, desk.revisions()));
        config.routes.get("/api/revision/coverage", this::revisionCoverage);
        config.routes.get("/api/since", request -> {
            Since since = desk.since();
            answer(
                    request,
                    new ToldSince(
                            since.revision(),
                            since.at(),
                            since.author(),
                            since.pieces(),
                            since.parts(),
                            papers.standing(desk.copy())));
        });
        papers.routes(config);
        config.routes.post("/api/value", request -> {
            JsonNode body = body(request);
            changed(request, value(on(request, body), body));
        });
        config.routes.post("/api/text", request -> {
            JsonNode body = body(request);
            changed(request, desk.type(on(request, body), neededText(body, "text")));
        });
        config.routes.post("/api/draw", request -> {
            JsonNode body = body(request);
            List<String> laid = new ArrayList<>();
            Desk.Changed changed = desk.draw(
                    on(request, body),
                    "drawn: " + neededText(body, "what"),
                    pencil -> laid.addAll(Hand.act(pencil, body)));
            if (taken(request, changed)) {
                answer(request, new Drawn(plant(request), laid));
            }
        });
        config.routes.post("/api/walk", request -> {
            JsonNode body = body(request);
            long steps = neededNumber(body, "steps");
            if (Math.abs(steps) != 1) {
                throw unfit(body.path("steps"), "steps", "-1 or 1");
            }
            changed(request, desk.walk(on(request, body), (int) steps, text(body, "over")));
        });
        config.routes.get("/api/left", request -> answer(request, desk.left()));
        config.routes.post("/api/left", request -> {
            JsonNode body = body(request);
            changed(request, desk.takeUp(on(request, body), neededNumber(body, "left")));
        });
        config.routes.post("/api/accept", this::accept);
        config.routes.post("/api/write", this::write);
        panel.routes(config, desk);
        new SequencePlace(desk).routes(config);
        new Machines(desk::copy).routes(config, Studio::asked);
        new Designs(desk).routes(config, Studio::asked);
        new FloorPlans(desk, now -> watch.tell(now)).routes(config);
        config.routes.post("/api/sign", this::sign);
        config.routes.sse("/api/events", watch::add);
        Reasons.routes(config);
    }

    private Desk.Changed value(Desk.On on, JsonNode body) {
        String path = neededText(body, "path");
        String how = body.path("how").asText("set");
        if (!body.has("value") && !how.equals("remove")) {
            throw unfit(body.path("value"), "value", "what is to be written");
        }
        if (!how.equals("set") || body.path("value").isContainerNode()) {
            String done = how.equals("set") ? path + ": changed" : Parts.what(how, body);
            return desk.edit(on, done, path, text -> Parts.edit(text, how, path, body.path("value")));
        }
        return desk.set(
                on,
                path,
                Optional.ofNullable(body.get("was")).map(JsonNode::asText),
                body.path("value").asText(""),
                body.path("plain").asBoolean(true));
    }

    /**
     * The plant as a page shows it.
     *
     * @param what the step did, made by author; mover came to stand on it last
     * @param left how many steps that had been taken back it left behind
     * @param floor number of the floor plan under it, 0 for none
     * @param shown the colours of the set asked for; none where none is, or where the plant is not known
     */
    private record PlantCard(
            long version,
            int step,
            String what,
            String author,
            String mover,
            int left,
            long floor,
            String file,
            String name,
            String note,
            String units,
            int users,
            List<String> inlets,
            List<String> opened,
            int assumptions,
            int overrides,
            boolean demo,
            boolean known,
            List<FaultLine> faults,
            List<SetView.View> shown) {}

    /** A plant after something was drawn, and the pieces that are new. */
    private record Drawn(PlantCard plant, List<String> laid) {}

    /** What changed since the last revision, and what the working copy is, as papers say it. */
    private record ToldSince(
            int revision, String at, String author, List<Since.Piece> pieces, List<String> parts, String standing) {}

    private record FaultLine(int line, String text) {}

    private record Text(long version, String text) {}

    private PlantCard plant(Context request) {
        Desk.Copy copy = desk.copy();
        Optional<Plant> plant = copy.plant();
        return new PlantCard(
                copy.version(),
                copy.step(),
                copy.at().what(),
                copy.at().author(),
                copy.at().mover(),
                copy.left(),
                copy.at().floor(),
                desk.fileName(),
                plant.map(Plant::name).orElse(desk.fileName()),
                plant.map(Plant::note).orElse(""),
                Optional.ofNullable(copy.reading()).map(Reading.Read::units).orElse(UnitSystem.SI) == UnitSystem.US
                        ? "us"
                        : "si",
                plant.map(p -> p.usage().simultaneousUsers()).orElse(0),
                plant.map(p -> p.inlets().stream().map(Inlet::id).toList()).orElse(List.of()),
                plant.map(Studio::opened).orElse(List.of()),
                plant.map(p -> p.assumptions().size()).orElse(0),
                plant.map(p -> p.overrides().size()).orElse(0),
                opening.demo(),
                plant.isPresent(),
                copy.faults().stream()
                        .map(f -> new FaultLine(f.line(), f.text()))
                        .toList(),
                plant.isPresent() && part(request) == SetView.Part.DRAWING ? List.of(told(request, copy)) : List.of());
    }

    /** The set one sees first: the first the plant file names, else its first inlet alone. */
    static List<String> opened(Plant plant) {
        return plant.usage().designSets().stream()
                .findFirst()
                .map(set -> List.copyOf(set.open()))
                .orElseGet(() -> plant.inlets().stream().limit(1).map(Inlet::id).toList());
    }

    private void set(Context request) {
        answer(request, told(request, desk.copy()));
    }

    private SetView.View told(Context request, Desk.Copy copy) {
        String had = Optional.ofNullable(request.queryParam("had")).orElse("");
        return view(request, copy)
                .view(copy.version(), part(request))
                .since(drawings, had.matches("[0-9]{1,16}") ? Long.parseLong(had) : 0);
    }

    private SetView view(Context request, Desk.Copy copy) {
        Plant plant = known(copy);
        SetView.Asked asked = asked(request, plant);
        return new SetView(plant, asked, solved.of(copy.version(), plant, asked.state(plant)));
    }

    private static SetView.Part part(Context request) {
        String said = Optional.ofNullable(request.queryParam("part")).orElse("all");
        return switch (said) {
            case "all" -> SetView.Part.ALL;
            case "drawing" -> SetView.Part.DRAWING;
            case "words" -> SetView.Part.WORDS;
            default -> throw new BadRequestResponse("The part of a set is all, drawing or words.");
        };
    }

    private void derivation(Context request) {
        String finding = Optional.ofNullable(request.queryParam("finding")).orElse("");
        String markup = view(request, desk.copy())
                .derivation(finding)
                .orElseThrow(() -> new NotFoundResponse("This set has no such finding."));
        request.contentType("text/html; charset=utf-8").result(markup);
    }

    private void sets(Context request) {
        Desk.Copy copy = desk.copy();
        answer(request, sets.of(copy.version(), known(copy)));
    }

    private void coverage(Context request) {
        Desk.Copy copy = desk.copy();
        answer(request, covered.of(copy.version(), known(copy), show(request)));
    }

    /** The coverage of a revision, for whoever checks it; work of its own, which nobody stops who works on. */
    private void revisionCoverage(Context request) {
        String asked = Optional.ofNullable(request.queryParam("revision")).orElse("");
        Revision revision = desk.revisions().stream()
                .filter(r -> asked.equals(Integer.toString(r.number())))
                .findFirst()
                .orElseThrow(() -> new NotFoundResponse("There is no such revision."));
        Plant plant = desk.design("r" + revision.number())
                .map(Reading.Read::plant)
                .orElseThrow(() -> new NotFoundResponse("This revision can no longer be read as a plant."));
        answer(
                request,
                checked.computeIfAbsent(revision.number(), n -> new Covered())
                        .of(revision.number(), plant, show(request)));
    }

    /** The profile along the way through a piece; of the tightest way where the piece has none. */
    private void profile(Context request) {
        request.contentType("image/svg+xml; charset=utf-8")
                .result(view(request, desk.copy()).profile());
    }

    /** A plant to begin with. */
    public static String starter() {
        try (InputStream in = Studio.class.getResourceAsStream("starter.yaml")) {
            if (in == null) {
                throw new IllegalStateException("the starter plant is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private void places(Context request) {
        Desk.Copy copy = desk.copy();
        answer(
                request,
                Hand.places(
                        copy.version(),
                        known(copy),
                        PlaceText.unit(copy.text()),
                        "isometric".equals(request.queryParam("view"))));
    }

    private static SetView.Asked asked(Context request, Plant plant) {
        String open = Optional.ofNullable(request.queryParam("open")).orElse("");
        List<String> ids = new ArrayList<>();
        for (String id : open.split("\n", -1)) {
            if (plant.inlets().stream().anyMatch(i -> i.id().equals(id)) && !ids.contains(id)) {
                ids.add(id);
            }
        }
        return new SetView.Asked(
                ids,
                filter(request),
                !"no".equals(request.queryParam("dust")),
                "isometric".equals(request.queryParam("view")),
                show(request),
                !"prominent".equals(request.queryParam("findings")),
                piece(request));
    }

    private static Optional<Place> piece(Context request) {
        Place.Kind kind = "run".equals(request.queryParam("kind")) ? Place.Kind.RUN : Place.Kind.INLET;
        return Optional.ofNullable(request.queryParam("id"))
                .filter(id -> !id.isEmpty())
                .map(id -> new Place(kind, id));
    }

    private static FilterCondition filter(Context request) {
        String said = Optional.ofNullable(request.queryParam("filter")).orElse("normal");
        try {
            return FilterCondition.valueOf(said.toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException none) {
            throw new BadRequestResponse("The filter is clean, normal or dirty.");
        }
    }

    private void accept(Context request) throws IOException {
        JsonNode body = body(request);
        long version = version(body);
        String author = Guard.person(request)
                .map(People.Person::name)
                .orElseGet(() -> text(body, "author").strip());
        if (author.isEmpty()
                || author.length() > LONGEST_NAME
                || text(body, "note").length() > LONGEST_NOTE) {
            request.status(422);
            answer(
                    request,
                    Map.of(
                            "why",
                            "A revision carries the name of who accepts it, up to 80 letters, and a note up to 500."));
            return;
        }
        Desk.Accepted accepted = desk.accept(version, author, text(body, "note"));
        if (accepted.revision().isPresent()) {
            answer(request, accepted.revision().get());
            return;
        }
        request.status(accepted.stale() ? 409 : 422);
        answer(request, Map.of("why", accepted.why()));
    }

    private void sign(Context request) {
        JsonNode body = body(request);
        String person = Guard.person(request).map(People.Person::name).orElse("");
        String note = text(body, "note").strip();
        long revision = neededNumber(body, "revision");
        Optional<String> why;
        if (person.isEmpty()) {
            why = Optional.of("Signing off needs people who sign in: see \"dustwright studio --person\".");
        } else if (note.length() > LONGEST_NOTE) {
            why = Optional.of("A note has up to " + LONGEST_NOTE + " letters.");
        } else {
            why = desk.sign(revision, person, note, body.path("refused").asBoolean(false));
        }
        if (why.isPresent()) {
            request.status(422);
        }
        answer(request, Map.of("why", why.orElse("")));
    }

    private void write(Context request) {
        long version = version(body(request));
        try {
            Optional<String> why = desk.write(version);
            if (why.isPresent()) {
                request.status(409);
            }
            answer(request, Map.of("why", why.orElse(""), "file", desk.fileName()));
        } catch (IOException fault) {
            Reasons.refuse(request, 500, Reasons.unwritten(opening.plantFile(), fault));
        }
    }

    private void changed(Context request, Desk.Changed changed) {
        if (taken(request, changed)) {
            answer(request, plant(request));
        }
    }

    /** Tells every page of a change that was taken, and this one why it was not. */
    private boolean taken(Context request, Desk.Changed changed) {
        if (changed.why().isPresent()) {
            request.status(changed.stale() ? 409 : 422);
            answer(
                    request,
                    Map.of("why", changed.why().get(), "version", changed.copy().version(), "whose", changed.whose()));
            return false;
        }
        watch.tell(changed.copy().version());
        return true;
    }

    static Plant known(Desk.Copy copy) {
        return copy.plant().orElseThrow(() -> new NotFoundResponse("The plant file has faults: see its text."));
    }

    private static Desk.On on(Context request, JsonNode body) {
        return new Desk.On(version(body), by(request));
    }

    /** Who is signed in; empty where nobody signs in. */
    static String by(Context request) {
        return Guard.person(request).map(People.Person::name).orElse("");
    }

    private static long version(JsonNode body) {
        return neededNumber(body, "version");
    }

    private void asset(Context request) {
        String name = request.pathParam("name");
        if (!ASSETS.contains(name)) {
            throw new NotFoundResponse("There is no " + name + ".");
        }
        String type =
                name.endsWith(".css") ? "text/css" : name.endsWith(".json") ? "application/json" : "text/javascript";
        asset(request, name, type + "; charset=utf-8");
    }

    private static void asset(Context request, String name, String type) {
        try (InputStream in = Studio.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing from the program");
            }
            request.contentType(type).result(in.readAllBytes());
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
