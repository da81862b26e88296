package org.ripewood.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.MonthDay;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Value;

/** Faults in judgement cases and climates are told with file and line. */
@Tag("fast")
class CaseFaultsTest {

    private static final String FILE = "cases/one-topic.yaml";
    private static final String CLIMATE = "climates/inland-45n.yaml";

    private static final String TOPIC =
            """
            code: one-topic
            title: One topic
            about: Cases made up to be spoilt.
            tree:
              climate: inland-45n
              age: 3
              known:
                - {fact: pest_level, is: 0}
                - {fact: vigour_index, is: 80}
                - {fact: soil_moist, is: true}
              signedOff:
                - {technique: root_check, daysAgo: 30}
            cases:
              - name: first
                title: An elm that is looked at by a student
                species: ulmus_minor
                day: "03-12"
                eye: student
                unknown: [soil_moist]
                known:
                  - {fact: vigour_index, is: 40, daysAgo: 20}
                wounds:
                  - {madeDaysAgo: 100, width: 12, looks: [{daysAgo: 50, open: 7}]}
                technique: wiring_primary
                verdicts: [HELD]
                against: [vigour_index or load, branch_selection]
                why: It is not strong enough to be wired.
                source: common practice, no source
            """;

    private static Editing with(String text) {
        return new Editing().write(FILE, text);
    }

    @Test
    void aFaultlessTopicIsReadWithWhatItsCasesHaveInCommon() {
        var outcome = with(TOPIC).read();
        assertThat(outcome.faults()).isEmpty();
        var one =
                Objects.requireNonNull(outcome.content()).cases().stream()
                        .filter(found -> found.code().equals("one-topic/first"))
                        .findFirst()
                        .orElseThrow();
        assertThat(one.line()).isEqualTo(14);
        assertThat(one.day()).isEqualTo(MonthDay.of(3, 12));
        assertThat(one.climate().code()).isEqualTo("inland-45n");
        assertThat(one.tree().known())
                .containsExactlyInAnyOrder(
                        new JudgementCase.Known(Fact.PEST_LEVEL, Value.of(0), 3, Source.STUDENT),
                        new JudgementCase.Known(
                                Fact.VIGOUR_INDEX, Value.of(40), 20, Source.STUDENT));
        assertThat(one.tree().signedOff())
                .extracting(JudgementCase.Done::technique)
                .containsExactly("root_check");
        assertThat(one.against())
                .hasSize(2)
                .anySatisfy(reasons -> assertThat(reasons).containsExactly("vigour_index", "load"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    species: ulmus_minor | species: ulmus_miner | 16 | "ulmus_miner" | the code of a species. Maybe “ulmus_minor”
                    technique: wiring_primary | technique: wiring_primry | 24 | "wiring_primry" | the code of a technique.
                    {technique: root_check, | {technique: root_chek, | 12 | "root_chek" | the code of a technique.
                    climate: inland-45n | climate: inland-46n | 5 | "inland-46n" | the code of a climate.
                    day: "03-12" | day: "02-31" | 17 | "02-31" | a day of the year
                    day: "03-12" | day: "3-12" | 17 | "3-12" | A day of the year as month-day
                    {fact: pest_level, is: 0} | {fact: pest_level, is: 9} | 8 | 9 | a number from 0 to 4 for pest_level
                    {fact: pest_level, is: 0} | {fact: pest_level, is: true} | 8 | true | a number from 0 to 4 for pest_level
                    {fact: pest_level, is: 0} | {fact: pest_levle, is: 0} | 8 | "pest_levle" | the code of a fact. Maybe “pest_level”
                    {fact: pest_level, is: 0} | {fact: open_wounds, is: 0} | 8 | "open_wounds" | what somebody sees or measures
                    {fact: pest_level, is: 0} | {fact: wound_open_mm, is: 0} | 8 | "wound_open_mm" | openings stand in wounds
                    unknown: [soil_moist] | unknown: [soil_moisd] | 19 | "soil_moisd" | the code of a fact.
                    verdicts: [HELD] | verdicts: [HOLD] | 25 | "HOLD" | one of READY, HELD
                    verdicts: [HELD] | verdicts: [READY] | 26 | reasons against what is to be READY | no reasons, or another verdict
                    vigour_index or load, | vigour_index or lode, | 26 | "lode" | the code of a reason.
                    verdicts: [HELD] | stages: [styl] | 25 | "styl" | the code of a stage.
                    daysAgo: 50 | daysAgo: 150 | 23 | a reading 150 days ago | no reading before the wound was made
                    eye: student | eye: teacher | 18 | "teacher" | one of instructor, student
                    source: common practice, no source | source: it is common practice | 28 | it is common practice | short citation
                    why: It is not | reason: It is not | 27 | the field "reason" | one of
                    """)
    void aFaultIsToldWithFileAndLine(
            String old, String with, int line, String found, String expected) {
        assertThat(with(TOPIC.replace(old, with)).faults())
                .anySatisfy(
                        fault -> {
                            assertThat(fault.file()).isEqualTo(FILE);
                            assertThat(fault.line()).isEqualTo(line);
                            assertThat(fault.found()).contains(found);
                            assertThat(fault.expected()).contains(expected);
                        });
    }

    @Test
    void aNameTwiceAndACaseWithoutClimateAreTold() {
        var second = TOPIC.substring(TOPIC.indexOf("  - name: first"));
        assertThat(with(TOPIC + second).faults())
                .extracting(ContentFault::found)
                .contains("\"first\" a second time");
        assertThat(with(TOPIC.replace("  climate: inland-45n\n", "")).faults())
                .extracting(ContentFault::found)
                .contains("no climate");
    }

    @Test
    void aClimateWhoseNightsAreWarmerThanItsDaysIsTold() {
        var editing = new Editing();
        editing.replace(CLIMATE, "minCelsius: [-5", "minCelsius: [15");
        assertThat(editing.faults())
                .singleElement()
                .satisfies(
                        fault -> {
                            assertThat(fault.file()).isEqualTo(CLIMATE);
                            assertThat(fault.line()).isEqualTo(4);
                            assertThat(fault.found()).contains("month 1");
                        });
    }

    @Test
    void contentWithoutCasesIsContent() {
        var editing = new Editing();
        editing.files().bytesByPath().keySet().stream()
                .filter(path -> path.startsWith("cases/") || path.startsWith("climates/"))
                .toList()
                .forEach(editing::remove);
        var outcome = editing.read();
        assertThat(outcome.faults()).isEmpty();
        assertThat(Objects.requireNonNull(outcome.content()).cases()).isEmpty();
    }
}
