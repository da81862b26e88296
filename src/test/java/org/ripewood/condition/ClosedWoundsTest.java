package org.ripewood.condition;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.core.growth.CallusPace;
import org.ripewood.core.growth.RateBelief;
import org.ripewood.core.season.Outlook;
import org.ripewood.course.CourseContent;
import org.ripewood.people.Courses;
import org.ripewood.people.NewCourse;
import org.ripewood.people.Samples;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.records.NewObservation;
import org.ripewood.records.NewWound;
import org.ripewood.records.Observations;
import org.ripewood.records.Wounds;
import org.ripewood.trees.School;
import org.ripewood.trees.TreeSites;
import org.ripewood.trees.Trees;

/** What closed wounds teach of the next one, and what of them was known when. */
@QuarkusTest
class ClosedWoundsTest {

    @Inject Courses courses;
    @Inject PersonRegistration register;
    @Inject TreeSites treeSites;
    @Inject Trees trees;
    @Inject TreeStates treeStates;
    @Inject Wounds wounds;
    @Inject Observations observations;
    @Inject Today today;
    @Inject CourseContent content;
    @Inject ClosedWounds closedWounds;
    @Inject Samples samples;

    private School school;
    private LocalDate day;

    @BeforeEach
    void openSchool() {
        day = today.date();
        school = new School(register, courses, trees, treeSites, day);
        assertThat(content.inForce().species("acer_palmatum").callusPace()).isEqualTo("good");
    }

    @Test
    void aWoundThatClosedFastRaisesTheBeliefAboutItsKindAlone() {
        var before = learn();
        wound(40, 20, 0);
        var after = learn();
        var good = before.get(CallusPace.GOOD);
        assertThat(after.get(CallusPace.GOOD).meanMm()).isGreaterThan(good.meanMm());
        assertThat(after.get(CallusPace.GOOD).weight()).isEqualTo(good.weight() + 1);
        assertThat(after.get(CallusPace.SLOW)).isEqualTo(before.get(CallusPace.SLOW));
    }

    @Test
    void aWoundThatIsStillOpenTeachesNothingYet() {
        var before = learn();
        wound(40, 20, 12);
        assertThat(learn()).isEqualTo(before);
    }

    @Test
    void aMadeUpTreeTeachesNothing() {
        var before = learn();
        wound(40, 20, 0);
        assertThat(learn()).isNotEqualTo(before);
        QuarkusTransaction.begin();
        try {
            var registrar = new Actor(0, Set.of(Role.REGISTRAR));
            var course =
                    courses.open(registrar, new NewCourse("Sample", day, day.plusDays(1))).id();
            samples.mark(school.teacher, course, null, List.of(school.keeper.personId()));
            assertThat(closedWounds.learn().rates()).isEqualTo(before);
        } finally {
            QuarkusTransaction.rollback();
        }
    }

    @Test
    void aDayGoneByIsToldFromWhatWasKnownThen() {
        var treeId = wound(40, 20, 0);
        var before = day.minusYears(2).plusMonths(10);
        var then = treeStates.growth(school.teacher, treeId, before).closings().get(0);
        assertThat(then.wound().openMm()).isEqualTo(20);
        assertThat(then.forecast().readings()).isEqualTo(1);
        assertThat(then.closed()).isInstanceOf(Outlook.Expected.class);
        assertThat(treeStates.growth(school.teacher, treeId, day.minusYears(3)).closings())
                .isEmpty();
        assertThat(treeStates.growth(school.teacher, treeId, day).closings().get(0).closed())
                .isEqualTo(new Outlook.Already());
    }

    private Map<CallusPace, RateBelief> learn() {
        return QuarkusTransaction.requiringNew().call(() -> closedWounds.learn().rates());
    }

    private long wound(double firstMm, double... openMm) {
        var tree = school.tree();
        var made = day.minusYears(2);
        var cut = new NewWound("left", made, firstMm, firstMm, null, null, false);
        var wound = wounds.add(school.teacher, tree.id(), cut);
        for (int i = 0; i < openMm.length; i++) {
            var on = made.plusMonths(8L * (i + 1));
            observations.observe(
                    school.teacher,
                    tree.id(),
                    new NewObservation(
                            "wound_open_mm",
                            String.valueOf(openMm[i]),
                            on,
                            null,
                            wound.id(),
                            null,
                            null,
                            null));
        }
        return tree.id();
    }
}
