package org.ripewood.photos;

import static java.util.Objects.requireNonNull;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** A photo whose bytes are kept elsewhere, or the mark of one that was taken away. */
@Entity
@Table(name = "photo")
class PhotoEntity {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "photo_seq")
    @SequenceGenerator(name = "photo_seq", sequenceName = "photo_seq", allocationSize = 50)
    @Nullable Long id;

    @Version long version;
    long treeId;
    LocalDate takenOn;

    @Enumerated(EnumType.STRING)
    Viewpoint seenFrom;

    @Nullable String caption;
    @Nullable Long woundId;
    @Nullable Long stepId;

    /** Both null once it was taken away. */
    @Nullable String fileKey;

    @Nullable String thumbnailKey;
    int widthPx;
    int heightPx;
    long byteCount;

    @Column(name = "sha_256")
    String sha256;

    long byId;
    Instant recordedAt;
    @Nullable Long removedById;
    @Nullable Instant removedAt;

    void say(NewPhoto said, LocalDate on) {
        takenOn = on;
        seenFrom = said.view();
        var words = said.caption();
        caption = words == null || words.isBlank() ? null : words.strip();
        woundId = said.woundId();
        stepId = said.stepId();
    }

    Photo toPhoto() {
        return new Photo(
                requireNonNull(id),
                version,
                treeId,
                takenOn,
                seenFrom,
                caption,
                woundId,
                stepId,
                widthPx,
                heightPx,
                byteCount,
                sha256,
                byId,
                recordedAt,
                removedById,
                removedAt);
    }
}
