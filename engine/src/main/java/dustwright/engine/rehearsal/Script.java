package dustwright.engine.rehearsal;

import dustwright.engine.interlock.Expr;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What is rehearsed: how it begins, what happens when, who answers, and what must be seen.
 *
 * @param begins_s time of day at which it begins [s] after midnight
 * @param lasts_s how long [s]
 * @param seed of every time that people take
 * @param feed dust picked up, as share of the plant's largest rate [-]
 * @param containerLeft_s the container begins as full as to be full after this time of that feed [s]; empty: it begins empty
 * @param receiverLeft_s likewise the receiver, with nothing leaving it
 * @param people who answer lamps; none: nobody does but the script
 * @param acts in the order of their times
 * @param sees what the operator sees
 * @param does what the operator should do
 * @param must what must be so
 */
public record Script(
        String title,
        double begins_s,
        double lasts_s,
        long seed,
        double feed,
        Optional<Double> containerLeft_s,
        Optional<Double> receiverLeft_s,
        Optional<Answering> people,
        List<Act> acts,
        List<String> sees,
        List<String> does,
        List<Must> must) {
    public Script {
        acts = List.copyOf(acts);
        sees = List.copyOf(sees);
        does = List.copyOf(does);
        must = List.copyOf(must);
    }

    /** How long people take to come to a lamp: evenly spread between two times [s]. */
    public record Answering(double least_s, double greatest_s) {
        public Answering {
            if (!(least_s >= 0 && greatest_s >= least_s)) {
                throw new IllegalArgumentException("people answer between a time and one that is not shorter");
            }
        }
    }

    /** Something that happens [s] after the beginning. */
    public sealed interface Act {
        /** When [s]. */
        double at_s();

        /** A button is pressed for half a second. */
        record Press(double at_s, String button) implements Act {}

        /** Something goes wrong. */
        record Breaks(double at_s, PlantFault fault) implements Act {}

        /** It is mended. */
        record Mended(double at_s, PlantFault fault) implements Act {}

        /** Users begin to vacuum, or end. */
        record Users(double at_s, boolean work) implements Act {}
    }

    /**
     * What must be so, over signals, outputs, lamps and steps of the sequence.
     *
     * @param when whether at some time, never, or when it ends
     */
    public record Must(When when, Expr condition) {}

    /** When something must be so. */
    public enum When {
        SOMETIME,
        NEVER,
        AT_THE_END;

        /** In words. */
        public String words() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }
}
