package org.ripewood.core.progress;

import java.util.Set;

/** What a fact must be. Bounds are inclusive. */
public sealed interface Requirement {

    /** At least this much, in the fact's unit. */
    record AtLeast(double bound) implements Requirement {
        public AtLeast {
            requireFinite(bound);
        }

        @Override
        public String kind() {
            return "AtLeast";
        }

        @Override
        public boolean metBy(Value value) {
            return value instanceof Value.Number number && number.amount() >= bound;
        }

        @Override
        public boolean fits(Fact.Kind kind) {
            return kind == Fact.Kind.NUMBER;
        }

        /** From 0 at nothing to 1 at the bound, in proportion. */
        @Override
        public double howFar(Value value) {
            if (metBy(value)) {
                return 1;
            }
            return value instanceof Value.Number number && bound > 0
                    ? Math.max(0, number.amount() / bound)
                    : 0;
        }
    }

    /** At most this much, in the fact's unit. */
    record AtMost(double bound) implements Requirement {
        public AtMost {
            requireFinite(bound);
        }

        @Override
        public String kind() {
            return "AtMost";
        }

        @Override
        public boolean metBy(Value value) {
            return value instanceof Value.Number number && number.amount() <= bound;
        }

        @Override
        public boolean fits(Fact.Kind kind) {
            return kind == Fact.Kind.NUMBER;
        }

        /**
         * The bound's share of what there is: 24 mm where 6 are allowed is a quarter of the way.
         */
        @Override
        public double howFar(Value value) {
            if (metBy(value)) {
                return 1;
            }
            return value instanceof Value.Number number && bound > 0 ? bound / number.amount() : 0;
        }
    }

    /** Exactly this flag or word. */
    record Is(Value value) implements Requirement {
        @Override
        public String kind() {
            return "Is";
        }

        @Override
        public boolean metBy(Value found) {
            return value.equals(found);
        }

        @Override
        public boolean fits(Fact.Kind kind) {
            return switch (kind) {
                case NUMBER -> value instanceof Value.Number;
                case FLAG -> value instanceof Value.Flag;
                case WORD -> value instanceof Value.Word;
            };
        }

        @Override
        public double howFar(Value found) {
            return metBy(found) ? 1 : 0;
        }
    }

    /** Any of these words. */
    record OneOf(Set<String> words) implements Requirement {
        public OneOf {
            words = Set.copyOf(words);
            if (words.isEmpty()) {
                throw new IllegalArgumentException("oneOf needs at least one word");
            }
        }

        @Override
        public String kind() {
            return "OneOf";
        }

        @Override
        public boolean metBy(Value value) {
            return value instanceof Value.Word word && words.contains(word.word());
        }

        @Override
        public boolean fits(Fact.Kind kind) {
            return kind == Fact.Kind.WORD;
        }

        @Override
        public double howFar(Value value) {
            return metBy(value) ? 1 : 0;
        }
    }

    /** Names the kind in the keys of criteria, which are stored: never change one. */
    String kind();

    boolean metBy(Value value);

    /** Whether a fact of this kind can be held against the requirement at all. */
    boolean fits(Fact.Kind kind);

    /** How near the value is: 0 nothing of it, 1 met. */
    double howFar(Value value);

    private static void requireFinite(double bound) {
        if (!Double.isFinite(bound)) {
            throw new IllegalArgumentException("a bound must be finite, found " + bound);
        }
    }
}
