package dustwright.engine.rehearsal;

import dustwright.engine.interlock.SetPoint;
import dustwright.engine.quantity.Units;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * The station between two scans: dust in receiver, on the cloth and in the container, vent, rotor, producers, compressed air, warmth. Between two events all
 * rates are constant, so the next event is computed and amounts run straight to it.
 *
 * <pre>
 * d(cloth)/dt = in · share to the cloth − falling      d(receiver)/dt = in · rest + falling − out      d(container)/dt = out
 * out = valve while dust lies over it, else what comes, at most the valve; 0 while the rotor stands or dust bridges over it
 * </pre>
 */
final class StationPhysics {
    private static final double WARM_UP_s = 480;
    /** The warning comes so far below the limit of the discharge air. */
    static final double WARNED_BELOW_K = 15;

    private static final double AIR_bar = 6;
    private static final double AIR_FALLS_barPerS = 0.05;
    private static final double AIR_RISES_barPerS = 0.2;
    private static final double WET_VALVE = 0.3;
    private static final double WET_CAKE = 5;
    private static final double PULSES_FREE_THE_CLOTH_s = 20;
    /** Share of a wet cake that pulses do not free. */
    private static final double WET_STAYS = 0.8;
    /** Share of a container beyond its full level at which dust spills: it holds no more. */
    static final double SPILLS = 1.1;
    /** Share of the receiver beyond its high level at which dust reaches the filter and no more is taken in. */
    static final double FILTER_REACHED = 1.3;

    static final double CLEARS = 0.95;

    final StationModel model;
    final Set<PlantFault> faults = EnumSet.noneOf(PlantFault.class);
    final Travel vent = new Travel(1000, 1000);
    final Travel rotor = new Travel(500, 500);
    final List<Travel> pumps = new ArrayList<>();
    boolean users;
    boolean containerThere = true;
    boolean pulses;
    double feedShare = 1;

    double receiver_kg;
    double cloth_kg;
    double cake_PaSPerM;
    double container_kg;
    double collected_kg;
    double removed_kg;
    /** Ran over the container onto the floor. */
    double spilt_kg;

    double air_bar = AIR_bar;
    /** Of the air behind each producer. */
    private final double[] rise_K;

    boolean receiverCovered;
    private double falling_kgPerS;
    private double freeing_PaSPerMS;
    private double stays_kg;
    private double stays_PaSPerM;
    private long jammedSince_ms;
    private long now_ms;

    StationPhysics(StationModel model) {
        this.model = model;
        rise_K = new double[model.producers()];
        for (int p = 0; p < model.producers(); p++) {
            pumps.add(new Travel(1000, 10_000));
        }
    }

    // ---- what is so now

    int pulling() {
        int bits = 0;
        for (int p = 0; p < pumps.size(); p++) {
            bits |= pumps.get(p).there() ? 1 << p : 0;
        }
        return bits;
    }

    boolean ventOpen() {
        return !has(PlantFault.VENT_STICKS_SHUT)
                && (!vent.there() || has(PlantFault.VENT_STICKS_OPEN))
                && !vent.travels();
    }

    /** Shut far enough for suction at the inlets. */
    boolean ventShut() {
        return (vent.there() && !has(PlantFault.VENT_STICKS_OPEN)) || has(PlantFault.VENT_STICKS_SHUT);
    }

    boolean rotorTurns() {
        return rotor.there() && !has(PlantFault.CHAIN_BROKEN) && !has(PlantFault.ROTOR_JAMMED);
    }

    boolean suction() {
        return pulling() != 0 && ventShut() && vacuum_Pa() > 2 * Units.INCH_OF_MERCURY_Pa;
    }

    boolean vacuumThere() {
        return pulling() != 0 && !ventOpen();
    }

    private boolean has(PlantFault fault) {
        return faults.contains(fault);
    }

    private double resistance_PaSPerM() {
        return has(PlantFault.FILTER_TORN) ? model.cleaned_PaSPerM() : model.cleaned_PaSPerM() + cake_PaSPerM;
    }

    private double cake_perS() {
        return model.cake_perS().orElse(0) * (has(PlantFault.WET_DUST) ? WET_CAKE : 1);
    }

    Operating operating() {
        Operating point = model.at(pulling(), users, !ventShut(), resistance_PaSPerM());
        return has(PlantFault.FILTER_TORN)
                ? new Operating(point.vacuum_Pa(), 0.05 * point.drop_Pa(), point.current_A(), point.rise_K())
                : point;
    }

    double vacuum_Pa() {
        return operating().vacuum_Pa();
    }

    boolean dropBelow(SetPoint point) {
        return operating().drop_Pa() < point.drop().pascals() - 1e-6;
    }

