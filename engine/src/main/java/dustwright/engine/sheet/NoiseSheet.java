package dustwright.engine.sheet;

import static dustwright.engine.sheet.Writing.step;

import dustwright.engine.finding.Confidence;
import dustwright.engine.finding.FindingCode;
import dustwright.engine.finding.Place;
import dustwright.engine.finding.Side;
import dustwright.engine.finding.Source;
import dustwright.engine.finding.Step;
import dustwright.engine.finding.Term;
import dustwright.engine.noise.Exposure;
import dustwright.engine.noise.Exposure.Stretch;
import dustwright.engine.noise.SoundLevel;
import dustwright.engine.plant.Limit;
import dustwright.engine.plant.Plant;
import dustwright.engine.plant.Shifts;
import dustwright.engine.plant.Station;
import dustwright.engine.plant.StationSound;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.quantity.Duration;
import dustwright.engine.quantity.Length;
import dustwright.engine.quantity.LevelDifference;
import dustwright.engine.quantity.Ratio;
import dustwright.engine.quantity.SoundPressureLevel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Sound of a station: at 1 m, where the operator stands, and what that comes to over a day. A screening in the open. */
final class NoiseSheet {
    private static final Source ENERGIES = Source.published("levels add by energy; OSHA prints 85 + 83 + 88 = 90.6 dB");
    private static final Source INSERTION = Source.published("definition of insertion loss");
    private static final Source SQUARES = Source.published("inverse square law; indoors it falls less");
    private static final Source OSHA = Source.published("29 CFR 1910.95 App. A");
    private static final Source EU = Source.published("Directive 2003/10/EC, Articles 2 and 3");
    private static final String NOT_ALL_COUNTED = "not known: not every level is stated, see above";
    private static final double ONE_METRE = 1;
    private static final double HOUR_s = 3600;

    private final Plant plant;
    private final Station station;
    private final StationSound sound;
    private final Writing writing;
    /** Levels that are not stated and that the sums below therefore lack. */
    private final List<String> uncounted = new ArrayList<>();

    private NoiseSheet(Plant plant, Station station, StationSound sound) {
        this.plant = plant;
        this.station = station;
        this.sound = sound;
        this.writing = new Writing(station.id());
    }

    static Optional<Sheet> of(Plant plant, Station station) {
        Optional<StationSound> stated = plant.operation().soundOf(station.id());
        boolean byMachine =
                station.producers().stream().anyMatch(p -> !p.sound().equals(VacuumProducer.Sound.UNKNOWN));
        boolean asked = plant.operation().asked().soundAtOneMetre().isPresent()
                || plant.operation().asked().dailyExposure().isPresent();
        return stated.isPresent() || byMachine || asked
                ? Optional.of(new NoiseSheet(plant, station, stated.orElseGet(() -> StationSound.unknown(station.id())))
                        .sheet())
                : Optional.empty();
    }

    private Sheet sheet() {
        Optional<List<Step>> machines = machines();
        if (machines.isEmpty()) {
            return writing.sheet("sound", "Sound", Place.Kind.STATION);
        }
        List<Step> together = machines.get();
        SoundPressureLevel atOneMetre = level(together);
        writing.known("sound-1m", "All producers at 1 m", atOneMetre, together);
        plant.operation()
                .asked()
                .soundAtOneMetre()
                .ifPresent(limit -> asked(FindingCode.SOUND_AT_ONE_METRE, atOneMetre, limit, together));
        atOperator(together);
        return writing.sheet("sound", "Sound", Place.Kind.STATION);
    }

    /** A sum that lacks a part is too low: what exceeds its limit all the same does, and what does not is not known. */
    private void asked(FindingCode code, SoundPressureLevel level, Limit<SoundPressureLevel> limit, List<Step> steps) {
        if (!uncounted.isEmpty() && level.compareTo(limit.value()) <= 0) {
            writing.unjudged(
                    code,
                    Place.Kind.STATION,
                    Side.AT_MOST,
                    limit,
                    "Not counted, as not stated: " + String.join(", ", uncounted) + ".");
            return;
        }
        writing.asked(code, Place.Kind.STATION, Sheet.ANY_SET, Side.AT_MOST, level, limit, steps);
    }

    private void notKnown(String what, String name, String why) {
        writing.unknown(what, name, why);
        plant.operation()
                .asked()
                .soundAtOneMetre()
                .ifPresent(limit ->
                        writing.unjudged(FindingCode.SOUND_AT_ONE_METRE, Place.Kind.STATION, Side.AT_MOST, limit, why));
        exposureNotKnown(why);
    }

    private void exposureNotKnown(String why) {
        plant.operation()
                .asked()
                .dailyExposure()
                .ifPresent(limit ->
                        writing.unjudged(FindingCode.DAILY_EXPOSURE, Place.Kind.STATION, Side.AT_MOST, limit, why));
    }

    private static SoundPressureLevel level(List<Step> steps) {
        return (SoundPressureLevel) steps.get(steps.size() - 1).result().value();
    }

    // ---- at 1 m

