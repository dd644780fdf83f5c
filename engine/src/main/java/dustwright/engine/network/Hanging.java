package dustwright.engine.network;

/** What hangs on one node while a table through it is made. */
final class Hanging {
    /** Leak of a closed inlet at the node, proportional to u [kg/s]. */
    double leakPerU;
    /** Tables with at most one inlet open. */
    final int[] ports;

    int count;
    /** Of these the one with an inlet open, or NONE; with two such, which is where their paths meet, NONE too. */
    int open = Network.NONE;
    /** The table with two inlets open, or NONE. */
    final int[] pairs = {Network.NONE};

    private boolean oneFound;

    Hanging(int most) {
        ports = new int[most];
    }

    int pair() {
        return pairs[0];
    }

    void add(int table) {
        if (table != Network.NONE) {
            ports[count++] = table;
        }
    }

    void addOpen(int table) {
        add(table);
        open = oneFound ? Network.NONE : table;
        oneFound = true;
    }
}
