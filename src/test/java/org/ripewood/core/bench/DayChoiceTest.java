package org.ripewood.core.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ripewood.core.bench.Candidate.Assigned;
import org.ripewood.core.bench.Candidate.Expected;
import org.ripewood.core.bench.Candidate.Ready;
import org.ripewood.core.bench.Candidate.Skill;
import org.ripewood.core.bench.Candidate.Sureness;

@Tag("fast")
class DayChoiceTest {

    private static final DayLimits PLENTY =
            new DayLimits(400, Map.of(), 400, Map.of("jack", 1), Map.of("wire", 100.0), 1);

    private static Candidate work(String technique, double usefulness, int student, int teacher) {
        return new Candidate(
                technique,
                new Ready(),
                usefulness,
                student,
                teacher,
                Map.of(),
                Map.of(),
                false,
                Skill.SHOWN);
    }

    private static Candidate sure(Candidate work, Sureness sureness) {
        return new Candidate(
                work.technique(),
                sureness,
                work.usefulness(),
                work.studentMinutes(),
                work.instructorMinutes(),
                work.tools(),
                work.materials(),
                work.irreversible(),
                work.skill());
    }

    private static Candidate skilled(Candidate work, Skill skill) {
        return new Candidate(
                work.technique(),
                work.sureness(),
                work.usefulness(),
                work.studentMinutes(),
                work.instructorMinutes(),
                work.tools(),
                work.materials(),
                work.irreversible(),
                skill);
    }

    private static Candidate with(
            Candidate work, Map<String, Integer> tools, Map<String, Double> materials) {
        return new Candidate(
                work.technique(),
                work.sureness(),
                work.usefulness(),
                work.studentMinutes(),
                work.instructorMinutes(),
                tools,
                materials,
                work.irreversible(),
                work.skill());
    }

    private static DayLimits teaching(int minutes) {
        return new DayLimits(400, Map.of(), minutes, Map.of(), Map.of(), 1);
    }

    private static List<String> chosen(DayChoice choice, String tree) {
        return choice.find(tree).orElseThrow().chosen().stream().map(Candidate::technique).toList();
    }

    private static List<ChoiceReason> reasons(DayChoice choice, String tree, String technique) {
        return choice.find(tree).orElseThrow().decisions().stream()
                .filter(one -> one.technique().equals(technique))
                .findFirst()
                .orElseThrow()
                .reasons();
    }

    @Test
    void aTreeGetsItsMostUsefulWork() {
        var tree =
                TreeWork.of("elm", "Ann", List.of(work("wire", 5, 60, 10), work("pot", 9, 90, 20)));
        var choice = DayChoice.of(List.of(tree), PLENTY);
        assertThat(chosen(choice, "elm")).containsExactly("pot");
        assertThat(reasons(choice, "elm", "pot")).containsExactly(new ChoiceReason.MostUseful());
        assertThat(reasons(choice, "elm", "wire"))
                .containsExactly(new ChoiceReason.AnotherFirst("pot"));
        assertThat(choice.proved()).isTrue();
    }

    @Test
    void whatIsExpectedCountsByItsProbability() {
        var pot = sure(work("pot", 9, 90, 20), new Expected(0.5));
        var tree = TreeWork.of("elm", "Ann", List.of(pot, work("wire", 5, 60, 10)));
        assertThat(chosen(DayChoice.of(List.of(tree), PLENTY), "elm")).containsExactly("wire");
    }

    @Test
    void assignedWorkComesBeforeUsefulWork() {
        var wire = sure(work("wire", 5, 60, 10), new Assigned());
        var tree = TreeWork.of("elm", "Ann", List.of(wire, work("pot", 9, 90, 20)));
        var choice = DayChoice.of(List.of(tree), PLENTY);
        assertThat(chosen(choice, "elm")).containsExactly("wire");
        assertThat(reasons(choice, "elm", "wire"))
                .containsExactly(new ChoiceReason.AssignedBefore());
    }

