package org.ripewood.web.sites;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.growth.ReferenceShoots;
import org.ripewood.core.growth.SchoolLevel;
import org.ripewood.core.growth.ShootLengths;

/** Lengths are a maple's of the content (from memory); the rest is worked out by hand. */
@Tag("fast")
class ShootTableTest {

    private static final ShootLengths MAPLE = new ShootLengths(70, 180, 400, 800);

    @Test
    void contentAndSchoolStandLineByLine() {
        var shoots =
                new ReferenceShoots(
                        MAPLE, new SchoolLevel(1.1, 14, 6, 5), new SchoolLevel(0.9, 5, 2, 1));
        assertThat(ShootTable.of(shoots, "training", true).lines())
                .containsExactly(
                        new ShootTable.Line("In a pot, content", 70, 180, 400, "training"),
                        new ShootTable.Line(
                                "In a pot, in force",
                                77,
                                198,
                                440,
                                "10 % longer, 14 trees of the school and 5 seasons"),
                        new ShootTable.Line("In the ground, content", 70, 290, 800, "training"),
                        new ShootTable.Line(
                                "In the ground, in force",
                                63,
                                261,
                                720,
                                "10 % shorter, 5 trees of the school and 1 season"));
    }

    @Test
    void tooFewTreesAreToldWithoutTheirNumber() {
        var shoots = new ReferenceShoots(MAPLE, new SchoolLevel(1, 1, 1, 3), SchoolLevel.NONE);
        assertThat(ShootTable.of(shoots, "training", true).lines().get(1))
                .isEqualTo(
                        new ShootTable.Line(
                                "In a pot, in force",
                                70,
                                180,
                                400,
                                "the content alone: too few of the school's trees were measured"));
    }

    @Test
    void switchedOffTheContentAloneIsTold() {
        assertThat(ShootTable.of(ReferenceShoots.of(MAPLE), "training", false).lines())
                .extracting(ShootTable.Line::where)
                .containsExactly("In a pot, content", "In the ground, content");
    }
}
