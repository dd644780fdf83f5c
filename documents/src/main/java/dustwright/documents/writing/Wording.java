package dustwright.documents.writing;

import dustwright.engine.Trial;
import dustwright.engine.finding.Confidence;
import dustwright.engine.finding.Finding;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.network.ProducerResult;
import dustwright.engine.network.State;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.ReasonedOverride;
import dustwright.engine.producer.Drive;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.TemperatureRise;
import dustwright.engine.sheet.Answer;
import dustwright.engine.sheet.ProducerSteps;
import dustwright.engine.sheet.Sheet;
import java.util.List;
import java.util.Optional;

/** Sentences about the plant: present tense, the plant is the subject, number and place in the sentence. */
public final class Wording {
    /** What every paper says about its own reach. */
    public static final String SCREENING =
            "Screening only. Local codes, the authority having jurisdiction and a licensed engineer decide.";

    private static final String FREE_AIR_SI = "Free air: 101.325 kPa abs, 20 °C, dry, 1.2041 kg/m³.";
    private static final String FREE_AIR_US =
            "Free air: 29.92 inHg abs, 68 °F, dry, 0.0752 lb/ft³ (101.325 kPa, 20 °C).";

    /** What is missing where the loss by a dust is not known. */
    public static final String ENTER_PARTICLES = "enter \"particle size\" and \"particle density\"";

    /** A drive holds its vacuum when it is off by less than this share. */
    private static final double HELD = 1e-3;

    /** Characters of words that still read well in a column. */
    private static final int LONGEST_CELL = 32;

    private Wording() {}

    /** What goes wrong in the plant when this finding fails, what is right when it holds, and where. */
    public static String claim(Finding finding) {
        String where = finding.where().toString();
        if (finding.code() == FindingCode.DUST_CARD && !finding.holds()) {
            return failing(finding.code()) + " " + where;
        }
        if (finding.unjudged()) {
            return "Not known whether it holds: " + holding(finding.code()) + " " + where;
        }
        return (finding.holds() ? holding(finding.code()) : failing(finding.code())) + " " + where;
    }

    /** What is asked, for a list of what is not known or fails: without the words that the list has at its head. */
    public static String requirement(Finding finding) {
        return finding.unjudged() && finding.code() != FindingCode.DUST_CARD
                ? holding(finding.code()) + " " + finding.where()
                : claim(finding);
    }

    /** What is said of a requirement where it holds and where it fails: the words a reader may look for it by. */
    public static String claims(FindingCode code) {
        return holding(code) + " / " + failing(code);
    }

