package org.ripewood.standing;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;

@QuarkusTest
@TestProfile(SchoolProfile.class)
class PrintTest {
    @Inject School school;
    @Inject Standings standings;

    @Test
    void print() {
        var group = school.newGroup();
        var tree = Elm.readyForWiring(school, group, standings);
        school.wound(group.instructor(), tree, "first branch", 24);
        standings
                .of(group.instructor(), tree.id(), School.TODAY)
                .techniques()
                .forEach(
                        t -> {
                            System.out.println(
                                    "## " + t.verdict() + " " + t.title() + " " + t.opensOn());
                            t.reasons()
                                    .forEach(
                                            r ->
                                                    System.out.println(
                                                            "  SENT "
                                                                    + r.sentence()
                                                                    + " | "
                                                                    + r.by()
                                                                    + " | "
                                                                    + r.source()));
                        });
        standings
                .board(
                        group.instructor(),
                        group.course().id(),
                        School.TODAY,
                        null,
                        new org.ripewood.platform.PageRequest(0, 9))
                .rows()
                .items()
                .forEach(r -> System.out.println("ROW " + r));
        standings
                .board(
                        group.instructor(),
                        group.course().id(),
                        School.TODAY,
                        null,
                        new org.ripewood.platform.PageRequest(0, 9))
                .holds()
                .forEach(r -> System.out.println("HOLD " + r));
    }
}
