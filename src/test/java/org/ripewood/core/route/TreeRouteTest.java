package org.ripewood.core.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.ripewood.core.route.Ways.DAY;
import static org.ripewood.core.route.Ways.likely;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.progress.Criterion;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Facts;
import org.ripewood.core.progress.Forecasts;
import org.ripewood.core.progress.Requirement;
import org.ripewood.core.progress.Rulebook;
import org.ripewood.core.progress.SeasonRule;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Strength;
import org.ripewood.core.progress.Subject;
import org.ripewood.core.progress.TechniqueRule;
import org.ripewood.core.progress.Traits;
import org.ripewood.core.progress.Value;
import org.ripewood.core.progress.WorkLedger;
import org.ripewood.core.season.Habit;
import org.ripewood.core.season.Outlook;
import org.ripewood.core.season.StageRange;

/** A small rulebook and one tree, from standing to route; worked out by hand. */
@Tag("fast")
class TreeRouteTest {

    private static final Traits MAPLE = new Traits("maple", Habit.DECIDUOUS, Set.of(), 0.33);
    private static final Outlook.Expected CLOSING =
            new Outlook.Expected(DAY.plusYears(2), DAY.plusYears(3), DAY.plusYears(5));

    private final List<TechniqueRule> rules = new ArrayList<>();
    private final List<Evidence> evidence = new ArrayList<>();
    private final Map<String, LocalDate> signedOff = new HashMap<>();
    private final Map<String, List<Effect>> effects = new HashMap<>();
    private final Map<String, Set<Fact>> unsettles = new HashMap<>();
    private final Map<String, List<String>> goesAfter = new HashMap<>();
    private final Set<String> wounding = new HashSet<>();
    private Durations durations = Durations.NONE;

    /** March and April, in the months the tests take for stages. */
    private static final SeasonRule SPRING =
            new SeasonRule(
                    List.of(
                            new SeasonRule.Window(
                                    Set.of(), Set.of(), List.of(new StageRange(3, 4)))),
                    List.of(),
                    "");

    private void rule(String code, int stage, double stress, Criterion criterion, String... after) {
        rules.add(
                new TechniqueRule(
                        code,
                        stage,
                        TechniqueRule.Purpose.OTHER,
                        Set.of(),
                        Set.of(),
                        null,
                        null,
                        List.of(after),
                        List.of(criterion),
                        SPRING,
                        stress,
                        0,
                        0,
                        null,
                        null));
    }

    private static Criterion criterion(Fact fact, Requirement requirement) {
        return new Criterion(
                fact, requirement, null, Strength.MUST, false, false, List.of(), "why");
    }

    private void saw(Fact fact, double amount) {
        evidence.add(new Evidence(fact, Value.of(amount), DAY, Source.INSTRUCTOR, "somebody", 1));
    }

    private Route route() {
        Forecasts forecasts =
                (fact, requirement, from) ->
                        fact == Fact.LARGEST_OPENING_MM
                                ? CLOSING
                                : new Outlook.Unsaid("Nothing is forecast of " + fact.code());
        var subject =
                new Subject(
                        MAPLE,
                        Facts.of(evidence),
                        new WorkLedger(List.of(), 50),
                        signedOff,
                        null,
                        Ways.MONTHS,
                        forecasts);
        return TreeRoute.simulate(
                Rulebook.compile(rules, List.of(MAPLE)),
                new RouteRules(
                        rules,
                        Map.of("repot", Fact.DAYS_SINCE_ROOT_WORK),
                        effects,
                        unsettles,
                        goesAfter,
                        wounding,
                        durations),
                subject,
                DAY,
                3,
                500,
                1);
    }

