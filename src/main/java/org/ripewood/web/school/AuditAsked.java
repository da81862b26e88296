package org.ripewood.web.school;

import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ripewood.audit.AuditQuestion;
import org.ripewood.people.People;
import org.ripewood.people.Person;
import org.ripewood.platform.Actor;
import org.ripewood.platform.problems.Refused;

/**
 * Which entries a registrar asks for, as the form sends it.
 *
 * @param login of whoever did it
 */
record AuditAsked(
        @Size(max = 60) @Nullable String login,
        @Nullable LocalDate from,
        @Nullable LocalDate to,
        @Size(max = 60) @Nullable String thing,
        @Nullable Integer page) {

    static final AuditAsked EVERYTHING = new AuditAsked(null, null, null, null, null);

    public AuditQuestion question(Actor actor, People people) {
        return new AuditQuestion(personId(actor, people), from, to, thing);
    }

    private @Nullable Long personId(Actor actor, People people) {
        return login == null
                ? null
                : people.findByLogin(actor, login)
                        .map(Person::id)
                        .orElseThrow(
                                () ->
                                        Refused.invalid(
                                                "login",
                                                "expected a name somebody signs in with, found \"%s\""
                                                        .formatted(login)));
    }
}
