package org.ripewood.records;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something seen or measured; source and person are those of the actor.
 *
 * @param fact code of a recordable fact
 * @param value as text: a number with a decimal point or comma, {@code yes} or {@code no}, or one
 *     of the fact's words
 * @param supersedes the entry this one corrects; null for a new one
 * @param confirmed keys of questions that were answered by looking once more; null for none
 */
public record NewObservation(
        @NotBlank @Size(max = 60) String fact,
        @NotBlank @Size(max = 60) String value,
        @NotNull LocalDate observedOn,
        @Nullable @Size(max = 2000) String note,
        @Nullable Long woundId,
        @Nullable Long branchId,
        @Nullable @DecimalMin("0") @DecimalMax("5000") Double heightMm,
        @Nullable Long supersedes,
        @Nullable @Size(max = 10)
                List<
                                @NotNull @Size(max = 120)
                                @Pattern(regexp = Question.KEY, message = "the key of a question")
                                String>
                        confirmed) {

    /** One of which nothing was asked yet. */
    public NewObservation(
            String fact,
            String value,
            LocalDate observedOn,
            @Nullable String note,
            @Nullable Long woundId,
            @Nullable Long branchId,
            @Nullable Double heightMm,
            @Nullable Long supersedes) {
        this(fact, value, observedOn, note, woundId, branchId, heightMm, supersedes, null);
    }
}
