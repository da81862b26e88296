package org.ripewood.photos;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What is kept of a picture that was sent: two JPEGs of nothing but pixels. */
final class ProcessedPhoto {

    final byte[] whole;
    final byte[] thumbnail;
    final int widthPx;
    final int heightPx;

    /** The day by the camera's clock; null when it noted none. */
    final @Nullable LocalDate notedOn;

    ProcessedPhoto(
            byte[] whole,
            byte[] thumbnail,
            int widthPx,
            int heightPx,
            @Nullable LocalDate notedOn) {
        this.whole = whole;
        this.thumbnail = thumbnail;
        this.widthPx = widthPx;
        this.heightPx = heightPx;
        this.notedOn = notedOn;
    }
}
