package dustwright.cli;

/** What the program tells the shell. */
final class ExitCode {
    /** Everything asked holds. */
    static final int HOLDS = 0;
    /** Some requirement does not hold or cannot be judged, or a state has no answer. */
    static final int DOES_NOT_HOLD = 1;
    /** The plant file or the command line needs correcting. */
    static final int BAD_INPUT = 2;
    /** A fault of the program. */
    static final int INTERNAL = 3;

    private ExitCode() {}
}