    private static String holding(FindingCode code) {
        return switch (code) {
            case TOOL_FLOW -> "Enough air at";
            case INLET_VACUUM -> "Enough vacuum at";
            case TRANSPORT_VELOCITY -> "Dust carried in";
            case CARRYING_VELOCITY -> "Above saltation and choking in";
            case LOADING_RATIO -> "Not too much dust per air in";
            case NEAR_CHOKING -> "Air lifts the dust in";
            case DUST_LOSS -> "Loss known by";
            case LUMP -> "Largest piece passes";
            case WEAR_VELOCITY -> "Air not too fast in";
            case PRODUCER_VACUUM -> "Vacuum not too deep at";
            case PRODUCER_POWER -> "Motor strong enough at";
            case PRODUCER_TORQUE -> "Torque enough on the drive of";
            case PRODUCER_TEMPERATURE -> "Cool enough:";
            case PRODUCER_SPEED -> "Speed in range at";
            case PRODUCER_SHUT -> "Check valve open at";
            case VENT_PULL -> "Pull stopped by";
            case CURVE_TAKEN -> "Known how its curve was taken:";
            case SEAL_WATER -> "Seal water no warmer than its curve's at";
            case CURVE_FREE_END -> "Not shallower than its curve was measured:";
            case CURVE_DEEP_END -> "Not deeper than its curve was measured:";
            case DRIVE_VACUUM -> "Vacuum held by the drive of";
            case SPEED_ON_SUPPLY -> "Speed as its supply gives it at";
            case NAMEPLATE_CURRENT -> "No less current than its power takes at";
            case DRIVE_INPUT_CURRENT -> "No less input current than its power takes at";
            case NAMEPLATE_EXCESS -> "No more current than a motor of its power takes at";
            case BELT_SPEED -> "Belt slow enough at";
            case AIR_TO_CLOTH -> "Enough cloth in";
            case CAN_VELOCITY -> "Air rises slowly enough in";
            case CLEANING_INTERVAL -> "Runs long enough between cleanings:";
            case FILTER_DIFFERENCE -> "Elements bear the filter drop that stops users at";
            case FILTER_TEMPERATURE -> "Cool enough at";
            case FIBRE_UNFIT -> "Fibre lasts in";
            case HOT_AIR -> "No heat unaccounted for behind";
            case MOTOR_AT_SITE -> "Rated for where it stands:";
            case SAFETY_FILTER_FLOW -> "Not too much air through";
            case LEVEL_PROBE_PLACE -> "Inlet and level probe apart on";
            case LEVEL_PROBE_HEIGHT -> "Level probe below elements and inlet of";
            case HOLD_UP -> "Holds enough when discharge stops:";
            case HOPPER_OUTLET -> "Outlet wide enough in";
            case RELIEF_CAPACITY -> "Relief valve large enough for the producers:";
            case SHELL_VACUUM -> "Shell stiff enough by screening:";
            case VALVE_CAPACITY -> "Discharges enough:";
            case VALVE_TIP_SPEED -> "Tips slow enough at";
            case HOPPER_LEDGE -> "No ledge above";
            case VALVE_THROAT -> "Throat wide enough in";
            case VALVE_DIFFERENCE -> "Pressure difference not too great at";
            case VALVE_TORQUE -> "Torque enough at";
            case CHOKED -> "Not choked:";
            case CONTAINER_LOAD -> "Not overloaded:";
            case SCALE_TOO_LATE -> "Scale stops before it is full:";
            case SETTLED_LOAD -> "Not overloaded once settled:";
            case BAG_UNDER_VACUUM -> "A valve keeps the vacuum from";
            case DRUM_VACUUM -> "Bears the vacuum:";
            case INFLATION_PRESSURE -> "Pressure enough to open";
            case INFLATION_TIME -> "Inflated within a change:";
            case NECK_SEAL -> "Neck seal not too hard at";
            case SOCK_VELOCITY -> "Vent sock large enough at";
            case ARMS_LOAD -> "Arms carry no more than they may at";
            case NECK_SEAL_LOOSE -> "Neck seal tight enough at";
            case SPOUT_REACH -> "Spout long enough at";
            case HEADROOM -> "High enough over";
            case RECEIVER_DURING_CHANGE -> "A change is over before it is full:";
            case CONTAINER_LIFE -> "Lasts as long as asked by the calendar:";
            case CLEANING_TIME -> "Cleaning fits the shift:";
            case HELD_AT_LEVEL -> "Nobody held at its high level:";
            case SOUND_AT_ONE_METRE -> "Quiet enough at 1 m:";
            case DAILY_EXPOSURE -> "Little enough noise for the operator of";
            case DUSTS_TOGETHER -> "No dusts that must not meet, as far as stated, at";
            case DUST_NOT_NAMED -> "A dust is named at each inlet of";
            case DUST_CARD -> "No value missing, tested or published, of";
            case METAL_DRY -> "No light metal stated to come dry to";
            case EXPLOSION_PROTECTION -> "A way out for an explosion is stated for";
            case VENT_AREA -> "Vent no smaller than each method asked says on";
            case INLET_ISOLATION -> "Isolation is stated on every main of";
            case VALVE_ISOLATION -> "Nothing lets an explosion in the receiver into";
            case PRODUCER_PLACE -> "Nothing stated against where the producers stand at";
            case HOT_SURFACE -> "Air leaves cool enough for the dust:";
            case MOTOR_SURFACE -> "Surface outside cool enough for the dust at";
            case CONE_DISCHARGE -> "No dust lit so easily that its heap could light it:";
            case AFTER_FILTER -> "After-filter goes with the dust class at";
            case RETURN_ISOLATION -> "Isolation is stated on the return air of";
            case FILTER_STATIC -> "Elements go with the ignition energies entered:";
            case EXHAUST_INDOORS -> "Nothing stated against the exhaust air of";
            case HOSE_RESISTANCE -> "Resistance within its limit:";
            case TUBE_STATIC -> "Charge leaves the tubing:";
            case TOOL_STATIC -> "Charge leaves the tool:";
            case DRUM_STATIC -> "Charge leaves the drum:";
            case FOOD_CONTACT -> "What touches food is declared for it at";
            case BAG_STATIC -> "Bag type permitted by the ignition energies entered:";
            case LINER_STATIC -> "Liner goes with the bag:";
            case PANEL_AREA -> "Enclosure type goes with the area of";
            case PANEL_HEAT -> "Cool enough at its hottest:";
            case PANEL_EXPOSURE -> "Enclosure type keeps out what reaches";
            case BALANCE -> "In balance:";
        };
    }

