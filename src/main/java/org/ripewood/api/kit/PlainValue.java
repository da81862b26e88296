package org.ripewood.api.kit;

import org.ripewood.core.progress.Value;

/** A fact's value as JSON has it: a number, true or false, or a word. */
public final class PlainValue {

    private PlainValue() {}

    public static Object of(Value value) {
        if (value instanceof Value.Number number) {
            return number.amount();
        }
        if (value instanceof Value.Flag flag) {
            return flag.set();
        }
        if (value instanceof Value.Word word) {
            return word.word();
        }
        throw new IllegalStateException("a kind of value nobody has taught to JSON: " + value);
    }
}
