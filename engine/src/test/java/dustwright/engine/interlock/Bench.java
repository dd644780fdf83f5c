package dustwright.engine.interlock;

/** A healthy plant around a controller: the rotor turns when driven, the vent follows, vacuum is there when the producer runs and the vent is shut. */
final class Bench {
    static final long SCAN_ms = 100;

    final Controller controller;
    private final Sequence sequence;
    private final boolean turns;
    private final boolean hasSuctionValve;
    boolean jammed;
    boolean ventSticks;
    boolean ventStaysOpen;
    boolean suctionSticks;

    Bench(Sequence sequence) {
        this.sequence = sequence;
        controller = new Controller(sequence);
        turns = sequence.inputs().stream().anyMatch(i -> i.name().equals("motion"));
        hasSuctionValve = sequence.inputs().stream().anyMatch(i -> i.name().equals("suction_open"));
        sequence.inputs().forEach(i -> controller.contact(i.name(), true));
    }

    /** A bench on which vacuuming is on. */
    static Bench vacuuming(Sequence sequence) {
        Bench bench = new Bench(sequence);
        bench.run(31);
        bench.push("reset");
        bench.push("start");
        bench.until("vacuuming", 60);
        return bench;
    }

    void scan() {
        if (turns) {
            controller.contact("motion", controller.is("valve") && !jammed);
        }
        boolean open = (!controller.is("vent_shut") && !ventSticks) || ventStaysOpen;
        boolean vacuum = controller.is("pump") && !open;
        if (hasSuctionValve) {
            controller.contact("suction_open", !controller.is("suction_shut") && !suctionSticks);
        }
        controller.contact("vent_open_limit", open);
        controller.contact("no_vacuum", !vacuum);
        controller.contact("suction", vacuum);
        controller.scan(SCAN_ms);
    }

    /** Lets time pass. */
    void run(double time_s) {
        for (long passed = 0; passed < Math.round(1000 * time_s); passed += SCAN_ms) {
            scan();
        }
    }

    void push(String button) {
        controller.press(button, true);
        scan();
        controller.press(button, false);
        scan();
    }

    /** Lets time pass until a step is reached. */
    void until(String step, double atMost_s) {
        for (int i = 0; i < atMost_s * 10 && !controller.step().equals(step); i++) {
            scan();
        }
        if (!controller.step().equals(step)) {
            throw new AssertionError("not in " + step + " within " + atMost_s + " s, but in " + controller.step()
                    + " with " + controller.causes());
        }
    }

    boolean is(String name) {
        return controller.is(name);
    }

    boolean allOff() {
        return sequence.outputs().stream().noneMatch(o -> controller.is(o.name()));
    }
}
