package dustwright.engine.rehearsal;

import java.util.List;
import java.util.Optional;

/** Something of the plant that goes wrong until it is mended. */
public enum PlantFault {
    /** Dust lies over the rotary valve and does not fall into it. */
    HOPPER_BRIDGED("hopper bridged", "dust bridges over the rotary valve"),
    /** Dust sticks in the pockets and on the cloth. */
    WET_DUST("wet dust", "wet dust sticks in the rotary valve and on the cloth"),
    /** The compressor stands. */
    AIR_LOST("air supply lost", "the compressed-air supply fails"),
    /** The motor turns, the rotor does not. */
    CHAIN_BROKEN("valve chain broken", "the chain of the rotary valve breaks"),
    /** The rotor sticks and its motor trips. */
    ROTOR_JAMMED("rotor jammed", "a foreign body jams the rotor"),
    /** No suction however the vent is driven. */
    VENT_STICKS_OPEN("vent sticks open", "the vent valve sticks open"),
    /** Holds cannot take the suction away. */
    VENT_STICKS_SHUT("vent sticks shut", "the vent valve sticks shut"),
    /** A level probe that never sees dust. */
    CONTAINER_PROBE_BLIND("container probe blind", "the container's level probe no longer sees dust"),
    /** Dust bakes on the probe. */
    CONTAINER_PROBE_CAKED("container probe caked", "dust cakes on the container's level probe"),
    /** A level probe that never sees dust. */
    RECEIVER_PROBE_BLIND("receiver probe blind", "the receiver's level probe no longer sees dust"),
    /** Dust bakes on the probe. */
    RECEIVER_PROBE_CAKED("receiver probe caked", "dust cakes on the receiver's level probe"),
    /** Its wire breaks. */
    MOTION_SWITCH_BROKEN("motion switch broken", "the wire of the motion switch breaks"),
    /** The container is no longer tight. */
    CONTAINER_OFF("container comes off", "the container's clamp opens"),
    /** A hole in the cloth. */
    FILTER_TORN("filter torn", "a filter element tears"),
    /** A producer trips on overload. */
    PRODUCER_OVERLOAD("producer overload", "the producer's overload relay trips"),
    /** A detector signals. */
    FIRE_SIGNAL("fire signal", "the fire detector signals"),
    /** A button is pushed in. */
    EMERGENCY_STOP("emergency stop", "somebody pushes an emergency stop"),
    /** Somebody opens it. */
    GUARD_OPEN("guard open", "somebody opens the guard of the rotary valve"),
    /** No control power. */
    POWER_LOST("power lost", "the power fails");

    private final String id;
    private final String words;

    PlantFault(String id, String words) {
        this.id = id;
        this.words = words;
    }

    /** Whether somebody has to reach into valve or hopper to mend it, and therefore locks them out first. */
    boolean isMendedByHand() {
        return this == HOPPER_BRIDGED || this == CHAIN_BROKEN || this == ROTOR_JAMMED;
    }

    /** Whether whoever comes sees that it still stands, so that RESET would be in vain: it is put right first. */
    boolean standsUntilMended() {
        return this == FIRE_SIGNAL
                || this == PRODUCER_OVERLOAD
                || this == FILTER_TORN
                || this == RECEIVER_PROBE_CAKED
                || this == EMERGENCY_STOP
                || this == GUARD_OPEN;
    }

    /** What a script calls it. */
    public String id() {
        return id;
    }

    /** What happens, in words. */
    public String words() {
        return words;
    }

    /** The fault a script means. */
    public static Optional<PlantFault> of(String id) {
        return List.of(values()).stream().filter(f -> f.id.equals(id)).findFirst();
    }
}
