package org.ripewood.core.progress;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.ripewood.core.season.Climate;
import org.ripewood.core.season.GrowthTime;
import org.ripewood.core.season.Habit;
import org.ripewood.core.season.NormalYear;
import org.ripewood.core.season.Outlook;
import org.ripewood.core.season.SeasonModel;
import org.ripewood.core.season.StageClock;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * How one tree stands with every technique of the course content, without and with the days each
 * could be done.
 *
 * <p>Forecasts answer at once, so that what is measured is the openings' own work; a closure
 * forecast is measured beside its model.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class OpeningsBenchmark {

    private static final LocalDate FIRST = LocalDate.of(2018, 1, 1);
    private static final LocalDate LAST = LocalDate.of(2060, 12, 31);
    private static final double LATITUDE = 50;
    private static final double BASE_CELSIUS = 5;

    /** Months of a cool-temperate place, made up. */
    private static final NormalYear NORMALS =
            NormalYear.of(
                    List.of(-2.0, -1.0, 2.0, 5.0, 9.0, 12.0, 14.0, 14.0, 10.0, 6.0, 2.0, -1.0),
                    List.of(4.0, 6.0, 10.0, 15.0, 19.0, 22.0, 25.0, 24.0, 20.0, 14.0, 8.0, 5.0));

    /** By the typical year and the calendar, or by the place's own warmth. */
    public enum Site {
        PLAIN,
        WARMTH
    }

    @Param public Site site;

    private Rulebook rulebook;
    private List<RandomTrees.Case> trees;
    private int next;

    @Setup
    public void prepare() {
        var contest = new Contest(Contest.ALL_SORTS);
        rulebook = Rulebook.compile(contest.rules.techniques(), contest.rules.species());
        Map<Habit, SeasonModel> seasons = new EnumMap<>(Habit.class);
        trees =
                contest.trees.stream()
                        .map(tree -> site == Site.PLAIN ? forecast(tree) : warm(tree, seasons))
                        .toList();
    }

    private static RandomTrees.Case forecast(RandomTrees.Case tree) {
        var plain = tree.subject();
        return with(tree, plain.ledger(), plain.stages());
    }

    private static RandomTrees.Case warm(RandomTrees.Case tree, Map<Habit, SeasonModel> seasons) {
        var plain = tree.subject();
        var traits = plain.traits();
        var season =
                seasons.computeIfAbsent(
                        traits.habit(),
                        habit ->
                                SeasonModel.of(new Climate(LATITUDE, NORMALS), habit, FIRST, LAST));
        var growth = GrowthTime.of(season, traits.habit(), BASE_CELSIUS);
        var vigour = plain.facts().number(Fact.VIGOUR_INDEX);
        var recovery = Recovery.of(growth, vigour, traits);
        return with(tree, new WorkLedger(plain.ledger().works(), LATITUDE, recovery), season);
    }

    private static RandomTrees.Case with(
            RandomTrees.Case tree,
            WorkLedger ledger,
            StageClock stages) {
        var plain = tree.subject();
        var subject =
                new Subject(
                        plain.traits(),
                        plain.facts(),
                        ledger,
                        plain.signedOff(),
                        plain.skills(),
                        stages,
                        OpeningsBenchmark::someDay);
        return new RandomTrees.Case(tree.seed(), subject, tree.on());
    }

    private static Outlook someDay(Fact fact, Requirement requirement, LocalDate from) {
        var likely = from.plusDays(200 + 60L * (fact.ordinal() % 40));
        return new Outlook.Expected(likely.minusDays(150), likely, likely.plusDays(400));
    }

    private RandomTrees.Case tree() {
        var tree = trees.get(next);
        next = next + 1 == trees.size() ? 0 : next + 1;
        return tree;
    }

    /** Verdicts and reasons alone. */
    @Benchmark
    public List<Standing> standings() {
        var tree = tree();
        return rulebook.standings(tree.subject(), tree.on());
    }

    /** With the opening of every technique. */
    @Benchmark
    public List<Opening> openings() {
        var tree = tree();
        return rulebook.openings(tree.subject(), tree.on()).all();
    }

    /** How many trees could do what in each week of two years: one tree's share of the count. */
    @Benchmark
    public ReadyWeeks weeksAhead() {
        var tree = tree();
        var codes = rulebook.standings(tree.subject(), tree.on()).stream().map(Standing::technique);
        var count = new ReadyWeeks.Count(tree.on(), ReadyWeeks.MOST_WEEKS, codes.toList());
        count.add(rulebook.openings(tree.subject(), tree.on()));
        return count.counted();
    }
}
