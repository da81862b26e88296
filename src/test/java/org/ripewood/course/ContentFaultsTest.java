package org.ripewood.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every kind of fault, each as one edit of faultless content: file, line, found, expected. */
@Tag("fast")
class ContentFaultsTest {

    private static final String WIRING = "techniques/wiring_primary.yaml";
    private static final String REPOTTING = "techniques/root_pruning_repot.yaml";
    private static final String CANDLES = "techniques/candle_cutting.yaml";
    private static final String BENDING = "techniques/heavy_bending.yaml";
    private static final String PINE = "species/pinus_thunbergii.yaml";
    private static final String LESSON = "lessons/wiring-branches.md";
    private static final String VIGOUR = "rubrics/vigour.yaml";

    /**
     * @param marker what first stands on the line of the fault after the edit; empty for the file
     */
    record Edit(
            String file, String old, String with, String marker, String found, String expected) {

        @Override
        public String toString() {
            return file + ": " + found;
        }
    }

    static Stream<Edit> edits() {
        return Stream.of(
                        brokenYaml(),
                        againstTheSchema(),
                        againstOtherFiles(),
                        againstFacts(),
                        againstClocks(),
                        againstGroupsOfWork(),
                        inAftercare())
                .flatMap(List::stream);
    }

    private static List<Edit> brokenYaml() {
        return List.of(
                new Edit(
                        PINE,
                        "flushes: One",
                        "flushes: [One",
                        "hardiness:",
                        "expected ',' or ']', but got :",
                        "well-formed YAML"),
                new Edit(
                        PINE,
                        "  zoneMax: 8",
                        "\tzoneMax: 8",
                        "\tzoneMax",
                        "found character '\\t(TAB)' that cannot start any token. (Do not use"
                                + " \\t(TAB) for indentation)",
                        "well-formed YAML"),
                new Edit(
                        PINE,
                        "  zoneMax: 8",
                        "  zoneMin: 4\n  zoneMax: 8",
                        "zoneMin: 4",
                        "\"zoneMin\" a second time",
                        "each name once"),
                new Edit(
                        PINE,
                        "groups: [conifer,",
                        "groups: &all [conifer,",
                        "groups:",
                        "the anchor &all",
                        "values written out in place"),
                new Edit(
                        PINE,
                        "common: Japanese",
                        "common: !name Japanese",
                        "common:",
                        "the tag !name",
                        "values without tags"),
                new Edit(
                        PINE,
                        "common: Japanese",
                        "common: Japa\u0007nese",
                        "common:",
                        "the character U+0007",
                        "printable text"),
                new Edit(
                        LESSON,
                        "---\ncode",
                        "code",
                        "code",
                        "no front matter",
                        "front matter between two lines of ---"),
                new Edit(
                        LESSON,
                        "minutes: 120",
                        "minutes: [120",
                        "teaches:",
                        "expected ',' or ']', but got :",
                        "well-formed YAML"));
    }

