package org.ripewood.trees;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.condition.TreeStates;
import org.ripewood.people.Courses;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;
import org.ripewood.records.MeasurementSeries;
import org.ripewood.records.NewObservation;
import org.ripewood.records.NewSeries;
import org.ripewood.records.NewWound;
import org.ripewood.records.Observation;
import org.ripewood.records.Observations;
import org.ripewood.records.Question;
import org.ripewood.records.SeriesOutcome;
import org.ripewood.records.Wound;
import org.ripewood.records.Wounds;

/** A series is kept as a whole, as if each value had been recorded alone, or asked about. */
@QuarkusTest
class SeriesTest {

    private static final PageRequest ALL = new PageRequest(0, 200);

    @Inject Courses courses;
    @Inject PersonRegistration register;
    @Inject TreeSites treeSites;
    @Inject Trees trees;
    @Inject MeasurementSeries measurementSeries;
    @Inject Observations observing;
    @Inject TreeStates treeStates;
    @Inject Wounds woundsOfSchool;
    @Inject Today today;

    private School school;
    private LocalDate day;
    private Tree tree;
    private Wound wound;

    @BeforeEach
    void openSchool() {
        day = today.date();
        school = new School(register, courses, trees, treeSites, day);
        tree = school.tree();
        wound = wound(tree);
    }

    @Test
    void everyValueIsKeptWithDayNoteAndSource() {
        var stored =
                stored(
                        school.keeper,
                        series(
                                List.of(at(40, 32.5), at(80, 28)),
                                List.of(open(wound, 18)),
                                List.of(whole("shoot_extension_mm", "220"))));
        assertThat(stored.observations())
                .extracting(seen -> seen.fact().code())
                .containsExactly(
                        "trunk_diameter_mm",
                        "trunk_diameter_mm",
                        "wound_open_mm",
                        "shoot_extension_mm");
        assertThat(stored.observations())
                .allSatisfy(
                        seen -> {
                            assertThat(seen.observedOn()).isEqualTo(day);
                            assertThat(seen.note()).isEqualTo("before watering");
                            assertThat(seen.source()).hasToString("STUDENT");
                        });
        assertThat(onRecord()).containsExactlyInAnyOrderElementsOf(stored.ids());
    }

    @Test
    void aTreeOutOfReachIsNotFound() {
        var series = series(List.of(at(40, 32)), List.of(), List.of());
        for (var stranger : List.of(school.otherStudent, school.otherTeacher)) {
            assertThat(
                            problemOf(() -> measurementSeries.record(stranger, tree.id(), series))
                                    .status())
                    .isEqualTo(404);
            assertThat(problemOf(() -> measurementSeries.last(stranger, tree.id())).status())
                    .isEqualTo(404);
        }
        assertThat(onRecord()).isEmpty();
    }

    /** Random series, seed 23: only the ids and the moment of writing may differ. */
    @Test
    void aSeriesEqualsItsValuesRecordedOneByOne() {
        var random = new SplittableRandom(23);
        for (int i = 0; i < 12; i++) {
            var one = school.tree("One " + i);
            var other = school.tree("Other " + i);
            var actor = random.nextBoolean() ? school.keeper : school.teacher;
            var on = day.minusDays(random.nextInt(300));
            var diameters = new ArrayList<NewSeries.Diameter>();
            for (int height = 0; height < 200; height += 10 + random.nextInt(60)) {
                diameters.add(
                        at(height + random.nextInt(9) / 10.0, 20 + random.nextInt(900) / 100.0));
            }
            var openMm = random.nextInt(201) / 10.0;
            var shoot = whole("shoot_extension_mm", String.valueOf(random.nextInt(900)));
            var pests = whole("pest_level", String.valueOf(random.nextInt(5)));
            var series =
                    confirmed(
                            on,
                            diameters,
                            List.of(open(wound(one), openMm)),
                            List.of(shoot, pests),
                            one,
                            actor);
            var alone = new ArrayList<Observation>();
            diameters.forEach(
                    read ->
                            alone.add(
                                    observe(
                                            actor,
                                            other,
                                            on,
                                            "trunk_diameter_mm",
                                            "" + read.diameterMm(),
                                            null,
                                            read.heightMm())));
            alone.add(
                    observe(
                            actor,
                            other,
                            on,
                            "wound_open_mm",
                            "" + openMm,
                            wound(other).id(),
                            null));
            for (var whole : List.of(shoot, pests)) {
                alone.add(observe(actor, other, on, whole.fact(), whole.value(), null, null));
            }
            assertThat(series.observations().stream().map(SeriesTest::bare))
                    .as("series %d of seed 23", i)
                    .containsExactlyElementsOf(alone.stream().map(SeriesTest::bare).toList());
            assertThat(factsOf(one))
                    .as("series %d of seed 23", i)
                    .containsExactlyInAnyOrderElementsOf(factsOf(other));
        }
    }

