package dustwright.engine.producer;

import dustwright.engine.air.Air;
import dustwright.engine.quantity.FreeAirFlow;
import dustwright.engine.quantity.MassFlow;
import dustwright.engine.quantity.Power;
import dustwright.engine.quantity.PressureDifference;
import dustwright.engine.quantity.RotationalSpeed;
import dustwright.engine.quantity.TemperatureRise;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a producer does at a vacuum at its inlet, in the air of a site.
 *
 * @param producer asked
 * @param vacuum at its inlet
 * @param speed it runs at
 * @param flow free air it takes there
 * @param shaftPower at that speed
 * @param rise of the air's temperature; empty where no air passes, or where seal water takes the heat
 * @param misses why it does not serve the duty; empty when it does
 */
public record Duty(
        VacuumProducer producer,
        PressureDifference vacuum,
        RotationalSpeed speed,
        FreeAirFlow flow,
        Power shaftPower,
        Optional<TemperatureRise> rise,
        List<Miss> misses) {
    /** A flow asked for is reached to this share. */
    private static final double REACHED = 1e-6;

    /** Why a producer does not serve a duty. */
    public enum Miss {
        VACUUM("deeper than its limit at this barometer"),
        AIR("too little air at its greatest speed"),
        POWER("more power than its motor's nameplate"),
        TORQUE("more torque than its motor's at rated speed, turned down by a drive"),
        SITE("whether its motor gives its nameplate so hot or so high is not known (\"motor at site\" in a plant)"),
        TEMPERATURE("hotter than its limit"),
        CURVE("beyond its measured points");

        private final String words;

        Miss(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    public Duty {
        misses = List.copyOf(misses);
    }

    /** True when the producer serves the duty within all its limits. */
    public boolean serves() {
        return misses.isEmpty();
    }

    /** The producer at the speed within its range that comes nearest to a flow of free air at a vacuum. */
    public static Duty of(VacuumProducer producer, Air air, PressureDifference vacuum, FreeAirFlow asked) {
        ProducerLaw law = new ProducerLaw(producer, air);
        double inlet_Pa = inlet_Pa(air, vacuum);
        double speed_perS = law.speed_perS(inlet_Pa, asked.mass().kgPerSecond());
        Duty duty = at(producer, law, air, vacuum, speed_perS);
        boolean reached = duty.flow().cubicMetresPerSecond() >= (1 - REACHED) * asked.cubicMetresPerSecond();
        if (reached || duty.misses().contains(Miss.AIR)) {
            return duty;
        }
        List<Miss> misses = new ArrayList<>(duty.misses());
        misses.add(Miss.AIR);
        return new Duty(producer, vacuum, duty.speed(), duty.flow(), duty.shaftPower(), duty.rise(), misses);
    }

    /** The producer at its own speed, the greatest where a drive turns it, at a vacuum. */
    public static Duty at(VacuumProducer producer, Air air, PressureDifference vacuum) {
        RotationalSpeed speed =
                producer.drive() instanceof Drive.Fixed fixed ? fixed.speed() : producer.greatestSpeed();
        return at(producer, new ProducerLaw(producer, air), air, vacuum, speed.revolutionsPerSecond());
    }

    private static double inlet_Pa(Air air, PressureDifference vacuum) {
        double inlet_Pa = air.ambient().pascals() - vacuum.pascals();
        if (!(inlet_Pa > 0)) {
            throw new IllegalArgumentException("a vacuum of the whole barometer or more");
        }
        return inlet_Pa;
    }

    private static Duty at(
            VacuumProducer producer, ProducerLaw law, Air air, PressureDifference vacuum, double speed_perS) {
        double inlet_Pa = inlet_Pa(air, vacuum);
        double flow_kgPerS = law.massFlow_kgPerS(inlet_Pa, speed_perS);
        double power_W = law.shaftPower_W(inlet_Pa, flow_kgPerS, speed_perS);
        Optional<TemperatureRise> rise = flow_kgPerS > 0 && !producer.machine().sealWaterTakesTheHeat()
                ? Optional.of(new TemperatureRise(law.rise_K(inlet_Pa, flow_kgPerS, speed_perS)))
                : Optional.empty();
        List<Miss> misses = new ArrayList<>();
        if (vacuum.pascals() > producer.deepestVacuumAt(air.ambient()).pascals()) {
            misses.add(Miss.VACUUM);
        }
        if (!(flow_kgPerS > 0)) {
            misses.add(Miss.AIR);
        }
        if (power_W > producer.nameplate().watts()) {
            misses.add(Miss.POWER);
        }
        if (!producer.ratedAt(air)) {
            misses.add(Miss.SITE);
        }
        if (tooMuchTorque(producer, power_W, speed_perS)) {
            misses.add(Miss.TORQUE);
        }
        if (rise.filter(r -> r.compareTo(producer.greatestRise()) > 0).isPresent()) {
            misses.add(Miss.TEMPERATURE);
        }
        if (!law.covers(inlet_Pa, flow_kgPerS, speed_perS)) {
            misses.add(Miss.CURVE);
        }
        return new Duty(
                producer,
                vacuum,
                new RotationalSpeed(speed_perS),
                FreeAirFlow.of(new MassFlow(flow_kgPerS)),
                new Power(power_W),
                rise,
                misses);
    }

    /** Only a drive turns a directly coupled machine slower than its motor, which then gives no more than its rated torque (ELE-40). */
    private static boolean tooMuchTorque(VacuumProducer producer, double power_W, double speed_perS) {
        if (producer.coupling().filter(Coupling.Direct.class::isInstance).isEmpty()
                || !(producer.drive() instanceof Drive.Fixed own)) {
            return false;
        }
        double rated_perS = own.speed().revolutionsPerSecond();
        return speed_perS < rated_perS
                && power_W / speed_perS > (1 + REACHED) * producer.nameplate().watts() / rated_perS;
    }
}