    private static List<Edit> againstTheSchema() {
        return List.of(
                new Edit(
                        WIRING,
                        "stage: structure\n",
                        "",
                        "code: wiring_primary",
                        "no \"stage\"",
                        "the field \"stage\""),
                new Edit(
                        WIRING,
                        "    fresh: 120",
                        "    frsh: 120",
                        "frsh",
                        "the field \"frsh\"",
                        "one of fact, atLeast, atMost, is, oneOf, fresh, strength, eye, overrides,"
                                + " why, source, onTheDay. Maybe “fresh”."),
                new Edit(
                        WIRING,
                        "fact: vigour_index",
                        "fact: vigor_index",
                        "vigor_index",
                        "\"vigor_index\"",
                        "one of the 82 known. Maybe “vigour_index”."),
                new Edit(
                        WIRING,
                        "strength: must",
                        "strength: mist",
                        "mist",
                        "\"mist\"",
                        "one of must, should. Maybe “must”."),
                new Edit(
                        WIRING,
                        "    atLeast: 62",
                        "    atLeast: much",
                        "much",
                        "\"much\"",
                        "a value of type number"),
                new Edit(
                        WIRING,
                        "    atLeast: 62",
                        "    atLeast: 62\n    atMost: 90",
                        "fact: vigour_index",
                        "the fields [fact, atLeast, atMost, fresh, strength, overrides, why,"
                                + " source]",
                        "exactly one of: atLeast; atMost; is; oneOf"),
                new Edit(
                        WIRING,
                        "neededWhen: {fact: branches_hold, is: false}",
                        "neededWhen: {fact: branches_hold}",
                        "neededWhen",
                        "the fields [fact]",
                        "exactly one of: all; any; not; fact with one of atLeast, atMost, is,"
                                + " oneOf"),
                new Edit(WIRING, "stress: 4", "stress: 11", "stress: 11", "11", "at most 10"),
                new Edit(
                        WIRING,
                        "quietDaysBefore: 84",
                        "quietDaysBefore: -1",
                        "quietDaysBefore",
                        "-1",
                        "at least 0"),
                new Edit(
                        WIRING,
                        "title: Wire the primary branches",
                        "title: W",
                        "title: W",
                        "1 letters",
                        "at least 3 letters"),
                new Edit(
                        WIRING,
                        "lessons: [wiring-branches]",
                        "lessons: []",
                        "lessons: []",
                        "0 entries",
                        "at least 1 entries"),
                new Edit(
                        WIRING,
                        "tools: [wire cutters, pliers, turntable]",
                        "tools: [wire cutters, pliers, pliers]",
                        "tools:",
                        "the same entry twice",
                        "each entry once"),
                new Edit(
                        CANDLES,
                        "{stages: [\"31-35\"]}",
                        "{stages: [June]}",
                        "June",
                        "\"June\"",
                        "A range of growth stages in two-digit BBCH codes, both ends included,"
                                + " e.g. \"01-03\". \"91-03\" wraps over the winter."),
                new Edit(
                        WIRING,
                        "eye: instructor",
                        "eye: student",
                        "eye: student",
                        "\"student\"",
                        "\"instructor\""),
                new Edit(LESSON, "minutes: 120", "minutes: 5", "minutes: 5", "5", "at least 10"),
                new Edit(
                        VIGOUR,
                        "subject: tree",
                        "subject: bench",
                        "bench",
                        "\"bench\"",
                        "one of tree, student."),
                new Edit(
                        PINE,
                        "habit: evergreen_conifer",
                        "habit: evergreen_conifr",
                        "evergreen_conifr",
                        "\"evergreen_conifr\"",
                        "one of deciduous, evergreen_broadleaf, evergreen_conifer,"
                                + " deciduous_conifer, tropical. Maybe “evergreen_conifer”."));
    }