    /** All producers that run in ordinary service, each 1 m away; empty where a level of one is not known. */
    private Optional<List<Step>> machines() {
        List<Step> steps = new ArrayList<>();
        List<Term> levels = new ArrayList<>();
        for (VacuumProducer producer : station.producers()) {
            if (producer.standby()) {
                continue;
            }
            Optional<Term> level = machine(producer, steps);
            if (level.isEmpty()) {
                notKnown(
                        "sound-1m",
                        "All producers at 1 m",
                        "The level of " + producer.id()
                                + " is not known: enter \"casing sound\" or \"discharge sound\" of the"
                                + " producer, or \"casing\" or \"discharge\" of the station's sound, as its maker states them.");
                return Optional.empty();
            }
            levels.add(level.get());
        }
        if (levels.isEmpty()) {
            notKnown("sound-1m", "All producers at 1 m", "Every producer stands by: enter one that runs.");
            return Optional.empty();
        }
        steps.add(sum(levels, new Term("L", "all running producers, each 1 m away", summed(levels))));
        return Optional.of(steps);
    }

    /** One producer: casing under its hood and discharge behind its silencer; its own levels go before the station's. */
    private Optional<Term> machine(VacuumProducer producer, List<Step> steps) {
        String of = " of " + producer.id();
        List<Term> parts = new ArrayList<>();
        bare("casing", producer, producer.sound().casing(), sound.casing())
                .ifPresent(level -> parts.add(behind(steps, "casing" + of, level, sound.hood(), "hood")));
        bare("discharge", producer, producer.sound().discharge(), sound.discharge())
                .ifPresent(level -> parts.add(behind(steps, "discharge" + of, level, sound.silencer(), "silencer")));
        if (parts.isEmpty()) {
            return Optional.empty();
        }
        Term level = new Term("L(" + producer.id() + ")", producer.id() + " at 1 m", summed(parts));
        steps.add(sum(parts, level));
        return Optional.of(level);
    }

    /** The producer's own level where the plant file states it, else the station's, else the catalogue's. */
    private Optional<SoundPressureLevel> bare(
            String part,
            VacuumProducer producer,
            Optional<SoundPressureLevel> own,
            Optional<SoundPressureLevel> ofStation) {
        String what = "sound-" + part + "-" + producer.id();
        String name = (part.equals("casing") ? "Casing of " : "Open discharge of ") + producer.id() + " at 1 m";
        Source source = producer.sourceOf(part + " sound");
        boolean catalogue = own.isPresent() && source.confidence() == Confidence.CATALOGUE;
        Optional<SoundPressureLevel> level = catalogue ? ofStation.or(() -> own) : own.or(() -> ofStation);
        boolean byOwn = level.equals(own) && !(catalogue && ofStation.isPresent());
        level.ifPresentOrElse(known -> writing.given(what, name, known, byOwn ? source : Source.entered()), () -> {
            writing.unknown(what, name, "Not stated, so it is not counted below.");
            uncounted.add(
                    "\"" + part + " sound\" of " + producer.id() + ", or \"" + part + "\" of the station's sound");
        });
        return level;
    }

    private static SoundPressureLevel summed(List<Term> parts) {
        return new SoundPressureLevel(SoundLevel.sum_dB(
                parts.stream().mapToDouble(term -> term.value().si()).toArray()));
    }

    private static Step sum(List<Term> parts, Term result) {
        return new Step("CST-1", "L = 10 log10 Σ 10^(L_i/10)", parts, result, ENERGIES);
    }

    private static Term behind(
            List<Step> steps, String part, SoundPressureLevel bare, Optional<LevelDifference> loss, String what) {
        if (loss.isEmpty()) {
            return new Term("L_" + part, part + " without " + what, bare);
        }
        SoundPressureLevel behind = new SoundPressureLevel(
                SoundLevel.silenced_dB(bare.decibels(), loss.get().decibels()));
        Term result = new Term("L_" + part, part + " behind its " + what, behind);
        steps.add(step(
                "CST-3",
                "L_2 = L_1 − D",
                INSERTION,
                result,
                new Term("L_1", part + ", bare", bare),
                new Term("D", "insertion loss of the " + what, loss.get())));
        return result;
    }

    // ---- the operator

    private void atOperator(List<Step> together) {
        if (sound.operatorAt().isEmpty()) {
            String why = "Enter \"operator at\" of the station's sound.";
            writing.unknown("sound-operator", "Where the operator stands", why);
            exposureNotKnown(why);
            return;
        }
        Length distance = sound.operatorAt().get();
        List<Step> steps = new ArrayList<>(together);
        SoundPressureLevel machines = new SoundPressureLevel(
                SoundLevel.atDistance_dB(level(together).decibels(), ONE_METRE, distance.metres()));
        Term term = new Term("L_2", "the producers where the operator stands", machines);
        steps.add(step(
                "CST-2",
                "L_2 = L_1 − 20 log10(r_2/r_1)",
                SQUARES,
                term,
                new Term("L_1", "all producers at 1 m", level(together)),
                new Term("r_1", "1 m", new Length(ONE_METRE)),
                new Term("r_2", "the operator's distance", distance)));
        sound.background()
                .ifPresent(background -> steps.add(step(
                        "CST-1",
                        "L = 10 log10 Σ 10^(L_i/10)",
                        ENERGIES,
                        new Term(
                                "L",
                                "where the operator stands",
                                new SoundPressureLevel(SoundLevel.sum_dB(machines.decibels(), background.decibels()))),
                        term,
                        new Term("L_b", "everything else there", background))));
        if (sound.background().isEmpty()) {
            writing.unknown("sound-background", "Everything else there", "Not stated, so it is not counted below.");
            uncounted.add("\"background\" of the station's sound");
        }
        writing.known("sound-operator", "Where the operator stands", level(steps), steps);
        exposure(level(steps), steps);
    }

