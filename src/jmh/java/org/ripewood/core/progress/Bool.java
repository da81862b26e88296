package org.ripewood.core.progress;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A boolean expression, written in the notation that Java, DRL and CEL share.
 *
 * <p>Negation is carried down to the comparisons, because Drools only interprets what is nested
 * below a negation, and would be slower for the way its rules are written.
 */
sealed interface Bool {

    Bool TRUE = new Fixed(true);
    Bool FALSE = new Fixed(false);

    Bool not();

    record Fixed(boolean value) implements Bool {
        @Override
        public Bool not() {
            return value ? FALSE : TRUE;
        }

        @Override
        public String toString() {
            return String.valueOf(value);
        }
    }

    /** What cannot be taken apart, as it is written and as its opposite is. */
    record Atom(String yes, String no) implements Bool {
        @Override
        public Bool not() {
            return new Atom(no, yes);
        }

        @Override
        public String toString() {
            return yes;
        }
    }

    record All(List<Bool> parts) implements Bool {
        @Override
        public Bool not() {
            return new Any(parts.stream().map(Bool::not).toList());
        }

        @Override
        public String toString() {
            return parts.stream().map(Bool::toString).collect(Collectors.joining(" && ", "(", ")"));
        }
    }

    record Any(List<Bool> parts) implements Bool {
        @Override
        public Bool not() {
            return new All(parts.stream().map(Bool::not).toList());
        }

        @Override
        public String toString() {
            return parts.stream().map(Bool::toString).collect(Collectors.joining(" || ", "(", ")"));
        }
    }

    static Bool atLeast(String amount, Object bound) {
        return new Atom(amount + " >= " + bound, amount + " < " + bound);
    }

    static Bool atMost(String amount, Object bound) {
        return new Atom(amount + " <= " + bound, amount + " > " + bound);
    }

    static Bool equal(String one, Object other) {
        return new Atom(one + " == " + other, one + " != " + other);
    }

    static Bool all(Bool... parts) {
        return all(List.of(parts));
    }

    static Bool all(Collection<Bool> parts) {
        var kept = kept(parts, TRUE);
        if (kept.contains(FALSE)) {
            return FALSE;
        }
        return kept.isEmpty() ? TRUE : kept.size() == 1 ? kept.get(0) : new All(kept);
    }

    static Bool any(Bool... parts) {
        return any(List.of(parts));
    }

    static Bool any(Collection<Bool> parts) {
        var kept = kept(parts, FALSE);
        if (kept.contains(TRUE)) {
            return TRUE;
        }
        return kept.isEmpty() ? FALSE : kept.size() == 1 ? kept.get(0) : new Any(kept);
    }

    private static List<Bool> kept(Collection<Bool> parts, Bool neutral) {
        var kept = new ArrayList<>(parts);
        kept.removeIf(neutral::equals);
        return kept;
    }
}
