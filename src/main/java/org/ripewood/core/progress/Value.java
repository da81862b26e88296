package org.ripewood.core.progress;

/** The value of a fact: a number in the fact's unit, a yes or no, or one of its words. */
public sealed interface Value {

    @SuppressWarnings("JavaLangClash") // always read as Value.Number
    record Number(double amount) implements Value {
        public Number {
            if (!Double.isFinite(amount)) {
                throw new IllegalArgumentException("a number must be finite, found " + amount);
            }
        }
    }

    record Flag(boolean set) implements Value {}

    record Word(String word) implements Value {
        public Word {
            if (word.isBlank()) {
                throw new IllegalArgumentException("a word must not be blank");
            }
        }
    }

    static Value of(double amount) {
        return new Number(amount);
    }

    static Value of(boolean set) {
        return new Flag(set);
    }

    static Value of(String word) {
        return new Word(word);
    }
}
