package org.ripewood.web.judgements;

import static java.util.Objects.requireNonNullElse;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.assess.Agreements;
import org.ripewood.course.CourseContent;
import org.ripewood.people.People;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.RecordDays;
import org.ripewood.web.kit.Answer;

/** How far the school's judges agree, so that they can talk about their eye. */
@Path("/agreement")
@RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
class AgreementPages {

    private static final int YEARS_UNLESS_ASKED = 2;

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance agreement(AgreementPageModel sheet);
    }

    private final CurrentUser user;
    private final Agreements agreements;
    private final CourseContent content;
    private final People people;
    private final Today today;

    AgreementPages(
            CurrentUser user,
            Agreements agreements,
            CourseContent content,
            People people,
            Today today) {
        this.user = user;
        this.agreements = agreements;
        this.content = content;
        this.people = people;
        this.today = today;
    }

    @GET
    public Response agreement(
            @QueryParam("from") @Nullable LocalDate from,
            @QueryParam("until") @Nullable LocalDate until,
            @QueryParam("unswayed") @DefaultValue("false") boolean unswayed) {
        var last = requireNonNullElse(RecordDays.asked("until", until), today.last());
        var first =
                requireNonNullElse(
                        RecordDays.asked("from", from), last.minusYears(YEARS_UNLESS_ASKED));
        var found = agreements.between(user.actor(), first, last, unswayed);
        var judges =
                found.stream()
                        .flatMap(one -> one.pairs().stream())
                        .flatMap(pair -> Stream.of(pair.oneId(), pair.otherId()))
                        .distinct()
                        .toList();
        return Answer.page(
                Templates.agreement(
                        AgreementPageModel.of(
                                first,
                                last,
                                unswayed,
                                found,
                                content.inForce().rubrics(),
                                people.names(judges))));
    }
}
