package org.ripewood.web.many;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Refused;
import org.ripewood.standing.NewAssignments;

/**
 * One step for many trees, as the form sends it.
 *
 * @param tree trees that are ticked
 * @param waivers why a reason is let pass, by {@code tree.key}
 */
record AssignForm(
        @NotBlank @Size(max = 60) String technique,
        @Nullable LocalDate from,
        @Nullable LocalDate until,
        @Nullable @Size(max = 2000) String note,
        @Nullable @Size(max = 100) List<@NotNull Long> tree,
        @Nullable Map<String, String> waivers) {

    /** What is asked of the room; waivers of trees that are not ticked are passed over. */
    NewAssignments wanted() {
        if (tree == null) {
            throw Refused.invalid("tree", "Choose at least one tree.");
        }
        var trees = tree.stream().map(id -> new NewAssignments.OfTree(id, waiversOf(id))).toList();
        return new NewAssignments(technique, from, until, note, trees);
    }

    private Map<String, String> waiversOf(long treeId) {
        var of = new HashMap<String, String>();
        if (waivers != null) {
            var start = treeId + ".";
            waivers.forEach(
                    (key, why) -> {
                        if (key.startsWith(start)) {
                            of.put(key.substring(start.length()), why);
                        }
                    });
        }
        return of;
    }
}
