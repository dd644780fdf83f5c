package dustwright.engine.receiver;

/** How loaded the filter is. */
public enum FilterCondition {
    CLEAN,
    NORMAL,
    DIRTY
}
