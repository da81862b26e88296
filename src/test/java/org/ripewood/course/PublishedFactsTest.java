package org.ripewood.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.progress.DoseRule;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;
import tools.jackson.databind.JsonNode;

/**
 * The content in the jar held against what is published, and against what a school was promised.
 */
@Tag("fast")
class PublishedFactsTest {

    private static final Faults FAULTS = new Faults();
    private static final ContentDocuments SHELF =
            ContentDocuments.read(ContentFiles.inJar(), new Schemas(), FAULTS);
    private static final Content CONTENT =
            java.util.Objects.requireNonNull(new Editing().read().content());

    /**
     * Codes of the scales for pome fruit, stone fruit and grapevine; 31 to 39 and 71 to 79 run in
     * tenths. Source: Meier 2001, BBCH Monograph, 2nd edition; 91, 92, 83 and 99 from memory of it.
     */
    private static final Set<Integer> BBCH = new HashSet<>();

    static {
        BBCH.addAll(List.of(0, 1, 3, 5, 7, 9));
        IntStream.rangeClosed(10, 19).forEach(BBCH::add);
        IntStream.rangeClosed(31, 39).forEach(BBCH::add);
        IntStream.rangeClosed(51, 57).forEach(BBCH::add);
        BBCH.addAll(List.of(59, 60, 61, 62, 63, 64, 65, 67, 69));
        IntStream.rangeClosed(71, 79).forEach(BBCH::add);
        BBCH.addAll(List.of(81, 83, 85, 87, 89));
        BBCH.addAll(List.of(91, 92, 93, 95, 97, 99));
    }

    @Test
    void everyGrowthStageIsOneOfThePublishedScale() {
        var unknown = new ArrayList<String>();
        for (var kind : List.of(ContentKind.TECHNIQUE, ContentKind.SPECIES)) {
            for (var document : SHELF.all(kind).values()) {
                for (var range : stageRanges(document.root())) {
                    for (var code : range.split("-", -1)) {
                        if (!BBCH.contains(Integer.valueOf(code))) {
                            unknown.add(document.file() + ": " + range);
                        }
                    }
                }
            }
        }
        assertThat(unknown).isEmpty();
    }

    private static List<String> stageRanges(JsonNode root) {
        return root.findValues("stages").stream()
                .flatMap(stages -> stages.valueStream().map(JsonNode::asString))
                .toList();
    }

    @Test
    void moreThanAQuarterOfTheFoliageIsTakenOnlyWhereAnotherSourceSaysSo() {
        // ANSI A300-1995, sec. 5.3.1 (withdrawn; later editions give no number): not more than 1/4
        // of the foliage of a mature tree in one growing season. Cuts on trees in training keep to
        // it for conifers of which nobody knows that they are strong (common practice, no source).
        int byTheStandard = 0;
        int ofConifers = 0;
        var pine = CONTENT.species("pinus_sylvestris").traits();
        for (var technique : CONTENT.techniques().values()) {
            var dose = technique.rule().dose();
            if (dose == null || dose.kind() != DoseRule.Kind.FOLIAGE) {
                continue;
            }
            var source = raw(technique.code()).at("dose").requireText("source");
            if (source.contains("ANSI A300")) {
                byTheStandard++;
                assertThat(dose.limitShare()).as(technique.code()).isLessThanOrEqualTo(0.25);
            } else if (dose.limitShare() > 0.25) {
                assertThat(source).as(technique.code()).isEqualTo("common practice, no source");
            }
            if (!dose.limits().isEmpty()) {
                ofConifers++;
                assertThat(dose.forTree(pine, Double.NaN).limitShare())
                        .as(technique.code())
                        .isLessThanOrEqualTo(0.25);
            }
        }
        assertThat(byTheStandard).isPositive();
        assertThat(ofConifers).isGreaterThanOrEqualTo(5);
    }

    @Test
    void hardinessZonesAreZonesOfThePublishedMap() {
        // USDA Plant Hardiness Zone Map 2012: zones 1 to 13.
        assertThat(CONTENT.species().values())
                .allSatisfy(
                        species -> {
                            assertThat(species.zoneMin()).isBetween(1, 13);
                            assertThat(species.zoneMax()).isBetween(species.zoneMin(), 13);
                        });
    }

