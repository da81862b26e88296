package org.ripewood.course;

import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Criterion.Ages;

/**
 * How a fact is called and measured.
 *
 * @param ages by what evidence of it grows old
 * @param brief how it is told where there is little room
 */
public record FactText(String code, String title, String unit, String how, Ages ages, Brief brief) {

    /**
     * A fact in a few words.
     *
     * @param words its name, three words at most
     * @param unit shown beside the number; may be empty
     * @param times by what the number is multiplied, 100 for a share in per cent
     * @param whenTrue what is said when it is so and should not be; null where the name does
     * @param whenFalse what is said when it is not so and should be; null where the name does
     */
    public record Brief(
            String words,
            String unit,
            double times,
            @Nullable String whenTrue,
            @Nullable String whenFalse) {}

    /** One whose title is short enough. */
    public FactText(String code, String title, String unit, String how, Ages ages) {
        this(code, title, unit, how, ages, briefly(title, unit));
    }

    static Brief briefly(String title, String unit) {
        var words = Character.toLowerCase(title.charAt(0)) + title.substring(1);
        return new Brief(words, unit, 1, null, null);
    }
}
