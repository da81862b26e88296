package org.ripewood.standing;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * When a technique could be done if nothing else is done meanwhile, as people read it.
 *
 * @param earliest day from which it could in one case of ten; null when that cannot be said
 * @param likely in every second case; null when that cannot be said
 * @param latest in nine cases of ten; null when that cannot be said
 * @param sentence all of it in words
 * @param waits what it waits for, each with its own days
 */
public record OpeningView(
        @Nullable LocalDate earliest,
        @Nullable LocalDate likely,
        @Nullable LocalDate latest,
        String sentence,
        List<Wait> waits) {

    public OpeningView {
        waits = List.copyOf(waits);
    }

    /**
     * One thing it waits for.
     *
     * @param key of the reason
     */
    public record Wait(
            String key,
            String title,
            @Nullable LocalDate earliest,
            @Nullable LocalDate likely,
            @Nullable LocalDate latest,
            String sentence) {}
}