    @Test
    void everyFaultyFieldIsNamedAndNothingIsKept() {
        var foreign = wound(school.tree("Another"));
        var problem =
                problemOf(
                        () ->
                                measurementSeries.record(
                                        school.teacher,
                                        tree.id(),
                                        new NewSeries(
                                                day,
                                                null,
                                                List.of(
                                                        at(40, 32),
                                                        at(40.3, 31),
                                                        at(6000, 2001),
                                                        at(Double.NaN, 5)),
                                                List.of(
                                                        open(wound, -1),
                                                        open(foreign, 12),
                                                        open(wound, 12)),
                                                List.of(
                                                        whole("shoot_extension_mm", "long"),
                                                        whole("shoot_extention_mm", "9"),
                                                        whole("wound_open_mm", "9"),
                                                        whole("open_wounds", "1")),
                                                null)));
        assertThat(problem.status()).isEqualTo(400);
        assertThat(problem.faults())
                .extracting(Fault::field)
                .containsExactly(
                        "diameters[1].heightMm",
                        "diameters[2].diameterMm",
                        "diameters[2].heightMm",
                        "diameters[3].heightMm",
                        "wounds[0].openMm",
                        "wounds[1].woundId",
                        "wounds[2].woundId",
                        "whole[0].value",
                        "whole[1].fact",
                        "whole[2].fact",
                        "whole[3].fact");
        assertThat(problem.faults().get(8).message()).contains("Maybe “shoot_extension_mm”");
        assertThat(onRecord()).isEmpty();
    }

    @Test
    void aDayThatCannotBeIsRefused() {
        var early = day.minusDays(500);
        assertThat(
                        problemOf(() -> record(series(early, List.of(), List.of(open(wound, 9)))))
                                .faults())
                .extracting(Fault::field)
                .containsExactly("wounds[0].openMm");
        assertThat(
                        problemOf(
                                        () ->
                                                record(
                                                        series(
                                                                day.plusDays(1),
                                                                List.of(at(40, 3)),
                                                                List.of())))
                                .faults())
                .extracting(Fault::field)
                .containsExactly("observedOn");
        assertThat(problemOf(() -> record(series(day, List.of(), List.of()))).faults())
                .extracting(Fault::message)
                .containsExactly("expected at least one value, found none");
    }

    @Test
    void aStudentDoesNotJudgeStrengthInASeries() {
        var series = series(List.of(), List.of(), List.of(whole("vigour_index", "80")));
        assertThat(
                        problemOf(() -> measurementSeries.record(school.keeper, tree.id(), series))
                                .status())
                .isEqualTo(403);
        assertThat(onRecord()).isEmpty();
    }

    /** One row for each oddity: what was there before, what comes, where and what is asked. */
    @TestFactory
    List<DynamicTest> anOddValueIsAskedAboutAndKeptOnceConfirmed() {
        return List.of(
                odd(
                        "slip",
                        series(List.of(at(40, 325)), none(), none()),
                        "diameters[0].diameterMm"),
                odd("fell", series(List.of(at(40, 29)), none(), none()), "diameters[0].diameterMm"),
                odd(
                        "jumped",
                        series(List.of(at(40, 43)), none(), none()),
                        "diameters[0].diameterMm"),
                odd(
                        "bulge",
                        series(List.of(at(60, 36)), none(), none()),
                        "diameters[0].diameterMm"),
                odd("above", series(List.of(at(650, 9)), none(), none()), "diameters[0].heightMm"),
                odd("wider", series(none(), List.of(open(wound, 18)), none()), "wounds[0].openMm"),
                odd("slip", series(none(), List.of(open(wound, 150)), none()), "wounds[0].openMm"),
                odd(
                        "long",
                        series(none(), none(), List.of(whole("shoot_extension_mm", "3200"))),
                        "whole[0].value"),
                odd(
                        "fell",
                        series(none(), none(), List.of(whole("trunk_base_mm", "30"))),
                        "whole[0].value"),
                odd(
                        "slip",
                        series(none(), none(), List.of(whole("height_mm", "60"))),
                        "whole[0].value"));
    }

