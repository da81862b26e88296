package org.ripewood.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.people.People;
import org.ripewood.platform.Role;

/** Days that no calendar reckons with are told, wherever a page takes one. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class FarDaysTest {

    private static final List<String> FAR =
            List.of("%2B999999999-12-31", "-999999999-01-01", "1899-12-31", "2200-01-01");

    @Inject School school;
    @Inject People people;

    private School.Group group;
    private Visitor teacher;
    private Visitor registrar;

    @BeforeEach
    void open() {
        group = school.newGroup();
        teacher = Visitor.of(people, group.instructor());
        registrar = Visitor.of(people, school.person("Rae Registrar", Role.REGISTRAR));
    }

    @Test
    void inAddresses() {
        var course = "/courses/" + group.course().id();
        var tree = school.tree(group.instructor(), group.student(), "ulmus_parvifolia");
        for (var day : FAR) {
            requireRefused(registrar, "/audit?from=" + day);
            requireRefused(registrar, "/audit?to=" + day);
            requireRefused(teacher, "/agreement?from=" + day);
            requireRefused(teacher, "/agreement?until=" + day);
            requireRefused(teacher, course + "/weeks?from=" + day);
            requireRefused(teacher, "/api/v1/trees/" + tree.id() + "/standing?on=" + day);
        }
    }

    private static void requireRefused(Visitor visitor, String address) {
        assertThat(visitor.get(address).statusCode()).as(address).isEqualTo(400);
    }

    @Test
    void inForms() {
        var form =
                Map.of(
                        "label", "Far",
                        "species", "ulmus_parvifolia",
                        "keeperId", String.valueOf(group.student().personId()));
        for (var day : FAR) {
            var sent = new HashMap<String, Object>(form);
            sent.put("cameOn", day.replace("%2B", "+"));
            var answer = teacher.send("/trees/new", "/trees", sent);
            assertThat(answer.statusCode()).as(day).isEqualTo(400);
            assertThat(answer.asString()).contains("expected a day from 1 January 1900");
        }
    }
}
