package org.ripewood.standing;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One step to be assigned to many trees of a course, with one note and one window. */
public record NewAssignments(
        @NotBlank @Size(max = 60) String technique,
        @Nullable LocalDate from,
        @Nullable LocalDate until,
        @Nullable @Size(max = 2000) String note,
        @NotEmpty @Size(max = 100) List<@NotNull @Valid OfTree> trees) {

    /**
     * A tree that is given the step.
     *
     * @param waivers key of a reason against it to why it is let pass; null for a tree that is
     *     ready
     */
    public record OfTree(
            @NotNull Long treeId,
            @Nullable @Size(max = 30)
                    Map<@NotBlank @Size(max = 120) String, @Size(max = 1000) String> waivers) {}

    NewAssignment of(OfTree tree) {
        return new NewAssignment(technique, from, until, note, tree.waivers());
    }
}