    private static List<Edit> againstOtherFiles() {
        return List.of(
                new Edit(
                        PINE,
                        "code: pinus_thunbergii",
                        "code: pinus_thunbergi",
                        "code:",
                        "\"pinus_thunbergi\"",
                        "\"pinus_thunbergii\", as the file is called"),
                new Edit(
                        PINE,
                        "groups: [conifer,",
                        "groups: [tropical, conifer,",
                        "groups:",
                        "the habit \"tropical\" among the groups",
                        "groups beside the habit, which counts as one by itself"),
                new Edit(
                        PINE,
                        "  zoneMin: 5",
                        "  zoneMin: 9",
                        "zoneMin",
                        "9 to 8",
                        "the lesser number first"),
                new Edit(
                        PINE,
                        "youngYears: [3, 4]",
                        "youngYears: [5, 4]",
                        "youngYears",
                        "5 to 4",
                        "the lesser number first"),
                new Edit(
                        PINE,
                        "stages: [\"01-03\"]",
                        "stages: [\"21-23\"]",
                        "21-23",
                        "\"21-23\"",
                        "BBCH stages of trees: bud 00-09, leaf 10-19, shoot 31-39, flower and"
                                + " fruit 51-89, end of the season 91-99"),
                new Edit(
                        PINE,
                        "stages: [\"01-03\"]",
                        "stages: [\"39-55\"]",
                        "39-55",
                        "\"39-55\", from one track to the other",
                        "both ends among leaves and shoots, or both among flower and fruit (51 to"
                                + " 89)"),
                new Edit(
                        WIRING,
                        "after: [branch_selection]",
                        "after: [branch_selectoin]",
                        "after:",
                        "\"branch_selectoin\"",
                        "the code of a technique. Maybe “branch_selection”."),
                new Edit(
                        WIRING,
                        "lessons: [wiring-branches]",
                        "lessons: [wiring-branch]",
                        "lessons:",
                        "\"wiring-branch\"",
                        "the code of a lesson. Maybe “wiring-branches”."),
                new Edit(
                        WIRING,
                        "overrides: [{groups: [conifer], atLeast: 68}]",
                        "overrides: [{species: [juniperus_rigda], atLeast: 68}]",
                        "juniperus_rigda",
                        "\"juniperus_rigda\"",
                        "the code of a species. Maybe “juniperus_rigida”."),
                new Edit(
                        CANDLES,
                        "appliesTo: {groups: [two_flush_pine]}",
                        "appliesTo: {species: [pinus_densiflora]}",
                        "appliesTo",
                        "\"pinus_densiflora\"",
                        "the code of a species. Maybe “pinus_parviflora”."),
                new Edit(
                        BENDING,
                        "    - {stages: [\"01-03\", \"31-35\"]}\n",
                        "    - {groups: [larch], stages: [\"01-03\", \"31-35\"]}\n",
                        "  windows:",
                        "no line for "
                                + "acer_buergerianum, acer_palmatum, buxus_sempervirens,"
                                + " carpinus_betulus, cotoneaster_horizontalis,"
                                + " crataegus_monogyna, fagus_crenata, fagus_sylvatica,"
                                + " ginkgo_biloba, ligustrum_ovalifolium, malus_sp,"
                                + " olea_europaea, prunus_mume, quercus_robur, quercus_suber,"
                                + " rhododendron_indicum, ulmus_minor, ulmus_parvifolia,"
                                + " zelkova_serrata",
                        "a line for every species, or a last one without groups and species"),
                new Edit(
                        BENDING,
                        "  windows:\n",
                        "  windows:\n    - {stages: [\"00-01\"]}\n",
                        "{stages: [\"00-01\"]}",
                        "a line for every species before others",
                        "the line without groups and species last, since the first that holds"
                                + " counts"),
                new Edit(
                        WIRING,
                        "recoveryDays: 84",
                        "recoveryDays: 0",
                        "recoveryDays",
                        "stress 4 over 0 days",
                        "stress and days of recovery both 0, or neither"),
                new Edit(
                        CANDLES,
                        "  typical: 0.3",
                        "  typical: 0.5",
                        "typical",
                        "0.5",
                        "at most the limit, 0.4"),
                new Edit(
                        CANDLES,
                        "asks: [foliageShare, measures]",
                        "asks: [measures]",
                        "asks:",
                        "no foliageShare",
                        "a report that states the share when the work takes one"),
                new Edit(
                        LESSON,
                        "teaches: [wiring_primary,",
                        "teaches: [wiring_primray,",
                        "teaches:",
                        "\"wiring_primray\"",
                        "the code of a technique. Maybe “wiring_primary”."),
                new Edit(
                        LESSON,
                        "order: 4",
                        "order: 5",
                        "order:",
                        "place 5 in structure, where guying-and-bending is",
                        "a place of its own"),
                new Edit(
                        LESSON,
                        "## Why",
                        "## Where",
                        "## Where",
                        "\"## Where\"",
                        "the section \"## Why\""),
                new Edit(
                        "lessons/reading-a-tree.md",
                        "## Cautions",
                        "Cautions",
                        "\u0000",
                        "the end of the text",
                        "the section \"## Cautions\""),
                new Edit(
                        LESSON,
                        "## Exercise",
                        "## Homework",
                        "## Homework",
                        "\"## Homework\"",
                        "\"## Exercise\", \"## Check yourself\", or no further section"),
                new Edit(
                        LESSON,
                        "## Check yourself",
                        "## Worked example",
                        "\u0001",
                        "\"## Worked example\"",
                        "\"## Check yourself\", or no further section"),
                new Edit(
                        LESSON,
                        "Wire is a splint.",
                        "Wire is a splint.<br>",
                        "<br>",
                        "HTML, \"<br>\"",
                        "Markdown alone"),
                new Edit(
                        LESSON,
                        "Wire is a splint.",
                        "Wire is a [splint](JavaScript:alert(1)).",
                        "JavaScript",
                        "a link to \"JavaScript:alert(1)\"",
                        "a link that begins with https://, http:// or mailto:, or none"),
                new Edit(
                        LESSON,
                        "Wire is a splint.",
                        "Wire is a [splint](data:text/html,x).",
                        "data:",
                        "a link to \"data:text/html,x\"",
                        "a link that begins with https://, http:// or mailto:, or none"),
                new Edit(
                        CANDLES,
                        "  growingDaysLeft: 100\n",
                        "  avoid:\n    - {stages: [\"91-39\"], why: Tried out.}\n",
                        "  avoid:",
                        "every stage closed for pinus_thunbergii",
                        "lines that leave at least one stage open"),
                new Edit(
                        CANDLES,
                        "instructor: 15}",
                        "instructor: 0}",
                        "minutes:",
                        "0 minutes to inspect",
                        "at least 1 where a step is irreversible"),
                new Edit(
                        WIRING,
                        "minutes: {student: 90",
                        "minutes: {student: 19",
                        "minutes:",
                        "19",
                        "at least the instructor's 20"),
                new Edit(
                        VIGOUR,
                        "level: 2",
                        "level: 3",
                        "level: 3",
                        "level 3",
                        "level 2, counted from 0 without gaps"),
                new Edit(
                        VIGOUR,
                        "subject: tree",
                        "subject: student",
                        "feeds:",
                        "a fact of the tree from judging a student",
                        "no feeds"),
                new Edit(
                        "rubrics/wiring-skill.yaml",
                        "subject: student",
                        "subject: tree",
                        "shows:",
                        "a skill of a student from judging a tree",
                        "no shows"),
                new Edit(
                        "rubrics/wiring-skill.yaml",
                        "fromLevel: 3",
                        "fromLevel: 5",
                        "fromLevel",
                        "level 5",
                        "a level of the rubric, 1 to 4"),
                new Edit(
                        "rubrics/wiring-skill.yaml",
                        "lessons: [wiring-branches]",
                        "lessons: [wiring-branch]",
                        "lessons",
                        "\"wiring-branch\"",
                        "the code of a lesson. Maybe “wiring-branches”."),
                new Edit(
                        VIGOUR,
                        "perLevel: [10, 32, 55, 70, 84]",
                        "perLevel: [10, 32, 55, 70]",
                        "perLevel",
                        "4 values",
                        "one value for each of the 5 levels"),
                new Edit(
                        "stages.yaml",
                        "order: 2",
                        "order: 1",
                        "code: develop",
                        "1 a second time",
                        "each stage in a place of its own"),
                new Edit(
                        "groups.yaml",
                        "code: conifer\n",
                        "code: tropical\n",
                        "\u0001",
                        "\"tropical\" a second time",
                        "each code once"),
                new Edit(
                        "durations.yaml",
                        "after: [wiring_primary, guy_wiring]",
                        "after: [wiring_primari, guy_wiring]",
                        "after: [wiring_primari,",
                        "\"wiring_primari\"",
                        "the code of a technique. Maybe “wiring_primary”."),
                new Edit(
                        "durations.yaml",
                        "seasons: {low: 1, usual: 1.5, high: 2.5}",
                        "seasons: {low: 2, usual: 1.5, high: 2.5}",
                        "seasons: {low: 2,",
                        "low 2.0, usual 1.5, high 2.5",
                        "low at most usual, and usual at most high"),
                new Edit(
                        "durations.yaml",
                        "    after: [heavy_bending]\n",
                        "    after: [heavy_bending]\n    each: 1\n",
                        "each: 1",
                        "each for branches_hold, which is no number",
                        "no each, since it is so or not"),
                new Edit(
                        "glossary.yaml",
                        "also: [wound wood]",
                        "also: [Cambium]",
                        "word: cambium",
                        "\"cambium\" a second time",
                        "each word once"),
                new Edit(
                        "glossary.yaml",
                        "techniques: [callus_refreshing]",
                        "techniques: [callus_refreshin]",
                        "techniques: [callus_refreshin]",
                        "\"callus_refreshin\"",
                        "the code of a technique. Maybe “callus_refreshing”."),
                new Edit(
                        "glossary.yaml",
                        "lessons: [layering]",
                        "lessons: [layring]",
                        "lessons: [layring]",
                        "\"layring\"",
                        "the code of a lesson. Maybe “layering”."));
    }

