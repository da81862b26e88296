package org.ripewood.web.stock;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import org.ripewood.materials.Materials;
import org.ripewood.materials.NewMovement;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.platform.problems.Refused;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.Versioned;

/** The stock: what there is, shelf by shelf, and what became of each thing. */
@Path("/stock")
@RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
class StockPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance shelf(StockPageModel sheet);

        static native TemplateInstance item(StockItemPageModel sheet);
    }

    private final CurrentUser user;
    private final Materials materials;
    private final StockPageAssembler desk;
    private final Inputs inputs;

    StockPages(CurrentUser user, Materials materials, StockPageAssembler desk, Inputs inputs) {
        this.user = user;
        this.materials = materials;
        this.desk = desk;
        this.inputs = inputs;
    }

    @GET
    public Response stock(
            @QueryParam("shelf") @DefaultValue("containers") String word,
            @QueryParam("page") @DefaultValue("0") int page) {
        return Answer.page(shelf(require(word), page, FormState.fresh("stock")));
    }

    @POST
    @Path("{kind: [a-z]+}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response enter(String kind, MultivaluedMap<String, String> form) {
        var shelf = require(kind);
        return Answer.to(
                () -> {
                    var stock = inputs.read(form, shelf.form());
                    var counted = inputs.read(form, Counted.class).amount();
                    return "/stock/" + materials.enter(user.actor(), stock, counted).id();
                },
                problem -> shelf(shelf, 0, FormState.refused("stock", form, problem)));
    }

    @GET
    @Path("{id: \\d{1,18}}")
    public Response item(long id, @QueryParam("page") @DefaultValue("0") int page) {
        return Answer.page(item(id, page, FormState.fresh("none")));
    }

    @POST
    @Path("{id: \\d{1,18}}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response change(long id, MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    var actor = user.actor();
                    var shelf = StockCategory.of(materials.get(actor, id).kind());
                    var version = inputs.read(form, Versioned.class).version();
                    materials.change(actor, id, version, inputs.read(form, shelf.form()));
                    return "/stock/" + id;
                },
                problem -> item(id, 0, FormState.refused("stock", form, problem)));
    }

    @POST
    @Path("{id: \\d{1,18}}/movements")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response move(long id, MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    materials.move(user.actor(), id, inputs.read(form, NewMovement.class));
                    return "/stock/" + id + "#movements";
                },
                problem -> item(id, 0, FormState.refused("move", form, problem)));
    }

    private TemplateInstance shelf(StockCategory shelf, int page, FormState typed) {
        return Templates.shelf(desk.shelf(user.actor(), shelf, page, typed));
    }

    private TemplateInstance item(long id, int page, FormState typed) {
        return Templates.item(desk.item(user.actor(), id, page, typed));
    }

    private static StockCategory require(String word) {
        return StockCategory.find(word).orElseThrow(() -> Refused.notFound("shelf", word));
    }
}
