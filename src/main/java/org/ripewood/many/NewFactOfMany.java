package org.ripewood.many;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.records.NewObservation;
import org.ripewood.records.Question;

/**
 * One fact seen alike on many trees of a course: one of the tree as a whole.
 *
 * @param value as text, as for one tree
 */
public record NewFactOfMany(
        @NotBlank @Size(max = 60) String fact,
        @NotBlank @Size(max = 60) String value,
        @NotNull LocalDate observedOn,
        @Nullable @Size(max = 2000) String note,
        @NotEmpty @Size(max = 100) List<@NotNull @Valid OfTree> trees) {

    /**
     * A tree it was seen on.
     *
     * @param confirmed keys of questions that were answered by looking once more; null for none
     */
    public record OfTree(
            @NotNull Long treeId,
            @Nullable @Size(max = 10)
                    List<
                                    @NotNull @Size(max = 120)
                                    @Pattern(
                                            regexp = Question.KEY,
                                            message = "the key of a question")
                                    String>
                            confirmed) {}

    NewObservation of(OfTree tree) {
        return new NewObservation(
                fact, value, observedOn, note, null, null, null, null, tree.confirmed());
    }
}
