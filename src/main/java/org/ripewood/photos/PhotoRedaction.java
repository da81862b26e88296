package org.ripewood.photos;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Set;
import org.ripewood.platform.Actor;
import org.ripewood.platform.problems.Refused;
import org.ripewood.trees.ReachedTree;
import org.ripewood.trees.Trees;

/**
 * Keeps what a former keeper wrote under a photo from those who do not reach them. Asked once a
 * tree, however many photos.
 */
@ApplicationScoped
class PhotoRedaction {

    private final Trees trees;

    PhotoRedaction(Trees trees) {
        this.trees = trees;
    }

    /** Photos of one tree, as the actor may read of them. */
    List<Photo> over(Actor actor, long treeId, List<PhotoEntity> rows) {
        if (rows.isEmpty()) {
            return List.of();
        }
        var hidden = trees.hiddenKeepers(actor, treeId);
        return rows.stream().map(row -> over(hidden, row)).toList();
    }

    Photo over(Actor actor, PhotoEntity row) {
        return over(trees.hiddenKeepers(actor, row.treeId), row);
    }

    /** A photo of a tree that was just reached. */
    static Photo over(ReachedTree reached, PhotoEntity row) {
        return over(reached.hidden(), row);
    }

    private static Photo over(Set<Long> hidden, PhotoEntity row) {
        var photo = row.toPhoto();
        return hidden.contains(row.byId) ? photo.withoutCaption() : photo;
    }

    /**
     * What is to be said of a photo. Where the actor does not read the caption it stays as it is,
     * and no other may be put in its place: it would stand under the former keeper's name.
     */
    NewPhoto kept(Actor actor, PhotoEntity row, NewPhoto said) {
        if (!trees.hiddenKeepers(actor, row.treeId).contains(row.byId)) {
            return said;
        }
        var caption = said.caption();
        if (caption != null && !caption.isBlank()) {
            throw Refused.invalid(
                    "caption",
                    "expected none: the photo is a former keeper's, and so are the words under it");
        }
        return new NewPhoto(
                said.takenOn(), said.view(), row.caption, said.woundId(), said.stepId());
    }
}
