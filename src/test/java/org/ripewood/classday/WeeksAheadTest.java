package org.ripewood.classday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ripewood.standing.RefusalAssert.refusalOf;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.core.progress.ReadyWeeks;
import org.ripewood.platform.Actor;
import org.ripewood.standing.Assigner;
import org.ripewood.standing.Elm;

@QuarkusTest
@TestProfile(SchoolProfile.class)
class WeeksAheadTest {

    private static final Duration LONG = Duration.ofMinutes(1);

    @Inject Assigner assigner;
    @Inject School school;
    @Inject ClassDays days;

    School.Group group;

    @BeforeEach
    void openTheSchool() {
        group = school.newGroup();
    }

    private LessonWeeks weeks(int weeks) {
        var progress =
                days.weeksAhead(group.instructor(), group.course().id(), School.TODAY, weeks, LONG);
        assertThat(progress.through()).isNotNull();
        return progress.through();
    }

    private static LessonWeeks.Row wiring(LessonWeeks weeks) {
        return weeks.rows().stream()
                .filter(row -> row.technique().code().equals(Elm.WIRING))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyTreeThatIsReadyCountsNowAndInNextYearsSeason() {
        for (int i = 0; i < 3; i++) {
            Elm.readyForWiring(school, group, assigner);
        }
        var counted = weeks(60);
        assertThat(counted.trees()).isEqualTo(3);
        var wiring = wiring(counted);
        assertThat(wiring.weeks()).hasSize(60);
        assertThat(wiring.weeks().get(0)).isEqualTo(new ReadyWeeks.Week(3, 3, 3));
        assertThat(wiring.best()).isEqualTo(School.TODAY);
        assertThat(wiring.weeks()).contains(new ReadyWeeks.Week(0, 0, 0));
        assertThat(wiring.weeks().get(52).likely()).isEqualTo(3);
        assertThat(wiring.lessons()).isNotEmpty();
    }

    @Test
    void aTreeNobodyHasLookedAtIsUnsaid() {
        school.tree(group.instructor(), group.student(), "ulmus_parvifolia");
        var wiring = wiring(weeks(4));
        assertThat(wiring.best()).isNull();
        assertThat(wiring.unsaid()).isEqualTo(1);
    }

    @Test
    void aCourseWithoutTreesHasNoRows() {
        var empty = weeks(4);
        assertThat(empty.trees()).isZero();
        assertThat(empty.rows()).isEmpty();
    }

    /** More trees than are counted at a time. */
    @Test
    void aCountIsToldHowFarItIsUntilItIsThrough() {
        for (int i = 0; i < 60; i++) {
            school.tree(group.instructor(), group.student(), "ulmus_parvifolia");
        }
        WeeksProgress progress;
        int before = 0;
        do {
            progress =
                    days.weeksAhead(
                            group.instructor(),
                            group.course().id(),
                            School.TODAY,
                            104,
                            Duration.ofMillis(1));
            assertThat(progress.counted()).isBetween(before, 60);
            before = progress.counted();
        } while (progress.through() == null);
        assertThat(progress.through().trees()).isEqualTo(60);
    }

    @Test
    void onlyThoseWhoRunTheCourseMayAsk() {
        assertThat(refusalOf(() -> ask(group.student(), School.TODAY, 4)).status()).isEqualTo(403);
        var stranger = school.newGroup();
        assertThat(refusalOf(() -> ask(stranger.instructor(), School.TODAY, 4)).status())
                .isEqualTo(404);
    }

    @Test
    void daysGoneByAndSpansTooLongAreRefused() {
        var yesterday = School.TODAY.minusDays(1);
        assertThat(refusalOf(() -> ask(group.instructor(), yesterday, 4)).faults())
                .extracting(fault -> fault.field())
                .containsExactly("from");
        assertThat(refusalOf(() -> ask(group.instructor(), School.TODAY, 105)).faults())
                .extracting(fault -> fault.field())
                .containsExactly("weeks");
        assertThat(refusalOf(() -> ask(group.instructor(), School.TODAY, 0)).status())
                .isEqualTo(400);
    }

    private WeeksProgress ask(Actor actor, LocalDate from, int weeks) {
        return days.weeksAhead(actor, group.course().id(), from, weeks, LONG);
    }
}
