package dustwright.engine.network;

/** Fills {@link OutsideTables} from the receiver outwards, each from the table one node nearer the receiver. */
final class OutsideBuilder {
    private static final int STEP_LIMIT = 100;
    /** Newton is quadratic: after a step of this share of Pa² the last digits are right. */
    private static final double FOUND = 1e-9;

    private final double ambientSquared;
    private final OutsideTables tables;
    private final MachineEnd machine;
    private final PortTables ports;
    private final OutsideTables.Cursor outside;
    private final PortTables.Sum port;

    // what hangs on the outer node of the leg under work brings into it, and d/dP
    private double brought;
    private double broughtSlope;
    private boolean broughtSoundly;

    OutsideBuilder(Network network, OutsideTables tables, PortTables ports) {
        ambientSquared = network.ambientSquared;
        this.tables = tables;
        machine = tables.machine();
        this.ports = ports;
        outside = tables.new Cursor();
        port = ports.new Sum();
    }

    /** The station as the receiver sees it. */
    void station(int table) {
        for (int knot = 0; knot < machine.knots(); knot++) {
            double s = machine.place(knot);
            double squared = ambientSquared * (1 - s * s);
            tables.put(table, knot, squared, -2 * ambientSquared * s, machine.flow_kgPerS(knot), machine.slope(knot));
        }
        tables.setSound(table, 0, machine.greatest());
    }

    /**
     * Table of what lies outside the inner end of a leg.
     *
     * @param nearer table of what lies outside its outer end
     * @param hanging what else hangs on its outer end
     */
    void through(int table, int nearer, LegLaw law, Hanging hanging) {
        double soundFrom = Double.MAX_VALUE;
        double soundTo = -1;
        // from little flow toward more; rows beyond the sound range are never read
        for (int knot = machine.knots() - 1; knot >= 0; knot--) {
            double s = machine.place(knot);
            boolean sound = put(table, knot, s, nearer, law, hanging)
                    && s >= tables.soundFrom(nearer)
                    && s <= tables.soundTo(nearer);
            if (sound) {
                soundFrom = s;
                soundTo = Math.max(s, soundTo);
            } else if (soundTo >= 0) {
                break;
            }
        }
        tables.setSound(table, soundFrom, soundTo);
    }

    /** Fills a row; false when something chokes there, or a pressure above ambient or a flow outwards would be needed. */
    private boolean put(int table, int knot, double s, int nearer, LegLaw law, Hanging hanging) {
        outside.moveTo(s);
        outside.read(nearer);
        double outer = outside.squared();
        bring(outer, hanging);
        double w = outside.flow() - brought;
        double slope = outside.flowSlope() - broughtSlope * outside.squaredSlope();
        if (!(w >= 0 && w < law.most_kgPerS())) {
            tables.put(table, knot, outer, outside.squaredSlope(), w, slope);
            return false;
        }
        double kinetic = law.c() * w * w;
        double end = Math.max(outer, kinetic);
        double inner = inner(end, law.loss_Pa2(w), kinetic);
        double b = law.lossSlope(w) + 2 * law.c() * w * LegLaw.logarithm(inner, end);
        double innerSlope = ((1 - kinetic / end) * outside.squaredSlope() + b * slope) / (1 - kinetic / inner);
        tables.put(table, knot, inner, innerSlope, w, slope);
        return broughtSoundly && inner < ambientSquared && kinetic < outer;
    }

    private void bring(double squared, Hanging hanging) {
        brought = 0;
        broughtSlope = 0;
        broughtSoundly = false;
        if (squared < ambientSquared) {
            double u = Math.sqrt(1 - squared / ambientSquared);
            port.of(hanging.ports, 0, hanging.count, u);
            brought = hanging.leakPerU * u + port.flow();
            broughtSlope = -(hanging.leakPerU + port.slope()) / (2 * ambientSquared * u);
            broughtSoundly = hanging.open == Network.NONE || u >= ports.soundFrom(hanging.open);
            for (int n = 0; n < hanging.count; n++) {
                broughtSoundly &= u <= ports.soundTo(hanging.ports[n]);
            }
        }
    }

    /** P at the inner end: Newton on {@code P − end − loss − c w² ln(P/end)}, which bends one way only. */
    private static double inner(double end, double loss, double kinetic) {
        double p = Math.max(end + loss, Math.max(1.1 * kinetic, 0.5 * end));
        for (int n = 0; n < STEP_LIMIT; n++) {
            double step = (p - end - loss - kinetic * LegLaw.logarithm(p, end)) / (1 - kinetic / p);
            p = Math.max(p - step, 0.5 * (p + kinetic));
            if (Math.abs(step) <= FOUND * p) {
                break;
            }
        }
        return p;
    }
}
