package dustwright.engine.rehearsal;

import java.util.List;
import java.util.stream.IntStream;

/**
 * What a station does in one state of the air network.
 *
 * @param vacuum_Pa in the receiver, below the barometer [Pa]
 * @param drop_Pa over the filter [Pa]
 * @param current_A of each producer's motor [A]; empty where the supply is not stated
 * @param rise_K of the air over each producer, when it has warmed up [K]
 */
public record Operating(double vacuum_Pa, double drop_Pa, List<Double> current_A, List<Double> rise_K) {
    /** Nothing runs. */
    static final Operating REST = new Operating(0, 0, List.of(), List.of());

    public Operating {
        current_A = List.copyOf(current_A);
        rise_K = List.copyOf(rise_K);
    }

    /** Of the air over one producer [K]; 0 where none runs. */
    double rise_K(int producer) {
        return producer < rise_K.size() ? rise_K.get(producer) : 0;
    }

    /** All producers together [A]. */
    public double total_A() {
        return current_A.stream().mapToDouble(Double::doubleValue).sum();
    }

    static Operating between(Operating a, Operating b, double share) {
        return new Operating(
                a.vacuum_Pa + share * (b.vacuum_Pa - a.vacuum_Pa),
                a.drop_Pa + share * (b.drop_Pa - a.drop_Pa),
                between(a.current_A, b.current_A, share),
                between(a.rise_K, b.rise_K, share));
    }

    private static List<Double> between(List<Double> a, List<Double> b, double share) {
        return IntStream.range(0, a.size())
                .mapToObj(i -> a.get(i) + share * (b.get(i) - a.get(i)))
                .toList();
    }

    /**
     * Operating points over the filter's resistance, straight between two of them; below the first and beyond the last that was solved they stay.
     *
     * @param resistance_PaSPerM rising [Pa·s/m]
     */
    record Table(List<Double> resistance_PaSPerM, List<Operating> points) {
        Table {
            resistance_PaSPerM = List.copyOf(resistance_PaSPerM);
            points = List.copyOf(points);
        }

        Operating at(double asked_PaSPerM) {
            int after = 0;
            while (after < points.size() && resistance_PaSPerM.get(after) < asked_PaSPerM) {
                after++;
            }
            if (after == 0 || after == points.size()) {
                return points.get(Math.min(after, points.size() - 1));
            }
            double from = resistance_PaSPerM.get(after - 1);
            double share = (asked_PaSPerM - from) / (resistance_PaSPerM.get(after) - from);
            return between(points.get(after - 1), points.get(after), share);
        }

        /** Resistance at which the drop over the filter reaches a limit [Pa·s/m]; infinite when it never does. */
        double whereDropIs(double drop_Pa) {
            if (points.get(0).drop_Pa() >= drop_Pa) {
                return resistance_PaSPerM.get(0);
            }
            for (int i = 1; i < points.size(); i++) {
                double before = points.get(i - 1).drop_Pa();
                double here = points.get(i).drop_Pa();
                if (here >= drop_Pa) {
                    double from = resistance_PaSPerM.get(i - 1);
                    return from + (drop_Pa - before) / (here - before) * (resistance_PaSPerM.get(i) - from);
                }
            }
            return Double.POSITIVE_INFINITY;
        }
    }
}
