package dustwright.engine.hazard;

import static dustwright.engine.Reference.assertClose;
import static org.assertj.core.api.Assertions.assertThat;

import dustwright.engine.Reference;
import dustwright.engine.Reference.Row;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Vent areas, corrections and relations against rows computed by an independent script and against published relations. Rows of an equation
 * from memory are printed beside ours; that both do the same arithmetic is held by {@link VentPeerTest}.
 */
class VentRowsTest {
    private static final double BAR_Pa = 100_000;

    static List<Row> areas() {
        return Reference.everyRow("hazard-vent-area.csv");
    }

    static List<Row> modifiers() {
        return Reference.everyRow("hazard-vent-modifiers.csv");
    }

    static List<Row> relations() {
        return Reference.everyRow("hazard-vent-relations.csv");
    }

    @ParameterizedTest
    @MethodSource("areas")
    void vent_areas_of_both_methods(Row row) {
        Explosion e = new Explosion(
                row.value("volume_m3"),
                row.value("Kst_bar_m_per_s") * BAR_Pa,
                row.value("Pmax_bar_g") * BAR_Pa,
                row.value("Pstat_bar_g") * BAR_Pa,
                row.value("Pred_bar_g") * BAR_Pa,
                row.value("L_over_D"));
        boolean european = row.text("method").equals("EN14491");
        double ours = european ? VentEn14491.area_m2(e) : VentNfpa68.area_m2(e);
        row.judge(() -> row.assertClose("vent_area_m2", ours));
    }

    @ParameterizedTest
    @MethodSource("modifiers")
    void corrections_and_effects_alone(Row row) {
        Inputs in = inputs(row.text("inputs"));
        OptionalDouble ours = modifier(row.text("case_id"), in);
        row.judge(() -> {
            if (row.text("expected").equals("no solution")) {
                assertThat(ours).isEmpty();
            } else {
                assertThat(ours).isPresent();
                row.assertClose("expected", ours.getAsDouble(), 1e-12);
            }
        });
    }

    private static OptionalDouble modifier(String id, Inputs in) {
        return switch (id) {
            case "MOD-01", "MOD-02", "MOD-03" ->
                OptionalDouble.of(VentNfpa68.slendernessFactor(in.get("Pred_bar") * BAR_Pa, in.get("L_over_D")));
            case "MOD-04", "MOD-05", "MOD-06" -> OptionalDouble.of(VentNfpa68.turbulenceFactor(in.get("vmax_m_s")));
            case "MOD-07" ->
                OptionalDouble.of(VentNfpa68.inertiaFactor(
                        in.get("M_kg_m2"),
                        in.get("Kst") * BAR_Pa,
                        1,
                        in.get("V_m3"),
                        in.get("Pred_bar") * BAR_Pa,
                        1.1));
            case "MOD-08" ->
                OptionalDouble.of(VentNfpa68.heaviestFreePanel_kgPerM2(
                        in.get("Pred_bar") * BAR_Pa, 1, in.get("V_m3"), in.get("Kst") * BAR_Pa));
            case "MOD-09", "MOD-10", "MOD-11", "MOD-12" ->
                OptionalDouble.of(VentNfpa68.partialVolumeFactor(
                        in.get("Xr"), in.get("Pred_bar") * BAR_Pa, in.get("Pmax_bar") * BAR_Pa));
            case "MOD-13", "MOD-14", "MOD-14b", "MOD-15" ->
                VentNfpa68.withDuct_m2(
                        new Explosion(
                                in.get("V_m3"),
                                in.get("Kst") * BAR_Pa,
                                9 * BAR_Pa,
                                in.get("Pstat_bar") * BAR_Pa,
                                0.4 * BAR_Pa,
                                1),
                        in.get("Av4_m2"),
                        in.get("duct_m"),
                        in.get("K"));
            case "MOD-16", "MOD-17" -> OptionalDouble.of(Vents.fireball_m(in.get("V_m3"), 1, in.get("k")));
            case "MOD-18" -> OptionalDouble.of(Vents.recoil_N(in.get("Av_m2"), in.get("Pred_bar") * BAR_Pa) / 1000);
            case "MOD-19" -> OptionalDouble.of(Vents.flame_m(in.get("V_m3")));
            case "MOD-20" -> OptionalDouble.of(outside(in, 5) / BAR_Pa);
            case "MOD-21" -> OptionalDouble.of(outside(in, 10) / BAR_Pa);
            default -> throw new IllegalArgumentException("no answer for " + id);
        };
    }

    private static double outside(Inputs in, double distance_m) {
        return Vents.outsideAt_Pa(in.get("pred_bar") * BAR_Pa, in.get("A_m2"), in.get("V_m3"), distance_m);
    }

    private record Inputs(Map<String, Double> byName) {
        double get(String name) {
            return Objects.requireNonNull(byName.get(name), name);
        }
    }

    private static Inputs inputs(String told) {
        Map<String, Double> in = new TreeMap<>();
        for (String part : told.split("[; ]")) {
            String[] sides = part.split("=");
            if (sides.length == 2 && sides[1].matches("[0-9.]+")) {
                in.put(sides[0], Double.parseDouble(sides[1]));
            }
        }
        return new Inputs(in);
    }

    @ParameterizedTest
    @MethodSource("relations")
    void published_relations_hold_and_their_sides_are_ours(Row row) {
        double[] sides = sides(row.text("case_id"), inputs(row.text("inputs").replace(":", " ")));
        assertClose(row + " left", sides[0], row.value("left_value"), 1e-4, 1e-7);
        assertClose(row + " right", sides[1], row.value("right_value"), 1e-4, 1e-9);
        switch (row.text("relation")) {
            case "<" -> assertThat(sides[0]).as(row.text("statement")).isLessThan(sides[1]);
            case ">" -> assertThat(sides[0]).as(row.text("statement")).isGreaterThan(sides[1]);
            default -> assertClose(row.text("statement"), sides[0], sides[1], row.tolerance(), row.tolerance());
        }
    }

    private static double[] sides(String id, Inputs in) {
        return switch (id) {
            case "REL-01", "REL-02", "REL-08" ->
                new double[] {
                    id.equals("REL-08") ? VentNfpa68.area_m2(known()) : VentNfpa68.area_m2(of(in)),
                    id.equals("REL-08") ? VentEn14491.area_m2(known()) : VentEn14491.area_m2(of(in))
                };
            case "REL-03" ->
                new double[] {
                    VentNfpa68.slendernessFactor(0.4 * BAR_Pa, 4), VentEn14491.slendernessFactor(0.4 * BAR_Pa, 4)
                };
            case "REL-04" -> new double[] {0.16, VentEn14491.area_m2(of(in))};
            case "REL-05" -> new double[] {0.16, VentNfpa68.area_m2(of(in))};
            case "REL-06" -> new double[] {0.1, VentEn14491.area_m2(of(in))};
            case "REL-07" -> new double[] {VentEn14491.slendernessFactor(Math.nextDown(1.5) * BAR_Pa, 10) - 1, 0};
            default -> throw new IllegalArgumentException("no answer for " + id);
        };
    }

    private static Explosion known() {
        return new Explosion(4.5, 200 * BAR_Pa, 9 * BAR_Pa, 0.1 * BAR_Pa, 0.4 * BAR_Pa, 1);
    }

    private static Explosion of(Inputs in) {
        return new Explosion(
                in.get("V"),
                in.get("Kst") * BAR_Pa,
                in.get("Pmax") * BAR_Pa,
                in.get("Pstat") * BAR_Pa,
                in.get("Pred") * BAR_Pa,
                in.get("L/D"));
    }
}
