package org.ripewood.web.trees;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Objects;
import org.ripewood.course.CourseContent;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.records.Branches;
import org.ripewood.records.Containers;
import org.ripewood.records.NewBranch;
import org.ripewood.records.NewContainer;
import org.ripewood.records.NewWound;
import org.ripewood.records.Wounds;
import org.ripewood.standing.EarlierWorks;
import org.ripewood.standing.NewEarlierWork;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.OnceForms;
import org.ripewood.web.kit.Said;

/** A tree's record: what is known of it, and the forms for what is entered. */
@Path("/trees/{id: \\d{1,18}}")
@Authenticated
class TreeRecordPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance record(TreeRecordModel sheet);
    }

    private final CurrentUser user;
    private final TreeRecordAssembler desk;
    private final Wounds wounds;
    private final Branches branches;
    private final Containers containers;
    private final Inputs inputs;
    private final OnceForms onceForms;
    private final EarlierWorks earlierWorks;
    private final CourseContent content;
    private final Said said;

    TreeRecordPages(
            CurrentUser user,
            TreeRecordAssembler desk,
            Wounds wounds,
            Branches branches,
            Containers containers,
            Inputs inputs,
            OnceForms onceForms,
            EarlierWorks earlierWorks,
            CourseContent content,
            Said said) {
        this.user = user;
        this.desk = desk;
        this.wounds = wounds;
        this.branches = branches;
        this.containers = containers;
        this.inputs = inputs;
        this.onceForms = onceForms;
        this.earlierWorks = earlierWorks;
        this.content = content;
        this.said = said;
    }

    @GET
    @Path("record")
    public Response record(long id) {
        return Answer.page(page(id, FormState.fresh("none")));
    }

    @POST
    @Path("wounds")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response addWound(long id, MultivaluedMap<String, String> form) {
        return onceForms.to(
                form,
                () -> {
                    var wound = inputs.read(form, NewWound.class);
                    said.ofTree(
                            id,
                            () -> {
                                wounds.add(user.actor(), id, wound);
                                return RecordTeller.wound(wound, typed(form, "firstWidthMm"));
                            });
                    return "/trees/" + id + "/record#wounds";
                },
                problem -> page(id, FormState.refused("wound", form, problem)));
    }

    @POST
    @Path("branches")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response addBranch(long id, MultivaluedMap<String, String> form) {
        return onceForms.to(
                form,
                () -> {
                    var branch = inputs.read(form, NewBranch.class);
                    said.ofTree(
                            id,
                            () -> {
                                branches.add(user.actor(), id, branch);
                                return RecordTeller.branch(branch);
                            });
                    return "/trees/" + id + "/record#branches";
                },
                problem -> page(id, FormState.refused("branch", form, problem)));
    }

    @POST
    @Path("containers")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response moveTo(long id, MultivaluedMap<String, String> form) {
        return onceForms.to(
                form,
                () -> {
                    var container = inputs.read(form, NewContainer.class);
                    said.ofTree(
                            id,
                            () -> {
                                containers.moveTo(user.actor(), id, container);
                                return RecordTeller.container(container, typed(form, "litres"));
                            });
                    return "/trees/" + id + "/record#containers";
                },
                problem -> page(id, FormState.refused("container", form, problem)));
    }

    @POST
    @Path("works")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response enterWork(long id, MultivaluedMap<String, String> form) {
        return onceForms.to(
                form,
                () -> {
                    var work = inputs.read(form, NewEarlierWork.class);
                    said.ofTree(
                            id,
                            () -> {
                                earlierWorks.enter(user.actor(), id, work);
                                return new RecordTeller(content.inForce()).work(work);
                            });
                    return "/trees/" + id + "/record#works";
                },
                problem -> page(id, FormState.refused("work", form, problem)));
    }

    private static String typed(MultivaluedMap<String, String> form, String field) {
        return Objects.requireNonNullElse(form.getFirst(field), "");
    }

    private TemplateInstance page(long id, FormState typed) {
        return Templates.record(desk.lay(user.actor(), id, typed));
    }
}
