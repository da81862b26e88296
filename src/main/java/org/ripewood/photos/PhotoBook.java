package org.ripewood.photos;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;
import org.ripewood.trees.TreeDays;

/** What is written down of photos, each method a transaction; bytes are moved outside of them. */
@ApplicationScoped
@Transactional
class PhotoBook {

    /** No photo is older than the tables are taken to be; common practice, no source. */
    static final LocalDate FIRST = LocalDate.of(1900, 1, 1);

    private final PhotoRows rows;
    private final PhotoReach reach;
    private final PhotoRedaction veil;
    private final PhotoLimits limits;
    private final Today today;
    private final TreeDays treeDays;

    PhotoBook(
            PhotoRows rows,
            PhotoReach reach,
            PhotoRedaction veil,
            PhotoLimits limits,
            Today today,
            TreeDays treeDays) {
        this.rows = rows;
        this.reach = reach;
        this.veil = veil;
        this.limits = limits;
        this.today = today;
        this.treeDays = treeDays;
    }

    /** A photo and the keys its bytes lay under before. */
    record Removal(Photo photo, List<String> keys) {}

    /** Goes on only when the photo could be kept, so that nothing is decoded in vain. */
    void check(Actor actor, long treeId, NewPhoto said) {
        reach.treeHere(actor, treeId);
        requireHappened(said.takenOn(), treeId);
        reach.belongs(actor, treeId, said);
        requireRoom(actor, treeId);
    }

    Photo keep(
            Actor actor,
            long treeId,
            NewPhoto said,
            ProcessedPhoto developed,
            String sha256,
            String fileKey,
            String thumbnailKey) {
        check(actor, treeId, said);
        var row = new PhotoEntity();
        row.treeId = treeId;
        row.say(said, day(treeId, said, developed));
        row.fileKey = fileKey;
        row.thumbnailKey = thumbnailKey;
        row.widthPx = developed.widthPx;
        row.heightPx = developed.heightPx;
        row.byteCount = developed.whole.length;
        row.sha256 = sha256;
        row.byId = actor.personId();
        row.recordedAt = today.now();
        rows.persistAndFlush(row);
        return row.toPhoto();
    }

    Photo change(Actor actor, long photoId, long version, NewPhoto said) {
        var row = reach.photoToChange(actor, photoId);
        if (row.removedAt != null) {
            throw Refused.conflict("The photo was taken away.", null);
        }
        if (row.version != version) {
            throw Refused.stale("photo");
        }
        requireHappened(said.takenOn(), row.treeId);
        reach.belongs(actor, row.treeId, said);
        var on = said.takenOn();
        row.say(veil.kept(actor, row, said), on == null ? row.takenOn : on);
        rows.flush();
        return veil.over(actor, row);
    }

    /** Leaves the mark; taking away twice is once. */
    Removal remove(Actor actor, long photoId, long version) {
        var row = reach.photoToChange(actor, photoId);
        if (row.removedAt == null && row.version != version) {
            throw Refused.stale("photo");
        }
        var keys = mark(row, actor.personId());
        rows.flush();
        return new Removal(veil.over(actor, row), keys);
    }

    /**
     * All that a person sent, in the caller's transaction; answers the keys their bytes lie under.
     */
    List<String> removeBy(long personId, long removedById) {
        var keys = new ArrayList<String>();
        for (var row : rows.toRemoveOf(personId)) {
            keys.addAll(mark(row, removedById));
        }
        rows.flush();
        return keys;
    }

    /** The keys that the bytes of these photos lie under. */
    List<String> keysOf(Collection<Long> photoIds) {
        return rows.byIds(photoIds).stream()
                .flatMap(row -> Stream.of(row.fileKey, row.thumbnailKey))
                .filter(Objects::nonNull)
                .toList();
    }

    long countBy(long personId) {
        return rows.countOf(personId);
    }

    /** Says that it was taken away, once; answers the keys its bytes lay under before. */
    private List<String> mark(PhotoEntity row, long removedById) {
        var keys = Stream.of(row.fileKey, row.thumbnailKey).filter(Objects::nonNull).toList();
        if (row.removedAt == null) {
            row.fileKey = null;
            row.thumbnailKey = null;
            row.removedById = removedById;
            row.removedAt = today.now();
        }
        return keys;
    }

    /** What was said, or what the camera noted where its clock can be believed, or today. */
    private LocalDate day(long treeId, NewPhoto said, ProcessedPhoto developed) {
        var on = said.takenOn();
        if (on != null) {
            return on;
        }
        var noted = developed.notedOn;
        return noted != null && isPlausible(noted, treeDays.last(treeId))
                ? noted
                : treeDays.at(treeId);
    }

    private void requireHappened(@Nullable LocalDate on, long treeId) {
        if (on == null) {
            return;
        }
        var last = treeDays.last(treeId);
        if (!isPlausible(on, last)) {
            throw Refused.invalid(
                    "takenOn", "expected a day from %s to %s, found %s".formatted(FIRST, last, on));
        }
    }

    private static boolean isPlausible(LocalDate on, LocalDate last) {
        return !on.isBefore(FIRST) && !on.isAfter(last);
    }

    private void requireRoom(Actor actor, long treeId) {
        if (rows.countOfTree(treeId) >= limits.mostOfTree()) {
            throw Refused.conflict(
                    "The tree has %d photos, and no more are kept.".formatted(limits.mostOfTree()),
                    "Maybe take some away that nobody needs.");
        }
        var dayAgo = today.now().minus(Duration.ofDays(1));
        if (rows.countSince(actor.personId(), dayAgo) >= limits.mostADay()) {
            throw Refused.conflict(
                    "You have sent %d photos in a day, and no more are taken from one person."
                            .formatted(limits.mostADay()),
                    "Maybe go on tomorrow.");
        }
    }
}
