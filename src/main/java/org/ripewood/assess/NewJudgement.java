package org.ripewood.assess;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A judgement as its judge drafts it.
 *
 * @param level of the rubric; a draft may leave it open, a signature may not
 * @param secondWanted whether it stays hidden, once signed, until another judge has looked unswayed
 * @param corrects the judge's own signed judgement that was a mistake; null for a new look
 */
public record NewJudgement(
        @NotBlank @Size(max = 60) String rubric,
        @Nullable @Min(0) @Max(9) Integer level,
        @NotNull LocalDate judgedOn,
        @Nullable @Size(max = 2000) String note,
        @Nullable Boolean secondWanted,
        @Nullable Long corrects) {

    boolean wantsSecond() {
        return Boolean.TRUE.equals(secondWanted);
    }
}
