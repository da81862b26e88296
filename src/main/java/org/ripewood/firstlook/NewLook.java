package org.ripewood.firstlook;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.records.Question;

/**
 * An answer to one question of the first look, as of today at the tree's site. Lengths are in mm.
 *
 * @param question code of a question
 * @param answer code of one of its answers; null where lengths answer it
 * @param age how long ago, where that is asked; null when nobody knows
 * @param confirmed keys of questions that were answered by looking once more; null for none
 */
public record NewLook(
        @NotBlank @Size(max = 20) String question,
        @Nullable @Size(max = 20) String answer,
        @Nullable @Pattern(regexp = "weeks|year|years", message = "one of weeks, year, years")
                String age,
        @Nullable @DecimalMin("1") @DecimalMax("2000") Double baseMm,
        @Nullable @DecimalMin("1") @DecimalMax("5000") Double heightMm,
        @Nullable @DecimalMin("1") @DecimalMax("2000") Double targetMm,
        @Nullable @DecimalMin("1") @DecimalMax("2000") Double lowMm,
        @Nullable @DecimalMin("1") @DecimalMax("2000") Double highMm,
        @Nullable @DecimalMin("1") @DecimalMax("500") Double scarMm,
        @Nullable @DecimalMin("0") @DecimalMax("500") Double openMm,
        @Nullable @DecimalMin("0") @DecimalMax("10000") Double shootMm,
        @Nullable @DecimalMin("1") @DecimalMax("10000") Double shootBeforeMm,
        @Nullable @Size(max = 10)
                List<
                                @NotNull @Size(max = 120)
                                @Pattern(regexp = Question.KEY, message = "the key of a question")
                                String>
                        confirmed) {

    /** A length by the name of its field; null when it was left out. */
    @Nullable Double length(String field) {
        return switch (field) {
            case "baseMm" -> baseMm;
            case "heightMm" -> heightMm;
            case "targetMm" -> targetMm;
            case "lowMm" -> lowMm;
            case "highMm" -> highMm;
            case "scarMm" -> scarMm;
            case "openMm" -> openMm;
            case "shootMm" -> shootMm;
            case "shootBeforeMm" -> shootBeforeMm;
            default -> throw new IllegalArgumentException("no length " + field);
        };
    }
}