    /** What a readiness sheet needs: a column for every technique but care, and few words. */
    private static List<Edit> againstGroupsOfWork() {
        return List.of(
                new Edit(
                        WIRING,
                        "work: wire\n",
                        "work: wires\n",
                        "work: wires",
                        "\"wires\"",
                        "the code of a group of work. Maybe “wire”."),
                new Edit(
                        WIRING,
                        "work: wire\n",
                        "",
                        "code: wiring_primary",
                        "no \"work\"",
                        "the code of a group of work"),
                new Edit(
                        "techniques/feed_up.yaml",
                        "purpose: care\n",
                        "purpose: care\nwork: roots\n",
                        "work: roots",
                        "\"work\" for care",
                        "none, as care has no cell"),
                new Edit(
                        REPOTTING,
                        "short: Repot, prune roots\n",
                        "",
                        "title:",
                        "a title of 5 words and no \"short\"",
                        "\"short\" with 4 words at most"),
                new Edit(
                        "facts.yaml",
                        "    short: {words: circling root, unit: turn}\n",
                        "",
                        "title: How far the thickest root runs round",
                        "a title of 7 words and no \"short\"",
                        "\"short\" with 3 words at most"),
                new Edit(
                        "works.yaml",
                        "  - code: show\n",
                        "  - {code: wire, title: Bend, note: The same once more.}\n  - code: show\n",
                        "{code: wire",
                        "\"wire\" a second time",
                        "each code once"),
                new Edit(
                        "works.yaml",
                        "  - code: show\n",
                        "  - {code: styling, title: All, note: More than there is.}\n  - code: show\n",
                        "{code: styling",
                        "\"styling\", which stands for something else",
                        "a code that no technique has, and not \"styling\""));
    }