    @Test
    void theWayGoesFromStandingToTheShow() {
        saw(Fact.VIGOUR_INDEX, 80);
        saw(Fact.LARGEST_OPENING_MM, 20);
        saw(Fact.DAYS_SINCE_ROOT_WORK, WorkLedger.NEVER_DAYS);
        var strong = criterion(Fact.VIGOUR_INDEX, new Requirement.AtLeast(60));
        rule("check", 1, 0, strong);
        rule("repot", 2, 7, strong, "check");
        rule(
                "wire",
                2,
                0,
                criterion(Fact.DAYS_SINCE_ROOT_WORK, new Requirement.AtLeast(300)),
                "repot");
        rule(
                "select",
                3,
                0,
                criterion(Fact.LARGEST_OPENING_MM, new Requirement.AtMost(5)),
                "repot");
        rule("chop", 3, 7, strong);
        rule("fine", 3, 0, criterion(Fact.INTERNODE_MM, new Requirement.AtMost(10)));
        rule("later", 4, 0, strong);
        signedOff.put("check", DAY.minusYears(1));

        var route = route();

        assertThat(route.find("check")).isEmpty();
        assertThat(route.find("later")).isEmpty();
        assertThat(likely(route, "repot")).isEqualTo(LocalDate.of(2025, 3, 1));
        // the clock starts with the repotting: day 300 is Boxing Day, the window the next March
        assertThat(likely(route, "wire")).isEqualTo(LocalDate.of(2026, 3, 1));
        assertThat(likely(route, "chop")).isEqualTo(LocalDate.of(2026, 3, 1));
        // half of the wounds are closed by New Year 2028, a tenth by 2027, nine tenths by 2030
        assertThat(route.find("select").orElseThrow().when())
                .isEqualTo(
                        new Outlook.Expected(
                                LocalDate.of(2027, 3, 1),
                                LocalDate.of(2028, 3, 1),
                                LocalDate.of(2030, 3, 1)));
        // a later stage waits for all of the one before
        assertThat(likely(route, "fine")).isEqualTo(LocalDate.of(2026, 3, 1));
        assertThat(route.unsaid())
                .extracting(Route.Unsaid::code, Route.Unsaid::assumption)
                .containsExactly(tuple("fine", Wait.Assumption.MET_WHEN_LOOKED_AT));
        assertThat(route.chain()).extracting(Route.Link::code).containsExactly("select");
        assertThat(route.waitings().get(0).what()).isEqualTo("largest_opening_mm");
    }

    @Test
    void whatIsNotMetAndNotForecastIsAssumedForTheNextSeason() {
        saw(Fact.VIGOUR_INDEX, 40);
        rule("wire", 1, 0, criterion(Fact.VIGOUR_INDEX, new Requirement.AtLeast(60)));
        var route = route();
        assertThat(likely(route, "wire")).isEqualTo(LocalDate.of(2026, 3, 1));
        assertThat(route.find("wire").orElseThrow().assumed()).isTrue();
        assertThat(route.unsaid().get(0).because()).contains("vigour_index");
    }

    /** Works that change nothing but what is said of them, one after the other in a stage. */
    private void bulge() {
        saw(Fact.VIGOUR_INDEX, 80);
        evidence.add(
                new Evidence(
                        Fact.REVERSE_TAPER, Value.of(true), DAY, Source.INSTRUCTOR, "somebody", 2));
        rule("a_wire", 1, 0, criterion(Fact.REVERSE_TAPER, new Requirement.Is(Value.of(false))));
        rule("thin", 1, 0, criterion(Fact.VIGOUR_INDEX, new Requirement.AtLeast(60)));
    }

    @Test
    void aWorkThatBringsAFactComesBeforeWhatNeedsIt() {
        bulge();
        effects.put("thin", List.of(new Effect(Fact.REVERSE_TAPER, Value.of(false))));
        var route = route();
        assertThat(route.steps()).extracting(Route.Step::code).containsExactly("thin", "a_wire");
        assertThat(route.unsaid()).isEmpty();
        assertThat(likely(route, "a_wire")).isEqualTo(LocalDate.of(2025, 3, 1));
    }