    @Test
    void aSwapDropsTheOneAndPinsTheOther() {
        var wire = sure(work("wire", 5, 60, 10), new Assigned());
        var works = List.of(wire, work("pot", 9, 90, 20), work("pinch", 1, 15, 3));
        var tree = new TreeWork("elm", "Ann", works, Set.of("pinch"), Set.of("wire"));
        var choice = DayChoice.of(List.of(tree), PLENTY);
        assertThat(chosen(choice, "elm")).containsExactly("pinch");
        assertThat(reasons(choice, "elm", "pinch")).containsExactly(new ChoiceReason.Pinned());
        assertThat(reasons(choice, "elm", "wire"))
                .containsExactly(
                        new ChoiceReason.Dropped(), new ChoiceReason.AnotherFirst("pinch"));
    }

    @Test
    void twoPinnedPiecesAreBothDoneWhereOneIsUsual() {
        var works = List.of(work("wire", 5, 60, 10), work("pot", 9, 90, 20), work("moss", 8, 9, 0));
        var tree = new TreeWork("elm", "Ann", works, Set.of("wire", "pot"), Set.of());
        assertThat(chosen(DayChoice.of(List.of(tree), PLENTY), "elm"))
                .containsExactly("pot", "wire");
    }

    @Test
    void aPinnedPieceThatDoesNotFitIsTold() {
        var works = List.of(work("wire", 5, 60, 10), work("pot", 9, 90, 20));
        var tree = new TreeWork("elm", "Ann", works, Set.of("pot", "graft"), Set.of());
        var choice = DayChoice.of(List.of(tree), teaching(15));
        assertThat(chosen(choice, "elm")).containsExactly("wire");
        assertThat(choice.find("elm").orElseThrow().pinnedInVain())
                .extracting(DayChoice.Decision::technique)
                .containsExactly("pot", "graft");
        assertThat(reasons(choice, "elm", "pot"))
                .containsExactly(new ChoiceReason.InstructorTime(20, 5));
        assertThat(reasons(choice, "elm", "graft")).containsExactly(new ChoiceReason.NotPossible());
    }

    @Test
    void aStudentsMinutesAreForAllTheirTrees() {
        var elm = TreeWork.of("elm", "Ann", List.of(work("pot", 9, 250, 20)));
        var oak =
                TreeWork.of(
                        "oak", "Ann", List.of(work("wire", 8, 250, 20), work("moss", 1, 30, 0)));
        var choice = DayChoice.of(List.of(elm, oak), PLENTY);
        assertThat(chosen(choice, "elm")).containsExactly("pot");
        assertThat(chosen(choice, "oak")).containsExactly("moss");
        var alone =
                DayChoice.of(
                        List.of(elm, TreeWork.of("oak", "Ann", List.of(work("wire", 8, 250, 20)))),
                        PLENTY);
        assertThat(chosen(alone, "oak")).isEmpty();
        assertThat(reasons(alone, "oak", "wire"))
                .containsExactly(new ChoiceReason.StudentTime(250, 150));
    }

    /** 30 minutes: one piece of 50 for 20 and one of 45 for 10, or one of 90 for 30. By hand. */
    @Test
    void instructorsTimeGoesWhereItIsMostUsefulInAll() {
        var elm =
                TreeWork.of(
                        "elm", "Ann", List.of(work("chop", 90, 60, 30), work("pot", 50, 60, 20)));
        var oak = TreeWork.of("oak", "Ben", List.of(work("wire", 45, 60, 10)));
        var choice = DayChoice.of(List.of(elm, oak), teaching(30));
        assertThat(chosen(choice, "elm")).containsExactly("pot");
        assertThat(chosen(choice, "oak")).containsExactly("wire");
        assertThat(reasons(choice, "elm", "chop"))
                .as("10 of the 30 minutes are the oak's")
                .containsExactly(
                        new ChoiceReason.InstructorTime(30, 20),
                        new ChoiceReason.AnotherFirst("pot"));
    }

