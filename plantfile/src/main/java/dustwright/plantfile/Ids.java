package dustwright.plantfile;

import dustwright.plantfile.keys.Shape;

/** Which words may be ids. */
final class Ids {
    static final int LONGEST = 40;

    private Ids() {}

    static void check(Tree.Scalar key, Shape.Named named, String path, Faults faults) {
        String id = key.text();
        boolean allowed = !id.isEmpty()
                && id.length() <= LONGEST
                && id.codePoints()
                        .allMatch(c -> Character.isLetterOrDigit(c)
                                || c == '-'
                                || c == '_'
                                || c == '.'
                                || (c == ' ' && named.titled()));
        if (!allowed) {
            faults.add(
                    key.span(),
                    path,
                    "\"" + Names.shortened(id) + "\" cannot be the id of " + Names.withArticle(named.word()),
                    "up to " + LONGEST + " letters, digits and - _ ." + (named.titled() ? " and spaces" : ""));
        }
    }
}
