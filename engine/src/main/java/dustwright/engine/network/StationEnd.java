package dustwright.engine.network;

import dustwright.engine.network.Network.StationParts;
import dustwright.engine.producer.Drive;
import dustwright.engine.producer.ProducerLaw;
import dustwright.engine.producer.VacuumProducer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What acts on a station's suction node alone: relief valve and producers in parallel, each behind its check valve.
 *
 * <p>Drives that hold a vacuum make the flow a stair over the suction pressure: above the held pressure the producer runs at its
 * greatest speed, below it at its least, and at the held pressure anywhere between. The stair has one tread per held vacuum; {@link
 * #rung} says where on it the station stands: odd on a held vacuum, even between two. A solve is made with the rung fixed; {@link
 * #climb} then says whether the rung was right.
 */
final class StationEnd {
    private static final double AT_EDGE = 1e-9;

    private final double ambient_Pa;
    private final ReliefEnd relief;
    private final List<Unit> units = new ArrayList<>();
    /** Vacuums that drives hold, shallowest first. */
    private final double[] heldVacuum_Pa;

    private final List<Unit> running = new ArrayList<>();
    private int rung;
    private double inflow_kgPerS;
    private double slope_kgPerSPa;

    /** One producer with its law and speeds [1/s]; equal speeds for a fixed drive. */
    record Unit(
            VacuumProducer producer, ProducerLaw law, double least_perS, double greatest_perS, double heldVacuum_Pa) {
        static Unit of(VacuumProducer producer, ProducerLaw law) {
            if (producer.drive() instanceof Drive.Holding holding) {
                return new Unit(
                        producer,
                        law,
                        holding.least().revolutionsPerSecond(),
                        holding.greatest().revolutionsPerSecond(),
                        holding.vacuum().pascals());
            }
            double speed = ((Drive.Fixed) producer.drive()).speed().revolutionsPerSecond();
            return new Unit(producer, law, speed, speed, 0);
        }

        boolean holds() {
            return producer.drive() instanceof Drive.Holding;
        }
    }

    StationEnd(Network net, StationParts station) {
        ambient_Pa = net.ambient_Pa;
        relief = new ReliefEnd(station.relief(), ambient_Pa);
        station.producers().stream()
                .sorted(Comparator.comparing(VacuumProducer::id))
                .forEach(p -> units.add(Unit.of(p, new ProducerLaw(p, net.air))));
        heldVacuum_Pa = units.stream()
                .filter(Unit::holds)
                .mapToDouble(Unit::heldVacuum_Pa)
                .sorted()
                .distinct()
                .toArray();
    }

    /** Says what runs, and starts on the shallowest held vacuum. */
    void set(State state) {
        running.clear();
        relief.reset();
        units.stream()
                .filter(u -> state.runningProducers().contains(u.producer.id()))
                .forEach(running::add);
        rung = running.stream().anyMatch(Unit::holds) ? 1 : 0;
    }

    boolean anyRuns() {
        return !running.isEmpty();
    }

    boolean holding() {
        return rung % 2 == 1;
    }

    double heldSquared() {
        double held_Pa = ambient_Pa - heldVacuum_Pa[rung / 2];
        return held_Pa * held_Pa;
    }

    double inflow_kgPerS() {
        return inflow_kgPerS;
    }

    /** Slope of the inflow with the suction pressure. */
    double slope_kgPerSPa() {
        return slope_kgPerSPa;
    }

    /** Net inflow at a suction pressure and its slope: relief less producers, those on the held vacuum left out. */
    void evaluate(double suction_Pa) {
        inflow_kgPerS = relief.flow_kgPerS(ambient_Pa - suction_Pa);
        slope_kgPerSPa = -relief.slope_kgPerSPa(ambient_Pa - suction_Pa);
        for (int n = 0; n < running.size(); n++) {
            Unit unit = running.get(n);
            if (!floats(unit)) {
                double speed_perS = speed_perS(unit);
                double flow_kgPerS = unit.law.massFlow_kgPerS(suction_Pa, speed_perS);
                inflow_kgPerS -= flow_kgPerS;
                slope_kgPerSPa -= unit.law.massFlowSlope_kgPerSPa(suction_Pa, flow_kgPerS, speed_perS);
            }
        }
    }

    /** Puts the relief valve on the stretch that fits a suction pressure, for a search that brackets the kinks itself. */
    void followRelief(double suction_Pa) {
        boolean moved = true;
        while (moved) {
            moved = relief.move(ambient_Pa - suction_Pa);
        }
    }

    /** Puts the drives between two held vacuums, where a suction pressure has them, for the same search. */
    void followHeld(double suction_Pa) {
        int reached = 0;
        while (reached < heldVacuum_Pa.length && ambient_Pa - suction_Pa > heldVacuum_Pa[reached]) {
            reached++;
        }
        rung = 2 * reached;
    }

    /** Number of vacuums that drives hold. */
    int heldVacuums() {
        return running.stream().anyMatch(Unit::holds) ? heldVacuum_Pa.length : 0;
    }

    /** Puts the drives on one of the held vacuums, shallowest first. */
    void hold(int which) {
        rung = 2 * which + 1;
    }

    /** Whether the drives that float can take what is offered at a suction pressure. */
    boolean floatsOn(double suction_Pa, double offered_kgPerS) {
        return offered_kgPerS >= floating_kgPerS(suction_Pa, false)
                && offered_kgPerS <= floating_kgPerS(suction_Pa, true);
    }

    double relief_kgPerS(double suction_Pa) {
        return relief.flow_kgPerS(ambient_Pa - suction_Pa);
    }

    /** Whether the producer's speed is what holds the present vacuum. */
    private boolean floats(Unit unit) {
        return holding() && unit.holds() && unit.heldVacuum_Pa == heldVacuum_Pa[rung / 2];
    }

    /** Speed of a producer that does not float: a drive that has reached the vacuum it holds idles, one that has not runs full. */
    private double speed_perS(Unit unit) {
        if (!unit.holds()) {
            return unit.greatest_perS;
        }
        int reached = rung / 2;
        boolean wantsMore = reached < heldVacuum_Pa.length && unit.heldVacuum_Pa >= heldVacuum_Pa[reached];
        return wantsMore ? unit.greatest_perS : unit.least_perS;
    }

    /**
     * Moves the relief valve to its neighbouring stretch, or the station to its neighbouring rung, when the solved state does not fit
     * the present one.
     *
     * @param suction_Pa solved suction pressure
     * @param offered_kgPerS air left over at the suction node, which the floating producers must take
     * @return whether anything changed
     */
    boolean climb(double suction_Pa, double offered_kgPerS) {
        if (relief.move(ambient_Pa - suction_Pa)) {
            return true;
        }
        int before = rung;
        if (holding()) {
            double most = floating_kgPerS(suction_Pa, true);
            if (offered_kgPerS > most * (1 + AT_EDGE)) {
                rung--;
            } else if (offered_kgPerS < floating_kgPerS(suction_Pa, false) * (1 - AT_EDGE)) {
                rung++;
            }
        } else {
            double vacuum_Pa = ambient_Pa - suction_Pa;
            int reached = rung / 2;
            if (reached < heldVacuum_Pa.length && vacuum_Pa > heldVacuum_Pa[reached] * (1 + AT_EDGE)) {
                rung++;
            } else if (reached > 0 && vacuum_Pa < heldVacuum_Pa[reached - 1] * (1 - AT_EDGE)) {
                rung--;
            }
        }
        return rung != before;
    }

    private double floating_kgPerS(double suction_Pa, boolean greatest) {
        double sum = 0;
        for (Unit unit : running) {
            if (floats(unit)) {
                sum += unit.law.massFlow_kgPerS(suction_Pa, greatest ? unit.greatest_perS : unit.least_perS);
            }
        }
        return sum;
    }

    /** Where one producer works. */
    record Duty(Unit unit, boolean running, double flow_kgPerS, double speed_perS) {
        double power_W(double inlet_Pa) {
            if (!running) {
                return 0;
            }
            return flow_kgPerS > 0
                    ? unit.law().shaftPower_W(inlet_Pa, flow_kgPerS, speed_perS)
                    : unit.law().shutPower_W(inlet_Pa, speed_perS);
        }

        double torque_Nm(double inlet_Pa) {
            return running ? power_W(inlet_Pa) / (2 * Math.PI * speed_perS) : 0;
        }

        double rise_K(double inlet_Pa) {
            return flow_kgPerS > 0 ? unit.law().rise_K(inlet_Pa, flow_kgPerS, speed_perS) : 0;
        }

        /** Least difference its curve was measured at, over the difference; 0 where no air passes or a formula gives its flow. */
        double aboveFirstPoint(double inlet_Pa) {
            double first_Pa = unit.law().measuredFrom_Pa(inlet_Pa, speed_perS);
            return flow_kgPerS > 0 && first_Pa > 0 ? first_Pa / unit.law().difference_Pa(inlet_Pa, flow_kgPerS) : 0;
        }

        /** The difference over the greatest its curve was measured at; 0 where no air passes or a formula gives its flow. */
        double belowLastPoint(double inlet_Pa) {
            return flow_kgPerS > 0
                    ? unit.law().difference_Pa(inlet_Pa, flow_kgPerS)
                            / unit.law().measuredTo_Pa(inlet_Pa, speed_perS)
                    : 0;
        }
    }

    /** Where the producers work, in the order of the plant file; floating ones share what is offered by the same part of their span. */
    List<Duty> duties(List<VacuumProducer> order, double suction_Pa, double offered_kgPerS) {
        double least = holding() ? floating_kgPerS(suction_Pa, false) : 0;
        double most = holding() ? floating_kgPerS(suction_Pa, true) : 0;
        double part = most > least ? Math.min(1, Math.max(0, (offered_kgPerS - least) / (most - least))) : 0;
        List<Duty> duties = new ArrayList<>();
        for (VacuumProducer producer : order) {
            Unit unit = units.stream()
                    .filter(u -> u.producer.equals(producer))
                    .findFirst()
                    .orElseThrow();
            duties.add(duty(unit, suction_Pa, part));
        }
        return duties;
    }

    private Duty duty(Unit unit, double suction_Pa, double part) {
        if (!running.contains(unit)) {
            return new Duty(unit, false, 0, 0);
        }
        if (!floats(unit)) {
            double speed_perS = speed_perS(unit);
            return new Duty(unit, true, unit.law.massFlow_kgPerS(suction_Pa, speed_perS), speed_perS);
        }
        double least = unit.law.massFlow_kgPerS(suction_Pa, unit.least_perS);
        double most = unit.law.massFlow_kgPerS(suction_Pa, unit.greatest_perS);
        double flow_kgPerS = least + part * (most - least);
        return new Duty(unit, true, flow_kgPerS, unit.law.speed_perS(suction_Pa, flow_kgPerS));
    }
}