    private DynamicTest odd(String oddity, NewSeries series, String field) {
        return DynamicTest.dynamicTest(
                oddity + " at " + field,
                () -> {
                    openSchool();
                    var asked = rebound(series);
                    measuredBefore();
                    int before = onRecord().size();
                    var outcome = record(asked);
                    assertThat(outcome).isInstanceOf(SeriesOutcome.Asked.class);
                    var questions = ((SeriesOutcome.Asked) outcome).questions();
                    assertThat(questions).hasSize(1);
                    var question = questions.get(0);
                    assertThat(question.key()).startsWith(oddity + ":").matches(Question.KEY);
                    assertThat(question.field()).isEqualTo(field);
                    assertThat(question.question()).contains("Maybe ");
                    assertThat(onRecord()).hasSize(before);
                    assertThat(record(with(asked, "slip:height1:1"))).isEqualTo(outcome);
                    assertThat(record(with(asked, question.key())))
                            .isInstanceOf(SeriesOutcome.Stored.class);
                    assertThat(onRecord()).hasSize(before + 1);
                });
    }

    @Test
    void oneOpenQuestionHoldsBackTheWholeSeries() {
        measuredBefore();
        int before = onRecord().size();
        var series = series(List.of(at(40, 33), at(80, 280)), List.of(open(wound, 10)), none());
        var asked = (SeriesOutcome.Asked) record(series);
        assertThat(asked.questions())
                .extracting(Question::key)
                .containsExactly("slip:height80:280");
        assertThat(asked.questions().get(0).question())
                .contains("28 mm of")
                .contains("Maybe 28 mm");
        assertThat(onRecord()).hasSize(before);
    }

    @Test
    void aYesToOneValueIsNoneToAnother() {
        measuredBefore();
        var first = (SeriesOutcome.Asked) record(series(List.of(at(40, 29)), none(), none()));
        var other = series(List.of(at(40, 28)), none(), none());
        assertThat(record(with(other, first.questions().get(0).key())))
                .isInstanceOf(SeriesOutcome.Asked.class);
    }

    @Test
    void aCorrectedReadingIsNotHeldAgainstTheNext() {
        var wrong =
                observe(school.keeper, tree, day.minusDays(9), "trunk_base_mm", "410", null, null);
        observing.observe(
                school.keeper,
                tree.id(),
                new NewObservation(
                        "trunk_base_mm",
                        "41",
                        day.minusDays(9),
                        null,
                        null,
                        null,
                        null,
                        wrong.id()));
        assertThat(record(series(none(), none(), List.of(whole("trunk_base_mm", "41.5")))))
                .isInstanceOf(SeriesOutcome.Stored.class);
    }

    @Test
    void whatWasMeasuredLastIsToldForTheNextTime() {
        measuredBefore();
        observe(school.keeper, tree, day.minusDays(3), "trunk_diameter_mm", "33", null, 40.2);
        var closed = wound(tree);
        observe(school.keeper, tree, day.minusDays(3), "wound_open_mm", "0", closed.id(), null);
        var last = measurementSeries.last(school.keeper, tree.id());
        assertThat(last.marks()).extracting(Observation::heightMm).containsExactly(40.2, 80.0);
        assertThat(last.wounds()).extracting(Wound::id).containsExactly(wound.id());
        assertThat(last.whole().keySet())
                .extracting(fact -> fact.code())
                .containsExactlyInAnyOrder("height_mm", "trunk_base_mm");
    }

    @Test
    void aMarkAboveAChoppedTrunkIsNotAskedForAgain() {
        measuredBefore();
        observe(school.keeper, tree, day, "height_mm", "60", null, null);
        assertThat(measurementSeries.last(school.keeper, tree.id()).marks())
                .extracting(Observation::heightMm)
                .containsExactly(40.0);
    }

    /** Half a year ago: 32 mm at 40 mm, 28 mm at 80 mm, wound open by 15 mm, 600 mm high. */
    private void measuredBefore() {
        var before = day.minusDays(180);
        observe(school.teacher, tree, before, "trunk_diameter_mm", "32", null, 40.0);
        observe(school.teacher, tree, before, "trunk_diameter_mm", "28", null, 80.0);
        observe(school.teacher, tree, before, "wound_open_mm", "15", wound.id(), null);
        observe(school.teacher, tree, before, "height_mm", "600", null, null);
        observe(school.teacher, tree, before, "trunk_base_mm", "40", null, null);
    }

