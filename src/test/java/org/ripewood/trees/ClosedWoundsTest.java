package org.ripewood.trees;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ripewood.core.growth.CallusPace;
import org.ripewood.core.growth.RateBelief;
import org.ripewood.course.CourseContent;
import org.ripewood.people.People;
import org.ripewood.platform.Today;

/** What closed wounds teach of the next one, on a species of good callus. */
@QuarkusTest
class ClosedWoundsTest {

    @Inject Trees trees;
    @Inject People people;
    @Inject Today today;
    @Inject CourseContent content;
    @Inject ClosedWounds closedWounds;

    private School school;
    private LocalDate day;

    @BeforeEach
    void openSchool() {
        day = today.date();
        school = new School(people, trees, day);
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

    private Map<CallusPace, RateBelief> learn() {
        return QuarkusTransaction.requiringNew().call(closedWounds::learn);
    }

    private void wound(double firstMm, double... openMm) {
        var tree = school.tree();
        var made = day.minusYears(2);
        var cut = new NewWound("left", made, firstMm, firstMm, null, null, false);
        var wound = trees.addWound(school.teacher, tree.id(), cut);
        for (int i = 0; i < openMm.length; i++) {
            var on = made.plusMonths(8L * (i + 1));
            trees.observe(
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
    }
}