    /** The air behind any producer is near its limit. */
    boolean warm() {
        return IntStream.range(0, rise_K.length).anyMatch(p -> within(p, WARNED_BELOW_K));
    }

    /** The air behind a producer is at its limit; a second contact at a station of one producer sees that one. */
    boolean tooHot(int producer) {
        return within(Math.min(producer, rise_K.length - 1), 0);
    }

    private boolean within(int producer, double below_K) {
        return rise_K[producer] >= model.greatestRise_K().get(producer) - below_K - 1e-9;
    }

    boolean containerCovered() {
        return container_kg >= full_kg() * (1 - 1e-12);
    }

    double full_kg() {
        return model.line().container_kg();
    }

    double high_kg() {
        return model.line().hopper_kg();
    }

    /** A motor that cannot turn its rotor trips after 2 s. */
    boolean valveDriveOk() {
        return !has(PlantFault.ROTOR_JAMMED) || !rotor.there() || now_ms - jammedSince_ms < 2000;
    }

    boolean airHoldsVent() {
        return air_bar > 3;
    }

    // ---- rates

    private double in_kgPerS() {
        boolean full = model.line().valve_kgPerS().isPresent() && receiver_kg >= FILTER_REACHED * high_kg();
        boolean spilt = container_kg >= SPILLS * full_kg();
        return users
                        && suction()
                        && !full
                        && !(spilt && model.line().valve_kgPerS().isEmpty())
                ? feedShare * model.feed_kgPerS()
                : 0;
    }

    private double arriving_kgPerS() {
        return in_kgPerS() * (1 - model.toCloth()) + falls_kgPerS();
    }

    /** What pulses free now. */
    private double falls_kgPerS() {
        return pulses && cloth_kg > stays_kg * (1 + 1e-9) ? falling_kgPerS : 0;
    }

    private double out_kgPerS() {
        if (has(PlantFault.HOPPER_BRIDGED)) {
            return 0;
        }
        if (model.line().valve_kgPerS().isEmpty()) {
            return arriving_kgPerS();
        }
        double valve = model.line().valve_kgPerS().getAsDouble() * (has(PlantFault.WET_DUST) ? WET_VALVE : 1);
        return !rotorTurns() ? 0 : receiver_kg > 0 ? valve : Math.min(valve, arriving_kgPerS());
    }

    /** Called when pulses begin: the cake then falls within a time, but for what sticks. */
    void pulses(boolean on) {
        if (on && !pulses) {
            double stays = has(PlantFault.WET_DUST) ? WET_STAYS : 0;
            stays_kg = stays * cloth_kg;
            stays_PaSPerM = stays * cake_PaSPerM;
            falling_kgPerS = (cloth_kg - stays_kg) / PULSES_FREE_THE_CLOTH_s;
            freeing_PaSPerMS = (cake_PaSPerM - stays_PaSPerM) / PULSES_FREE_THE_CLOTH_s;
        }
        pulses = on;
    }

    // ---- time

    /** When something changes that is not the controller's doing [ms]; rounded up. */
    long next_ms() {
        double wait_s = Double.POSITIVE_INFINITY;
        double receiver = arriving_kgPerS() - out_kgPerS();
        wait_s = sooner(wait_s, high_kg() - receiver_kg, receiver);
        wait_s = sooner(wait_s, FILTER_REACHED * high_kg() - receiver_kg, receiver);
        wait_s = sooner(wait_s, CLEARS * high_kg() - receiver_kg, receiver);
        wait_s = sooner(wait_s, -receiver_kg, receiver);
        wait_s = sooner(wait_s, full_kg() - container_kg, out_kgPerS());
        wait_s = sooner(wait_s, SPILLS * full_kg() - container_kg, out_kgPerS());
        double cloth = in_kgPerS() * model.toCloth() - falls_kgPerS();
        wait_s = sooner(wait_s, (pulses ? stays_kg : 0) - cloth_kg, cloth);
        for (SetPoint point : List.of(SetPoint.CLEANING_DUE, SetPoint.FILTER_HIGH)) {
            double there = model.whereDropIs(
                    pulling(), users, !ventShut(), point.drop().pascals());
            wait_s = sooner(wait_s, there - resistance_PaSPerM(), cakeRate_PaSPerMS());
        }
        double air = airRate_barPerS();
        for (double limit : new double[] {4.1, 3.4, 3}) {
            wait_s = sooner(wait_s, limit - air_bar, air);
        }
        for (int p = 0; p < rise_K.length; p++) {
            wait_s = Math.min(wait_s, warming_s(p, WARNED_BELOW_K));
            wait_s = Math.min(wait_s, warming_s(p, 0));
        }
        long next = wait_s > 1e9 ? Long.MAX_VALUE : now_ms + Math.max(1, (long) Math.ceil(1000 * wait_s - 1e-6));
        next = Math.min(next, Math.min(vent.next_ms(), rotor.next_ms()));
        for (Travel pump : pumps) {
            next = Math.min(next, pump.next_ms());
        }
        if (has(PlantFault.ROTOR_JAMMED) && rotor.there() && valveDriveOk()) {
            next = Math.min(next, jammedSince_ms + 2000);
        }
        return next;
    }

