package dustwright.engine.interlock;

/**
 * The sequence a plant gets to begin with: what the trade expects of such a system. All of it, times included, is common practice without a
 * published source, and meant to be edited.
 */
public final class DefaultSequence {
    private DefaultSequence() {}

    /** The sequence for a plant. */
    public static Sequence of(String title, Options options) {
        DefaultDevices devices = new DefaultDevices(options);
        return new Sequence(
                title,
                options.words(),
                0.1,
                devices.inputs(),
                devices.buttons(),
                devices.outputs(),
                devices.timers(),
                new DefaultRules(options).rules(),
                new DefaultCauses(options).causes(),
                new DefaultSteps(options).steps(),
                new DefaultLamps(options).lamps(),
                SafetyFunction.usual(options.discharge() != Options.Discharge.STRAIGHT));
    }
}