    private static String failing(FindingCode code) {
        return switch (code) {
            case TOOL_FLOW -> "Too little air at";
            case INLET_VACUUM -> "Too little vacuum at";
            case TRANSPORT_VELOCITY -> "Dust settles in";
            case CARRYING_VELOCITY -> "Too near saltation or choking in";
            case LOADING_RATIO -> "Too much dust per air in";
            case NEAR_CHOKING -> "No dilute flow through";
            case DUST_LOSS -> "Loss unknown by";
            case LUMP -> "Largest piece does not pass";
            case WEAR_VELOCITY -> "Air so fast that dust wears";
            case PRODUCER_VACUUM -> "Too deep a vacuum at";
            case PRODUCER_POWER -> "Motor overloaded at";
            case PRODUCER_TORQUE -> "Motor overloaded by torque on the drive of";
            case PRODUCER_TEMPERATURE -> "Too hot:";
            case PRODUCER_SPEED -> "Speed out of range at";
            case PRODUCER_SHUT -> "Check valve stays shut at";
            case VENT_PULL -> "Pull not stopped by";
            case CURVE_TAKEN -> "Not known how its curve was taken:";
            case SEAL_WATER -> "Seal water warmer than its curve's at";
            case CURVE_FREE_END -> "Shallower than its curve was measured:";
            case CURVE_DEEP_END -> "Deeper than its curve was measured:";
            case DRIVE_VACUUM -> "Vacuum not held by the drive of";
            case SPEED_ON_SUPPLY -> "Not the speed its supply gives it at";
            case NAMEPLATE_CURRENT -> "Less current than its power takes at";
            case DRIVE_INPUT_CURRENT -> "Less input current than its power takes at";
            case NAMEPLATE_EXCESS -> "More current than a motor of its power takes at";
            case BELT_SPEED -> "Belt too fast at";
            case AIR_TO_CLOTH -> "Too much air for the cloth of";
            case CAN_VELOCITY -> "Air rises too fast in";
            case CLEANING_INTERVAL -> "Needs cleaning too soon:";
            case FILTER_DIFFERENCE -> "Elements may give way before the filter drop stops users at";
            case FILTER_TEMPERATURE -> "Too hot for the fibre of";
            case FIBRE_UNFIT -> "This air spoils the fibre of";
            case HOT_AIR -> "Heat unaccounted for behind";
            case MOTOR_AT_SITE -> "Not rated for where it stands:";
            case SAFETY_FILTER_FLOW -> "Too much air through";
            case LEVEL_PROBE_PLACE -> "Inlet and level probe share a place on";
            case LEVEL_PROBE_HEIGHT -> "Level probe above elements or inlet of";
            case HOLD_UP -> "Full too soon when discharge stops:";
            case HOPPER_OUTLET -> "Dust may bridge in";
            case RELIEF_CAPACITY -> "Relief valve too small for the producers:";
            case SHELL_VACUUM -> "Shell may buckle:";
            case VALVE_CAPACITY -> "Discharges too little:";
            case VALVE_TIP_SPEED -> "Tips too fast at";
            case HOPPER_LEDGE -> "Hopper ends wider than the throat of";
            case VALVE_THROAT -> "Lumps may bridge in";
            case VALVE_DIFFERENCE -> "Too great a pressure difference across";
            case VALVE_TORQUE -> "Too little torque at";
            case CHOKED -> "Choked:";
            case CONTAINER_LOAD -> "Overloaded when it stops filling:";
            case SCALE_TOO_LATE -> "Full before the scale stops it:";
            case SETTLED_LOAD -> "Overloaded if it settles while it fills:";
            case BAG_UNDER_VACUUM -> "No valve keeps the vacuum from";
            case DRUM_VACUUM -> "May fold under the vacuum:";
            case INFLATION_PRESSURE -> "Too little pressure to open";
            case INFLATION_TIME -> "Not inflated within a change:";
            case NECK_SEAL -> "Neck seal inflated too hard at";
            case SOCK_VELOCITY -> "Vent sock too small at";
            case ARMS_LOAD -> "Arms carry what they must not at";
            case NECK_SEAL_LOOSE -> "Too loose a neck seal at";
            case SPOUT_REACH -> "Spout too short at";
            case HEADROOM -> "Too little height over";
            case RECEIVER_DURING_CHANGE -> "Full before a change is over:";
            case CONTAINER_LIFE -> "Full sooner than asked by the calendar:";
            case CLEANING_TIME -> "Cleaning does not fit the shift:";
            case HELD_AT_LEVEL -> "Users held at its high level:";
            case SOUND_AT_ONE_METRE -> "Too loud at 1 m:";
            case DAILY_EXPOSURE -> "Too much noise for the operator of";
            case DUSTS_TOGETHER -> "Dusts that must not meet are collected at";
            case DUST_NOT_NAMED -> "Inlets without a dust at";
            case DUST_CARD -> "Values missing of";
            case METAL_DRY -> "Light metal comes to the dry";
            case EXPLOSION_PROTECTION -> "No way out that does for an explosion in";
            case VENT_AREA -> "Explosion vent too small on";
            case INLET_ISOLATION -> "Flame can run back through a main from";
            case VALVE_ISOLATION -> "An explosion in the receiver reaches";
            case PRODUCER_PLACE -> "Producers are not made for where they stand at";
            case HOT_SURFACE -> "Air leaves too hot for the dust:";
            case MOTOR_SURFACE -> "Surface outside too hot for the dust at";
            case CONE_DISCHARGE -> "The heap can light the dust in";
            case AFTER_FILTER -> "After-filter lets through too much at";
            case RETURN_ISOLATION -> "Flame can come back with the return air of";
            case FILTER_STATIC -> "Elements hold charge in";
            case EXHAUST_INDOORS -> "Air comes back indoors that must not, from";
            case HOSE_RESISTANCE -> "Charge does not get to ground through";
            case TUBE_STATIC -> "Charge stays on the tubing:";
            case TOOL_STATIC -> "Charge stays on the tool:";
            case DRUM_STATIC -> "Charge stays on the drum:";
            case FOOD_CONTACT -> "Not declared for contact with food:";
            case BAG_STATIC -> "Bag type not permitted for a dust in";
            case LINER_STATIC -> "Liner cancels the rating of";
            case PANEL_AREA -> "Enclosure not for its area:";
            case PANEL_HEAT -> "Gets too hot:";
            case PANEL_EXPOSURE -> "Enclosure not made for what reaches";
            case BALANCE -> "Balance does not close in";
        };
    }

