package org.ripewood.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.people.People;

/** A slip on record must not take the tree's pages away, where it is to be corrected. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class WildReadingsPagesTest {

    private record Read(String value, LocalDate on) {}

    @Inject School school;
    @Inject People people;

    @Test
    void aTreeWithAValueTenTimesTooSmallStillAnswers() {
        requireAnswers(
                List.of(
                        new Read("90", LocalDate.of(2023, 4, 10)),
                        new Read("93", LocalDate.of(2024, 3, 25)),
                        new Read("96", LocalDate.of(2025, 4, 9)),
                        new Read("98", LocalDate.of(2025, 8, 4)),
                        new Read("98", LocalDate.of(2026, 2, 8)),
                        new Read("9.8", LocalDate.of(2026, 2, 19))));
    }

    @Test
    void aTrunkOfAlmostTwoMetresOnADayReadTwiceStillAnswers() {
        requireAnswers(
                List.of(
                        new Read("0", LocalDate.of(2024, 4, 10)),
                        new Read("1900", LocalDate.of(2025, 4, 10)),
                        new Read("19", LocalDate.of(2025, 4, 10)),
                        new Read("0", LocalDate.of(2025, 4, 11)),
                        new Read("1900", LocalDate.of(2025, 10, 1)),
                        new Read("1.9", LocalDate.of(2025, 10, 2))));
    }

    private void requireAnswers(List<Read> read) {
        var group = school.newGroup();
        var tree = school.tree(group.instructor(), group.student(), "olea_europaea");
        for (var each : read) {
            school.see(group.instructor(), tree, "trunk_base_mm", each.value(), each.on());
        }
        var wound = school.wound(group.instructor(), tree, "low, right", 20);
        school.readWound(group.instructor(), tree, wound, 12);
        var visitor = Visitor.of(people, group.instructor());
        var page = "/trees/" + tree.id();
        for (var path :
                List.of(page, page + "/record", page + "/passport", "/api/v1" + page + "/trunk")) {
            assertThat(visitor.get(path).statusCode()).as(path).isEqualTo(200);
        }
    }
}