    @Test
    void whatToolsAndMaterialsDoNotAllowIsTold() {
        var bend = with(work("bend", 9, 60, 10), Map.of("jack", 300), Map.of("wire", 70.0));
        var saw = with(work("saw", 8, 60, 10), Map.of("chainsaw", 5), Map.of());
        var choice =
                DayChoice.of(
                        List.of(
                                TreeWork.of("elm", "Ann", List.of(bend)),
                                TreeWork.of("oak", "Ben", List.of(bend, saw))),
                        PLENTY);
        assertThat(chosen(choice, "elm")).containsExactly("bend");
        assertThat(chosen(choice, "oak")).isEmpty();
        assertThat(reasons(choice, "oak", "bend"))
                .containsExactly(
                        new ChoiceReason.ToolTaken("jack", 300, 100),
                        new ChoiceReason.MaterialShort("wire", 70, 30));
        assertThat(new ChoiceReason.MaterialShort("wire", 70, 30).shortBy()).isEqualTo(40);
        assertThat(reasons(choice, "oak", "saw"))
                .containsExactly(new ChoiceReason.ToolMissing("chainsaw"));
    }

    @Test
    void workWithoutTheSkillIsOnlyDoneWhereItIsTaughtToday() {
        var missing = skilled(work("pot", 9, 90, 20), Skill.MISSING);
        var taught = skilled(work("pot", 9, 90, 20), Skill.TAUGHT_TODAY);
        var tree = new TreeWork("elm", "Ann", List.of(missing), Set.of("pot"), Set.of());
        var choice = DayChoice.of(List.of(tree), PLENTY);
        assertThat(chosen(choice, "elm")).isEmpty();
        assertThat(reasons(choice, "elm", "pot")).containsExactly(new ChoiceReason.SkillMissing());
        var today = DayChoice.of(List.of(TreeWork.of("elm", "Ann", List.of(taught))), PLENTY);
        assertThat(reasons(today, "elm", "pot"))
                .containsExactly(new ChoiceReason.TaughtToday(), new ChoiceReason.MostUseful());
    }

    @Test
    void ofEquallyUsefulWorkTheLessonOfTheDayComesFirst() {
        var taught = skilled(work("wire", 9, 90, 20), Skill.TAUGHT_TODAY);
        var tree = TreeWork.of("elm", "Ann", List.of(work("pot", 9, 90, 20), taught));
        assertThat(chosen(DayChoice.of(List.of(tree), PLENTY), "elm")).containsExactly("wire");
    }

    @Test
    void whereTwoPiecesAreAllowedTheSecondIsTheLessUseful() {
        var limits = new DayLimits(400, Map.of(), 25, Map.of(), Map.of(), 2);
        var elm =
                TreeWork.of("elm", "Ann", List.of(work("wire", 5, 60, 10), work("pot", 9, 90, 10)));
        var oak = TreeWork.of("oak", "Ben", List.of(work("wire", 3, 60, 10)));
        var choice = DayChoice.of(List.of(elm, oak), limits);
        assertThat(chosen(choice, "elm")).containsExactly("pot");
        assertThat(chosen(choice, "oak")).containsExactly("wire");
        var alone = DayChoice.of(List.of(elm), limits);
        assertThat(chosen(alone, "elm")).containsExactly("pot", "wire");
        assertThat(reasons(alone, "elm", "wire"))
                .containsExactly(new ChoiceReason.FitsBeside("pot"));
    }

    @Test
    void aDayWithoutTreesHasNoWork() {
        assertThat(DayChoice.of(List.of(), PLENTY).trees()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, 1000.5, Double.NaN, Double.POSITIVE_INFINITY})
    void usefulnessOutsideItsRangeIsRefused(double usefulness) {
        assertThatThrownBy(() -> work("wire", usefulness, 60, 10))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(Double.toString(usefulness))
                .hasMessageContaining("wire");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1.01, Double.NaN})
    void anImpossibleProbabilityIsRefused(double probability) {
        assertThatThrownBy(() -> new Expected(probability))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(Double.toString(probability));
    }

    @Test
    void aTechniquePinnedAndDroppedIsRefused() {
        assertThatThrownBy(
                        () -> new TreeWork("elm", "Ann", List.of(), Set.of("pot"), Set.of("pot")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("pot");
    }

    @Test
    void oneTreeTwiceIsRefused() {
        var tree = TreeWork.of("elm", "Ann", List.of());
        assertThatThrownBy(() -> DayChoice.of(List.of(tree, tree), PLENTY))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("elm");
    }
}