    /** Reference state of every free-air flow, in the reader's units. */
    public static String freeAir(Show show) {
        return show.isUs() ? FREE_AIR_US : FREE_AIR_SI;
    }

    /** "least" or "most". */
    public static String limitWord(Side side) {
        return side == Side.AT_LEAST ? "least" : "most";
    }

    /** "2 264 ft/min, least 3 000": value, then limit in the same unit. */
    public static String valueAndLimit(Finding finding, Show show) {
        if (finding.unjudged() && finding.counted()) {
            return finding.why().replaceFirst("\\.$", "");
        }
        if (finding.counted() && finding.decided()) {
            return finding.holds()
                    ? "nothing against it found"
                    : Figures.count((long) finding.value().si()) + " found, none may be: "
                            + finding.derivation().steps().get(0).result().meaning();
        }
        if (finding.unjudged()) {
            return "asked at " + limitWord(finding.side()) + " "
                    + show.pair(finding).limitFull() + ", no figure known. "
                    + finding.why().replaceFirst("\\.$", "");
        }
        if (!finding.decided()) {
            return show.full(finding.value()) + " fed, " + ENTER_PARTICLES;
        }
        if (finding.value() instanceof TemperatureRise rise && !ProducerSteps.tellsTemperature(rise)) {
            return "too little air passes for a temperature to be told; " + limitWord(finding.side()) + " a rise of "
                    + show.pair(finding).limitFull();
        }
        if (finding.value() instanceof FreeAirFlow && finding.code() == FindingCode.HOT_SURFACE) {
            Show.Pair air = show.pair(finding);
            return "only " + air.valueFull() + " passes, too little for a temperature to be told; "
                    + limitWord(finding.side()) + " that carries the heat away " + air.limit();
        }
        if (finding.code() == FindingCode.SPEED_ON_SUPPLY) {
            return Figures.fixed(100 * finding.value().si(), 1) + "\u00A0% off, " + limitWord(finding.side()) + " "
                    + Figures.fixed(100 * finding.limit().si(), 1) + "\u00A0%";
        }
        Show.Pair pair = show.pair(finding);
        return pair.valueFull() + ", " + limitWord(finding.side()) + " " + pair.limit();
    }