    /** One answer to each when: clocks stand once, and techniques keep to them. */
    private static List<Edit> againstClocks() {
        return List.of(
                new Edit(
                        REPOTTING,
                        "clock: root_work",
                        "clock: root_wrok",
                        "root_wrok",
                        "\"root_wrok\"",
                        "one of root_work, small_cuts, large_cuts, chop, wiring, feeding, deadwood."
                                + " Maybe “root_work”."),
                new Edit(
                        REPOTTING,
                        "  clock: root_work\n",
                        "  windows: [{stages: [\"01-07\"]}]\n",
                        "season:",
                        "no \"clock\"",
                        "clock: root_work. Maybe add it; roots are cut"),
                new Edit(
                        REPOTTING,
                        "  clock: root_work\n",
                        "  clock: root_work\n  windows: [{groups: [larch], stages: [\"01-07\"]}]\n",
                        "01-07",
                        "01-07, outside of root_work of larix_kaempferi (01-03)",
                        "stages within it. Maybe leave the line out; the clock says it"),
                new Edit(
                        "techniques/branch_removal.yaml",
                        "  clock: large_cuts\n",
                        "  anyTime: true\n",
                        "season:",
                        "no \"clock\"",
                        "clock: small_cuts, large_cuts or chop. Maybe small_cuts; branches are cut"),
                new Edit(
                        "techniques/approach_graft.yaml",
                        "{groups: [maple], species: [carpinus_betulus], stages: [\"12-33\"]}",
                        "{groups: [maple], species: [carpinus_betulus], stages: [\"07-33\"]}",
                        "07-33",
                        "07-33, when cuts bleed on acer_buergerianum, acer_palmatum,"
                                + " carpinus_betulus",
                        "a line for them outside of their bleeding. Maybe whileBleeding, with why"
                                + " it may be done then"),
                new Edit(
                        "groups.yaml",
                        "large_cuts: [\"19-33\"]",
                        "large_cuts: [\"09-33\"]",
                        "large_cuts: [\"09-33\"]",
                        "large_cuts at stage 09, when cuts bleed",
                        "stages outside of the bleeding"),
                new Edit(
                        WIRING,
                        "  clock: wiring\n",
                        "  clock: wiring\n  anyTime: true\n",
                        "season:",
                        "anyTime beside windows or a clock",
                        "exactly one of: anyTime; windows, clock or both"),
                new Edit(
                        "techniques/pinching.yaml",
                        "ligustrum_ovalifolium, cot",
                        "ligustrum_ovalifolum, cot",
                        "ligustrum_ovalifolum",
                        "\"ligustrum_ovalifolum\"",
                        "the code of a species. Maybe “ligustrum_ovalifolium”."));
    }

