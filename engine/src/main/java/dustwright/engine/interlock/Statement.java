package dustwright.engine.interlock;

/**
 * One line of a scan. Lines are carried out from top to bottom; a name that is read above its own line still holds the value of the scan
 * before.
 */
public sealed interface Statement {
    /** The name that gets a value. */
    String name();

    /** The name is true when the condition is. */
    record Assign(String name, Expr value) implements Statement {}

    /**
     * The name is true when the condition has been true for the time without a break; false as soon as it is not.
     *
     * @param timer name of the time
     */
    record Delay(String name, Expr run, String timer) implements Statement {}

    /**
     * The name is true when the condition has been true for the time in all; the count stands still while it is not, and is forgotten when
     * {@code forget} is true.
     */
    record Sum(String name, Expr run, Expr forget, String timer) implements Statement {}

    /** The name is true from the scan in which the condition was true for the {@code limit}-th time, until {@code forget} is true. */
    record Count(String name, Expr event, Expr forget, int limit) implements Statement {}
}
