package dustwright.studio;

import static dustwright.studio.Exchange.answer;
import static dustwright.studio.Exchange.body;
import static dustwright.studio.Exchange.neededText;
import static dustwright.studio.Exchange.text;

import com.fasterxml.jackson.databind.JsonNode;
import dustwright.documents.papers.Paper;
import dustwright.documents.report.Origin;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Station;
import dustwright.engine.quantity.UnitSystem;
import dustwright.plantfile.Reading;
import dustwright.studio.Kept.Edited;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * The papers of the working copy: what can be made of it, made behind the page one package after the other, and kept until it is made anew.
 * Papers of an older step stay and say so.
 */
final class Papers implements AutoCloseable {
    private static final String STUDY_FILE = "hazard-study.yaml";

    /** A page of papers runs no script and fetches nothing. */
    private static final String PAPER_POLICY =
            "default-src 'none'; style-src 'unsafe-inline'; img-src data:; font-src data:; sandbox allow-popups";

    private final Desk desk;
    private final String program;
    private final Map<String, Job> jobs = new LinkedHashMap<>();
    private final ExecutorService behind = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "papers");
        thread.setDaemon(true);
        return thread;
    });

    /**
     * A package that can be made.
     *
     * @param why it cannot be made of this plant; empty where it can
     */
    private record Kind(String id, String title, String what, String why, Function<PaperWork, List<Paper>> make) {}

    /** Where a package stands. */
    enum Stage {
        NONE,
        WAITING,
        WORKING,
        READY,
        STOPPED,
        FAILED
    }

    private record File(String name, String what, String format, ByteArrayOutputStream content) {}

    /** The files of a package and what they were made of. */
    private record Made(String basis, String of, List<File> files) {
        static final Made NOTHING = new Made("", "", List.of());
    }

    /** What was asked to be made last of one kind, and what was made last. */
    private static final class Job {
        private volatile Stage stage = Stage.NONE;
        private volatile double share;
        private volatile String words = "";
        private volatile boolean stopped;
        private volatile Made made = Made.NOTHING;
    }

    /** What a page gets. */
    record View(long version, String standing, String why, List<Bundle> packages) {}

    /**
     * One package.
     *
     * @param why it cannot be made; empty where it can
     * @param words how far it is, or why it was not made
     * @param of what its files were made of
     * @param older true where the plant has gone on since
     */
    record Bundle(
            String id,
            String title,
            String what,
            String why,
            String stage,
            double share,
            String words,
            String of,
            boolean older,
            List<Listed> files) {}

    /** One file that can be fetched. */
    record Listed(String name, String what, String format, int bytes) {}

    Papers(Desk desk, String program) {
        this.desk = desk;
        this.program = program;
    }

    void routes(JavalinConfig config) {
        config.routes.get("/api/papers", request -> answer(request, view()));
        config.routes.post("/api/papers/make", request -> {
            JsonNode body = body(request);
            Optional<String> why =
                    begin(neededText(body, "paper"), "us".equals(text(body, "units")) ? UnitSystem.US : UnitSystem.SI);
            if (why.isPresent()) {
                request.status(422);
                answer(request, Map.of("why", why.get()));
                return;
            }
            answer(request, view());
        });
        config.routes.post("/api/papers/stop", request -> {
            Optional.ofNullable(jobs().get(neededText(body(request), "paper"))).ifPresent(job -> job.stopped = true);
            answer(request, view());
        });
        config.routes.get("/api/papers/file", this::file);
        config.routes.get("/api/papers/package.zip", this::all);
    }

    private static String asked(Context request, String key) {
        return Optional.ofNullable(request.queryParam(key)).orElse("");
    }

    private synchronized Map<String, Job> jobs() {
        return new LinkedHashMap<>(jobs);
    }

    private List<Kind> kinds(Reading.Read reading) {
        Plant plant = reading.plant();
        List<Kind> kinds = new ArrayList<>();
        kinds.add(new Kind(
                "report",
                "Verification report",
                "Every set the plant file names and every single user, filter clean and dirty, with dust and without: does it hold, where not, and why. With the equipment sheets.",
                "",
                PaperWork::report));
        kinds.add(new Kind(
                "coverage",
                "Coverage",
                "Every set of open inlets up to the number of users asked: the proof, or the worst sets.",
                plant.inlets().isEmpty() || plant.usage().simultaneousUsers() < 1
                        ? "Nobody is asked to be on, so there are no sets to cover."
                        : "",
                PaperWork::coverage));
        kinds.add(new Kind(
                "sizing",
                "Sizes",
                "The cheapest sizes that are covered among those the plant file leaves open. What is found after three minutes is written, and says how far it is shown.",
                reading.open().choices().isEmpty()
                        ? "Nothing is open to choice in this plant file: \"sizing\" names what may be chosen, with prices."
                        : "",
                PaperWork::sizing));
        kinds.add(new Kind(
                "hazards",
                "Combustible dust",
                "Dusts, what follows from them, what was checked, hazard study, earthing test list. Prompts for a dust hazard analysis, not the analysis: a qualified person does and signs it.",
                plant.stations().isEmpty() && plant.dusts().isEmpty()
                        ? "This plant names no dust, so there is nothing to study."
                        : "",
                PaperWork::hazards));
        plant.stations().forEach(station -> kinds.addAll(control(plant, station)));
        return kinds;
    }

    private List<Kind> control(Plant plant, Station station) {
        String of = plant.stations().size() > 1 ? " of station " + station.id() : "";
        Edited last = desk.sequences().last(station);
        String which = last.text().isEmpty()
                ? "The sequence the panel begins with"
                : "The sequence as it was edited here, edit " + last.number();
        String why = Sequences.unable(station).orElse("");
        return List.of(
                new Kind(
                        "control-" + station.id(),
                        "Control" + of,
                        which
                                + ": operations in sentences, steps, matrix, signals, alarms, shop test, program. No certified safety design.",
                        why,
                        work -> work.control(station)),
                new Kind(
                        "faults-" + station.id(),
                        "Control" + of + ", with device faults",
                        which
                                + ": the same papers, and in them what is proven and which single device that breaks defeats it. Every state is visited for each device: a minute or two.",
                        why,
                        work -> work.controlWithFaults(station)));
    }

    private View view() {
        Desk.Copy copy = desk.copy();
        Reading.Read reading = copy.reading();
        if (reading == null) {
            return new View(copy.version(), "", "The plant file has faults: see its text.", List.of());
        }
        Map<String, Job> known = jobs();
        return new View(
                copy.version(),
                standing(copy),
                copy.faults().isEmpty()
                        ? ""
                        : "The text has faults: mend them, then papers can be made. Those below are of an earlier step.",
                kinds(reading).stream()
                        .map(kind -> listed(kind, Optional.ofNullable(known.get(kind.id())), basis(copy)))
                        .toList());
    }

    /** Papers are as old as the plant and the control sequences they are made of. */
    private String basis(Desk.Copy copy) {
        return copy.version() + " " + desk.sequences().edition();
    }

    private static Bundle listed(Kind kind, Optional<Job> begun, String basis) {
        Job job = begun.orElseGet(Job::new);
        Made made = job.made;
        return new Bundle(
                kind.id(),
                kind.title(),
                kind.what(),
                kind.why(),
                job.stage.name().toLowerCase(Locale.ROOT),
                job.share,
                job.words,
                made.of(),
                !made.files().isEmpty() && !made.basis().equals(basis),
                made.files().stream()
                        .map(f -> new Listed(
                                f.name(), f.what(), f.format(), f.content().size()))
                        .toList());
    }

    /** Step, mark, and whether this is what somebody has accepted. */
    String standing(Desk.Copy copy) {
        List<Kept.Revision> revisions = desk.revisions();
        String step = "Step " + copy.step() + ", mark " + mark(copy);
        return revisions.stream()
                .filter(r -> r.text().equals(copy.text()))
                .findFirst()
                .map(r -> step + ", revision " + r.number() + " accepted by " + r.author() + signed(r))
                .orElseGet(() -> step
                        + (revisions.isEmpty()
                                ? ", draft: no revision is accepted yet"
                                : ", draft: it differs from revision "
                                        + revisions.get(0).number()));
    }

    private static String signed(Kept.Revision revision) {
        String checked = names(revision, false);
        String refused = names(revision, true);
        return (checked.isEmpty() && refused.isEmpty() ? ", not yet checked" : "")
                + (checked.isEmpty() ? "" : ", checked by " + checked)
                + (refused.isEmpty() ? "" : ", refused by " + refused);
    }

    private static String names(Kept.Revision revision, boolean refused) {
        return revision.signed().stream()
                .filter(one -> one.refused() == refused)
                .map(Kept.Signed::by)
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private static String mark(Desk.Copy copy) {
        return Origin.mark(copy.text().getBytes(StandardCharsets.UTF_8));
    }

    /** Begins a package where it is not in work, or says why not. */
    private Optional<String> begin(String id, UnitSystem units) {
        Desk.Copy copy = desk.copy();
        Reading.Read reading = copy.reading();
        if (reading == null || !copy.faults().isEmpty()) {
            return Optional.of("The text has faults: mend them, then papers can be made.");
        }
        Optional<Kind> found = kinds(reading).stream()
                .filter(k -> k.id().equals(id) && k.why().isEmpty())
                .findFirst();
        if (found.isEmpty()) {
            return Optional.of("This plant has no such papers.");
        }
        Kind kind = found.get();
        synchronized (this) {
            Job job = jobs.computeIfAbsent(id, any -> new Job());
            if (job.stage == Stage.WAITING || job.stage == Stage.WORKING) {
                return Optional.empty();
            }
            job.stage = Stage.WAITING;
            job.words = "waits for the one before it";
            job.share = 0;
            job.stopped = false;
            String of = standing(copy) + ", " + (units == UnitSystem.US ? "US units" : "SI units");
            String basis = basis(copy);
            behind.execute(() -> make(kind, job, basis, of, work(reading, units, copy, job)));
        }
        return Optional.empty();
    }

    private PaperWork work(Reading.Read reading, UnitSystem units, Desk.Copy copy, Job job) {
        PaperWork.Watch watch = new PaperWork.Watch() {
            @Override
            public void told(double share, String words) {
                job.share = share;
                job.words = words;
            }

            @Override
            public boolean getAsBoolean() {
                return job.stopped;
            }
        };
        return new PaperWork(
                reading,
                units,
                new Origin(desk.fileName(), mark(copy), program),
                desk.folder().resolve(STUDY_FILE),
                desk.sequences(),
                watch);
    }

    private static void make(Kind kind, Job job, String basis, String of, PaperWork work) {
        if (job.stopped) {
            ended(job, Stage.STOPPED, "Stopped before it began.");
            return;
        }
        job.stage = Stage.WORKING;
        job.words = "begun";
        try {
            List<File> files = new ArrayList<>();
            for (Paper paper : kind.make().apply(work)) {
                if (job.stopped) {
                    throw new CancellationException();
                }
                work.watch().told(job.share, "writing " + paper.name());
                ByteArrayOutputStream bytes = new ByteArrayOutputStream();
                paper.content().to(bytes);
                files.add(new File(paper.name(), paper.what(), format(paper.name()), bytes));
            }
            job.made = new Made(basis, of, List.copyOf(files));
            ended(job, Stage.READY, "");
        } catch (CancellationException stopped) {
            ended(job, Stage.STOPPED, "Stopped; nothing of it was kept.");
        } catch (PaperWork.Refused refused) {
            ended(job, Stage.FAILED, "Not made. " + refused.getMessage());
        } catch (IOException | RuntimeException fault) {
            ended(job, Stage.FAILED, "Not made, by a fault of the program: " + fault + ".");
        }
    }

    private static void ended(Job job, Stage stage, String words) {
        job.words = words;
        job.share = 1;
        job.stage = stage;
    }

    /** The format in words, by the ending. */
    static String format(String name) {
        return switch (name.substring(name.lastIndexOf('.') + 1)) {
            case "html" -> "page";
            case "pdf" -> "PDF";
            case "svg" -> "SVG drawing";
            case "xlsx" -> "workbook";
            case "xml" -> "XML";
            case "json" -> "JSON";
            case "yaml" -> "YAML";
            case "st" -> "Structured Text";
            case "pml" -> "Promela";
            default -> throw new IllegalArgumentException("no paper ends like " + name);
        };
    }

    private static String type(String name) {
        return switch (name.substring(name.lastIndexOf('.') + 1)) {
            case "html" -> "text/html; charset=utf-8";
            case "pdf" -> "application/pdf";
            case "svg" -> "image/svg+xml; charset=utf-8";
            case "xlsx" -> "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
            case "xml" -> "application/xml; charset=utf-8";
            case "json" -> "application/json; charset=utf-8";
            default -> "text/plain; charset=utf-8";
        };
    }

    private void file(Context request) {
        String name = asked(request, "name");
        if (asked(request, "paper").equals("plant")) {
            attached(request, desk.fileName(), desk.copy().text().getBytes(StandardCharsets.UTF_8));
            return;
        }
        File file = Optional.ofNullable(jobs().get(asked(request, "paper")))
                .map(job -> job.made)
                .orElse(Made.NOTHING)
                .files()
                .stream()
                .filter(f -> f.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new NotFoundResponse("This paper is not made yet."));
        if (name.endsWith(".html") || name.endsWith(".pdf")) {
            request.header("Content-Disposition", "inline; filename=\"" + name + "\"");
            if (name.endsWith(".html")) {
                request.header("Content-Security-Policy", PAPER_POLICY);
            }
            request.contentType(type(name)).result(file.content().toByteArray());
        } else {
            attached(request, name, file.content().toByteArray());
        }
    }

    private static void attached(Context request, String name, byte[] content) {
        String plain = name.replaceAll("[^A-Za-z0-9 ._-]", "_");
        request.header("Content-Disposition", "attachment; filename=\"" + plain + "\"")
                .contentType(type(plain))
                .result(content);
    }

    /** All that is made, with the plant file. */
    private void all(Context request) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
            zip.putNextEntry(new ZipEntry(desk.fileName()));
            zip.write(desk.copy().text().getBytes(StandardCharsets.UTF_8));
            for (Map.Entry<String, Job> job : jobs().entrySet()) {
                for (File file : job.getValue().made.files()) {
                    zip.putNextEntry(new ZipEntry(job.getKey().replaceAll("[^A-Za-z0-9._-]", "_") + "/" + file.name()));
                    file.content().writeTo(zip);
                }
            }
        }
        request.header("Content-Disposition", "attachment; filename=\"papers.zip\"")
                .contentType("application/zip")
                .result(bytes.toByteArray());
    }

    @Override
    public void close() {
        jobs().values().forEach(job -> job.stopped = true);
        behind.shutdownNow();
    }
}
