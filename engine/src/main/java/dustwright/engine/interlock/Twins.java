package dustwright.engine.interlock;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Contacts that the scan only ever meets together, in one "any of these is bad", are one contact to it: whatever some of them do, one alone
 * could have done. All but the first of such twins are taken out before a search.
 */
final class Twins {
    /** Looked at by itself afterwards: a cloth that is blind until it was cleaned. */
    private static final String FILTER_DROP = "filter_ok";

    private final Map<String, List<String>> places = new LinkedHashMap<>();
    private final Set<String> single = new HashSet<>();

    private Twins(List<Statement.Assign> lines) {
        single.add(FILTER_DROP);
        for (Statement.Assign line : lines) {
            if (isOwnChange(line)) {
                places.put(line.name(), new ArrayList<>());
            }
        }
        for (int i = 0; i < lines.size(); i++) {
            if (!isOwnChange(lines.get(i))) {
                note(lines.get(i).value(), i + ":");
            }
        }
    }

    /** Every contact with the first of those it is met together with; itself where there is none. */
    static Map<String, String> firsts(List<Statement.Assign> lines) {
        Twins twins = new Twins(lines);
        Map<String, String> firstAt = new LinkedHashMap<>();
        Map<String, String> firsts = new LinkedHashMap<>();
        twins.places.forEach((contact, where) -> firsts.put(
                contact,
                twins.single.contains(contact) ? contact : firstAt.computeIfAbsent(where.toString(), w -> contact)));
        return firsts;
    }

    static List<Statement.Assign> merged(List<Statement.Assign> lines) {
        Set<String> away = new HashSet<>();
        firsts(lines).forEach((contact, first) -> {
            if (!contact.equals(first)) {
                away.add(contact);
            }
        });
        return lines.stream()
                .filter(l -> !away.contains(l.name()))
                .map(l -> new Statement.Assign(
                        l.name(),
                        l.value().replace(n -> away.contains(((Expr.Name) n).name()) ? Expr.Constant.YES : n)))
                .toList();
    }

    /** Whether a line makes a free contact: x := not bad_x. */
    private static boolean isOwnChange(Statement.Assign line) {
        return line.value().names().equals(Set.of("bad_" + line.name()));
    }

    /** Notes where contacts stand; anywhere but as a bad word in an or, or as a good word in an and, they stand alone. */
    private void note(Expr expr, String at) {
        if (expr instanceof Expr.Name name) {
            single.add(name.name());
        } else if (expr instanceof Expr.Not not) {
            note(not.of(), at + "n");
        } else {
            for (int i = 0; i < expr.terms().size(); i++) {
                Expr term = expr.terms().get(i);
                boolean or = expr instanceof Expr.Or;
                if (or && term instanceof Expr.Not not && not.of() instanceof Expr.Name name) {
                    meet(name, at);
                } else if (!or && term instanceof Expr.Name name) {
                    meet(name, at);
                } else {
                    note(term, at + i + ".");
                }
            }
        }
    }

    private void meet(Expr.Name name, String at) {
        List<String> where = places.get(name.name());
        if (where != null) {
            where.add(at);
        }
    }
}
