package org.ripewood.web.photos;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.CourseContent;
import org.ripewood.photos.Photo;
import org.ripewood.photos.Photos;
import org.ripewood.photos.Viewpoint;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Paged;
import org.ripewood.records.Wounds;
import org.ripewood.steps.Steps;
import org.ripewood.trees.ReachedTree;
import org.ripewood.trees.Trees;
import org.ripewood.web.kit.EditConflicts;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.Label;
import org.ripewood.web.kit.StepLine;

/** Lays out what the pages of photos show. */
@ApplicationScoped
class PhotoPageAssembler {

    private static final int ON_A_PAGE = 24;

    private final Photos photos;
    private final Trees trees;
    private final Wounds wounds;
    private final Steps stepsOfSchool;
    private final CourseContent content;
    private final EditConflicts clashes;

    PhotoPageAssembler(
            Photos photos,
            Trees trees,
            Wounds wounds,
            Steps stepsOfSchool,
            CourseContent content,
            EditConflicts clashes) {
        this.photos = photos;
        this.trees = trees;
        this.wounds = wounds;
        this.stepsOfSchool = stepsOfSchool;
        this.content = content;
        this.clashes = clashes;
    }

    PhotosPageModel lay(
            Actor actor,
            long treeId,
            @Nullable Long before,
            @Nullable Long after,
            int page,
            FormState upload) {
        var reached = trees.reached(actor, treeId);
        var all = photos.of(reached);
        var removed = photos.removed(reached);
        var removers =
                removed.stream()
                        .map(Photo::removedById)
                        .filter(Objects::nonNull)
                        .collect(Collectors.toSet());
        return new PhotosPageModel(
                reached.tree(),
                page(all, new PageRequest(page, ON_A_PAGE)),
                all,
                Comparison.of(all, before, after),
                removed,
                trees.names(reached, removers),
                lists(reached),
                upload);
    }

    private static Paged<Photo> page(List<Photo> all, PageRequest page) {
        var shown = all.stream().skip((long) page.page() * page.size()).limit(page.size()).toList();
        return Paged.of(shown, page, all.size());
    }

    PhotoPageModel layOne(Actor actor, long photoId, FormState typed) {
        var photo = photos.get(actor, photoId);
        var fresh =
                FormState.fresh("change")
                        .with("version", photo.version())
                        .with("takenOn", photo.takenOn())
                        .with("view", photo.view())
                        .withIfKnown("caption", photo.caption())
                        .withIfKnown("woundId", photo.woundId())
                        .withIfKnown("stepId", photo.stepId());
        var involved =
                Stream.of(photo.byId(), photo.removedById())
                        .filter(Objects::nonNull)
                        .collect(Collectors.toSet());
        var reached = trees.reached(actor, photo.treeId());
        var lists = lists(reached);
        var shown = clashes.mend(typed, fresh, about(reached, photo, lists));
        shown =
                clashes.mend(
                        shown,
                        new FormState("remove", fresh.values(), null),
                        about(reached, photo, lists));
        return new PhotoPageModel(
                reached.tree(),
                photo,
                trees.names(reached, involved),
                photos.mayChange(actor, photo),
                lists,
                shown.orFresh("change", fresh),
                shown);
    }

    private EditConflicts.About about(ReachedTree reached, Photo photo, PhotoLists lists) {
        var labels =
                List.of(
                        Label.of("takenOn", "Taken on"),
                        new Label("view", "View", PhotoPageAssembler::view),
                        Label.of("caption", "Caption"),
                        new Label("woundId", "Wound", id -> wound(lists, id)),
                        new Label("stepId", "Step", id -> step(lists, id)));
        return new EditConflicts.About(
                "photo", photo.id(), labels, ids -> trees.names(reached, ids));
    }

    private static String view(String typed) {
        return Stream.of(Viewpoint.values())
                .filter(view -> view.name().equalsIgnoreCase(typed))
                .map(Viewpoint::title)
                .findFirst()
                .orElse(typed);
    }

    private static String wound(PhotoLists lists, String id) {
        return lists.wounds().stream()
                .filter(wound -> id.equals(String.valueOf(wound.id())))
                .map(wound -> wound.place())
                .findFirst()
                .orElse(id);
    }

    private static String step(PhotoLists lists, String id) {
        return lists.steps().stream()
                .filter(line -> id.equals(String.valueOf(line.step().id())))
                .map(line -> line.title())
                .findFirst()
                .orElse(id);
    }

    private PhotoLists lists(ReachedTree reached) {
        var techniques = content.inForce().techniques();
        List<StepLine> steps =
                stepsOfSchool.briefs(reached).stream()
                        .map(
                                step ->
                                        new StepLine(
                                                step, StepLine.title(techniques, step.technique())))
                        .toList();
        return new PhotoLists(wounds.of(reached), steps);
    }
}
