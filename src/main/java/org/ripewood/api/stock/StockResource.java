package org.ripewood.api.stock;

import static org.ripewood.platform.Role.INSTRUCTOR_NAME;
import static org.ripewood.platform.Role.REGISTRAR_NAME;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponseSchema;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestResponse;
import org.jspecify.annotations.Nullable;
import org.ripewood.api.kit.Answers;
import org.ripewood.api.kit.Asked;
import org.ripewood.materials.Materials;
import org.ripewood.materials.Movement;
import org.ripewood.materials.NewMovement;
import org.ripewood.materials.StockKind;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Paged;
import org.ripewood.platform.once.Idempotent;
import org.ripewood.platform.problems.Inputs;

/** What the school has, and what became of it. */
@Path("/api/v1")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
@Tag(name = "Stock")
class StockResource {

    private final Materials materials;
    private final CurrentUser user;
    private final Inputs inputs;

    StockResource(Materials materials, CurrentUser user, Inputs inputs) {
        this.materials = materials;
        this.user = user;
        this.inputs = inputs;
    }

    @GET
    @Path("stock")
    @Operation(
            summary = "What is in stock, by kind and name",
            description = "All kinds, or one of CONTAINER, SUBSTRATE, MIX, WIRE, TOOL, SUPPLY.")
    public Paged<StockAnswer> list(
            @QueryParam("kind") @Nullable String kind,
            @QueryParam("page") @Nullable String page,
            @QueryParam("size") @Nullable String size) {
        var asked = Asked.oneOf("kind", kind, StockKind.class);
        var found = materials.list(user.actor(), asked, Asked.page(page, size));
        return new Paged<>(
                found.items().stream().map(StockAnswer::of).toList(),
                found.page(),
                found.size(),
                found.total());
    }

    @GET
    @Path("stock/{id}")
    @Operation(
            summary = "An item, with its version as ETag",
            description =
                    "The version is that of what the item is; movements of its amount do not raise"
                            + " it.")
    public RestResponse<StockAnswer> get(@PathParam("id") long id) {
        var item = materials.get(user.actor(), id);
        return Answers.versioned(item.version(), StockAnswer.of(item));
    }

    @GET
    @Path("stock/{id}/movements")
    @Operation(summary = "What came, went and was counted of an item, latest first")
    public Paged<Movement> movements(
            @PathParam("id") long id,
            @QueryParam("page") @Nullable String page,
            @QueryParam("size") @Nullable String size) {
        return materials.movements(user.actor(), id, Asked.page(page, size));
    }

    @POST
    @Idempotent
    @Path("stock/{id}/movements")
    @Operation(
            summary = "Write down what came, went or was counted",
            description =
                    "The amount is in the item's unit and not negative; of a count it is all that"
                            + " was found. Answers the item as it is afterwards. Refused when there"
                            + " would be less than nothing on that day or a later one, and for days"
                            + " before the last count.")
    @APIResponseSchema(
            value = StockAnswer.class,
            responseCode = "201",
            responseDescription = "Written down")
    public RestResponse<StockAnswer> move(
            @PathParam("id") long id, @Nullable NewMovement movement) {
        var item = materials.move(user.actor(), id, inputs.check(movement));
        return Answers.created("stock/" + id + "/movements", StockAnswer.of(item));
    }
}