    private void exposure(SoundPressureLevel here, List<Step> toHere) {
        Optional<Shifts> shifts = plant.operation().shifts();
        if (sound.there().isEmpty() || sound.elsewhere().isEmpty() || shifts.isEmpty()) {
            String why = "Enter " + missing(shifts.isPresent()) + ".";
            writing.unknown("exposure", "Daily noise exposure of the operator", why);
            exposureNotKnown(why);
            return;
        }
        double there_h = sound.there().get().seconds() / HOUR_s;
        double rest_h = Math.max(0, shifts.get().length().seconds() / HOUR_s - there_h);
        List<Stretch> day = List.of(
                new Stretch(here.decibels(), there_h),
                new Stretch(sound.elsewhere().get().decibels(), rest_h));
        Term[] inputs = {
            new Term("L_1", "where the operator stands", here),
            new Term("C_1", "time there", sound.there().get()),
            new Term("L_2", "elsewhere", sound.elsewhere().get()),
            new Term("C_2", "rest of the shift", new Duration(rest_h * HOUR_s))
        };
        List<Step> steps = new ArrayList<>(toHere);
        SoundPressureLevel daily = new SoundPressureLevel(Exposure.daily_dBA(day));
        steps.add(step(
                "CST-26",
                "L_EX,8h = 10 log10[ Σ C_i/8 h · 10^(L_i/10) ]",
                EU,
                new Term("L_EX,8h", "daily noise exposure", daily),
                inputs));
        writing.known("exposure", "Daily exposure of the operator, 3 dB rule", daily, steps);
        osha(day, toHere, inputs);
        compare(daily, steps);
    }

    private String missing(boolean shifts) {
        List<String> keys = new ArrayList<>();
        if (sound.there().isEmpty()) {
            keys.add("\"time there\" of the station's sound");
        }
        if (sound.elsewhere().isEmpty()) {
            keys.add("\"elsewhere\" of the station's sound");
        }
        if (!shifts) {
            keys.add("\"shifts\" of the usage");
        }
        return String.join(", ", keys);
    }

    private void osha(List<Stretch> day, List<Step> toHere, Term... inputs) {
        List<Step> steps = new ArrayList<>(toHere);
        Ratio dose = new Ratio(Exposure.dose(Exposure.Rule.OSHA, day));
        Term doseTerm = new Term("D", "dose", dose);
        steps.add(step("CST-8", "D = Σ C_i/T_i, T = 8 h / 2^((L − 90)/5)", OSHA, doseTerm, inputs));
        SoundPressureLevel average = new SoundPressureLevel(Exposure.timeWeightedAverage_dBA(dose.value()));
        steps.add(step(
                "CST-9",
                "TWA = 16.61 log10 D + 90",
                OSHA,
                new Term("TWA", "eight-hour time-weighted average", average),
                doseTerm));
        writing.known("exposure-osha", "Time-weighted average of the operator, 5 dB rule", average, steps);
        writing.words(
                "action-osha",
                "OSHA action level, 85 dBA",
                average.decibels() >= Exposure.OSHA_ACTION_LEVEL_dBA
                        ? "reached"
                        : uncounted.isEmpty() ? "not reached" : NOT_ALL_COUNTED,
                steps,
                Source.published("29 CFR 1910.95(c)"));
    }

    /** Against the limit that was entered; without one, beside the published action values. */
    private void compare(SoundPressureLevel daily, List<Step> steps) {
        plant.operation()
                .asked()
                .dailyExposure()
                .ifPresentOrElse(
                        limit -> asked(FindingCode.DAILY_EXPOSURE, daily, limit, steps),
                        () -> writing.words(
                                "action-eu", "EU action values, 80 and 85 dBA", actionValue(daily), steps, EU));
    }

    private String actionValue(SoundPressureLevel daily) {
        if (daily.decibels() > Exposure.EU_LIMIT_dBA) {
            return "above both, and above the limit of 87 dBA";
        }
        if (daily.decibels() >= Exposure.EU_UPPER_ACTION_dBA) {
            return "upper value reached";
        }
        if (!uncounted.isEmpty()) {
            return NOT_ALL_COUNTED;
        }
        return daily.decibels() >= Exposure.EU_LOWER_ACTION_dBA ? "lower value reached" : "neither reached";
    }
}
