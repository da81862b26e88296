package org.ripewood.platform;

import io.agroal.api.AgroalDataSource;
import jakarta.annotation.security.PermitAll;
import jakarta.annotation.security.RolesAllowed;
import jakarta.persistence.OptimisticLockException;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotBlank;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.platform.problems.Refused;

/** A door for tests only, behind which everything goes wrong that can. */
@Path("/api/v1/rehearsal")
@Produces(MediaType.APPLICATION_JSON)
@PermitAll
class ApiRehearsal {

    enum Shape {
        ROUND,
        OVAL
    }

    record Pot(
            @NotBlank String name,
            LocalDate since,
            @DecimalMin("1") Double widthMm,
            int feet,
            boolean glazed,
            Shape shape,
            List<Double> readings,
            Map<String, String> notes) {}

    private final Inputs inputs;
    private final CurrentUser user;
    private final AgroalDataSource database;

    ApiRehearsal(Inputs inputs, CurrentUser user, AgroalDataSource database) {
        this.inputs = inputs;
        this.user = user;
        this.database = database;
    }

    @POST
    @Path("pots")
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(hidden = true)
    public Pot pot(Pot pot) {
        return inputs.check(pot);
    }

    @GET
    @Path("trees/{id}")
    @Operation(hidden = true)
    public Map<String, Long> tree(@PathParam("id") long id) {
        return Map.of("id", id);
    }

    @GET
    @Path("days")
    @Operation(hidden = true)
    public Map<String, String> day(
            @QueryParam("on") LocalDate on,
            @QueryParam("page") Integer page,
            @QueryParam("shape") Shape shape) {
        return Map.of("on", String.valueOf(on), "page", page + "", "shape", shape + "");
    }

    @GET
    @Path("broken")
    @Operation(hidden = true)
    public String broken() {
        throw new IllegalStateException("words nobody outside may read");
    }

    @GET
    @Path("stale")
    @Operation(hidden = true)
    public String stale() {
        throw new IllegalStateException("at commit", new OptimisticLockException("row"));
    }

    @GET
    @Path("twice")
    @Operation(hidden = true)
    public String twice() throws SQLException {
        // a role of nobody
        return write("insert into person_role (person_id, role) values (-404, 'STUDENT')");
    }

    @GET
    @Path("too-long")
    @Operation(hidden = true)
    public String tooLong() throws SQLException {
        return write(
                "insert into person (id, version, name, login, password_hash, active) values (-404,"
                        + " 0, 'x', repeat('x', 61), 'x', true)");
    }

    private String write(String sql) throws SQLException {
        try (var connection = database.getConnection();
                var statement = connection.createStatement()) {
            statement.execute(sql);
        }
        return "";
    }

    @GET
    @Path("hidden")
    @Operation(hidden = true)
    public String hidden() {
        throw Refused.notFound("tree", 12);
    }

    @GET
    @Path("office")
    @RolesAllowed(Role.REGISTRAR_NAME)
    @Operation(hidden = true)
    public Map<String, Long> office() {
        return Map.of("personId", user.actor().personId());
    }

    @GET
    @Path("who")
    @Operation(hidden = true)
    public Map<String, Long> who() {
        return Map.of("personId", user.actor().personId());
    }
}
