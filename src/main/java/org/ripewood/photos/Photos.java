package org.ripewood.photos;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.NoSuchFileException;
import java.util.List;
import java.util.Optional;
import org.jboss.logging.Logger;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Paged;
import org.ripewood.platform.meters.Meter;
import org.ripewood.platform.meters.Meters;
import org.ripewood.platform.problems.Refused;
import org.ripewood.steps.Steps;
import org.ripewood.trees.ReachedTree;
import org.ripewood.trees.Trees;

/**
 * Photos of trees; whoever reaches the tree reaches them.
 *
 * <p>The bytes are kept before the row that points to them and taken away after it: a row never
 * points to a missing file, and a crash leaves at worst a file that nobody knows, which {@link
 * Sweep} takes away.
 */
@ApplicationScoped
@Transactional
public class Photos {

    private static final Logger LOG = Logger.getLogger(Photos.class);

    private final Trees trees;
    private final Steps steps;
    private final PhotoRows rows;
    private final PhotoBook book;
    private final PhotoReach reach;
    private final PhotoRedaction veil;
    private final PhotoProcessor darkroom;
    private final PhotoStore store;
    private final RecordPictures files;
    private final Meters meters;

    Photos(
            Trees trees,
            Steps steps,
            PhotoRows rows,
            PhotoBook book,
            PhotoReach reach,
            PhotoRedaction veil,
            PhotoProcessor darkroom,
            PhotoStore store,
            RecordPictures files,
            Meters meters) {
        this.trees = trees;
        this.steps = steps;
        this.rows = rows;
        this.book = book;
        this.reach = reach;
        this.veil = veil;
        this.darkroom = darkroom;
        this.store = store;
        this.files = files;
        this.meters = meters;
    }

    /**
     * Keeps a photo of a tree within reach. No transaction is held while it is decoded, unless the
     * caller holds one, so that more is kept with it or nothing.
     *
     * @param sent a JPEG or PNG; what it is called or said to be does not matter
     * @throws Refused 400 when it is neither, broken or too large; 409 when there are too many; 429
     *     or 503 when there is too much to do at the moment
     */
    @Transactional(Transactional.TxType.SUPPORTS)
    public Photo add(Actor actor, long treeId, NewPhoto said, InputStream sent) {
        book.check(actor, treeId, said);
        var developed = darkroom.develop(actor.personId(), sent);
        var whole = FileKeys.fresh();
        var thumbnail = FileKeys.fresh();
        try {
            store.put(whole, developed.whole);
            store.put(thumbnail, developed.thumbnail);
            var kept =
                    book.keep(
                            actor,
                            treeId,
                            said,
                            developed,
                            Fingerprint.of(developed.whole),
                            whole,
                            thumbnail);
            meters.count(Meter.PHOTO_STORED);
            return kept;
        } catch (Refused refused) {
            // certainly not written down; after any other failure the sweep finds out
            files.takeAway(List.of(whole, thumbnail));
            throw refused;
        } catch (IOException e) {
            files.takeAway(List.of(whole, thumbnail));
            throw new UncheckedIOException("the photo cannot be kept", e);
        }
    }

    /** A photo within reach, or the mark of one that was taken away; 404 otherwise. */
    public Photo get(Actor actor, long photoId) {
        return veil.over(actor, reach.photo(actor, photoId));
    }

    /** Photos of a tree within reach, those taken last first. */
    public Paged<Photo> list(Actor actor, long treeId, PageRequest page) {
        reach.tree(actor, treeId);
        var found = veil.over(actor, treeId, rows.ofTree(treeId, page));
        return Paged.of(found, page, rows.countOfTree(treeId));
    }

    /** All photos of a tree within reach, those taken last first; a limit bounds how many. */
    public List<Photo> ofTree(Actor actor, long treeId) {
        reach.tree(actor, treeId);
        return veil.over(actor, treeId, rows.ofTree(treeId));
    }

    /** The latest photo of a tree that was just reached, taken from its marked front. */
    public Optional<Photo> front(ReachedTree reached) {
        return rows.latestFront(reached.tree().id()).map(row -> PhotoRedaction.over(reached, row));
    }

    /** All photos of a tree that was just reached, those taken last first. */
    public List<Photo> of(ReachedTree reached) {
        return rows.ofTree(reached.tree().id()).stream()
                .map(row -> PhotoRedaction.over(reached, row))
                .toList();
    }

    /** Marks of the photos of a tree that were taken away, latest first. */
    public List<Photo> removed(Actor actor, long treeId) {
        reach.tree(actor, treeId);
        return veil.over(actor, treeId, rows.removedOfTree(treeId));
    }

    /** The same of a tree that was just reached. */
    public List<Photo> removed(ReachedTree reached) {
        return rows.removedOfTree(reached.tree().id()).stream()
                .map(row -> PhotoRedaction.over(reached, row))
                .toList();
    }

    /** Photos that show a wound of a tree within reach. */
    public List<Photo> ofWound(Actor actor, long treeId, long woundId) {
        reach.tree(actor, treeId);
        var found = rows.ofWound(woundId).stream().filter(row -> row.treeId == treeId).toList();
        return veil.over(actor, treeId, found);
    }

    /** Photos that are evidence for a step within reach. */
    public List<Photo> ofStep(Actor actor, long stepId) {
        var treeId = steps.get(actor, stepId).treeId();
        return veil.over(actor, treeId, rows.ofStep(stepId));
    }

    /**
     * The bytes of a photo within reach, always JPEG; 404 when it was taken away.
     *
     * @return to be closed by the caller
     */
    public PhotoFile open(Actor actor, long photoId, PhotoSize size) {
        var row = reach.photo(actor, photoId);
        var key = size == PhotoSize.WHOLE ? row.fileKey : row.thumbnailKey;
        if (key == null) {
            throw Refused.notFound("photo", photoId);
        }
        try {
            var tag = size == PhotoSize.WHOLE ? row.sha256 : row.sha256 + "-thumbnail";
            return new PhotoFile(tag, store.open(key));
        } catch (NoSuchFileException lost) {
            LOG.errorf("The file %s of photo %d is missing.", key, photoId);
            throw Refused.notFound("photo", photoId);
        } catch (IOException e) {
            throw new UncheckedIOException("the photo cannot be read", e);
        }
    }

    /** Whether the actor may change what is said of a photo and take it away. */
    public boolean mayChange(Actor actor, Photo photo) {
        var tree = trees.get(actor, photo.treeId());
        return !tree.left() && reach.mayChange(actor, tree, photo.byId());
    }

    /**
     * Changes what is said of a photo: by who sent it, the keeper of the tree, or an instructor;
     * 412 when the version is not the current one.
     */
    public Photo change(Actor actor, long photoId, long version, NewPhoto said) {
        return book.change(actor, photoId, version, said);
    }

    /**
     * Takes a photo away, by those who may change it; that it was there stays written down. 412
     * when the version is not the current one, unless it is gone already.
     */
    @Transactional(Transactional.TxType.NOT_SUPPORTED)
    public Photo remove(Actor actor, long photoId, long version) {
        var removal = book.remove(actor, photoId, version);
        files.takeAway(removal.keys());
        return removal.photo();
    }
}
