package org.ripewood.photos;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.NoSuchFileException;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jboss.logging.Logger;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.records.PictureDescriptions;

/** The files of photos, for the record as a file and for the forgetting of a person. */
@ApplicationScoped
class RecordPictures implements PictureDescriptions {

    private static final Logger LOG = Logger.getLogger(RecordPictures.class);

    private final PhotoStore store;
    private final PhotoBook book;
    private final PhotoProcessor darkroom;
    private final PhotoLimits limits;

    RecordPictures(PhotoStore store, PhotoBook book, PhotoProcessor darkroom, PhotoLimits limits) {
        this.store = store;
        this.book = book;
        this.darkroom = darkroom;
        this.limits = limits;
    }

    /** One that another school would refuse is as good as lost, and the rest can be had. */
    @Override
    public Optional<byte[]> find(Map<String, @Nullable Object> row) {
        var key = String.valueOf(row.get(PhotoTables.FILE_KEY));
        try (var file = store.open(key)) {
            var bytes = file.readAllBytes();
            if (Fingerprint.of(bytes).equals(row.get(PhotoTables.SHA_256))) {
                return Optional.of(bytes);
            }
            LOG.errorf("The file %s of a photo is not what was written down of it.", key);
        } catch (NoSuchFileException lost) {
            LOG.errorf("The file %s of a photo is missing.", key);
        } catch (IOException unreadable) {
            LOG.errorf(unreadable, "The file %s of a photo cannot be read.", key);
        }
        return Optional.empty();
    }

    @Override
    public int mostBytes() {
        return (int) limits.mostBytes();
    }

    /** The bytes are kept as they came, so that the record stays the same to the byte. */
    @Override
    public Map<String, String> keep(Map<String, @Nullable Object> row, byte[] sent) {
        var checked = darkroom.check(sent);
        requireAsTold("%d bytes", row.get(PhotoTables.BYTE_COUNT), (long) sent.length);
        requireAsTold("a width of %d px", row.get(PhotoTables.WIDTH_PX), (long) checked.widthPx);
        requireAsTold("a height of %d px", row.get(PhotoTables.HEIGHT_PX), (long) checked.heightPx);
        requireAsTold("SHA-256 %s", row.get(PhotoTables.SHA_256), Fingerprint.of(sent));
        var whole = FileKeys.fresh();
        var thumbnail = FileKeys.fresh();
        try {
            store.put(whole, sent);
            store.put(thumbnail, checked.thumbnail);
        } catch (IOException e) {
            takeAway(List.of(whole, thumbnail));
            throw new UncheckedIOException("the photo cannot be kept", e);
        }
        return Map.of(PhotoTables.FILE_KEY, whole, PhotoTables.THUMBNAIL_KEY, thumbnail);
    }

    private static void requireAsTold(String words, @Nullable Object told, Object found) {
        if (!found.equals(told)) {
            throw Unfit.because(
                    "expected %s as its row says, found %s"
                            .formatted(words.formatted(told), words.formatted(found)),
                    null);
        }
    }

    @Override
    public List<String> keysOf(Collection<Long> rowIds) {
        return book.keysOf(rowIds);
    }

    @Override
    public void takeAway(Collection<String> keys) {
        for (var key : keys) {
            try {
                store.remove(key);
            } catch (IOException e) {
                LOG.warnf(e, "The file %s is left for the next start to take away.", key);
            }
        }
    }

    @Override
    public long madeBy(long personId) {
        return book.countBy(personId);
    }

    @Override
    public List<String> removeMadeBy(long personId, long byId) {
        return book.removeBy(personId, byId);
    }
}
