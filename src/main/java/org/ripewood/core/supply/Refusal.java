package org.ripewood.core.supply;

/**
 * Why something cannot be reckoned.
 *
 * @param field name of the value at fault, as the record that holds it calls it; empty when it is
 *     about the whole
 * @param words what was expected, what was found and, where a guess is possible, a "Maybe"
 */
public record Refusal(String field, String words) {

    public Refusal {
        if (words.isBlank()) {
            throw new IllegalArgumentException("a refusal says why, field " + field);
        }
    }

    static Refusal of(String field, String expected, double found) {
        return new Refusal(field, "expected %s, found %s".formatted(expected, Plain.number(found)));
    }

    static Refusal of(String field, String expected, double found, String maybe) {
        return new Refusal(
                field,
                "expected %s, found %s. Maybe %s".formatted(expected, Plain.number(found), maybe));
    }
}
