package org.ripewood.standing;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Verdict;
import org.ripewood.steps.Wording;

/**
 * How a technique stands for a tree, as people read it.
 *
 * @param opensOn first day of the next season window, when that is all it waits for
 * @param opening when it could be done; null when it is done or not needed
 * @param stepId the open step for it; null when none is assigned
 */
public record TechniqueStanding(
        String technique,
        String title,
        String stage,
        Verdict verdict,
        double howFar,
        @Nullable LocalDate opensOn,
        @Nullable OpeningView opening,
        List<ReasonView> reasons,
        @Nullable Long stepId) {

    public TechniqueStanding {
        reasons = List.copyOf(reasons);
    }

    TechniqueStanding withReasons(List<ReasonView> told) {
        return new TechniqueStanding(
                technique, title, stage, verdict, howFar, opensOn, opening, told, stepId);
    }

    /** The reasons that keep it from being READY. */
    public List<ReasonView> against() {
        return reasons.stream().filter(reason -> !reason.met()).toList();
    }

    /**
     * When it could be done, for lists that tell each reason below: the day, or for how many
     * reasons there is none; null when it is done or not needed.
     */
    public @Nullable String openingBriefly() {
        var when = opening;
        if (when == null) {
            return null;
        }
        var reasons = against().size();
        return when.likely() != null || reasons == 0
                ? when.sentence()
                : "No date yet, for %s.".formatted(Wording.counted(reasons, "reason"));
    }

    /** Whether an instructor could assign it all the same, by waiving every reason against it. */
    public boolean waivable() {
        return verdict != Verdict.DONE
                && verdict != Verdict.NOT_NEEDED
                && against().stream().allMatch(ReasonView::waivable);
    }
}
