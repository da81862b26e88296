package org.ripewood.accounts;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.passwords.Passwords;
import org.ripewood.platform.Role;
import org.ripewood.platform.records.TableDescription;
import org.ripewood.platform.records.TableDescriptions;

/** PersonRows and courses, as the record keeps them. */
@ApplicationScoped
class PeopleTables implements TableDescriptions {

    /** Whoever comes in a file has to be invited first; one for all, since each takes a while. */
    private static final class Unknown {
        static final String PASSWORD_HASH = Passwords.nobodyKnows();
    }

    @Override
    public List<TableDescription> tables() {
        return List.of(
                // The login is unique, and the registrar of an empty school is there already.
                TableDescription.named("person")
                        .numbered()
                        .orderedBy("login")
                        .personal("name")
                        .signIn("login", "active")
                        .version()
                        .leftOut("password_hash", "is a secret", row -> Unknown.PASSWORD_HASH)
                        .done(),
                // What somebody may do at one school, they may not at another.
                TableDescription.named("person_role")
                        .schoolOnly()
                        .orderedBy("person_id", "role")
                        .partOf("person_id", "person")
                        .oneOf("role", Role.values())
                        .done(),
                TableDescription.named("course")
                        .numbered()
                        .plain("name", "starts_on", "ends_on")
                        .version()
                        .done(),
                TableDescription.named("membership")
                        .numbered()
                        .partOf("course_id", "course")
                        .refers("person_id", "person")
                        .oneOf("role", List.of("STUDENT", "INSTRUCTOR"))
                        .plain("joined_on", "left_on")
                        .refers("ended_by_id", "person")
                        .leftOut("member_of", "follows from the rest", PeopleTables::memberOf)
                        .done(),
                // What is made up stays marked as such wherever its course is brought in.
                TableDescription.named("sample_course")
                        .orderedBy("course_id")
                        .partOf("course_id", "course")
                        .refers("site_id", "site")
                        .writtenBy("by_id")
                        .plain("added_at")
                        .done(),
                TableDescription.named("sample_person")
                        .orderedBy("person_id")
                        .partOf("person_id", "person")
                        .refers("course_id", "course")
                        .done(),
                TableDescription.secret(
                        "calendar_link",
                        "person_id",
                        "a link's hash is a secret, and a link made here leads nowhere else"),
                TableDescription.secret(
                        "sign_in_session", "person_id", "whoever signs in here is signed in here"),
                TableDescription.leftOut("sign_in_failure", "is of the last quarter of an hour"),
                TableDescription.secret("known_browser", "person_id", "is a secret"),
                TableDescription.secret("api_token", "person_id", "is a secret"),
                TableDescription.secret("second_factor", "person_id", "is a secret"),
                TableDescription.secret("recovery_code", "person_id", "is a secret"),
                TableDescription.secret("half_sign_in", "person_id", "is of the last five minutes"),
                TableDescription.secret("password_link", "person_id", "is a secret"),
                TableDescription.secret(
                        "password_wish", "person_id", "is between a person and this registrar"));
    }

    private static @Nullable Object memberOf(Map<String, @Nullable Object> row) {
        return row.get("left_on") == null
                ? row.get("course_id") + "/" + row.get("person_id")
                : null;
    }
}
