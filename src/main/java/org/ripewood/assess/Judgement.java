package org.ripewood.assess;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A level of a rubric, given by an instructor.
 *
 * @param level null only in a draft
 * @param signedAt null while a draft; a signed one is never edited
 * @param openedAt since when everybody within reach sees it; null while a draft, or while a second
 *     judge is to look unswayed
 * @param blind whether its judge could not see another's level that was waiting
 * @param corrects the earlier judgement it takes the place of
 * @param supersededBy the judgement that took the place of this one
 * @param observationId the entry of the tree's record it became
 */
public record Judgement(
        long id,
        long version,
        String rubric,
        Judged of,
        long byId,
        @Nullable Integer level,
        LocalDate judgedOn,
        @Nullable String note,
        Instant keptAt,
        @Nullable Instant signedAt,
        @Nullable Instant openedAt,
        boolean secondWanted,
        boolean blind,
        @Nullable Long corrects,
        @Nullable Long supersededBy,
        @Nullable Long observationId) {

    public boolean draft() {
        return signedAt == null;
    }

    /** Signed, not yet to be seen by others, and not corrected by one that waits in its place. */
    public boolean waitsForSecond() {
        return signedAt != null && openedAt == null && supersededBy == null;
    }
}
