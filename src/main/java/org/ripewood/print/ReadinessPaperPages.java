package org.ripewood.print;

import static java.util.Comparator.comparingInt;
import static java.util.stream.Collectors.toMap;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.people.Course;
import org.ripewood.people.Courses;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.guards.RateLimited;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.readiness.ReadinessMaker;
import org.ripewood.readiness.ReadinessQuery;
import org.ripewood.readiness.ReadinessSheet;
import org.ripewood.trees.TreeDays;

/** A course's readiness sheet on paper, on its side; the same filter as on its page. */
@Path("/courses/{id: \\d{1,18}}")
@RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
class ReadinessPaperPages {

    /** As many rows of letters that can be read at arm's length stand on one sheet. */
    private static final int ROWS_ON_A_SHEET = 16;

    /**
     * What stands on the paper.
     *
     * @param sheets rows, sheet by sheet
     * @param query the filter, as it follows an address
     */
    record ReadinessPaper(
            Course course,
            ReadinessSheet readiness,
            List<List<ReadinessSheet.Row>> sheets,
            String query) {

        static ReadinessPaper of(Course course, ReadinessSheet readiness, String query) {
            var rows = readiness.rows().items();
            var sheets = new ArrayList<List<ReadinessSheet.Row>>();
            for (int from = 0; from < rows.size(); from += ROWS_ON_A_SHEET) {
                sheets.add(rows.subList(from, Math.min(rows.size(), from + ROWS_ON_A_SHEET)));
            }
            return new ReadinessPaper(course, readiness, sheets, query);
        }

        /** Stages the trees on it are in, in order, for the legend. */
        public List<ReadinessSheet.Stage> stages() {
            return readiness.rows().items().stream()
                    .map(ReadinessSheet.Row::stage)
                    .collect(toMap(ReadinessSheet.Stage::order, one -> one, (one, other) -> one))
                    .values()
                    .stream()
                    .sorted(comparingInt(ReadinessSheet.Stage::order))
                    .toList();
        }
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance readiness(ReadinessPaper paper);
    }

    private final CurrentUser user;
    private final Courses courses;
    private final ReadinessMaker maker;
    private final Inputs inputs;
    private final TreeDays treeDays;

    ReadinessPaperPages(
            CurrentUser user,
            Courses courses,
            ReadinessMaker maker,
            Inputs inputs,
            TreeDays treeDays) {
        this.user = user;
        this.courses = courses;
        this.maker = maker;
        this.inputs = inputs;
        this.treeDays = treeDays;
    }

    @GET
    @Path("readiness")
    @Produces(MediaType.TEXT_HTML)
    public String readiness(long id, @Context UriInfo uri) {
        var actor = user.actor();
        var asked = inputs.read(uri.getQueryParameters(), ReadinessQuery.class);
        var sheet = maker.whole(actor, id, treeDays.ofCourse(id), asked.asked());
        return Templates.readiness(
                        ReadinessPaper.of(courses.get(actor, id), sheet, asked.inAddress()))
                .render();
    }

    @GET
    @Path("readiness.pdf")
    @RateLimited
    @Produces(PdfAnswer.TYPE)
    public Response pdf(long id, @QueryParam("size") @Nullable String size, @Context UriInfo uri) {
        return PdfAnswer.of(readiness(id, uri), size);
    }
}
