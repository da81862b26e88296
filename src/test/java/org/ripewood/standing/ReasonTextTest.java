package org.ripewood.standing;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.ripewood.School;
import org.ripewood.SchoolProfile;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Facts;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Strength;
import org.ripewood.core.progress.Subject;
import org.ripewood.core.progress.Truth;
import org.ripewood.core.progress.Value;
import org.ripewood.core.progress.Verdict;
import org.ripewood.core.progress.Work;
import org.ripewood.core.progress.WorkLedger;
import org.ripewood.core.season.TypicalYear;
import org.ripewood.course.Content;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Species;
import org.ripewood.steps.Wording;

/** Laws of what is told, over random trees of every species and the content as it is. */
@QuarkusTest
@TestProfile(SchoolProfile.class)
class ReasonTextTest {

    private static final long SEED = 20260220;

    @Inject CourseContent courseContent;
    @Inject ObjectMapper json;

    @Test
    void everyReasonIsToldInWholeSentences() throws Exception {
        var content = courseContent.inForce();
        var random = new SplittableRandom(SEED);
        var kinds = new HashSet<Class<?>>();
        for (var species : content.species().values()) {
            for (int i = 0; i < 8; i++) {
                var subject = subject(content, species, random);
                for (var standing : content.rulebook().standings(subject, School.TODAY)) {
                    standing.reasons().forEach(reason -> kinds.add(reason.getClass()));
                    check(content, subject, standing);
                }
            }
        }
        assertThat(kinds).containsExactlyInAnyOrder(Reason.class.getPermittedSubclasses());
    }

    @Test
    void whatMayBeWaivedIsWhatTheEngineLetsBeWaived() {
        var content = courseContent.inForce();
        var random = new SplittableRandom(SEED + 1);
        var species = content.species("ulmus_parvifolia");
        for (int i = 0; i < 100; i++) {
            var subject = subject(content, species, random);
            for (var standing : content.rulebook().standings(subject, School.TODAY)) {
                var mustHolds =
                        standing.against().stream()
                                .anyMatch(reason -> reason.strength() == Strength.MUST);
                var settled = Set.of(Verdict.DONE, Verdict.NOT_NEEDED).contains(standing.verdict());
                assertThat(told(content, subject, standing).waivable())
                        .as("%s, seed %d", standing, SEED + 1)
                        .isEqualTo(!settled && !mustHolds);
            }
        }
    }

    @Test
    void numbersAreToldWithTheirUnitAndNoMore() {
        assertThat(Wording.value(Fact.LARGEST_OPENING_MM, Value.of(24))).isEqualTo("24 mm");
        assertThat(Wording.value(Fact.ROOT_GAP_DEG, Value.of(62.5))).isEqualTo("62.5°");
        assertThat(Wording.value(Fact.TRUNK_BASE_SHARE, Value.of(2.0 / 3))).isEqualTo("0.67");
        assertThat(Wording.value(Fact.WIRE_DAYS, Value.of(1))).isEqualTo("1 day");
        assertThat(Wording.value(Fact.DAYS_SINCE_CHOP, Value.of(WorkLedger.NEVER_DAYS)))
                .isEqualTo("never");
        assertThat(Wording.value(Fact.MONTHS_IN_CONTAINER, Value.of(0))).isEqualTo("0 months");
        assertThat(Wording.list(List.of("a", "b", "c"), "or")).isEqualTo("a, b or c");
        assertThat(Wording.day(School.TODAY)).isEqualTo("20 February 2026");
    }

    private void check(Content content, Subject subject, Standing standing) throws Exception {
        var told = told(content, subject, standing);
        assertThat(told.reasons()).hasSameSizeAs(standing.reasons());
        for (int i = 0; i < told.reasons().size(); i++) {
            var reason = standing.reasons().get(i);
            var view = told.reasons().get(i);
            var context = "%s of %s, seed %d".formatted(reason, standing.technique(), SEED);
            assertThat(view.title()).as(context).isNotBlank();
            assertThat(new ReasonBrief(content).of(reason).words().split(" "))
                    .as(context)
                    .hasSizeBetween(1, 5);
            assertThat(view.required()).as(context).isNotBlank();
            assertThat(view.why()).as(context).isNotBlank().endsWith(".");
            assertThat(view.sentence())
                    .as(context)
                    .endsWith(".")
                    .doesNotContain("null", "NaN", "Infinity", "{", "[");
            assertThat(view.met()).as(context).isEqualTo(reason.truth() == Truth.YES);
            assertThat(view.howFar()).as(context).isBetween(0.0, 1.0);
            if (reason.truth() == Truth.UNKNOWN && !(reason instanceof Reason.OfOrder)) {
                assertThat(view.how()).as(context).isNotBlank();
                assertThat(view.factCode()).as(context).isNotBlank();
            }
        }
        var text = json.writeValueAsString(told);
        assertThat(json.readValue(text, TechniqueStanding.class)).isEqualTo(told);
    }

    private static TechniqueStanding told(Content content, Subject subject, Standing standing) {
        var reasons = new ReasonText(content, subject.traits()).tell(standing);
        var technique = content.technique(standing.technique());
        return new TechniqueStanding(
                standing.technique(),
                technique.title(),
                technique.stage(),
                standing.verdict(),
                standing.howFar(),
                null,
                null,
                reasons,
                null);
    }

    private static Subject subject(Content content, Species species, SplittableRandom random) {
        var evidence = new ArrayList<Evidence>();
        for (var fact : Fact.values()) {
            if (random.nextInt(4) > 0) {
                evidence.add(
                        new Evidence(
                                fact,
                                value(fact, random),
                                School.TODAY.minusDays(random.nextInt(500)),
                                List.of(Source.values()).get(random.nextInt(4)),
                                "somebody",
                                evidence.size()));
            }
        }
        var signedOff = new HashMap<String, LocalDate>();
        var works = new ArrayList<Work>();
        for (var technique : content.techniques().values()) {
            if (random.nextInt(3) == 0) {
                var day = School.TODAY.minusDays(random.nextInt(400));
                signedOff.put(technique.code(), day);
                works.add(
                        new Work(
                                technique.code(),
                                day,
                                technique.rule().stress(),
                                technique.rule().recoveryDays(),
                                random.nextInt(20) / 100.0,
                                random.nextInt(10) / 100.0));
            }
        }
        return new Subject(
                species.traits(),
                Facts.of(evidence),
                new WorkLedger(random.nextBoolean() ? works : List.of(), 51),
                signedOff,
                random.nextBoolean() ? Set.of("wiring-branches") : null,
                TypicalYear.of(species.traits().habit(), random.nextBoolean() ? 51 : -34));
    }

    private static Value value(Fact fact, SplittableRandom random) {
        return switch (fact.kind()) {
            case FLAG -> Value.of(random.nextBoolean());
            case WORD -> Value.of(fact.words().get(random.nextInt(fact.words().size())));
            case NUMBER -> {
                // Small values are where the bounds of the content lie.
                var most = random.nextBoolean() ? fact.most() : Math.min(fact.most(), 10);
                yield Value.of(Math.rint(random.nextDouble() * most * 100) / 100);
            }
        };
    }
}
