package dustwright.engine.interlock;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads conditions: {@code in_holding and not (bag_hold or soft_hold)}. */
public final class ExprText {
    private static final Pattern TOKEN = Pattern.compile("\\s*([a-z][a-z0-9_]*|\\(|\\)|<->|->|$)");

    private final String text;
    private int at;
    private String token = "";
    private int tokenAt;

    private ExprText(String text) {
        this.text = text;
        advance();
    }

    /** A text that is no condition. */
    public static final class Bad extends IllegalArgumentException {
        private static final long serialVersionUID = 1;

        /** First character that does not fit, counted from 0. */
        public final int column;

        Bad(String message, int column) {
            super(message);
            this.column = column;
        }
    }

    /**
     * The condition a text says.
     *
     * @throws Bad with the place in the text
     */
    public static Expr read(String text) {
        ExprText reader = new ExprText(text);
        Expr expr = reader.implication();
        if (!reader.token.isEmpty()) {
            throw reader.bad("\"" + reader.token + "\" where the condition should end or go on with and, or");
        }
        return expr;
    }

    /** {@code a -> b} is "b whenever a", {@code a <-> b} is "both or neither". */
    private Expr implication() {
        Expr left = alternatives();
        if (token.equals("->")) {
            advance();
            return left.not().or(implication());
        }
        if (token.equals("<->")) {
            advance();
            Expr right = alternatives();
            return left.and(right).or(left.not().and(right.not()));
        }
        return left;
    }

    private Expr alternatives() {
        List<Expr> terms = new ArrayList<>(List.of(together()));
        while (token.equals("or")) {
            advance();
            terms.add(together());
        }
        return Expr.or(terms);
    }

    private Expr together() {
        List<Expr> terms = new ArrayList<>(List.of(single()));
        while (token.equals("and")) {
            advance();
            terms.add(single());
        }
        return Expr.and(terms);
    }

    private Expr single() {
        String read = token;
        if (read.equals("not")) {
            advance();
            return single().not();
        }
        if (read.equals("(")) {
            advance();
            Expr inner = implication();
            if (!token.equals(")")) {
                throw bad("a bracket that is not closed");
            }
            advance();
            return inner;
        }
        if (read.isEmpty() || !Character.isLetter(read.charAt(0)) || read.equals("and") || read.equals("or")) {
            throw bad(read.isEmpty() ? "the condition ends too early" : "\"" + read + "\" where a name belongs");
        }
        advance();
        return read.equals("yes") ? Expr.Constant.YES : read.equals("no") ? Expr.Constant.NO : Expr.name(read);
    }

    private void advance() {
        Matcher next = TOKEN.matcher(text).region(at, text.length());
        if (!next.lookingAt()) {
            int bad = at;
            while (bad < text.length() && Character.isWhitespace(text.charAt(bad))) {
                bad++;
            }
            throw new Bad("\"" + text.charAt(bad) + "\" is no part of a condition", bad);
        }
        token = next.group(1);
        tokenAt = next.start(1);
        at = next.end();
    }

    private Bad bad(String message) {
        return new Bad(message, tokenAt);
    }
}
