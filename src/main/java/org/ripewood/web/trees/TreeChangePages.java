package org.ripewood.web.trees;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.sites.SiteLine;
import org.ripewood.trees.NewTree;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreeSites;
import org.ripewood.trees.Trees;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.EditConflicts;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.Label;

/** What a tree is called, where it stands, and what is said of it as a whole. */
@Path("/trees/{id: \\d{1,18}}/change")
@Authenticated
class TreeChangePages {

    /** A tree's own fields, with the version they were read in. */
    record Change(
            @NotNull Long version,
            @NotBlank @Size(max = 120) String label,
            @NotNull Long siteId,
            @Nullable @Size(max = 500) String origin,
            @Nullable @Size(max = 2000) String note) {

        /** Species, keeper and first day stay. */
        NewTree of(Tree tree) {
            return new NewTree(
                    label, tree.species(), tree.keeperId(), siteId, tree.cameOn(), origin, note);
        }
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance change(Tree tree, List<SiteLine> sites, FormState typed);
    }

    private static final String FORM = "tree";

    private final CurrentUser user;
    private final Trees trees;
    private final TreeSites treeSites;
    private final EditConflicts clashes;
    private final Inputs inputs;

    TreeChangePages(
            CurrentUser user,
            Trees trees,
            TreeSites treeSites,
            EditConflicts clashes,
            Inputs inputs) {
        this.user = user;
        this.trees = trees;
        this.treeSites = treeSites;
        this.clashes = clashes;
        this.inputs = inputs;
    }

    @GET
    public Response page(long id) {
        return Answer.page(page(id, FormState.fresh("none")));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response change(long id, MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    var actor = user.actor();
                    var change = inputs.read(form, Change.class);
                    trees.change(actor, id, change.version(), change.of(trees.get(actor, id)));
                    return "/trees/" + id;
                },
                problem -> page(id, FormState.refused(FORM, form, problem)));
    }

    private TemplateInstance page(long id, FormState typed) {
        var actor = user.actor();
        var tree = trees.get(actor, id);
        var sites = treeSites.list(actor).stream().filter(site -> site.place() != null).toList();
        var now =
                FormState.fresh(FORM)
                        .with("version", tree.version())
                        .with("label", tree.label())
                        .with("siteId", tree.siteId())
                        .withIfKnown("origin", tree.origin())
                        .withIfKnown("note", tree.note());
        var about =
                new EditConflicts.About(
                        "tree", id, labels(sites), ids -> trees.names(actor, id, ids));
        return Templates.change(tree, sites, clashes.mend(typed.orFresh(FORM, now), now, about));
    }

    private static List<Label> labels(List<SiteLine> sites) {
        return List.of(
                Label.of("label", "What it is called"),
                new Label("siteId", "Site", id -> site(sites, id)),
                Label.of("origin", "Where it came from"),
                Label.of("note", "Note"));
    }

    private static String site(List<SiteLine> sites, String id) {
        return sites.stream()
                .filter(site -> id.equals(String.valueOf(site.id())))
                .map(SiteLine::name)
                .findFirst()
                .orElse(id);
    }
}
