package org.ripewood.core.progress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.ripewood.core.progress.Bench.DAY;
import static org.ripewood.core.progress.Bench.atMost;
import static org.ripewood.core.progress.Bench.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.progress.Bench.RuleOf;
import org.ripewood.core.progress.Bench.TreeOf;
import org.ripewood.core.season.Habit;
import org.ripewood.core.season.Outlook;
import org.ripewood.core.season.TypicalYear;

/** Weeks are reckoned by hand from 20 February 2024; the rules are common practice, no source. */
@Tag("fast")
class ReadyWeeksTest {

    private static TreeOf tree(int latitude) {
        var tree = new TreeOf().saw(Fact.VIGOUR_INDEX, 75).saw(Fact.LARGEST_OPENING_MM, 20);
        tree.stages = TypicalYear.of(Habit.DECIDUOUS, latitude);
        tree.latitude = latitude;
        return tree;
    }

    private static ReadyWeeks count(RuleOf rule, int weeks, TreeOf... trees) {
        var book = Bench.rulebook(rule);
        var count = new ReadyWeeks.Count(DAY, weeks, List.of(rule.code));
        for (var tree : trees) {
            count.add(book.openings(tree.make(), DAY));
        }
        return count.counted();
    }

    private static RuleOf closedWounds() {
        var rule = new RuleOf("any");
        rule.criteria = List.of(atMost(Fact.LARGEST_OPENING_MM, 4));
        return rule;
    }

    @Test
    void aTreeThatCanCountsInEveryWeek() {
        var row = count(new RuleOf("any"), 3, tree(50)).rows().get(0);
        assertThat(row.weeks())
                .containsExactly(
                        new ReadyWeeks.Week(1, 1, 1),
                        new ReadyWeeks.Week(1, 1, 1),
                        new ReadyWeeks.Week(1, 1, 1));
        assertThat(row.best()).isZero();
    }

    /** Day 0 is in week 0, day 7 in week 1, day 20 in week 2. */
    @Test
    void aForecastCountsFromItsOwnWeekOn() {
        var tree = tree(50);
        tree.forecasts =
                (fact, required, from) ->
                        new Outlook.Expected(DAY.plusDays(6), DAY.plusDays(7), DAY.plusDays(20));
        var row = count(closedWounds(), 4, tree).rows().get(0);
        assertThat(row.weeks())
                .containsExactly(
                        new ReadyWeeks.Week(1, 0, 0),
                        new ReadyWeeks.Week(1, 1, 0),
                        new ReadyWeeks.Week(1, 1, 1),
                        new ReadyWeeks.Week(1, 1, 1));
        assertThat(row.best()).isEqualTo(1);
    }

    @Test
    void whatNobodyCanSayIsInNoWeekAndToldApart() {
        var row = count(closedWounds(), 2, tree(50)).rows().get(0);
        assertThat(row.unsaid()).isEqualTo(1);
        assertThat(row.best()).isEqualTo(-1);
        assertThat(row.weeks()).containsOnly(new ReadyWeeks.Week(0, 0, 0));
    }

    @Test
    void whatNoTreeNeedsIsNotTold() {
        var rule = new RuleOf("any");
        rule.groups = Set.of("conifer");
        assertThat(count(rule, 2, tree(50)).rows()).isEmpty();
    }

    /** The lesson is set for those who have not shown the skill yet. */
    @Test
    void aSkillThatIsMissingDoesNotCountAgainstATree() {
        var rule = new RuleOf("any");
        rule.skillLesson = "wiring";
        var tree = tree(50);
        tree.skills = Set.of();
        assertThat(count(rule, 1, tree).rows().get(0).weeks().get(0).likely()).isEqualTo(1);
    }

    /** The mirror of a hemisphere is half a year away: 26 weeks. */
    @Test
    void theSouthOpensHalfAYearLater() {
        var rule = new RuleOf("any");
        rule.season = season("01-03");
        var north = count(rule, 60, tree(50)).rows().get(0).weeks();
        var south = count(rule, 60, tree(-50)).rows().get(0).weeks();
        for (int week = 0; week < 32; week++) {
            assertThat(south.subList(week + 25, week + 28))
                    .as("week %d", week)
                    .contains(north.get(week));
        }
        assertThat(north).contains(new ReadyWeeks.Week(0, 0, 0), new ReadyWeeks.Week(1, 1, 1));
    }

    /** The first week a tree counts in is the week of its opening, at each of the three. */
    @Test
    void theFirstWeekIsTheOpenings() {
        long seed = 5_310;
        var dice = new SplittableRandom(seed);
        for (int i = 0; i < 300; i++) {
            var rule = closedWounds();
            rule.season = season(dice.nextBoolean() ? "01-03" : "31-39");
            var tree = tree(dice.nextBoolean() ? 50 : -35);
            var earliest = DAY.plusDays(dice.nextInt(400));
            var likely = earliest.plusDays(dice.nextInt(200));
            var latest = likely.plusDays(dice.nextInt(300));
            tree.forecasts =
                    (fact, required, from) -> new Outlook.Expected(earliest, likely, latest);
            var weeks = count(rule, ReadyWeeks.MOST_WEEKS, tree).rows().get(0).weeks();
            var outlook =
                    (Outlook.Expected)
                            Bench.rulebook(rule)
                                    .openings(tree.make(), DAY)
                                    .of("any")
                                    .orElseThrow()
                                    .outlook();
            var what = "seed %d, round %d: %s".formatted(seed, i, outlook);
            assertThat(first(weeks, 0)).as(what).isEqualTo(weekOf(outlook.earliest()));
            assertThat(first(weeks, 1)).as(what).isEqualTo(weekOf(outlook.likely()));
            assertThat(first(weeks, 2)).as(what).isEqualTo(weekOf(outlook.latest()));
        }
    }

    private static int first(List<ReadyWeeks.Week> weeks, int which) {
        for (int week = 0; week < weeks.size(); week++) {
            var counted = weeks.get(week);
            int trees =
                    which == 0
                            ? counted.possible()
                            : which == 1 ? counted.likely() : counted.sure();
            if (trees > 0) {
                return week;
            }
        }
        return -1;
    }

    private static int weekOf(LocalDate day) {
        int week = (int) (ChronoUnit.DAYS.between(DAY, day) / 7);
        return week < ReadyWeeks.MOST_WEEKS ? week : -1;
    }

    @Test
    void onlyOneToTwoYearsAreCounted() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ReadyWeeks.Count(DAY, 0, List.of()))
                .withMessageContaining("found 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ReadyWeeks.Count(DAY, 105, List.of()))
                .withMessageContaining("found 105");
    }
}