    private static List<Edit> inAftercare() {
        return List.of(
                new Edit(
                        REPOTTING,
                        "  - code: frost\n",
                        "  - code: shade\n",
                        "  - code: shade\n    task: Keep",
                        "\"shade\" a second time",
                        "each code once, since what people say of a task is kept under it"),
                new Edit(
                        REPOTTING,
                        "    waitDays: 14\n    onlyStages: [\"93-15\"]\n",
                        "",
                        "kind: frost_guard",
                        "frost_guard in stage 35, in which trees of the tropics always are",
                        "onlyStages or notStages that leave the middle of growth out"),
                new Edit(
                        REPOTTING,
                        "onlyStages: [\"19-91\"]",
                        "onlyStages: [\"65-69\"]",
                        "65-69",
                        "\"65-69\", of flower and fruit",
                        "stages of leaves and shoots, by which aftercare goes"),
                new Edit(
                        REPOTTING,
                        "onlyStages: [\"19-91\"]",
                        "notStages: [\"21-31\"]",
                        "21-31",
                        "\"21-31\"",
                        "BBCH stages of trees: bud 00-09, leaf 10-19, shoot 31-39, flower and"
                                + " fruit 51-89, end of the season 91-99"),
                new Edit(
                        REPOTTING,
                        "kind: no_feed",
                        "kind: no_fed",
                        "kind: no_fed",
                        "\"no_fed\"",
                        "one of shade, no_feed, frost_guard, wire_check, measure, other."
                                + " Maybe “no_feed”."),
                new Edit(
                        WIRING,
                        "endsWhen: {fact: wire_on, is: false}",
                        "endsWhen: {fact: wire_on, is: no}",
                        "endsWhen",
                        "\"no\"",
                        "true or false for wire_on"));
    }

