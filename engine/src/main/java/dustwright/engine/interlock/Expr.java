package dustwright.engine.interlock;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** A condition: names joined by {@code and}, {@code or}, {@code not}. */
public sealed interface Expr {
    /** Always or never. */
    record Constant(boolean value) implements Expr {
        /** Always true. */
        public static final Expr YES = new Constant(true);

        /** Never true. */
        public static final Expr NO = new Constant(false);
    }

    /** A signal by its name. */
    record Name(String name) implements Expr {}

    /** The opposite. */
    record Not(Expr of) implements Expr {}

    /** All of them; none of the terms is itself an {@code And}. */
    record And(List<Expr> terms) implements Expr {
        public And {
            terms = List.copyOf(terms);
        }
    }

    /** At least one of them; none of the terms is itself an {@code Or}. */
    record Or(List<Expr> terms) implements Expr {
        public Or {
            terms = List.copyOf(terms);
        }
    }

    /** A signal by its name. */
    static Expr name(String name) {
        return new Name(name);
    }

    /** The condition a text says; for texts of the program itself. */
    static Expr of(String text) {
        return ExprText.read(text);
    }

    /** All of the terms, flattened; nothing is always. */
    static Expr and(List<Expr> terms) {
        List<Expr> flat = new ArrayList<>();
        for (Expr term : terms) {
            if (term instanceof And and) {
                flat.addAll(and.terms());
            } else if (term.equals(Constant.NO)) {
                return Constant.NO;
            } else if (!term.equals(Constant.YES)) {
                flat.add(term);
            }
        }
        return flat.isEmpty() ? Constant.YES : flat.size() == 1 ? flat.get(0) : new And(flat);
    }

    /** Any of the terms, flattened; nothing is never. */
    static Expr or(List<Expr> terms) {
        List<Expr> flat = new ArrayList<>();
        for (Expr term : terms) {
            if (term instanceof Or or) {
                flat.addAll(or.terms());
            } else if (term.equals(Constant.YES)) {
                return Constant.YES;
            } else if (!term.equals(Constant.NO)) {
                flat.add(term);
            }
        }
        return flat.isEmpty() ? Constant.NO : flat.size() == 1 ? flat.get(0) : new Or(flat);
    }

    /** Both. */
    default Expr and(Expr other) {
        return and(List.of(this, other));
    }

    /** Either. */
    default Expr or(Expr other) {
        return or(List.of(this, other));
    }

    /** The opposite. */
    default Expr not() {
        if (this instanceof Constant constant) {
            return constant.value() ? Constant.NO : Constant.YES;
        }
        return this instanceof Not not ? not.of() : new Not(this);
    }

    /** Names in it, in the order of the text. */
    default Set<String> names() {
        Set<String> names = new LinkedHashSet<>();
        collect(names);
        return names;
    }

    private void collect(Set<String> names) {
        if (this instanceof Name name) {
            names.add(name.name());
        } else if (this instanceof Not not) {
            not.of().collect(names);
        } else {
            terms().forEach(t -> t.collect(names));
        }
    }

    /** Terms of an {@code And} or {@code Or}; nothing otherwise. */
    default List<Expr> terms() {
        if (this instanceof And and) {
            return and.terms();
        }
        return this instanceof Or or ? or.terms() : List.of();
    }

    /** The same with other conditions in the place of names. */
    default Expr replace(UnaryOperator<Expr> byName) {
        if (this instanceof Name) {
            return byName.apply(this);
        }
        if (this instanceof Not not) {
            return not.of().replace(byName).not();
        }
        List<Expr> terms = terms().stream().map(t -> t.replace(byName)).toList();
        return this instanceof And ? and(terms) : this instanceof Or ? or(terms) : this;
    }

    /** As a sequence file writes it. */
    default String text() {
        return text("and", "or", "not ", false);
    }

    /** With other words for the operators. */
    default String text(String and, String or, String not, boolean inner) {
        if (this instanceof Constant constant) {
            return constant.value() ? "yes" : "no";
        }
        if (this instanceof Name name) {
            return name.name();
        }
        if (this instanceof Not negated) {
            return not + negated.of().text(and, or, not, true);
        }
        String joined = terms().stream()
                .map(t -> t.text(and, or, not, true))
                .collect(Collectors.joining(" " + (this instanceof And ? and : or) + " "));
        return inner ? "(" + joined + ")" : joined;
    }
}