    /** Title of a sheet with the name of what it is about. */
    public static String head(Sheet sheet) {
        return sheet.about().id().isEmpty()
                ? sheet.title()
                : sheet.title() + " " + sheet.about().id();
    }

    /** What a sheet answers: a figure in the reader's units, words, or why it is not known. */
    public static String answer(Answer answer, Show show) {
        if (answer instanceof Answer.Known known) {
            return known.least() ? show.least(known.value()) : show.full(known.value());
        }
        return answer instanceof Answer.Words words ? words.text() : "not known. " + ((Answer.Unknown) answer).why();
    }

    /** What a sheet of equipment is shown in: one unit for each kind of figure, the same for every plant. */
    public static Show across(Sheet sheet, Show show) {
        return switch (sheet.about().kind()) {
            case FILTER, SAFETY_FILTER, SILENCER, CONTAINER -> show.losses();
            default -> show.vacua();
        };
    }

    /** True for a figure or a few words, which stand in a column; longer answers are sentences of their own. */
    public static boolean isShort(Answer answer) {
        return answer instanceof Answer.Known
                || (answer instanceof Answer.Words words && words.text().length() <= LONGEST_CELL);
    }

    /** The set of open inlets in words. */
    public static String openInlets(State state) {
        int open = state.open().size();
        if (open == 0) {
            return "all inlets closed";
        }
        return open == 1 ? "inlet " + state.open().get(0) + " alone" : open + " inlets open";
    }

