package dustwright.documents.control;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Runs the subset of IEC 61131-3 Structured Text that our function block uses: BOOL, INT, TIME and TON, assignments, IF, calls of TON, AND OR NOT, + and
 * comparisons. Written from the language, not from the writer: it knows nothing of sequences.
 */
final class StructuredTextRunner {
    private static final Pattern TOKEN = Pattern.compile(
            "\\(\\*.*?\\*\\)|T#\\d+ms|[A-Za-z_][A-Za-z0-9_]*|\\d+|:=|>=|<|\\+|[().,;:]|\\s+", Pattern.DOTALL);

    private final List<String> tokens = new ArrayList<>();
    private final Map<String, Integer> places = new HashMap<>();
    private final List<Do> body = new ArrayList<>();
    private long[] values = new long[1024];
    private long now_ms;
    private int at;

    StructuredTextRunner(String text) {
        Matcher token = TOKEN.matcher(text);
        int end = 0;
        while (token.find()) {
            if (token.start() != end) {
                throw new IllegalArgumentException("not our Structured Text: " + text.substring(end, token.start()));
            }
            end = token.end();
            if (!token.group().isBlank() && !token.group().startsWith("(*")) {
                tokens.add(token.group());
            }
        }
        expect("FUNCTION_BLOCK");
        at++;
        while (peek().startsWith("VAR")) {
            declarations();
        }
        while (!peek().equals("END_FUNCTION_BLOCK")) {
            body.add(statement());
        }
    }

    void set(String name, boolean value) {
        values[place(name)] = value ? 1 : 0;
    }

    void set(String name, long value_ms) {
        values[place(name)] = value_ms;
    }

    boolean is(String name) {
        return values[place(name)] != 0;
    }

    /** One call of the block. */
    void call(long sinceLast_ms) {
        now_ms += sinceLast_ms;
        body.forEach(Do::it);
    }

    private interface Do {
        void it();
    }

    private interface Value {
        long get();
    }

    private void declarations() {
        at++;
        if (peek().equals("RETAIN")) {
            at++;
        }
        while (!peek().equals("END_VAR")) {
            String name = next();
            expect(":");
            String type = next();
            expect(";");
            places.put(name, places.size());
            if (type.equals("TON")) {
                places.put(name + ".start", places.size());
                places.put(name + ".Q", places.size());
            }
        }
        at++;
    }

    private int place(String name) {
        Integer place = places.get(name);
        if (place == null) {
            throw new IllegalArgumentException("not declared: " + name);
        }
        return place;
    }

    private Do statement() {
        if (peek().equals("IF")) {
            return conditional();
        }
        String name = next();
        if (peek().equals("(")) {
            return timer(name);
        }
        expect(":=");
        int to = place(name);
        Value value = alternatives();
        expect(";");
        return () -> values[to] = value.get();
    }

    private Do conditional() {
        List<Value> conditions = new ArrayList<>();
        List<List<Do>> branches = new ArrayList<>();
        do {
            at++;
            conditions.add(alternatives());
            expect("THEN");
            branches.add(block());
        } while (peek().equals("ELSIF"));
        List<Do> otherwise = new ArrayList<>();
        if (peek().equals("ELSE")) {
            at++;
            otherwise = block();
        }
        expect("END_IF");
        expect(";");
        List<Do> last = otherwise;
        return () -> {
            for (int i = 0; i < conditions.size(); i++) {
                if (conditions.get(i).get() != 0) {
                    branches.get(i).forEach(Do::it);
                    return;
                }
            }
            last.forEach(Do::it);
        };
    }

    private List<Do> block() {
        List<Do> block = new ArrayList<>();
        while (!List.of("ELSIF", "ELSE", "END_IF").contains(peek())) {
            block.add(statement());
        }
        return block;
    }

    /** On-delay timer: Q when IN has been true for PT. */
    private Do timer(String name) {
        expect("(");
        expect("IN");
        expect(":=");
        Value in = alternatives();
        expect(",");
        expect("PT");
        expect(":=");
        Value pt = alternatives();
        expect(")");
        expect(";");
        int running = place(name);
        int start = place(name + ".start");
        int q = place(name + ".Q");
        return () -> {
            if (in.get() == 0) {
                values[running] = 0;
                values[q] = 0;
            } else {
                if (values[running] == 0) {
                    values[running] = 1;
                    values[start] = now_ms;
                }
                values[q] = now_ms - values[start] >= pt.get() ? 1 : 0;
            }
        };
    }

    private Value alternatives() {
        Value left = together();
        while (peek().equals("OR")) {
            at++;
            Value first = left;
            Value second = together();
            left = () -> first.get() != 0 || second.get() != 0 ? 1 : 0;
        }
        return left;
    }

    private Value together() {
        Value left = compared();
        while (peek().equals("AND")) {
            at++;
            Value first = left;
            Value second = compared();
            left = () -> first.get() != 0 && second.get() != 0 ? 1 : 0;
        }
        return left;
    }

    private Value compared() {
        Value left = added();
        if (peek().equals(">=")) {
            at++;
            Value right = added();
            return () -> left.get() >= right.get() ? 1 : 0;
        }
        if (peek().equals("<")) {
            at++;
            Value right = added();
            return () -> left.get() < right.get() ? 1 : 0;
        }
        return left;
    }

    private Value added() {
        Value left = single();
        if (peek().equals("+")) {
            at++;
            Value right = single();
            return () -> left.get() + right.get();
        }
        return left;
    }

    private Value single() {
        String token = next();
        if (token.equals("NOT")) {
            Value of = single();
            return () -> of.get() == 0 ? 1 : 0;
        }
        if (token.equals("(")) {
            Value inner = alternatives();
            expect(")");
            return inner;
        }
        if (token.equals("TRUE") || token.equals("FALSE")) {
            long constant = token.equals("TRUE") ? 1 : 0;
            return () -> constant;
        }
        if (token.startsWith("T#")) {
            long time_ms = Long.parseLong(token.substring(2, token.length() - 2));
            return () -> time_ms;
        }
        if (Character.isDigit(token.charAt(0))) {
            long number = Long.parseLong(token);
            return () -> number;
        }
        String name = token;
        if (peek().equals(".")) {
            at++;
            name = token + "." + next();
        }
        int place = place(name);
        return () -> values[place];
    }

    private String peek() {
        return tokens.get(at);
    }

    private String next() {
        return tokens.get(at++);
    }

    private void expect(String token) {
        if (!next().equals(token)) {
            throw new IllegalArgumentException(token + " expected, not " + tokens.get(at - 1) + " after "
                    + String.join(" ", tokens.subList(Math.max(0, at - 12), at)));
        }
    }
}
