package dustwright.studio;

import com.fasterxml.jackson.databind.JsonNode;
import dustwright.documents.control.Clock;
import dustwright.documents.drawing.RehearsalChart;
import dustwright.documents.writing.Show;
import dustwright.engine.finding.Assumption;
import dustwright.engine.interlock.Sequence;
import dustwright.engine.quantity.ElectricCurrent;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.rehearsal.Operating;
import dustwright.engine.rehearsal.PlantFault;
import dustwright.engine.rehearsal.Played;
import dustwright.engine.rehearsal.Rehearsal;
import dustwright.engine.rehearsal.Script;
import dustwright.engine.rehearsal.StationModel;
import dustwright.engine.rehearsal.Trainee;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** One rehearsal by hand: the panel as it is built, what it shows now, and all that was done to it. */
final class PanelPlay {
    private static final long HOUR_ms = 3600 * 1000L;
    private static final long DAY_ms = 24 * HOUR_ms;
    private static final double LIKE_VACUUM_Pa = 25_000;
    private static final double LIKE_DROP_Pa = 1000;
    private static final int MOST_ACTS = 20;
    private static final int MOST_MOMENTS = 400;

    private final String id;
    private final int step;
    private final int edit;
    private final Sequence sequence;
    private final StationModel model;
    private final Script script;
    private final boolean training;
    private final Rehearsal rehearsal;
    private final List<String> acts = new ArrayList<>();

    private PanelPlay(
            String id,
            int step,
            int edit,
            Sequence sequence,
            StationModel model,
            Script script,
            boolean training,
            Rehearsal rehearsal) {
        this.id = id;
        this.step = step;
        this.edit = edit;
        this.sequence = sequence;
        this.model = model;
        this.script = script;
        this.training = training;
        this.rehearsal = rehearsal;
    }

    /**
     * A rehearsal at its beginning.
     *
     * @throws Panel.Refused when the script asks for what the sequence does not have
     */
    static PanelPlay of(
            String id, int step, int edit, Sequence sequence, StationModel model, Script script, boolean training) {
        try {
            Rehearsal rehearsal =
                    training ? Rehearsal.training(sequence, model, script) : new Rehearsal(sequence, model, script);
            return new PanelPlay(id, step, edit, sequence, model, script, training, rehearsal);
        } catch (IllegalArgumentException unknownName) {
            throw new Panel.Refused("This drill does not fit the sequence: " + unknownName.getMessage() + ".");
        }
    }

    String id() {
        return id;
    }

    /**
     * The panel as it is built.
     *
     * @param step of the working copy it was made from
     * @param edit of its sequence, 0 for the one the plant begins with
     * @param motion whether something turns under the receiver
     */
    record Built(
            String id,
            int step,
            int edit,
            String title,
            String station,
            boolean training,
            double lasts_s,
            boolean motion,
            String container,
            List<Lamp> lamps,
            List<Button> buttons,
            List<Fault> faults,
            List<String> sees,
            List<String> does,
            List<String> rests,
            Now now) {}

    /** A lamp. */
    record Lamp(String name, String tag, String colour, boolean flashes, String words) {}

    /** A push button. */
    record Button(String name, String tag, String words) {}

    /** What may break; its name as the panel would say it. */
    record Fault(String id, String name, String words) {}

    /** A reading on a scale from zero. */
    record Gauge(double value, double most, String unit, String words) {}

    /** A message, and what to do. */
    record Message(String words, String response, String priority) {}

    /** Something that happened. */
    record Told(String at, String who, String words) {}

    /**
     * What is seen now.
     *
     * @param held why there is no suction
     * @param told what happened since the number the page had
     * @param known number to ask with next time
     * @param over whether the drill has come to its end
     */
    record Now(
            long at_ms,
            String clock,
            String step,
            List<String> lit,
            Map<String, Boolean> outputs,
            List<Message> messages,
            List<String> held,
            Gauge vacuum,
            Gauge drop,
            Gauge current,
            double receiver,
            double containerShare,
            List<String> broken,
            boolean users,
            List<Told> told,
            int known,
            boolean over,
            List<Trainee.Mark> marks) {}