    /** Havis 1976, HortScience, as usually reprinted (from memory); °F there, rounded to 0.1 °C. */
    private static final Map<String, Double> HAVIS_FAHRENHEIT =
            Map.of(
                    "cryptomeria_japonica", 16.0,
                    "buxus_sempervirens", 15.0,
                    "cotoneaster_horizontalis", 15.0,
                    "acer_palmatum", 14.0,
                    "rhododendron_indicum", 12.0,
                    "taxus_cuspidata", 12.0,
                    "picea_glauca", -10.0);

    @Test
    void rootsAreKilledWhereThePublishedListSaysSo() {
        HAVIS_FAHRENHEIT.forEach(
                (code, fahrenheit) -> {
                    var kill = CONTENT.species(code).rootKillCelsius();
                    assertThat(kill).as(code).isNotNull();
                    assertThat(kill).as(code).isCloseTo((fahrenheit - 32) / 1.8, within(0.06));
                });
    }

    @Test
    void noRootKillTemperatureLiesOutsideThePublishedList() {
        // Havis 1976, HortScience, abstract: 38 woody ornamentals in containers, -5 to -23.3 °C.
        assertThat(CONTENT.species().values())
                .filteredOn(species -> species.rootKillCelsius() != null)
                .hasSizeGreaterThanOrEqualTo(5)
                .allSatisfy(
                        species -> {
                            assertThat(species.rootKillCelsius()).isBetween(-23.3, -5.0);
                            assertThat(species.rootKillSource()).isNotBlank();
                        });
    }

    @Test
    void generaKnownToHarmSayHow() {
        // Genera of published poison lists (ASPCA list and others); such lists are never complete.
        var harmful =
                Set.of(
                        "Taxus",
                        "Nerium",
                        "Rhododendron",
                        "Buxus",
                        "Wisteria",
                        "Ligustrum",
                        "Podocarpus",
                        "Ficus",
                        "Euphorbia",
                        "Prunus",
                        "Malus",
                        "Juniperus",
                        "Ilex",
                        "Pyracantha",
                        "Cotoneaster",
                        "Ginkgo",
                        "Bougainvillea",
                        "Crataegus");
        var found =
                CONTENT.species().values().stream()
                        .filter(species -> harmful.contains(species.latin().split(" ", -1)[0]))
                        .toList();
        assertThat(found).hasSizeGreaterThanOrEqualTo(10);
        assertThat(found)
                .allSatisfy(
                        species -> assertThat(species.toxicity()).as(species.latin()).isNotEmpty());
    }

    @Test
    void noSpeciesIsSaidToBeSafe() {
        assertThat(CONTENT.species().values())
                .allSatisfy(
                        species ->
                                assertThat(species.text().toLowerCase(java.util.Locale.ROOT))
                                        .doesNotContain("non-toxic", "not toxic", "not poisonous"));
    }

    @Test
    void thereIsAsMuchContentAsPromised() {
        assertThat(FAULTS.all()).isEmpty();
        assertThat(CONTENT.stages()).hasSize(5);
        assertThat(CONTENT.species()).hasSizeGreaterThanOrEqualTo(28);
        assertThat(CONTENT.techniques()).hasSizeGreaterThanOrEqualTo(36);
        assertThat(CONTENT.lessons()).hasSizeGreaterThanOrEqualTo(24);
        assertThat(CONTENT.rubrics()).hasSizeGreaterThanOrEqualTo(4);
        assertThat(CONTENT.facts()).containsOnlyKeys(Fact.values());
    }

    /** The lower end is a page; the upper one is what can be read in ten minutes. Our own. */
    @Test
    void aLessonHas250To1600Words() {
        for (var code : CONTENT.lessons().keySet()) {
            assertThat(words(SHELF.body(code).text())).as(code).isBetween(250L, 1600L);
        }
    }

