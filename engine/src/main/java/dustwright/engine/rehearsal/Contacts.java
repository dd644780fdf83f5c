package dustwright.engine.rehearsal;

import dustwright.engine.interlock.Controller;
import dustwright.engine.interlock.Sequence;
import dustwright.engine.interlock.SetPoint;
import dustwright.engine.interlock.Witnesses;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** What the contacts of a sequence say of the station, and what people there would notice without them. A contact this class does not know is good. */
final class Contacts {
    private final Sequence sequence;
    private final Set<String> outputs;

    Contacts(Sequence sequence) {
        this.sequence = sequence;
        outputs = sequence.outputs().stream().map(Sequence.Output::name).collect(Collectors.toSet());
    }

    /** Whether the sequence has this output. */
    boolean has(String output) {
        return outputs.contains(output);
    }

    void read(StationPhysics plant, Controller controller) {
        for (Sequence.Input input : sequence.inputs()) {
            controller.contact(input.name(), says(plant, controller, input.name(), plant.faults));
        }
    }

    /** A second contact of a thing says what the first says, whatever is wrong with the first. */
    private static boolean says(StationPhysics plant, Controller controller, String input, Set<PlantFault> faults) {
        return switch (input) {
            case "estop_ok" -> !faults.contains(PlantFault.EMERGENCY_STOP);
            case "fire_ok" -> !faults.contains(PlantFault.FIRE_SIGNAL);
            case "motion" -> plant.rotorTurns() && !faults.contains(PlantFault.MOTION_SWITCH_BROKEN);
            case "valve_drive_ok" -> plant.valveDriveOk();
            case "guard_shut" -> !faults.contains(PlantFault.GUARD_OPEN);
            case "overload_ok", "overload_ok_1" -> !faults.contains(PlantFault.PRODUCER_OVERLOAD);
            case "discharge_cool", "discharge_cool_1" -> !plant.tooHot(0);
            case "discharge_cool_2" -> !plant.tooHot(1);
            case "discharge_warm_ok" -> !plant.warm();
            case "at_speed", "at_speed_1" -> (plant.pulling() & 1) != 0;
            case "at_speed_2" -> (plant.pulling() & 2) != 0;
            case "after_filter_ok" -> !(faults.contains(PlantFault.FILTER_TORN) && plant.suction());
            case "filter_there" -> !faults.contains(PlantFault.FILTER_TORN);
            case "vent_open_limit" -> plant.ventOpen();
            case "no_vacuum" -> !plant.vacuumThere();
            case "suction" -> plant.suction();
            case "suction_open" -> !controller.is("suction_shut");
            case "container_free" ->
                !(plant.containerCovered() && !faults.contains(PlantFault.CONTAINER_PROBE_BLIND))
                        && !faults.contains(PlantFault.CONTAINER_PROBE_CAKED);
            case "container_in_place" -> plant.containerThere;
            case "receiver_free" ->
                !(plant.receiverCovered && !faults.contains(PlantFault.RECEIVER_PROBE_BLIND))
                        && !faults.contains(PlantFault.RECEIVER_PROBE_CAKED);
            case "filter_clean" -> plant.dropBelow(SetPoint.CLEANING_DUE);
            case "filter_ok" -> plant.dropBelow(SetPoint.FILTER_HIGH);
            case "inlet_used" -> plant.users;
            case "air_enough" -> plant.air_bar > 3.4;
            case "air_good" -> plant.air_bar > 4.1;
            default ->
                Witnesses.first(input)
                        .filter(first -> !first.equals(input))
                        .map(first -> says(plant, controller, first, Set.of()))
                        .orElse(true);
        };
    }

    /** What people at the station would notice, whatever the lamps say. */
    Map<String, Boolean> moments(StationPhysics plant) {
        Map<String, Boolean> moments = new LinkedHashMap<>();
        moments.put("the container is full", plant.container_kg >= plant.full_kg() * (1 - 1e-12));
        moments.put("the container overflows", plant.container_kg >= StationPhysics.SPILLS * plant.full_kg());
        if (plant.high_kg() > 0) {
            moments.put("dust reaches the receiver's level probe", plant.receiver_kg >= plant.high_kg());
            moments.put(
                    "dust in the receiver reaches the filter",
                    plant.receiver_kg >= StationPhysics.FILTER_REACHED * plant.high_kg());
        }
        moments.put("users have no suction", plant.users && !plant.suction());
        moments.put("users have suction", plant.users && plant.suction());
        return moments;
    }
}
