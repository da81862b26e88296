package org.ripewood.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.people.People;

/** The private link to a calendar, where its owner makes, renews and ends it. */
@Tag("one-database")
@QuarkusTest
@TestProfile(SchoolProfile.class)
class CalendarLinkTest {

    private static final Pattern LINK =
            Pattern.compile("href=\"(http[^\"]*/calendar/([A-Za-z0-9_-]{43})\\.ics)\"");

    @Inject School school;
    @Inject People people;

    @Test
    void aLinkIsShownOnceAndOnNoOtherPage() {
        var student = school.newGroup().student();
        var pupil = Visitor.of(people, student).confirmed();
        assertThat(pupil.get("/home").asString()).contains("/account#calendar");
        assertThat(pupil.get("/account").asString()).contains("You have no link yet");

        var made = pupil.send("/account", "/account/calendar", Map.of());
        assertThat(made.header("Cache-Control")).contains("no-store");
        var link = LINK.matcher(made.asString());
        assertThat(link.find()).isTrue();
        assertThat(given().get(link.group(1)).statusCode()).isEqualTo(200);
        for (var page : List.of("/account", "/home", "/lessons")) {
            assertThat(pupil.get(page).asString()).as(page).doesNotContain(link.group(2));
        }
        assertThat(pupil.get("/account").asString()).contains("Your link was made on");

        var ended = pupil.send("/account", "/account/calendar/revoke", Map.of());
        assertThat(ended.header("Location")).endsWith("/account#calendar");
        assertThat(given().get(link.group(1)).statusCode()).isEqualTo(404);
        assertThat(pupil.get("/account").asString()).contains("You have no link yet");
    }

    @Test
    void aLinkIsNotMadeByAFormWithoutItsToken() {
        var pupil = Visitor.of(people, school.newGroup().student());
        pupil.get("/account");
        assertThat(pupil.post("/account/calendar", Map.of()).statusCode()).isEqualTo(400);
        assertThat(pupil.get("/account").asString()).contains("You have no link yet");
    }
}