    private static List<Edit> againstFacts() {
        return List.of(
                new Edit(
                        "facts.yaml",
                        "unit: mm",
                        "unit: cm",
                        "unit: cm",
                        "\"cm\"",
                        "\"mm\", in which the rules reckon"),
                new Edit(
                        WIRING,
                        "    atLeast: 62",
                        "    atLeast: 620",
                        "atLeast: 620",
                        "620",
                        "a number from 0 to 100 for vigour_index"),
                new Edit(
                        WIRING,
                        "neededWhen: {fact: branches_hold, is: false}",
                        "neededWhen: {fact: branches_hold, atMost: 0}",
                        "neededWhen",
                        "atMost on branches_hold, which is a yes or no",
                        "is"),
                new Edit(
                        WIRING,
                        "neededWhen: {fact: branches_hold, is: false}",
                        "neededWhen:\n  any:\n    - not: {fact: branches_hold, is: no}",
                        "is: no",
                        "\"no\"",
                        "true or false for branches_hold"),
                new Edit(
                        WIRING,
                        "neededWhen: {fact: branches_hold, is: false}",
                        "neededWhen: {all: [{fact: front_mark, oneOf: [setled, tentative]}]}",
                        "setled",
                        "\"setled\"",
                        "one of none, tentative, settled for front_mark. Maybe “settled”."),
                new Edit(
                        WIRING,
                        "neededWhen: {fact: branches_hold, is: false}",
                        "neededWhen: {fact: wound_open_mm, atLeast: 5}",
                        "wound_open_mm",
                        "\"wound_open_mm\", read at a place on the tree",
                        "a fact of the tree as a whole"),
                new Edit(
                        WIRING,
                        "  - fact: pest_level\n    atMost: 1",
                        "  - fact: vigour_index\n    atLeast: 1",
                        "fact: vigour_index\n    atLeast: 1\n",
                        "vigour_index with atLeast a second time",
                        "each fact with each comparison once"),
                new Edit(
                        WIRING,
                        "{groups: [conifer], atLeast: 68}",
                        "{groups: [conifer], atMost: 68}",
                        "atMost: 68",
                        "atMost",
                        "the comparison of the criterion it stands for"),
                new Edit(
                        WIRING,
                        "  - {fact: wire_on, is: true}",
                        "  - {fact: wire_days, value: 1}",
                        "wire_days",
                        "\"wire_days\", which is worked out from the record",
                        "a fact that somebody records"),
                new Edit(
                        WIRING,
                        "  - {fact: wire_on, is: true}",
                        "  - {fact: wire_on, is: 'on'}",
                        "{fact: wire_on, is: 'on'}",
                        "\"on\"",
                        "true or false for wire_on"),
                new Edit(
                        VIGOUR,
                        "perLevel: [10, 32, 55, 70, 84]",
                        "perLevel: [10, 32, 55, 70, 840]",
                        "840",
                        "840",
                        "a number from 0 to 100 for vigour_index"),
                new Edit(
                        VIGOUR,
                        "fact: vigour_index",
                        "fact: wire_on",
                        "wire_on",
                        "\"wire_on\"",
                        "a number of the tree as a whole that somebody records"));
    }

    @ParameterizedTest
    @MethodSource("edits")
    void isToldWithItsLine(Edit edit) {
        var editing = new Editing().replace(edit.file(), edit.old(), edit.with());
        var outcome = editing.read();
        assertThat(outcome.faults()).containsExactly(fault(edit, editing));
        assertThat(outcome.content()).isNull();
    }

    private static ContentFault fault(Edit edit, Editing editing) {
        var line =
                switch (edit.marker()) {
                    case "\u0000" -> (int) editing.text(edit.file()).lines().count();
                    case "\u0001" -> editing.lastLineOf(edit.file(), edit.with());
                    case "code: develop" -> editing.lineOf(edit.file(), "code: develop") + 2;
                    default -> editing.lineOf(edit.file(), edit.marker());
                };
        return new ContentFault(edit.file(), line, edit.found(), edit.expected());
    }

    @Test
    void allFaultsOfAllFilesAreToldAtOnce() {
        var editing = new Editing();
        var chosen = new ArrayList<Edit>();
        for (var edit : edits().toList()) {
            if (chosen.stream().noneMatch(other -> other.file().equals(edit.file()))
                    && !brokenYaml().contains(edit)) {
                chosen.add(edit);
                editing.replace(edit.file(), edit.old(), edit.with());
            }
        }
        assertThat(chosen).hasSizeGreaterThan(6);
        assertThat(editing.faults())
                .containsAll(chosen.stream().map(edit -> fault(edit, editing)).toList());
    }

    @Test
    void oneFileMayHaveManyFaults() {
        var editing =
                new Editing()
                        .replace(WIRING, "stress: 4", "stress: 40")
                        .replace(WIRING, "after: [branch_selection]", "after: [nothing_such]")
                        .replace(WIRING, "    atLeast: 62", "    atLeast: 620");
        assertThat(editing.faults())
                .extracting(ContentFault::found)
                .containsExactly("\"nothing_such\"", "620", "40");
    }