    /** What a producer does: stands, runs, within its curve's points or beyond, lets nothing back, or runs at an end of its speed range because its drive cannot hold. */
    public static String running(ProducerResult result, Plant plant, Show show) {
        if (!result.running()) {
            return "stands";
        }
        String runs = result.checkValveShut()
                ? "runs, check valve shut"
                : result.beyondPoints() ? "runs beyond its measured points" : "runs";
        return plant.stations().stream()
                .flatMap(station -> station.producers().stream())
                .filter(producer -> producer.id().equals(result.id()))
                .filter(producer -> producer.drive() instanceof Drive.Holding)
                .findFirst()
                .map(producer -> runs + notHeld(result, (Drive.Holding) producer.drive(), show))
                .orElse(runs);
    }

    private static String notHeld(ProducerResult result, Drive.Holding drive, Show show) {
        double off_Pa = result.vacuum().pascals() - drive.vacuum().pascals();
        if (Math.abs(off_Pa) < HELD * drive.vacuum().pascals()) {
            return "";
        }
        return " at its " + (off_Pa < 0 ? "greatest" : "least") + " speed, cannot hold " + show.full(drive.vacuum());
    }

    /** Text of a source with its mark of confidence, which is left out where the text already says it. */
    public static String source(Source source) {
        Confidence confidence = source.confidence();
        boolean said = source.text().equals(confidence.words()) || confidence == Confidence.ENTERED;
        return said ? source.text() : source.text() + " (" + confidence.words() + ")";
    }

    /** How far a source can be trusted, in a word or two for a column. */
    public static String trust(Source source) {
        return switch (source.confidence()) {
            case ENTERED -> "entered";
            case CATALOGUE -> "catalogue";
            case PUBLISHED -> "published";
            case FROM_MEMORY -> "from memory";
            case COMMON_PRACTICE -> "practice";
            case OWN_READING -> "our reading";
        };
    }

    /** "Tube T2 (2 in) in this run alone: 21 m/s there, least 15.2 (+38 %); the set holds." */
    public static String trial(Trial trial, Show show) {
        String change = change(trial.change(), show);
        if (trial.there().isEmpty() || trial.tightest().isEmpty()) {
            return change + ": no answer.";
        }
        Finding there = trial.there().orElseThrow();
        Finding tightest = trial.tightest().orElseThrow();
        String where = there.where().id().equals(trial.run())
                ? ""
                : " in " + there.where().id() + ", the slowest left,";
        String velocity = valueAndLimit(there, show) + where + " (" + Show.margin(there) + ")";
        String set = tightest.holds()
                ? "all holds in this set"
                : tightest.where().equals(there.where()) && tightest.code() == there.code()
                        ? "still the worst"
                        : "worst then: " + claim(tightest) + " (" + Show.margin(tightest) + ")";
        return change + ": " + velocity + ", " + set + ".";
    }

    private static String change(Trial.Change change, Show show) {
        if (change instanceof Trial.Change.SmallerTube smaller) {
            return "Tube " + smaller.tube() + " (" + show.bore(smaller.bore()) + " " + show.boreUnit() + ") in "
                    + (smaller.everyRun() ? "every run of its size" : "this run alone");
        }
        return change instanceof Trial.Change.OpenBleed bleed
                ? "Far-end bleed " + bleed.bleed() + " open"
                : "The loop opened here";
    }

    /** Which producers are in service because that was asked; empty where the plant file says it. */
    public static Optional<String> asked(Plant plant) {
        List<String> asked = plant.overrides().stream()
                .filter(ReasonedOverride::asked)
                .map(override -> override.place().id() + " " + override.what())
                .toList();
        return asked.isEmpty()
                ? Optional.empty()
                : Optional.of("As asked, whatever the plant file says: " + String.join(", ", asked) + ".");
    }

    /** "1 set", "3 sets". */
    public static String counted(long number, String one, String many) {
        return Figures.count(number) + " " + (number == 1 ? one : many);
    }
}
