package org.ripewood.web.trees;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Species;
import org.ripewood.platform.CsvText;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Paged;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.trees.TreeLine;
import org.ripewood.trees.TreeLists;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.SpeciesNames;

/** All trees at the school within reach. */
@Path("/trees")
@Authenticated
class TreeListPages {

    /**
     * @param names common names of species by code
     * @param species to choose from: those of which there are trees, by name
     * @param keepers to choose from, by id
     */
    record TreeListSheet(
            Paged<TreeLine> trees,
            Map<String, String> names,
            List<Species> species,
            Map<Long, String> keepers,
            FormState typed) {

        private static final List<String> ALL = List.of("species", "keeper", "order");

        /** The rest of the question for another page of the same list. */
        public String query() {
            return typed.query(ALL);
        }

        /** Where a column's heading leads: the same trees in another order. */
        public String sorted(String order) {
            return "/trees?" + typed.with("order", order).query(ALL).substring(1);
        }

        public String file() {
            var query = query();
            return "/trees/list.csv" + (query.isEmpty() ? "" : "?" + query.substring(1));
        }

        public boolean by(String order) {
            var asked = typed.value("order");
            return asked.isEmpty() ? order.equals("NAME") : asked.equals(order);
        }

        public boolean narrows() {
            return !typed.value("species").isEmpty() || !typed.value("keeper").isEmpty();
        }
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance list(TreeListSheet sheet);
    }

    private static final List<String> HEADINGS =
            List.of("Tree", "Species", "Latin name", "Keeper", "Site", "Arrived on", "Number");

    private final CurrentUser user;
    private final TreeLists lists;
    private final CourseContent content;
    private final Inputs inputs;
    private final Today today;

    TreeListPages(
            CurrentUser user, TreeLists lists, CourseContent content, Inputs inputs, Today today) {
        this.user = user;
        this.lists = lists;
        this.content = content;
        this.inputs = inputs;
        this.today = today;
    }

    @GET
    public Response list(@Context UriInfo uri) {
        var asked = uri.getQueryParameters();
        return Answer.orAgain(
                () -> page(inputs.read(asked, TreeListFilter.class), FormState.of("trees", asked)),
                problem -> page(TreeListFilter.ALL, FormState.refused("trees", asked, problem)));
    }

    @GET
    @Path("list.csv")
    public Response file(@Context UriInfo uri) {
        var inForce = content.inForce();
        var rows =
                lists.all(user.actor(), read(uri.getQueryParameters()).asked()).stream()
                        .map(tree -> cells(tree, inForce.kindOf(tree.species())))
                        .toList();
        return Response.ok(CsvText.of(HEADINGS, rows))
                .type(CsvText.MEDIA_TYPE)
                .header("Cache-Control", "no-store")
                .header(
                        "Content-Disposition",
                        CsvText.attachment("trees-%s.csv".formatted(today.date())))
                .build();
    }

    private TreeListFilter read(MultivaluedMap<String, String> asked) {
        return inputs.read(asked, TreeListFilter.class);
    }

    private static List<@Nullable Object> cells(TreeLine tree, Species species) {
        return Arrays.asList(
                tree.label(),
                species.common(),
                species.latin(),
                tree.keeper(),
                tree.site(),
                tree.cameOn(),
                tree.id());
    }

    private TemplateInstance page(TreeListFilter filter, FormState typed) {
        var actor = user.actor();
        var inForce = content.inForce();
        var species =
                lists.species(actor).stream()
                        .map(inForce::kindOf)
                        .sorted(Comparator.comparing(Species::common))
                        .toList();
        return Templates.list(
                new TreeListSheet(
                        lists.page(actor, filter.asked(), filter.rows()),
                        SpeciesNames.of(inForce),
                        species,
                        lists.keepers(actor),
                        typed));
    }
}
