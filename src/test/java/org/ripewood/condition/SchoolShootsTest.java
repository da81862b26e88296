package org.ripewood.condition;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.hibernate.SessionFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.core.growth.ReferenceShoots;
import org.ripewood.core.growth.SchoolLevel;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Species;
import org.ripewood.people.Courses;
import org.ripewood.people.NewCourse;
import org.ripewood.people.Samples;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.records.Containers;
import org.ripewood.records.NewContainer;
import org.ripewood.records.NewObservation;
import org.ripewood.records.Observations;
import org.ripewood.records.RecordsUnchecked;
import org.ripewood.sites.Seasons;
import org.ripewood.trees.NewTree;
import org.ripewood.trees.School;
import org.ripewood.trees.TreeSites;
import org.ripewood.trees.Trees;
import org.ripewood.trees.TreesUnchecked;

/** What the school's own trees make of a species' lengths; of a kind no other test keeps. */
@QuarkusTest
class SchoolShootsTest {

    private static final String KIND = "cotoneaster_horizontalis";

    @Inject Courses courses;
    @Inject PersonRegistration register;
    @Inject TreeSites treeSites;
    @Inject Trees trees;
    @Inject TreesUnchecked unchecked;
    @Inject RecordsUnchecked records;
    @Inject Samples samples;
    @Inject Seasons seasons;
    @Inject Observations observations;
    @Inject Containers containers;
    @Inject Today today;
    @Inject CourseContent content;
    @Inject SchoolShoots inForce;
    @Inject SessionFactory sessions;

    private School school;
    private LocalDate day;

    @BeforeEach
    void openSchool() {
        day = today.date();
        school = new School(register, courses, trees, treeSites, day);
    }

    private Species species() {
        return content.inForce().species(KIND);
    }

    private SchoolShoots asked(boolean wanted) {
        return new SchoolShoots(records, unchecked, samples, content, seasons, today, wanted);
    }

    private ReferenceShoots learnt() {
        return asked(true).of(species());
    }

    /** Twice the content's length in the last autumn, by whom. */
    private void tree(Actor keeper, Actor by) {
        var site = treeSites.list(school.teacher).get(0).place();
        var tree =
                trees.enter(
                        school.teacher,
                        new NewTree(
                                "Cotoneaster",
                                KIND,
                                keeper.personId(),
                                site.id(),
                                day.minusYears(4),
                                null,
                                null));
        containers.moveTo(
                school.teacher,
                tree.id(),
                new NewContainer("training", null, null, day.minusYears(4)));
        var autumn = LocalDate.of(day.getYear() - 1, 11, 1);
        var length = String.valueOf(2 * species().shoots().fair());
        observations.observe(
                by,
                tree.id(),
                new NewObservation(
                        "shoot_extension_mm", length, autumn, null, null, null, null, null));
    }

    @Test
    void fiveMeasuredTreesOfTwoKeepersMoveTheLengthsAndFourDoNot() {
        var before = learnt().inPot();
        assertThat(before).isEqualTo(SchoolLevel.NONE);
        for (int i = 0; i < 4; i++) {
            tree(i % 2 == 0 ? school.keeper : school.otherStudent, school.teacher);
        }
        tree(school.keeper, school.keeper);
        assertThat(learnt().lengths(false)).isEqualTo(species().shoots());
        tree(school.keeper, school.teacher);
        var told = learnt();
        assertThat(told.inPot().trees()).isEqualTo(5);
        assertThat(told.inPot().keepers()).isEqualTo(2);
        assertThat(told.inPot().seasons()).isEqualTo(1);
        // ln 2 × 0.04 / (0.04 + π/2 × 0.2025 / 5 + 0.0225)
        assertThat(told.inPot().factor()).isBetween(1.24, 1.25);
        assertThat(told.lengths(false).fair()).isGreaterThan(species().shoots().fair());
        assertThat(told.lengths(true)).isEqualTo(species().shoots());
        assertThat(asked(false).of(species())).isEqualTo(ReferenceShoots.of(species().shoots()));
        madeUpTreesTeachNothing();
        askedTwiceReadsOnce();
        aDayGoneByIsToldByTheContent();
    }

    /** As if one of the two keepers and the trees they keep were a sample; taken back at once. */
    private void madeUpTreesTeachNothing() {
        QuarkusTransaction.begin();
        try {
            var registrar = new Actor(0, Set.of(Role.REGISTRAR));
            var course =
                    courses.open(registrar, new NewCourse("Sample", day, day.plusDays(1))).id();
            var keeper = school.keeper.personId();
            samples.mark(school.teacher, course, null, List.of(keeper));
            assertThat(learnt().inPot()).isEqualTo(SchoolLevel.NONE);
        } finally {
            QuarkusTransaction.rollback();
        }
    }

    private void askedTwiceReadsOnce() {
        var statistics = sessions.getStatistics();
        statistics.setStatisticsEnabled(true);
        var asked = asked(true);
        long none = statistics.getPrepareStatementCount();
        assertThat(asked.of(species()).inPot().trees()).isEqualTo(5);
        long before = statistics.getPrepareStatementCount();
        assertThat(before).isGreaterThan(none);
        for (var species : content.inForce().species().values()) {
            asked.of(species);
        }
        assertThat(statistics.getPrepareStatementCount()).isEqualTo(before);
    }

    private void aDayGoneByIsToldByTheContent() {
        today.asOf(
                day.minusYears(1),
                () -> assertThat(learnt()).isEqualTo(ReferenceShoots.of(species().shoots())));
    }

    @Test
    void theSwitchIsOnOutsideOfTests() {
        assertThat(inForce.isWanted()).isFalse();
        var properties = SchoolShoots.class.getResourceAsStream("/application.properties");
        assertThat(properties)
                .asString(StandardCharsets.UTF_8)
                .contains("\nripewood.strength.school-record=true\n");
    }
}