    /** What hands learn is not learnt from a summary. */
    @Test
    void aCraftHasAnExampleAnExerciseQuestionsAndAPicture() {
        for (var code :
                List.of(
                        "repotting",
                        "wiring-branches",
                        "grafting",
                        "refining-pines",
                        "refining-deciduous",
                        "growing-a-trunk",
                        "guying-and-bending",
                        "layering")) {
            var text = SHELF.body(code).text();
            assertThat(words(text)).as(code).isGreaterThanOrEqualTo(900);
            assertThat(text).as(code).contains("![").contains(LessonCheck.PRACTICE);
            var asked = text.substring(text.indexOf(LessonCheck.PRACTICE.get(2)));
            assertThat(asked.split("\\?", -1)).as(code).hasSizeGreaterThanOrEqualTo(4);
            assertThat(asked).as(code).containsPattern("(?s)\nAnswers:\n\n1\\. .*\n2\\. .*\n3\\. ");
        }
    }

    private static long words(String text) {
        return Arrays.stream(text.split("\\s+", -1))
                .filter(word -> word.codePoints().anyMatch(Character::isLetterOrDigit))
                .count();
    }

    @Test
    void lessonsAndTechniquesNameEachOther() {
        CONTENT.techniques()
                .values()
                .forEach(
                        technique ->
                                assertThat(technique.lessons())
                                        .as(technique.code())
                                        .allSatisfy(
                                                lesson ->
                                                        assertThat(CONTENT.lesson(lesson).teaches())
                                                                .contains(technique.code())));
    }

    @Test
    void everyTechniqueSpeciesAndCriterionHasItsSource() {
        for (var technique : SHELF.all(ContentKind.TECHNIQUE).values()) {
            var top = technique.top();
            assertSourced(top);
            assertSourced(top.at("season"));
            assertThat(top.each("criteria")).isNotEmpty();
            top.each("criteria").forEach(PublishedFactsTest::assertSourced);
            if (top.has("dose")) {
                assertSourced(top.at("dose"));
            }
        }
        for (var species : SHELF.all(ContentKind.SPECIES).values()) {
            var top = species.top();
            for (var field :
                    List.of(
                            "hardiness",
                            "repotting",
                            "callus",
                            "compartment",
                            "maxRootShare",
                            "defoliation",
                            "baseCelsius")) {
                assertSourced(top.at(field));
            }
            top.each("toxicity").forEach(PublishedFactsTest::assertSourced);
        }
    }

    private static void assertSourced(Part part) {
        assertThat(part.text("source"))
                .as("source at %s:%d", part.file(), part.line())
                .isNotBlank();
    }

    @Test
    void theSchemasKnowTheFactsTheRulesReckonWith() {
        var codes = Arrays.stream(Fact.values()).map(Fact::code).toList();
        for (var kind : List.of(ContentKind.FACTS, ContentKind.TECHNIQUE, ContentKind.RUBRIC)) {
            var known =
                    Schemas.load(kind.schemaResource())
                            .at("/$defs/fact/enum")
                            .valueStream()
                            .map(JsonNode::asString)
                            .toList();
            assertThat(known).as(kind.name()).containsExactlyInAnyOrderElementsOf(codes);
        }
    }

    private static Part raw(String technique) {
        var document = SHELF.all(ContentKind.TECHNIQUE).get(technique);
        assertThat(document).isNotNull();
        return document.top();
    }

    /**
     * A number that work makes true by itself: a chop leaves no leader, the circling root is off.
     */
    private static final Set<Fact> NOTHING_LEFT = Set.of(Fact.LEADER_SHARE, Fact.CIRCLING_TURN);

    @Test
    void signingOffInventsNoNumber() {
        for (var technique : CONTENT.techniques().values()) {
            for (var effect : technique.effects()) {
                if (effect.value() instanceof Value.Number number) {
                    assertThat(number.amount()).as(technique.code()).isZero();
                    assertThat(NOTHING_LEFT).as(technique.code()).contains(effect.fact());
                }
            }
        }
        assertThat(CONTENT.unsettled().get("branch_selection"))
                .containsExactly(Fact.CANDIDATE_BRANCHES);
    }
}
