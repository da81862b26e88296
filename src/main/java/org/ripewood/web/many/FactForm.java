package org.ripewood.web.many;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.many.NewFactOfMany;
import org.ripewood.platform.problems.Refused;

/**
 * One fact for many trees, as the form sends it.
 *
 * @param tree trees that are ticked
 * @param confirmed answered questions, as {@code tree/key}
 */
record FactForm(
        @NotBlank @Size(max = 60) String fact,
        @NotBlank @Size(max = 60) String value,
        @NotNull LocalDate observedOn,
        @Nullable @Size(max = 2000) String note,
        @Nullable @Size(max = 100) List<@NotNull Long> tree,
        @Nullable @Size(max = 200) List<@NotNull @Size(max = 140) String> confirmed) {

    NewFactOfMany seen() {
        if (tree == null) {
            throw Refused.invalid("tree", "Choose at least one tree.");
        }
        var trees = tree.stream().map(id -> new NewFactOfMany.OfTree(id, confirmedOf(id))).toList();
        return new NewFactOfMany(fact, value, observedOn, note, trees);
    }

    private @Nullable List<String> confirmedOf(long treeId) {
        if (confirmed == null) {
            return null;
        }
        var start = treeId + "/";
        return confirmed.stream()
                .filter(key -> key.startsWith(start))
                .map(key -> key.substring(start.length()))
                .toList();
    }
}
