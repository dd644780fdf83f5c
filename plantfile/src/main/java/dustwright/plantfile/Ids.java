package dustwright.plantfile;

/** Which words may be ids. */
final class Ids {
    private static final int LONGEST = 40;

    private Ids() {}

    static void check(Tree.Scalar key, String word, String path, Faults faults) {
        String id = key.text();
        boolean allowed = !id.isEmpty()
                && id.length() <= LONGEST
                && id.codePoints().allMatch(c -> Character.isLetterOrDigit(c) || c == '-' || c == '_' || c == '.');
        if (!allowed) {
            faults.add(
                    key.span(),
                    path,
                    "\"" + Names.shortened(id) + "\" cannot be the id of a " + word,
                    "up to " + LONGEST + " letters, digits and - _ .");
        }
    }
}