    synchronized Built built(Show show) {
        return new Built(
                id,
                step,
                edit,
                script.title(),
                model.station(),
                training,
                script.lasts_s(),
                model.line().valve_kgPerS().isPresent(),
                sequence.options().getOrDefault("container", "container"),
                sequence.lamps().stream()
                        .map(l -> new Lamp(l.name(), l.tag(), l.colour(), l.flashes(), l.words()))
                        .toList(),
                sequence.buttons().stream()
                        .map(b -> new Button(b.name(), b.tag(), b.words()))
                        .toList(),
                List.of(PlantFault.values()).stream()
                        .map(f -> new Fault(f.id(), named(f.id()), named(f.words())))
                        .toList(),
                script.sees(),
                script.does(),
                model.assumptions().stream().map(Assumption::what).toList(),
                now(0, show));
    }

    /** Does what the page asks at once, then lets time go on. */
    synchronized Now go(JsonNode asked, Show show) {
        int done = 0;
        for (JsonNode act : asked.path("acts")) {
            if (done++ < MOST_ACTS && !over()) {
                act(act);
            }
        }
        long end_ms = Math.round(1000 * script.lasts_s());
        if (asked.path("next").asBoolean(false)) {
            rehearsal.runToNext(Math.min(end_ms, rehearsal.now_ms() + HOUR_ms));
        } else {
            long by_ms = Math.max(0, Math.min(DAY_ms, asked.path("by_ms").asLong(0)));
            rehearsal.runTo(Math.min(end_ms, rehearsal.now_ms() + by_ms));
        }
        return now(asked.path("known").asInt(0), show);
    }

    private boolean over() {
        return rehearsal.now_ms() >= Math.round(1000 * script.lasts_s());
    }

    /** Between two scans, so that a script with the same times does it at the same place. */
    private void betweenScans() {
        long scan_ms = Math.max(1, Math.round(1000 * sequence.scan_s()));
        long next_ms = rehearsal.now_ms() + 1;
        rehearsal.runTo(scan_ms > 1 && next_ms % scan_ms == 0 ? next_ms + 1 : next_ms);
    }

    private void act(JsonNode act) {
        betweenScans();
        if (act.has("press")) {
            String button = act.path("press").asText("");
            if (sequence.buttons().stream().noneMatch(b -> b.name().equals(button))) {
                throw new Panel.Refused("This panel has no button \"" + button + "\".");
            }
            rehearsal.press(button);
            acts.add(written("press: " + button));
        } else if (act.has("breaks")) {
            PlantFault fault = fault(act.path("breaks").asText(""));
            rehearsal.breaks(fault);
            acts.add(written("breaks: " + fault.id()));
        } else if (act.has("mended")) {
            PlantFault fault = fault(act.path("mended").asText(""));
            rehearsal.mended(fault);
            acts.add(written("mended: " + fault.id()));
        } else if (act.has("users")) {
            boolean begin = act.path("users").asBoolean();
            rehearsal.users(begin);
            acts.add(written("users: " + (begin ? "begin" : "end")));
        }
    }

    private static PlantFault fault(String id) {
        return PlantFault.of(id)
                .orElseThrow(() -> new Panel.Refused("Nothing that may break is called \"" + id + "\"."));
    }

    private String written(String what) {
        return String.format(Locale.ROOT, "  - {at: %.3f s, %s}%n", rehearsal.now_ms() / 1000.0, what);
    }

    private Now now(int known, Show show) {
        Rehearsal.View view = rehearsal.view();
        List<Played.Moment> told = rehearsal.momentsFrom(known);
        return new Now(
                view.at_ms(),
                Clock.of(script, view.at_ms()),
                view.step().replace('_', ' '),
                view.lamps().stream().map(Sequence.Lamp::name).toList(),
                view.outputs(),
                view.messages().stream()
                        .map(c -> new Message(
                                c.message(), c.response(), c.priority().name().toLowerCase(Locale.ROOT)))
                        .toList(),
                rehearsal.why("vent_shut").stream()
                        .map(Sequence.Cause::message)
                        .distinct()
                        .toList(),
                gauge(LIKE_VACUUM_Pa, view.operating().vacuum_Pa(), model.most(Operating::vacuum_Pa), show),
                gauge(LIKE_DROP_Pa, view.operating().drop_Pa(), model.most(Operating::drop_Pa), show),
                current(view.operating()),
                view.receiver(),
                view.container(),
                rehearsal.broken().stream().map(PlantFault::id).toList(),
                rehearsal.usersWork(),
                told.subList(Math.max(0, told.size() - MOST_MOMENTS), told.size()).stream()
                        .map(m -> new Told(Clock.of(script, m.at_ms()), m.who().words(), named(m.words())))
                        .toList(),
                known + told.size(),
                over(),
                rehearsal.marks().stream()
                        .map(m -> new Trainee.Mark(named(m.asked()), named(m.went()), m.met()))
                        .toList());
    }

