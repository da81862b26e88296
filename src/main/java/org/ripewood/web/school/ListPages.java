package org.ripewood.web.school;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.jspecify.annotations.Nullable;
import org.ripewood.lists.Choice;
import org.ripewood.lists.ListKind;
import org.ripewood.lists.ListOutcome;
import org.ripewood.lists.Lists;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.guards.RateLimited;
import org.ripewood.platform.http.FileParts;
import org.ripewood.platform.http.SentText;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.platform.problems.Refused;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;

/** Lists of people, trees and readings: looked through first, then entered. */
@Path("/lists")
@RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
class ListPages {

    /** What is asked for with a list. */
    record Wanted(@NotNull ListKind kind, @NotNull Choice choice) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance lists(
                List<ListKind> kinds, FormState typed, @Nullable ListOutcome outcome);
    }

    private static final String FORM = "list";

    private final CurrentUser user;
    private final Lists lists;
    private final Inputs inputs;

    ListPages(CurrentUser user, Lists lists, Inputs inputs) {
        this.user = user;
        this.lists = lists;
        this.inputs = inputs;
    }

    @GET
    public Response page() {
        return Answer.page(page(FormState.fresh(FORM).with("choice", Choice.DRY_RUN), null));
    }

    /** What was sent stands in the form again, so that a dry run is followed by the real one. */
    @POST
    @RateLimited
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response take(
            @RestForm("file") @Nullable FileUpload file,
            @RestForm("text") @Nullable String text,
            @RestForm("kind") @Nullable String kind,
            @RestForm("choice") @Nullable String choice) {
        var sent = new MultivaluedHashMap<String, String>();
        sent.putSingle("text", orEmpty(text));
        sent.putSingle("kind", orEmpty(kind));
        sent.putSingle("choice", orEmpty(choice));
        try {
            FileParts.requireAtMostOne("file");
            if (file != null && file.size() > 0) {
                sent.putSingle("text", read(file));
            }
            var wanted = inputs.read(sent, Wanted.class);
            var taken =
                    lists.take(
                            user.actor(),
                            wanted.kind(),
                            orEmpty(sent.getFirst("text")),
                            wanted.choice());
            return Answer.page(page(new FormState(FORM, sent, null), taken));
        } catch (Refused refused) {
            return Answer.page(
                    refused.problem().status(),
                    page(FormState.refused(FORM, sent, refused.problem()), null));
        }
    }

    private TemplateInstance page(FormState typed, @Nullable ListOutcome outcome) {
        var kinds =
                user.actor().is(Role.REGISTRAR)
                        ? List.of(ListKind.values())
                        : Arrays.stream(ListKind.values())
                                .filter(kind -> kind != ListKind.PEOPLE)
                                .toList();
        return Templates.lists(kinds, typed, outcome);
    }

    private static String orEmpty(@Nullable String text) {
        return text == null ? "" : text;
    }

    private static String read(FileUpload file) {
        try {
            return SentText.utf8("text", Files.readAllBytes(file.uploadedFile()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
