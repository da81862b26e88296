package org.ripewood.core.progress;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.Outlook;

/**
 * When a technique could be done on a tree, if nothing else is done meanwhile.
 *
 * <p>Evidence that is good on the day asked is taken to be looked at again in time.
 *
 * @param on the day it was asked
 * @param waits what it waits for, in the order of the standing's reasons; none when it can be done
 *     now
 * @param outlook the latest of all waits, and then the next day the season is open; unsaid as soon
 *     as one of the waits is
 */
public record Opening(String technique, LocalDate on, List<Wait> waits, Outlook outlook) {

    /**
     * One thing it waits for.
     *
     * @param outlook when the reason will have gone; a season's is the next day it is open
     * @param before when the technique to be signed off first could be done itself; null for every
     *     other reason
     */
    public record Wait(Reason reason, Outlook outlook, @Nullable Opening before) {}

    private static final Comparator<Wait> BY_LENGTH =
            Comparator.comparingInt((Wait wait) -> rank(wait.outlook()))
                    .thenComparing(
                            wait -> likely(wait.outlook()),
                            Comparator.nullsFirst(Comparator.naturalOrder()));

    public Opening {
        waits = List.copyOf(waits);
    }

    /** What it waits for longest: the first that cannot be said, else the one that ends last. */
    public Optional<Wait> longest() {
        Wait longest = null;
        for (var wait : waits) {
            if (longest == null || BY_LENGTH.compare(wait, longest) > 0) {
                longest = wait;
            }
        }
        return Optional.ofNullable(longest);
    }

    private static int rank(Outlook outlook) {
        if (outlook instanceof Outlook.Unsaid) {
            return 2;
        }
        return outlook instanceof Outlook.Expected ? 1 : 0;
    }

    private static @Nullable LocalDate likely(Outlook outlook) {
        return outlook instanceof Outlook.Expected expected ? expected.likely() : null;
    }
}
