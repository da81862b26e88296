package org.ripewood.web.trees;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.aftercare.Aftercare;
import org.ripewood.boards.ChecklistMaker;
import org.ripewood.boards.PortraitMaker;
import org.ripewood.condition.Closing;
import org.ripewood.course.Stage;
import org.ripewood.photos.Photos;
import org.ripewood.pictures.Picture;
import org.ripewood.pictures.Sheet;
import org.ripewood.pictures.StageBandPicture;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.standing.StageView;
import org.ripewood.standing.Standings;
import org.ripewood.standing.TreeLook;
import org.ripewood.trees.Departure;
import org.ripewood.trees.Departures;
import org.ripewood.trees.EarlierWords;
import org.ripewood.trees.ReachedTree;
import org.ripewood.trees.Tree;
import org.ripewood.trees.Trees;
import org.ripewood.web.kit.PictureFormat;

/** Lays out what the portrait of a tree shows. */
@ApplicationScoped
class TreePageAssembler {

    private final Standings standings;
    private final Trees trees;
    private final Departures departures;
    private final Aftercare aftercare;
    private final Photos photos;

    TreePageAssembler(
            Standings standings,
            Trees trees,
            Departures departures,
            Aftercare aftercare,
            Photos photos) {
        this.standings = standings;
        this.trees = trees;
        this.departures = departures;
        this.aftercare = aftercare;
        this.photos = photos;
    }

    TreePageModel lay(Actor actor, long treeId) {
        var look = standings.lookToday(actor, treeId);
        var tree = look.tree();
        var content = look.day().content();
        var stage = look.day().tellStage();
        var care = aftercare.of(look.day().state());
        var front = photos.front(look.reached()).orElse(null);
        return new TreePageModel(
                tree,
                content.kindOf(tree.species()),
                look.keeper().name(),
                look.day().state().site().name(),
                actor.is(Role.INSTRUCTOR),
                !actor.is(Role.INSTRUCTOR) && tree.keeperId() == actor.personId(),
                front,
                front == null ? trunk(look) : null,
                stage,
                content.stages().size(),
                band(content.stages(), stage),
                PortraitMaker.of(look.day()),
                StepLines.of(look, step -> step.state().isOpen()),
                care,
                ChecklistMaker.care(look.day(), look.steps()).stream()
                        .filter(one -> !care.tellsOf(tree.id(), one.afterTitle()))
                        .toList(),
                look.careNow().size(),
                departures(actor, tree),
                earlier(look.reached()));
    }

    private static PictureFormat band(List<Stage> stages, StageView stage) {
        var band =
                new StageBandPicture.Band(
                        stages.stream().map(Stage::title).toList(), stage.order(), stage.howFar());
        return PictureFormat.of(sheet -> StageBandPicture.of(band, sheet));
    }

    /** Drawn for a narrow column, beside which the words stand. */
    private static @Nullable Picture trunk(TreeLook look) {
        var growth = look.growth();
        var wounds = growth.closings().stream().map(Closing::wound).toList();
        var branches = look.branches();
        var bare =
                growth.trunk().profile().readings().isEmpty()
                        && wounds.isEmpty()
                        && branches.isEmpty();
        return bare
                ? null
                : TreeDrawings.front(look.tree(), growth.trunk(), wounds, branches, Sheet.PHONE);
    }

    /** A tree that was never changed has never left either. */
    private List<Departure> departures(Actor actor, Tree tree) {
        return tree.version() == 0 ? List.of() : departures.of(actor, tree.id());
    }

    private List<TreePageModel.EarlierLine> earlier(ReachedTree reached) {
        if (reached.earlier().isEmpty()) {
            return List.of();
        }
        var names = trees.names(reached, idsOf(reached.earlier()));
        return reached.earlier().stream()
                .map(
                        said ->
                                new TreePageModel.EarlierLine(
                                        said, names.getOrDefault(said.byId(), "")))
                .toList();
    }

    private static Set<Long> idsOf(List<EarlierWords> earlier) {
        return earlier.stream().map(EarlierWords::byId).collect(Collectors.toSet());
    }
}
