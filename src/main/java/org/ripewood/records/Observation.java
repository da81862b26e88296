package org.ripewood.records;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Value;
import org.ripewood.trees.FormerKeepers;

/**
 * What somebody saw or measured on a day.
 *
 * @param woundId the wound it was read on, for facts of wounds
 * @param branchId the branch it was read on, for facts of branches
 * @param heightMm height on the trunk it was read at, for facts of heights
 * @param supersededBy the entry that corrects it; null while it stands
 */
public record Observation(
        long id,
        long treeId,
        Fact fact,
        Value value,
        LocalDate observedOn,
        Source source,
        long byId,
        Instant recordedAt,
        @Nullable String note,
        @Nullable Long woundId,
        @Nullable Long branchId,
        @Nullable Double heightMm,
        @Nullable Long supersededBy) {

    /** The same without what one of these persons wrote in their own words. */
    Observation withoutWordsOf(Set<Long> hidden) {
        return new Observation(
                id,
                treeId,
                fact,
                value,
                observedOn,
                source,
                byId,
                recordedAt,
                FormerKeepers.words(hidden, byId, note),
                woundId,
                branchId,
                heightMm,
                supersededBy);
    }
}
