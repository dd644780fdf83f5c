package dustwright.cli;

/** The terminal's width, from the shell; 100 columns where it does not say. */
final class Terminal {
    private static final int USUAL = 100;
    private static final int LEAST = 60;
    private static final int MOST = 160;

    private Terminal() {}

    static int width() {
        String columns = System.getenv("COLUMNS");
        if (columns == null || !columns.matches("[0-9]{1,4}")) {
            return USUAL;
        }
        return Math.max(LEAST, Math.min(MOST, Integer.parseInt(columns)));
    }
}
