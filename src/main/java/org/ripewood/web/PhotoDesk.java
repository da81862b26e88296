package org.ripewood.web;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.CourseContent;
import org.ripewood.people.People;
import org.ripewood.photos.Photo;
import org.ripewood.photos.Photos;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.standing.Standings;
import org.ripewood.trees.Trees;

/** Lays out what the pages of photos show. */
@ApplicationScoped
class PhotoDesk {

    private static final int ON_A_PAGE = 24;
    private static final PageRequest STEPS = new PageRequest(0, 100);

    private final Photos photos;
    private final Trees trees;
    private final Standings standings;
    private final People people;
    private final CourseContent content;

    PhotoDesk(
            Photos photos, Trees trees, Standings standings, People people, CourseContent content) {
        this.photos = photos;
        this.trees = trees;
        this.standings = standings;
        this.people = people;
        this.content = content;
    }

    PhotosSheet lay(
            Actor actor,
            long treeId,
            @Nullable Long before,
            @Nullable Long after,
            int page,
            Typed upload) {
        var all = photos.ofTree(actor, treeId);
        var removed = photos.removed(actor, treeId);
        var removers =
                removed.stream()
                        .map(Photo::removedById)
                        .filter(Objects::nonNull)
                        .collect(Collectors.toSet());
        return new PhotosSheet(
                trees.get(actor, treeId),
                photos.list(actor, treeId, new PageRequest(page, ON_A_PAGE)),
                all,
                Comparison.of(all, before, after),
                removed,
                people.names(removers),
                lists(actor, treeId),
                upload);
    }

    PhotoSheet layOne(Actor actor, long photoId, Typed typed) {
        var photo = photos.get(actor, photoId);
        var fresh =
                Typed.fresh("change")
                        .with("takenOn", photo.takenOn())
                        .with("view", photo.view())
                        .withIfKnown("caption", photo.caption())
                        .withIfKnown("woundId", photo.woundId())
                        .withIfKnown("stepId", photo.stepId());
        var involved =
                Stream.of(photo.byId(), photo.removedById())
                        .filter(Objects::nonNull)
                        .collect(Collectors.toSet());
        return new PhotoSheet(
                trees.get(actor, photo.treeId()),
                photo,
                people.names(involved),
                photos.mayChange(actor, photo),
                lists(actor, photo.treeId()),
                typed.orFresh("change", fresh));
    }

    private PhotoLists lists(Actor actor, long treeId) {
        var techniques = content.inForce().techniques();
        List<TreeSheet.StepLine> steps =
                standings.steps(actor, treeId, STEPS).items().stream()
                        .map(
                                step ->
                                        new TreeSheet.StepLine(
                                                step,
                                                TreeSheet.title(techniques, step.technique())))
                        .toList();
        return new PhotoLists(trees.wounds(actor, treeId), steps);
    }
}