    /** The same series on the wound of a tree entered since. */
    private NewSeries rebound(NewSeries series) {
        return new NewSeries(
                series.observedOn(),
                series.note(),
                series.diameters(),
                series.wounds().stream().map(read -> open(wound, read.openMm())).toList(),
                series.whole(),
                series.confirmed());
    }

    private SeriesOutcome.Stored confirmed(
            LocalDate on,
            List<NewSeries.Diameter> diameters,
            List<NewSeries.Opening> wounds,
            List<NewSeries.Whole> whole,
            Tree of,
            Actor actor) {
        var series = new NewSeries(on, "before watering", diameters, wounds, whole, null);
        var outcome = measurementSeries.record(actor, of.id(), series);
        if (outcome instanceof SeriesOutcome.Asked asked) {
            var keys = asked.questions().stream().map(Question::key).toList();
            series = new NewSeries(on, "before watering", diameters, wounds, whole, keys);
            outcome = measurementSeries.record(actor, of.id(), series);
        }
        return (SeriesOutcome.Stored) outcome;
    }

    private SeriesOutcome record(NewSeries series) {
        return measurementSeries.record(school.teacher, tree.id(), series);
    }

    private SeriesOutcome.Stored stored(Actor actor, NewSeries series) {
        return (SeriesOutcome.Stored) measurementSeries.record(actor, tree.id(), series);
    }

    /** What is known of a tree, without the number of the entry it is known from. */
    private List<List<Object>> factsOf(Tree of) {
        return treeStates.on(school.teacher, of.id(), day).facts().all().stream()
                .map(
                        known ->
                                Arrays.<Object>asList(
                                        known.fact(),
                                        known.value(),
                                        known.observedOn(),
                                        known.source(),
                                        known.by()))
                .toList();
    }

    private List<Long> onRecord() {
        return observing.list(school.teacher, tree.id(), ALL).items().stream()
                .map(Observation::id)
                .toList();
    }

    private Observation observe(
            Actor by,
            Tree of,
            LocalDate on,
            String fact,
            String value,
            Long woundId,
            Double heightMm) {
        return observing.observe(
                by,
                of.id(),
                new NewObservation(
                        fact, value, on, "before watering", woundId, null, heightMm, null));
    }

    private Wound wound(Tree of) {
        return woundsOfSchool.add(
                school.teacher,
                of.id(),
                new NewWound("left", day.minusDays(400), 20.0, 30.0, null, null, false));
    }

    /** Without what differs from entry to entry. */
    private static Observation bare(Observation seen) {
        return new Observation(
                0,
                0,
                seen.fact(),
                seen.value(),
                seen.observedOn(),
                seen.source(),
                seen.byId(),
                Instant.EPOCH,
                seen.note(),
                seen.woundId() == null ? null : 0L,
                seen.branchId(),
                seen.heightMm(),
                seen.supersededBy());
    }

    private NewSeries series(
            List<NewSeries.Diameter> diameters,
            List<NewSeries.Opening> wounds,
            List<NewSeries.Whole> whole) {
        return new NewSeries(day, "before watering", diameters, wounds, whole, null);
    }

    private static NewSeries series(
            LocalDate on, List<NewSeries.Diameter> diameters, List<NewSeries.Opening> wounds) {
        return new NewSeries(on, null, diameters, wounds, null, null);
    }

    private static NewSeries with(NewSeries series, String key) {
        return new NewSeries(
                series.observedOn(),
                series.note(),
                series.diameters(),
                series.wounds(),
                series.whole(),
                List.of(key));
    }

    private static <T> List<T> none() {
        return List.of();
    }

    private static NewSeries.Diameter at(double heightMm, double diameterMm) {
        return new NewSeries.Diameter(heightMm, diameterMm);
    }

    private static NewSeries.Opening open(Wound wound, double openMm) {
        return new NewSeries.Opening(wound.id(), openMm);
    }

    private static NewSeries.Whole whole(String fact, String value) {
        return new NewSeries.Whole(fact, value);
    }

    private static Problem problemOf(ThrowingCallable call) {
        assertThatThrownBy(call).isInstanceOf(Refused.class);
        return catchThrowableOfType(Refused.class, call).problem();
    }
}
