package org.ripewood.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.progress.Criterion;
import org.ripewood.core.progress.DoseRule;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.Requirement;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Strength;
import org.ripewood.core.progress.Truth;
import org.ripewood.core.progress.Value;
import org.ripewood.course.ContentInJar;

/** A reason in five words, by the content as it is shipped; the values are made up. */
@Tag("fast")
class ReasonBriefTest {

    private static final LocalDate ON = LocalDate.of(2026, 11, 30);

    private final ReasonBrief brief = new ReasonBrief(ContentInJar.read());

    @Test
    void aNumberIsToldWithWhatWasAskedFor() {
        assertThat(notMet(Fact.LARGEST_OPENING_MM, Value.of(9.5), atMost(8)))
                .isEqualTo("wound 9.5 of 8\u00A0mm");
        assertThat(notMet(Fact.VIGOUR_INDEX, Value.of(48.37), atLeast(62)))
                .isEqualTo("vigour 48 of 62");
        assertThat(notMet(Fact.TRUNK_BASE_SHARE, Value.of(0.546), atLeast(0.9)))
                .isEqualTo("trunk base 55 of 90\u00A0%");
        assertThat(notMet(Fact.CIRCLING_TURN, Value.of(0.45), atMost(0.32)))
                .isEqualTo("circling root 0.45 of 0.32\u00A0turn");
        assertThat(notMet(Fact.DAYS_SINCE_ROOT_WORK, Value.of(30), atLeast(300)))
                .isEqualTo("since root work 30 of 300\u00A0days");
    }

    @Test
    void whatMustNotBeThereIsSaidSo() {
        assertThat(notMet(Fact.OPEN_WOUNDS, Value.of(1), atMost(0)))
                .isEqualTo("open wounds 1, none allowed");
    }

    @Test
    void whatJustFailsDoesNotLookMet() {
        assertThat(notMet(Fact.LARGEST_OPENING_MM, Value.of(8.04), atMost(8)))
                .isEqualTo("wound 8.04 of 8\u00A0mm");
        assertThat(notMet(Fact.VIGOUR_INDEX, Value.of(61.8), atLeast(62)))
                .isEqualTo("vigour 61.8 of 62");
    }

    @Test
    void aYesANoAndAWordAreToldAsTheyAre() {
        assertThat(notMet(Fact.WIRE_ON, Value.of(true), new Requirement.Is(Value.of(false))))
                .isEqualTo("wire still on");
        assertThat(
                        notMet(
                                Fact.ROOT_FLARE_EXPOSED,
                                Value.of(false),
                                new Requirement.Is(Value.of(true))))
                .isEqualTo("flare not uncovered");
        assertThat(
                        notMet(
                                Fact.FRONT_MARK,
                                Value.of("none"),
                                new Requirement.Is(Value.of("settled"))))
                .isEqualTo("no front");
        assertThat(
                        notMet(
                                Fact.FRONT_MARK,
                                Value.of("tentative"),
                                new Requirement.Is(Value.of("settled"))))
                .isEqualTo("front: tentative");
    }

    @Test
    void whatIsNotSeenSaysHowToLook() {
        assertThat(look(Reason.Look.MISSING)).isEqualTo("vigour not known");
        assertThat(look(Reason.Look.STALE)).isEqualTo("vigour: look again");
        assertThat(look(Reason.Look.PROVISIONAL)).isEqualTo("instructor looks: vigour");
    }

    @Test
    void restTurnsLessonsAndDosesHaveWordsOfTheirOwn() {
        assertThat(told(new Reason.OfQuiet(30, 84, false))).isEqualTo("rest 30 of 84\u00A0days");
        assertThat(told(new Reason.OfHeavy(1))).isEqualTo("heavy work this season");
        assertThat(told(new Reason.OfLoad(5.25, 4, 6, Truth.NO)))
                .isEqualTo("load with this work 9.3 of 6");
        assertThat(told(new Reason.OfDose(DoseRule.Kind.ROOT, 0.2, 0.3, 0.4)))
                .isEqualTo("roots with this work 50 of 40\u00A0%");
        assertThat(told(new Reason.OfOrder("branch_selection", Truth.NO)))
                .isEqualTo("after choose the branches");
        assertThat(told(new Reason.OfDevelopment("circling_root_removal")))
                .isEqualTo("first remove circling roots");
        assertThat(told(new Reason.OfSkill("wiring-branches", false)))
                .isEqualTo("lesson: Wiring branches");
        assertThat(told(new Reason.OfNeed(Truth.UNKNOWN, List.of(Fact.MATTED_ROOTS))))
                .isEqualTo("look: matted roots");
    }

    @Test
    void noReasonOnAnyFactOrTechniqueHasMoreThanFiveWords() {
        var content = ContentInJar.read();
        for (var fact : Fact.values()) {
            var words = content.text(fact).brief().words();
            assertThat(words.split(" ")).as(fact.code()).hasSizeLessThanOrEqualTo(3);
        }
        for (var work : content.works()) {
            for (var technique : work.techniques()) {
                for (var told :
                        List.of(
                                brief.of(new Reason.OfOrder(technique, Truth.NO)),
                                brief.of(new Reason.OfDevelopment(technique)))) {
                    assertThat(told.words().split(" ")).hasSizeLessThanOrEqualTo(5);
                }
            }
        }
        for (var lesson : content.lessons().keySet()) {
            assertThat(brief.of(new Reason.OfSkill(lesson, false)).words().split(" "))
                    .hasSizeLessThanOrEqualTo(5);
        }
    }

    private String told(Reason reason) {
        return brief.of(reason).told();
    }

    private String look(Reason.Look look) {
        var criterion = criterion(Fact.VIGOUR_INDEX, atLeast(62));
        return told(
                new Reason.OfCriterion(
                        criterion.key(), criterion, criterion.requirement(), look, null, 0));
    }

    private String notMet(Fact fact, Value value, Requirement required) {
        var criterion = criterion(fact, required);
        assertThat(required.metBy(value)).isFalse();
        return told(
                new Reason.OfCriterion(
                        criterion.key(),
                        criterion,
                        required,
                        Reason.Look.NOT_MET,
                        new Evidence(fact, value, ON.minusDays(9), Source.INSTRUCTOR, "", 1),
                        required.howFar(value)));
    }

    private static Criterion criterion(Fact fact, Requirement required) {
        return new Criterion(fact, required, null, Strength.MUST, false, false, List.of(), "");
    }

    private static Requirement atMost(double bound) {
        return new Requirement.AtMost(bound);
    }

    private static Requirement atLeast(double bound) {
        return new Requirement.AtLeast(bound);
    }
}