    /** The container by the word that lamps and buttons have for it. */
    private String named(String words) {
        String container = sequence.options().getOrDefault("container", "container");
        return words.replace("container", container.substring(container.lastIndexOf(' ') + 1));
    }

    /** A pressure in the unit of its scale. */
    private static Gauge gauge(double like_Pa, double now_Pa, double most_Pa, Show show) {
        Show.Scale scale = show.axis(new PressureDifference(like_Pa));
        double now = scale.number(new PressureDifference(now_Pa));
        return new Gauge(
                now,
                scale.number(new PressureDifference(most_Pa)),
                scale.symbol(),
                scale.text(now) + " " + scale.symbol());
    }

    private Gauge current(Operating now) {
        double most_A = model.most(Operating::total_A);
        String words = most_A > 0
                ? String.format(Locale.ROOT, "%.1f A", new ElectricCurrent(now.total_A()).amperes())
                : "not known: enter the supply's voltage";
        return new Gauge(now.total_A(), most_A, "A", words);
    }

    /** Its course so far, drawn as on paper. */
    synchronized String chart(Show show) {
        return RehearsalChart.soFar(rehearsal.played(), show, rehearsal.now_ms())
                .svg()
                .markup();
    }

    /** All that was done, as a script that goes the same way again. */
    synchronized String script() {
        StringBuilder text = new StringBuilder();
        long minute = Math.round(script.begins_s() / 60);
        text.append("# Done by hand on the panel page of the studio.\nrehearsal: 1\ntitle: ")
                .append(script.title())
                .append(String.format(Locale.ROOT, "%nbegins: \"%02d:%02d\"%n", minute / 60 % 24, minute % 60))
                .append(String.format(
                        Locale.ROOT, "lasts: %.3f s%n", Math.max(1, Math.ceil(rehearsal.now_ms() / 1000.0))))
                .append("seed: ")
                .append(script.seed())
                .append('\n')
                .append(String.format(Locale.ROOT, "feed: %.6g %%%n", 100 * script.feed()));
        script.containerLeft_s()
                .ifPresent(t -> text.append(String.format(Locale.ROOT, "container full after: %.3f s%n", t)));
        script.receiverLeft_s()
                .ifPresent(t -> text.append(String.format(Locale.ROOT, "receiver high after: %.3f s%n", t)));
        text.append(acts.isEmpty() && planned().isEmpty() ? "" : "acts:\n");
        List<String> all = new ArrayList<>(planned());
        all.addAll(acts);
        all.stream().sorted(Comparator.comparingDouble(PanelPlay::at_s)).forEach(text::append);
        return text.toString();
    }

    private static double at_s(String act) {
        return Double.parseDouble(act.substring(act.indexOf("at: ") + 4, act.indexOf(" s,")));
    }

    /** What the drill itself did up to now. */
    private List<String> planned() {
        List<String> planned = new ArrayList<>();
        for (Script.Act act : (training ? Trainee.script(script) : script).acts()) {
            if (1000 * act.at_s() <= rehearsal.now_ms()) {
                String what = act instanceof Script.Act.Press press
                        ? "press: " + press.button()
                        : act instanceof Script.Act.Breaks breaks
                                ? "breaks: " + breaks.fault().id()
                                : act instanceof Script.Act.Users users
                                        ? "users: " + (users.work() ? "begin" : "end")
                                        : "";
                if (!what.isEmpty()) {
                    planned.add(String.format(Locale.ROOT, "  - {at: %.3f s, %s}%n", act.at_s(), what));
                }
            }
        }
        return planned;
    }
}