    @Test
    void whatAWorkBringsInTimeTakesItsSeasons() {
        bulge();
        durations =
                new Durations(
                        List.of(
                                new SlowChange(
                                        Fact.REVERSE_TAPER,
                                        Set.of("thin"),
                                        Set.of(),
                                        Set.of(),
                                        0,
                                        new Seasons(2, 2, 2))),
                        Spread.NONE);
        var route = route();
        assertThat(likely(route, "thin")).isEqualTo(LocalDate.of(2025, 3, 1));
        // 731 days later is 2 March 2027, in the window
        assertThat(likely(route, "a_wire")).isEqualTo(LocalDate.of(2027, 3, 2));
        assertThat(route.unsaid()).isEmpty();
    }

    /** Ten points of vigour a season, and two tens are missing. */
    @Test
    void strengthComesBackBySeasons() {
        saw(Fact.VIGOUR_INDEX, 42);
        rule("wire", 1, 0, criterion(Fact.VIGOUR_INDEX, new Requirement.AtLeast(60)));
        durations =
                new Durations(
                        List.of(
                                new SlowChange(
                                        Fact.VIGOUR_INDEX,
                                        Set.of(),
                                        Set.of(),
                                        Set.of(),
                                        10,
                                        new Seasons(1, 1, 1))),
                        Spread.NONE);
        var route = route();
        // 731 days after New Year 2025 is New Year 2027; the window opens in March
        assertThat(likely(route, "wire")).isEqualTo(LocalDate.of(2027, 3, 1));
        assertThat(route.unsaid()).isEmpty();
    }

    @Test
    void aWoundStillToBeMadeIsWaitedFor() {
        saw(Fact.VIGOUR_INDEX, 80);
        saw(Fact.LARGEST_OPENING_MM, 0);
        rule("chop", 1, 7, criterion(Fact.VIGOUR_INDEX, new Requirement.AtLeast(60)));
        rule("wire", 2, 0, criterion(Fact.LARGEST_OPENING_MM, new Requirement.AtMost(8)));
        wounding.add("chop");
        durations =
                new Durations(
                        List.of(
                                new SlowChange(
                                        Fact.LARGEST_OPENING_MM,
                                        Set.of(),
                                        Set.of(),
                                        Set.of(),
                                        0,
                                        new Seasons(3, 3, 3))),
                        Spread.NONE);
        assertThat(likely(route(), "wire")).isEqualTo(LocalDate.of(2028, 3, 1));
        wounding.clear();
        assertThat(likely(route(), "wire")).isEqualTo(LocalDate.of(2025, 3, 1));
    }

    /** Nothing is forecast of the closing here, and what a table says takes its place nowhere. */
    @Test
    void aWoundThatStandsStillGivesNoDate() {
        saw(Fact.VIGOUR_INDEX, 80);
        saw(Fact.SMALLEST_CLOSURE_PERCENT, 20);
        rule("wire", 1, 0, criterion(Fact.SMALLEST_CLOSURE_PERCENT, new Requirement.AtLeast(80)));
        durations =
                new Durations(
                        List.of(
                                new SlowChange(
                                        Fact.SMALLEST_CLOSURE_PERCENT,
                                        Set.of(),
                                        Set.of(),
                                        Set.of(),
                                        0,
                                        new Seasons(2, 2, 2))),
                        Spread.NONE);
        var route = route();
        assertThat(route.goal()).isInstanceOf(Outlook.Unsaid.class);
        assertThat(route.find("wire").orElseThrow().assumed()).isFalse();
        assertThat(route.unsaid())
                .extracting(Route.Unsaid::assumption)
                .containsExactly(Wait.Assumption.NEVER_MET);
    }

    @Test
    void whatGoesAfterAnotherStepComesLaterThoughNothingHoldsIt() {
        saw(Fact.VIGOUR_INDEX, 80);
        var strong = criterion(Fact.VIGOUR_INDEX, new Requirement.AtLeast(60));
        rule("lift", 1, 7, strong);
        rule("prune", 1, 7, strong);
        assertThat(likely(route(), "lift")).isEqualTo(LocalDate.of(2025, 3, 1));
        goesAfter.put("lift", List.of("prune"));
        var route = route();
        assertThat(likely(route, "prune")).isEqualTo(LocalDate.of(2025, 3, 1));
        assertThat(likely(route, "lift")).isEqualTo(LocalDate.of(2026, 3, 1));
    }
}
