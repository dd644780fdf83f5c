package dustwright.engine.finding;

import dustwright.engine.quantity.Dimension;
import dustwright.engine.quantity.Quantity;
import java.util.List;

/**
 * One checked requirement: what, where, value against limit, margin, in which state, and how it was found.
 *
 * @param id stable within one result, for example {@code TRANSPORT_VELOCITY/N3/all-three}
 * @param where the part of the plant
 * @param state name of the state (set of open inlets) in which the value stands
 * @param margin (value − limit)/limit towards the good side [-]; the requirement holds when it is not negative. The least negative number
 *     where {@link #decided()} is false
 */
public record Finding(
        String id,
        FindingCode code,
        Place where,
        String state,
        Side side,
        Quantity value,
        Quantity limit,
        double margin,
        Derivation derivation) {
    /** Margin of what nobody can decide: short of the limit by no known amount, so the least that is none. */
    public static final double NOT_KNOWN = -Double.MIN_VALUE;

    public Finding {
        if (value.dimension() != limit.dimension()) {
            throw new IllegalArgumentException(id + ": value and limit measure different things");
        }
    }

    /** The finding with its margin taken from value and limit. */
    public static Finding of(
            FindingCode code,
            Place where,
            String state,
            Side side,
            Quantity value,
            Quantity limit,
            Derivation derivation) {
        String id = code + "/" + where.id() + "/" + state;
        return new Finding(id, code, where, state, side, value, limit, side.margin(value.si(), limit.si()), derivation);
    }

    /** A limit that is asked and cannot be judged; no pass and no failure. */
    public static Finding unjudged(
            FindingCode code, Place where, String state, Side side, Quantity limit, Source limitSource, String why) {
        Step step = new Step(Step.STATED, why, List.of(), new Term("limit", "what is asked", limit), limitSource);
        return new Finding(
                code + "/" + where.id() + "/" + state,
                code,
                where,
                state,
                side,
                limit,
                limit,
                NOT_KNOWN,
                new Derivation(List.of(step), limitSource));
    }

    public boolean holds() {
        return margin >= 0;
    }

    /** False where an entry is missing without which nobody can say whether it holds: that is no pass and no failure. */
    public boolean decided() {
        return margin != NOT_KNOWN;
    }

    /** True where a limit is asked whose figure is not known: the value is the limit again, and the first step says what to enter. */
    public boolean unjudged() {
        return !decided() && code != FindingCode.DUST_LOSS;
    }

    /** Why nobody can judge it and what to enter, in words; empty where it is judged. */
    public String why() {
        return unjudged() ? derivation.steps().get(0).formula() : "";
    }

    /** True where conflicts are counted and none may be there. */
    public boolean counted() {
        return side == Side.AT_MOST && limit.dimension() == Dimension.COUNT && limit.si() == 0;
    }

    /**
     * True where the margin is nothing by design: a scale stops at the safe working load, a valve is as wide as the outlet above it, or a
     * conflict was looked for and not found.
     */
    public boolean nothingByDesign() {
        return margin == 0 && (code == FindingCode.CONTAINER_LOAD || code == FindingCode.HOPPER_LEDGE || counted());
    }

    /** True when it is known not to hold. */
    public boolean fails() {
        return decided() && !holds();
    }
}
