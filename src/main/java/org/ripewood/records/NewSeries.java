package org.ripewood.records;

import jakarta.validation.Valid;
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
 * All that was measured on a tree in one go at the bench; kept as a whole or not at all.
 *
 * @param note goes with every value
 * @param confirmed keys of the questions that were answered by measuring again; those of questions
 *     that do not come up any more are let pass
 */
public record NewSeries(
        @NotNull LocalDate observedOn,
        @Nullable @Size(max = 2000) String note,
        @Nullable @Size(max = 100) List<@NotNull @Valid Diameter> diameters,
        @Nullable @Size(max = 200) List<@NotNull @Valid Opening> wounds,
        @Nullable @Size(max = 60) List<@NotNull @Valid Whole> whole,
        @Nullable @Size(max = 400)
                List<
                                @NotNull @Size(max = 120)
                                @Pattern(regexp = Question.KEY, message = "the key of a question")
                                String>
                        confirmed) {

    /** The trunk's diameter at a marked height above the root flare. */
    public record Diameter(
            @NotNull @DecimalMin("0") @DecimalMax("5000") Double heightMm,
            @NotNull @DecimalMin("0") @DecimalMax("2000") Double diameterMm) {}

    /** The open width of a wound. */
    public record Opening(
            @NotNull Long woundId, @NotNull @DecimalMin("0") @DecimalMax("500") Double openMm) {}

    /** A fact of the tree as a whole, its value as in {@link NewObservation}. */
    public record Whole(
            @NotBlank @Size(max = 60) String fact, @NotBlank @Size(max = 60) String value) {}
}
