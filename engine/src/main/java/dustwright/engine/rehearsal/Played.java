package dustwright.engine.rehearsal;

import dustwright.engine.finding.Assumption;
import java.util.List;

/**
 * How a rehearsal went.
 *
 * @param seed with which it goes the same way again
 * @param moments what happened, in order
 * @param traces amounts over time
 * @param lanes steps, outputs and lamps over time
 * @param musts whether what must be so was so
 * @param begun_kg dust that was there when it began, in receiver, cloth and container [kg]
 * @param collected_kg dust that came in [kg]
 * @param removed_kg dust taken away in containers [kg]
 * @param spilt_kg dust that ran over a container that holds no more, onto the floor [kg]
 * @param imbalance_kg what is there in the end and was taken away, less what was there and came in: nothing but rounding [kg]
 * @param scans scans that the controller carried out; those in which nothing could change were left out
 */
public record Played(
        Script script,
        String station,
        String sequence,
        long seed,
        List<Moment> moments,
        List<Trace> traces,
        List<Lane> lanes,
        List<Verdict> musts,
        double begun_kg,
        double collected_kg,
        double removed_kg,
        double spilt_kg,
        double imbalance_kg,
        long scans,
        List<Assumption> assumptions) {
    public Played {
        moments = List.copyOf(moments);
        traces = List.copyOf(traces);
        lanes = List.copyOf(lanes);
        musts = List.copyOf(musts);
        assumptions = List.copyOf(assumptions);
    }

    /** Who or what a moment is about. */
    public enum Who {
        /** Dust, air, devices. */
        PLANT("plant"),
        /** Somebody presses, comes, changes. */
        PEOPLE("people"),
        /** Steps and outputs. */
        CONTROL("control"),
        /** Lamps. */
        LAMP("lamp"),
        /** Messages. */
        MESSAGE("message");

        private final String words;

        Who(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    /** Something that happened, [ms] after the beginning. */
    public record Moment(long at_ms, Who who, String words) {}

    /**
     * An amount over time, straight between its points.
     *
     * @param quantity what is plotted
     * @param full amount its axis reaches at least: dust at the level probe or in a full container [kg]; 0 where there is no such
     */
    public record Trace(Amount quantity, double full, List<Point> points) {
        public Trace {
            points = List.copyOf(points);
        }
    }

    /** Amounts that are kept. */
    public enum Amount {
        /** Dust in the receiver [kg]. */
        RECEIVER("dust in receiver"),
        /** Dust in the container [kg]. */
        CONTAINER("dust in container"),
        /** Vacuum in the receiver [Pa]. */
        VACUUM("vacuum in receiver"),
        /** Drop over the filter [Pa]. */
        FILTER("filter pressure drop"),
        /** Current of all producers [A]. */
        CURRENT("motor current");

        private final String words;

        Amount(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    /** A value at a time [ms], in SI, kilograms or amperes. */
    public record Point(long at_ms, double value) {}

    /**
     * When something was on.
     *
     * @param kind step, output or lamp
     */
    public record Lane(Kind kind, String name, String words, List<Span> spans) {
        public Lane {
            spans = List.copyOf(spans);
        }
    }

    /** What a lane shows. */
    public enum Kind {
        STEP,
        OUTPUT,
        LAMP
    }

    /** From a time to another [ms]. */
    public record Span(long from_ms, long to_ms) {}

    /** One demand of the script and whether it was met. */
    public record Verdict(Script.Must must, boolean met) {}

    /** Dust that is there when it ends, in receiver, cloth and container [kg]. */
    public double left_kg() {
        return begun_kg + collected_kg - removed_kg - spilt_kg + imbalance_kg;
    }

    /** Whether everything that must be so was so. */
    public boolean holds() {
        return musts.stream().allMatch(Verdict::met);
    }
}