    @Test
    void aSpeciesThatNobodyGivesASeasonIsTold() {
        var editing = new Editing().replace("groups.yaml", "      chop: [\"03-11\"]\n", "");
        assertThat(editing.faults())
                .extracting(ContentFault::file, ContentFault::found)
                .containsExactly(
                        tuple("species/buxus_sempervirens.yaml", "no season for chop"),
                        tuple("species/olea_europaea.yaml", "no season for chop"),
                        tuple("species/quercus_suber.yaml", "no season for chop"));
    }

    @Test
    void workThatGoesByFlowersNeedsToKnowWhenTheyFade() {
        var file = "species/rhododendron_indicum.yaml";
        var editing =
                new Editing()
                        .replace(
                                file,
                                """
                                flowering:
                                  fade: ["19-35"]
                                  source: common practice, no source
                                """,
                                "");
        assertThat(editing.faults())
                .extracting(ContentFault::file, ContentFault::found)
                .containsExactlyInAnyOrder(
                        tuple(file, "stages of the flowers for root_work of rhododendron_indicum"),
                        tuple(
                                "groups.yaml",
                                "stages of the flowers for small_cuts of rhododendron_indicum"),
                        tuple(
                                "groups.yaml",
                                "stages of the flowers for large_cuts of rhododendron_indicum"));
    }

    @Test
    void aSkillToBeShownNeedsALessonThatHasOne() {
        var editing = new Editing();
        var skill = editing.text(LESSON).lines().filter(line -> line.startsWith("skill:"));
        editing.replace(LESSON, skill.findFirst().orElseThrow() + "\n", "");
        assertThat(editing.faults())
                .contains(
                        new ContentFault(
                                WIRING,
                                editing.lineOf(WIRING, "skillLesson"),
                                "\"wiring-branches\", a lesson without a skill",
                                "a lesson that says what the student shows"));
    }

    @Test
    void aFileNobodyReadsIsTold() {
        assertThat(new Editing().write("species/acer_palmatum.yml", "code: x").faults())
                .singleElement()
                .satisfies(
                        fault -> {
                            assertThat(fault.file()).isEqualTo("species/acer_palmatum.yml");
                            assertThat(fault.line()).isZero();
                            assertThat(fault.found()).isEqualTo("a file nobody reads");
                            assertThat(fault.expected()).contains("species/<code>.yaml");
                        });
    }

    @Test
    void aMissingListIsTold() {
        assertThat(new Editing().remove("groups.yaml").faults())
                .containsExactly(
                        new ContentFault("groups.yaml", 0, "no such file", "the file groups.yaml"));
    }

    @Test
    void anEmptyFileIsTold() {
        assertThat(new Editing().write("groups.yaml", "\n# nothing yet\n").faults())
                .containsExactly(
                        new ContentFault(
                                "groups.yaml", 1, "nothing", "YAML with the fields of its schema"));
    }

    @Test
    void bytesThatAreNoTextAreTold() {
        assertThat(new Editing().write(VIGOUR, new byte[] {'c', (byte) 0xC3}).faults())
                .containsExactly(
                        new ContentFault(VIGOUR, 0, "bytes that are no UTF-8", "UTF-8 text"));
    }

    @Test
    void aFactWithoutATextIsTold() {
        var editing = new Editing();
        var text = editing.text("facts.yaml");
        var start = text.indexOf("  - code: wire_on\n");
        var end = text.indexOf("  - code:", start + 1);
        editing.write("facts.yaml", text.substring(0, start) + text.substring(end));
        assertThat(editing.faults())
                .contains(
                        new ContentFault(
                                "facts.yaml", 0, "no text for wire_on", "one text for each fact"));
    }

    @Test
    void aliasesThatWouldGrowWithoutEndAreRefusedQuickly() {
        var bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 30; i++) {
            bomb.append("a%d: &a%d [%s]\n".formatted(i, i, ("*a" + (i - 1) + ", ").repeat(9)));
        }
        assertThat(new Editing().write(PINE, bomb.toString()).faults()).isNotEmpty();
    }
}
