package dustwright.engine.network;

import dustwright.engine.air.Air;
import dustwright.engine.plant.Plant;
import dustwright.engine.producer.ReliefValve;
import dustwright.engine.producer.VacuumProducer;
import dustwright.engine.receiver.Filter;
import dustwright.engine.tubing.ToolCurve;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A plant compiled to flat arrays, once; solved many times. Node variable is pressure squared, node 0 is the still air of the site.
 *
 * <p>Every piece is a leg between two nodes. Flow w from node 1 to node 2 obeys one universal law (equation NET-1), odd in w:
 *
 * <pre>
 * P1 − P2' = linear·w + quadratic·w|w| + c·w|w|·( f(Re)·L/D + K + ln(P1/P2') ),   c = R T/A²,   P2' = max(P2 + a, c w²)
 * </pre>
 *
 * where a is the loss of a converging junction at the leg's downstream end. Short openings ({@link LegKind#NOZZLE}) and measured tool
 * curves ({@link LegKind#TOOL_CURVE}) have their own laws; both start at node 0. A closed inlet's leak {@code w = C √(Pa − P)} is the
 * quadratic law with {@code 1/C²}. Relief valve and producers act on the suction node alone ({@link StationParts}).
 *
 * <p>Nodes and legs are numbered in the order of their ids, so that results do not depend on the order of the plant file.
 */
public final class Network {
    /** Number of the node that stands for the still air of the site. */
    static final int STILL_AIR = 0;

    /** No such leg. */
    static final int NONE = -1;

    /** No fixed friction factor: f by the wall's roughness. */
    static final double BY_ROUGHNESS = -1;

    /** What a leg is. */
    enum LegKind {
        RUN,
        HOSE,
        LEAK,
        FILTER,
        SAFETY_FILTER,
        NOZZLE,
        TOOL_CURVE
    }

    final Plant plant;
    final Air air;
    final double ambient_Pa;
    final double ambientSquared;
    final double rt_JPerKg;

    // ---- nodes
    final int nodeCount;
    final String[] nodeId;
    final boolean[] held;
    /** Square of the held pressure; 0 where not held. */
    final double[] heldSquared;
    /** Stated supply into the node [kg/s], rotary valves' returning pockets included. */
    final double[] supply_kgPerS;

    // ---- legs
    final int legCount;
    final String[] legId;
    final LegKind[] legKind;
    final int[] from;
    final int[] to;
    final double[] linear;
    final double[] quadratic;
    /** R T/A²; 0 where the leg has no bore. */
    final double[] c;

    final double[] bore_m;
    /** Re per flow, 4/(π D μ). */
    final double[] reynoldsPerFlow;
    /** L/D with what the bends add. */
    final double[] lengthOverBore;
    /** ΣK, still air's velocity head included. */
    final double[] k;

    final double[] relativeRoughness;
    /** Stated Darcy factor, or {@link #BY_ROUGHNESS}. */
    final double[] fixedFriction;
    /** Angle at which the leg enters its node {@code to} as a branch [rad]; 0 where it runs straight through. */
    final double[] wye_rad;
    /** Area times discharge coefficient of a nozzle [m²]. */
    final double[] effectiveArea_m2;

    /** Law of a measured tool; null for every other leg. */
    final @Nullable ToolCurve[] toolCurve;

    // ---- what a state opens and shuts; in the order of the plant file
    final List<InletParts> inlets;
    final List<BleedParts> bleeds;
    final List<StationParts> stations;
    /** Leg of every run, in the order of the plant file. */
    final int[] runLeg;

    /** An inlet: open it is hose (and tool, where that has a law of its own), closed it is a leak. */
    record InletParts(
            String id, int node, int hoseLeg, int toolLeg, int leakLeg, Optional<String> dust, double feed_kgPerS) {}

    /** A far-end bleed valve: a nozzle that is there when open. */
    record BleedParts(String id, int node, int leg) {}

    /**
     * A station. Without safety filter {@code suction == clean}.
     *
     * @param rotaryPockets_kgPerS air the returning pockets bring, already in the supply of the receiver node
     */
    record StationParts(
            String id,
            int receiver,
            int clean,
            int suction,
            int filterLeg,
            int safetyFilterLeg,
            int ventLeg,
            int rotaryLeg,
            double rotaryPockets_kgPerS,
            Filter filter,
            @Nullable ReliefValve relief,
            List<VacuumProducer> producers) {
        StationParts {
            producers = List.copyOf(producers);
        }
    }

    /**
     * Compiles a plant.
     *
     * @throws IllegalArgumentException in words for people when a run's bends do not fit its corners
     */
    public static Network compile(Plant plant) {
        return new NetworkCompiler(plant).network();
    }

    /** R T of the air in a station's receiver and cloth [J/kg]; tubing and producers have the site's. */
    double filterRt_JPerKg(StationParts station) {
        return air.gasConstant_JPerKgK()
                * station.filter().temperature(air.temperature()).kelvin();
    }

    Network(NetworkCompiler source) {
        plant = source.plant;
        air = plant.site().air();
        ambient_Pa = air.ambient().pascals();
        ambientSquared = ambient_Pa * ambient_Pa;
        rt_JPerKg = air.rt();

        nodeId = source.nodes.toArray(new String[0]);
        nodeCount = nodeId.length;
        held = new boolean[nodeCount];
        heldSquared = new double[nodeCount];
        held[STILL_AIR] = true;
        heldSquared[STILL_AIR] = ambientSquared;
        source.heldPressure_Pa.forEach((node, pressure_Pa) -> {
            held[node] = true;
            heldSquared[node] = pressure_Pa * pressure_Pa;
        });
        supply_kgPerS = source.supply_kgPerS;

        List<NetworkLeg> legs = source.legs;
        legCount = legs.size();
        legId = legs.stream().map(leg -> leg.id).toArray(String[]::new);
        legKind = legs.stream().map(leg -> leg.kind).toArray(LegKind[]::new);
        from = legs.stream().mapToInt(leg -> leg.from).toArray();
        to = legs.stream().mapToInt(leg -> leg.to).toArray();
        linear = legs.stream().mapToDouble(leg -> leg.linear).toArray();
        quadratic = legs.stream().mapToDouble(leg -> leg.quadratic).toArray();
        c = legs.stream().mapToDouble(leg -> leg.c).toArray();
        bore_m = legs.stream().mapToDouble(leg -> leg.bore_m).toArray();
        reynoldsPerFlow = legs.stream().mapToDouble(leg -> leg.reynoldsPerFlow).toArray();
        lengthOverBore = legs.stream().mapToDouble(leg -> leg.lengthOverBore).toArray();
        k = legs.stream().mapToDouble(leg -> leg.k).toArray();
        relativeRoughness =
                legs.stream().mapToDouble(leg -> leg.relativeRoughness).toArray();
        fixedFriction = legs.stream().mapToDouble(leg -> leg.fixedFriction).toArray();
        wye_rad = legs.stream().mapToDouble(leg -> leg.wye_rad).toArray();
        effectiveArea_m2 =
                legs.stream().mapToDouble(leg -> leg.effectiveArea_m2).toArray();
        toolCurve = legs.stream().map(leg -> leg.toolCurve).toArray(ToolCurve[]::new);

        inlets = List.copyOf(source.inlets);
        bleeds = List.copyOf(source.bleeds);
        stations = List.copyOf(source.stations);
        runLeg = source.runs.stream().mapToInt(leg -> leg.index).toArray();
    }
}