    /** How fast the cake's resistance grows or goes [Pa·s/m per s]. */
    private double cakeRate_PaSPerMS() {
        double grows = cake_perS() * in_kgPerS() * model.toCloth() / model.cloth_m2();
        return grows - (pulses && cake_PaSPerM > stays_PaSPerM * (1 + 1e-9) ? freeing_PaSPerMS : 0);
    }

    private static double sooner(double wait_s, double distance, double rate) {
        double time_s = distance / rate;
        return distance != 0 && time_s > 1e-9 && time_s < wait_s ? time_s : wait_s;
    }

    private double airRate_barPerS() {
        return has(PlantFault.AIR_LOST)
                ? (air_bar > 0 ? -AIR_FALLS_barPerS : 0)
                : air_bar < AIR_bar ? AIR_RISES_barPerS : 0;
    }

    /** Time until the air behind a producer comes within so many kelvin of its limit; infinite when it does not. */
    private double warming_s(int producer, double below_K) {
        double limit = model.greatestRise_K().get(producer) - below_K;
        double now = rise_K[producer];
        double end = operating().rise_K(producer);
        boolean crosses = (now < limit) != (end < limit) && end != limit;
        return crosses ? WARM_UP_s * Math.log((end - now) / (end - limit)) : Double.POSITIVE_INFINITY;
    }

    /** Goes on to a moment that is not later than the next event. */
    void goOn(long to_ms) {
        double time_s = (to_ms - now_ms) / 1000.0;
        double in = in_kgPerS() * time_s;
        double fell = Math.min(Math.max(0, cloth_kg - stays_kg), falls_kgPerS() * time_s);
        double arrived = in * (1 - model.toCloth()) + fell;
        double out = Math.min(receiver_kg + arrived, out_kgPerS() * time_s);
        double air = airRate_barPerS() * time_s;
        Operating warming = operating();
        collected_kg += in;
        cake_PaSPerM = Math.max(
                pulses ? Math.min(stays_PaSPerM, cake_PaSPerM) : 0, cake_PaSPerM + cakeRate_PaSPerMS() * time_s);
        cloth_kg += in * model.toCloth() - fell;
        receiver_kg = Math.max(0, receiver_kg + arrived - out);
        double over = Math.max(0, container_kg + out - SPILLS * full_kg());
        container_kg = over > 0 ? SPILLS * full_kg() : container_kg + out;
        spilt_kg += over;
        air_bar = Math.min(AIR_bar, Math.max(0, air_bar + air));
        for (int p = 0; p < rise_K.length; p++) {
            double end_K = warming.rise_K(p);
            rise_K[p] = end_K + (rise_K[p] - end_K) * Math.exp(-time_s / WARM_UP_s);
        }
        now_ms = to_ms;
        receiverCovered = receiver_kg >= high_kg() || (receiverCovered && receiver_kg > CLEARS * high_kg());
        vent.at(now_ms);
        boolean turned = rotor.there();
        rotor.at(now_ms);
        if (rotor.there() && !turned) {
            jammedSince_ms = now_ms;
        }
        pumps.forEach(p -> p.at(now_ms));
    }

    void breaks(PlantFault fault) {
        faults.add(fault);
        jammedSince_ms = fault == PlantFault.ROTOR_JAMMED ? now_ms : jammedSince_ms;
        if (fault == PlantFault.CONTAINER_OFF) {
            containerThere = false;
        }
    }

    void mended(PlantFault fault) {
        if (faults.remove(fault) && fault == PlantFault.WET_DUST) {
            cleanElements();
        }
        if (fault == PlantFault.CONTAINER_OFF) {
            containerThere = true;
        }
    }

    /** Clean, dry elements are in; what lay on the old ones was knocked out into the receiver. */
    private void cleanElements() {
        receiver_kg += cloth_kg;
        cloth_kg = 0;
        cake_PaSPerM = 0;
        stays_kg = 0;
        stays_PaSPerM = 0;
    }

    /** The full container is taken away, an empty one is there. */
    void newContainer() {
        removed_kg += container_kg;
        container_kg = 0;
        containerThere = true;
    }

    /** What is there or was taken away less what came in [kg]: always what was there when it began, but for rounding. */
    double held_kg() {
        return receiver_kg + cloth_kg + container_kg + removed_kg + spilt_kg - collected_kg;
    }
}
