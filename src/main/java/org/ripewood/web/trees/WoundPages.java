package org.ripewood.web.trees;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.ripewood.condition.Closing;
import org.ripewood.condition.TreeStates;
import org.ripewood.photos.Photo;
import org.ripewood.photos.Photos;
import org.ripewood.platform.CurrentUser;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreeDays;
import org.ripewood.trees.Trees;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.PictureFormat;

/** A wound's page: how it has closed, and when it will have. */
@Path("/trees/{id: \\d{1,18}}/wounds/{woundId: \\d{1,18}}")
@Authenticated
class WoundPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance wound(
                Tree tree, Closing closing, PictureFormat picture, List<Photo> photos);
    }

    private final CurrentUser user;
    private final Trees trees;
    private final TreeStates treeStates;
    private final Photos photos;
    private final TreeDays treeDays;

    WoundPages(
            CurrentUser user,
            Trees trees,
            TreeStates treeStates,
            Photos photos,
            TreeDays treeDays) {
        this.user = user;
        this.trees = trees;
        this.treeStates = treeStates;
        this.photos = photos;
        this.treeDays = treeDays;
    }

    @GET
    public Response wound(long id, long woundId) {
        var actor = user.actor();
        var closing = treeStates.closing(actor, id, woundId, treeDays.at(id));
        return Answer.page(
                Templates.wound(
                        trees.get(actor, id),
                        closing,
                        PictureFormat.of(sheet -> TreeDrawings.closing(closing, sheet)),
                        photos.ofWound(actor, id, woundId)));
    }
}
