package org.ripewood.api.stock;

import static org.ripewood.platform.Role.INSTRUCTOR_NAME;
import static org.ripewood.platform.Role.REGISTRAR_NAME;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponseSchema;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestResponse;
import org.jspecify.annotations.Nullable;
import org.ripewood.api.kit.Answers;
import org.ripewood.materials.Materials;
import org.ripewood.materials.NewStock;
import org.ripewood.materials.NewStockContainer;
import org.ripewood.materials.NewStockMix;
import org.ripewood.materials.NewStockSubstrate;
import org.ripewood.materials.NewStockSupply;
import org.ripewood.materials.NewStockTool;
import org.ripewood.materials.NewStockWire;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.http.Versions;
import org.ripewood.platform.problems.Inputs;

/** Enters and changes what is in stock: a pair of addresses for each kind, each with its fields. */
@Path("/api/v1")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
@Tag(name = "Stock")
class StockEntryResource {

    private final Materials materials;
    private final CurrentUser user;
    private final Inputs inputs;

    StockEntryResource(Materials materials, CurrentUser user, Inputs inputs) {
        this.materials = materials;
        this.user = user;
        this.inputs = inputs;
    }

    @POST
    @Path("stock/containers")
    @Operation(
            summary = "Enter a container",
            description =
                    "Sizes are inner ones in mm. A round container has its diameter as length and no width; without sizes at the bottom the walls stand upright.")
    @APIResponseSchema(
            value = StockAnswer.class,
            responseCode = "201",
            responseDescription = "Entered")
    public RestResponse<StockAnswer> enterContainer(@Nullable NewStockContainer container) {
        return enter(container);
    }

    @PUT
    @Path("stock/containers/{id}")
    @Operation(summary = "Change what a container is; its amount stays")
    public RestResponse<StockAnswer> changeContainer(
            @PathParam("id") long id,
            @HeaderParam("If-Match") @Nullable String ifMatch,
            @Nullable NewStockContainer container) {
        return change(id, ifMatch, container);
    }

    @POST
    @Path("stock/substrates")
    @Operation(
            summary = "Enter a substrate",
            description =
                    "Each property is one value or, with its field ending in To, a range; what nobody measured is left out.")
    @APIResponseSchema(
            value = StockAnswer.class,
            responseCode = "201",
            responseDescription = "Entered")
    public RestResponse<StockAnswer> enterSubstrate(@Nullable NewStockSubstrate substrate) {
        return enter(substrate);
    }

    @PUT
    @Path("stock/substrates/{id}")
    @Operation(summary = "Change what a substrate is; its amount stays")
    public RestResponse<StockAnswer> changeSubstrate(
            @PathParam("id") long id,
            @HeaderParam("If-Match") @Nullable String ifMatch,
            @Nullable NewStockSubstrate substrate) {
        return change(id, ifMatch, substrate);
    }

    @POST
    @Path("stock/mixes")
    @Operation(
            summary = "Enter a mix",
            description =
                    "Parts by volume, by the id of a substrate in stock. A mix is a recipe and has no amount.")
    @APIResponseSchema(
            value = StockAnswer.class,
            responseCode = "201",
            responseDescription = "Entered")
    public RestResponse<StockAnswer> enterMix(@Nullable NewStockMix mix) {
        return enter(mix);
    }

    @PUT
    @Path("stock/mixes/{id}")
    @Operation(summary = "Change what a mix is; its amount stays")
    public RestResponse<StockAnswer> changeMix(
            @PathParam("id") long id,
            @HeaderParam("If-Match") @Nullable String ifMatch,
            @Nullable NewStockMix mix) {
        return change(id, ifMatch, mix);
    }

    @POST
    @Path("stock/wires")
    @Operation(
            summary = "Enter wire",
            description = "Metal and thickness are its name; its amount is in grams.")
    @APIResponseSchema(
            value = StockAnswer.class,
            responseCode = "201",
            responseDescription = "Entered")
    public RestResponse<StockAnswer> enterWire(@Nullable NewStockWire wire) {
        return enter(wire);
    }

    @PUT
    @Path("stock/wires/{id}")
    @Operation(summary = "Change what wire is; its amount stays")
    public RestResponse<StockAnswer> changeWire(
            @PathParam("id") long id,
            @HeaderParam("If-Match") @Nullable String ifMatch,
            @Nullable NewStockWire wire) {
        return change(id, ifMatch, wire);
    }

    @POST
    @Path("stock/tools")
    @Operation(
            summary = "Enter a tool",
            description = "Named as the techniques of the course content call it.")
    @APIResponseSchema(
            value = StockAnswer.class,
            responseCode = "201",
            responseDescription = "Entered")
    public RestResponse<StockAnswer> enterTool(@Nullable NewStockTool tool) {
        return enter(tool);
    }

    @PUT
    @Path("stock/tools/{id}")
    @Operation(summary = "Change what a tool is; its amount stays")
    public RestResponse<StockAnswer> changeTool(
            @PathParam("id") long id,
            @HeaderParam("If-Match") @Nullable String ifMatch,
            @Nullable NewStockTool tool) {
        return change(id, ifMatch, tool);
    }

    @POST
    @Path("stock/supplies")
    @Operation(
            summary = "Enter another supply",
            description =
                    "Named as the techniques of the course content call it among their materials. The unit stays once an amount is written down in it.")
    @APIResponseSchema(
            value = StockAnswer.class,
            responseCode = "201",
            responseDescription = "Entered")
    public RestResponse<StockAnswer> enterSupply(@Nullable NewStockSupply supply) {
        return enter(supply);
    }

    @PUT
    @Path("stock/supplies/{id}")
    @Operation(summary = "Change what another supply is; its amount stays")
    public RestResponse<StockAnswer> changeSupply(
            @PathParam("id") long id,
            @HeaderParam("If-Match") @Nullable String ifMatch,
            @Nullable NewStockSupply supply) {
        return change(id, ifMatch, supply);
    }

    private RestResponse<StockAnswer> enter(@Nullable NewStock stock) {
        var entered = materials.enter(user.actor(), inputs.check(stock), null);
        return Answers.created("stock/" + entered.id(), entered.version(), StockAnswer.of(entered));
    }

    private RestResponse<StockAnswer> change(
            long id, @Nullable String ifMatch, @Nullable NewStock stock) {
        var version = Versions.required(ifMatch);
        var changed = materials.change(user.actor(), id, version, inputs.check(stock));
        return Answers.versioned(changed.version(), StockAnswer.of(changed));
    }
}
