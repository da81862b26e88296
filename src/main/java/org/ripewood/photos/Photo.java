package org.ripewood.photos;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A photo of a tree, or the mark of one that was taken away.
 *
 * @param sha256 of the bytes kept, in hexadecimal; also those of one that was taken away
 * @param removedById who took it away; null while it is there
 */
public record Photo(
        long id,
        long version,
        long treeId,
        LocalDate takenOn,
        Viewpoint view,
        @Nullable String caption,
        @Nullable Long woundId,
        @Nullable Long stepId,
        int widthPx,
        int heightPx,
        long bytes,
        String sha256,
        long byId,
        Instant recordedAt,
        @Nullable Long removedById,
        @Nullable Instant removedAt) {

    /** Whether it shows the tree from its marked front. */
    public boolean fromFront() {
        return view == Viewpoint.FRONT;
    }

    public boolean removed() {
        return removedAt != null;
    }

    Photo withoutCaption() {
        return new Photo(
                id,
                version,
                treeId,
                takenOn,
                view,
                null,
                woundId,
                stepId,
                widthPx,
                heightPx,
                bytes,
                sha256,
                byId,
                recordedAt,
                removedById,
                removedAt);
    }
}
