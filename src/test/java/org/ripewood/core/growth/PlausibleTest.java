package org.ripewood.core.growth;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ripewood.core.growth.Doubt.Oddity;
import org.ripewood.core.growth.TaperProfile.Reading;

/** Every bound is common practice without a source, so each row says on which side it lies. */
@Tag("fast")
class PlausibleTest {

    private static final LocalDate ON = LocalDate.of(2026, 2, 20);
    private static final LocalDate BEFORE = ON.minusDays(200);

    /** Together two readings off by 0.5 mm each differ by up to 1.163 mm (1.645 √2 0.5). */
    @ParameterizedTest
    @CsvSource({
        "20,   20,   , NONE",
        "21.1, 20,   , NONE",
        "21.2, 20,   , WIDER",
        "12,   20, 14, NONE",
        "15.1, 20, 14, NONE",
        "15.2, 20, 14, WIDER",
        "27,   20, 26, NONE",
        "22,   20, 21, WIDER",
        "0,    20, 14, NONE",
        "2,    20,   , SLIP",
        "140,  20, 14, SLIP",
        "1.4,  20, 14, SLIP",
        "0.3,  20,  3, NONE"
    })
    void aWound(double openMm, double firstMm, Double lastMm, String odd) {
        var first = new Earlier(BEFORE.minusYears(1), firstMm);
        var last = lastMm == null ? null : new Earlier(BEFORE, lastMm);
        odd(Plausible.wound(openMm, first, last), odd);
    }

    /** 55 % of dead twigs is grade 0, 8 % grade 2: 10 + 22.5 times that is allowed. */
    @ParameterizedTest
    @CsvSource({"10, 0, NONE", "10.5, 0, STRONGER", "55, 2, NONE", "56, 2, STRONGER"})
    void aJudgementOfStrength(double index, double grade, String odd) {
        var seen = List.of(new AgedVigour.Seen(VigourGrade.DIEBACK, grade, BEFORE));
        odd(Plausible.strength(index, seen), odd);
        assertThat(Plausible.strength(index, List.of())).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"0, true, NONE", "5, true, LEAFLESS", "100, true, LEAFLESS", "100, false, NONE"})
    void missingFoliage(double percent, boolean bare, String odd) {
        odd(Plausible.foliage(percent, bare), odd);
    }

    /** At 40 mm a calliper errs by 1.2 mm, so two readings by 1.645 √2 1.2 = 2.79 mm or so. */
    @ParameterizedTest
    @CsvSource({
        "40,   40, 200, NONE",
        "37.5, 40, 200, NONE",
        "37,   40, 200, FELL",
        "52,   40, 200, NONE",
        "52.1, 40, 200, JUMPED",
        "52.1, 40, 366, JUMPED",
        "52.1, 40, 367, NONE",
        "14.9, 10, 200, NONE",
        "15,   10, 200, NONE",
        "15.1, 10, 200, JUMPED",
        "400,  40, 200, SLIP",
        "330,  40, 200, SLIP",
        "4.2,  40, 200, SLIP",
        "4000, 40, 200, SLIP",
        "0.4,  40, 200, SLIP",
        "250,  40, 200, JUMPED",
        "10,   40, 200, FELL",
        "0,    40, 200, FELL"
    })
    void aDiameterAgainstTheLast(double mm, double lastMm, int daysAgo, String odd) {
        var last = new Earlier(ON.minusDays(daysAgo), lastMm);
        odd(Plausible.girth(mm, "at the base", ON, last), odd);
        odd(Plausible.trunk(new Reading(0, mm), ON, last, TrunkAround.NOTHING), odd);
    }

    /** Marks at 40, 80 and 120 mm; the one at 80 mm is measured. */
    @ParameterizedTest
    @CsvSource({
        "30,  28,  26,   , NONE",
        "30,  31,  26,   , NONE",
        "30,  34,  26,   , BULGE",
        "30,  34,  33,   , NONE",
        "30,  34,  26, 34, NONE",
        "30,  34,  26, 29, BULGE",
        "30,  39,  26, 34, NONE",
        "30, 280,  26,   , SLIP",
        "30, 2.8,  26,   , SLIP",
        "30,  28, 260,   , NONE"
    })
    void aDiameterAmongItsNeighbours(
            double below, double mm, double above, Double lastMm, String odd) {
        var others = List.of(new Reading(40, below), new Reading(120, above));
        var last = lastMm == null ? null : new Earlier(BEFORE, lastMm);
        var around = new TrunkAround(null, others, others);
        odd(Plausible.trunk(new Reading(80, mm), ON, last, around), odd);
    }

    @ParameterizedTest
    @CsvSource({"299, NONE", "300, NONE", "300.5, ABOVE", "2000, ABOVE"})
    void aDiameterAboveTheTree(double heightMm, String odd) {
        var around = new TrunkAround(new Earlier(BEFORE, 300), List.of(), List.of());
        odd(Plausible.trunk(new Reading(heightMm, 8), ON, null, around), odd);
    }

    @ParameterizedTest
    @CsvSource({"3000, , NONE", "3000.5, , LONG", "45, 450, SLIP", "60, 450, NONE"})
    void aShoot(double mm, Double lastMm, String odd) {
        odd(Plausible.shoot(mm, lastMm == null ? null : new Earlier(BEFORE, lastMm)), odd);
    }

    @Test
    void aQuestionTellsTheValueWhatWasBeforeWithItsDayAndOneGuess() {
        var doubt =
                Plausible.trunk(
                                new Reading(40, 205),
                                ON,
                                new Earlier(LocalDate.of(2025, 5, 3), 20.5),
                                TrunkAround.NOTHING)
                        .orElseThrow();
        assertThat(doubt.words())
                .isEqualTo(
                        "205 mm at 40 mm up is about ten times the 20.5 mm of 3 May 2025."
                                + " Maybe 20.5 mm.");
    }

    @Test
    void everyOddityIsAskedAboutAndGuessesOnce() {
        var asked = new TreeSet<Oddity>();
        var random = new SplittableRandom(7);
        for (int i = 0; i < 20_000; i++) {
            var last = random.nextInt(4) == 0 ? null : new Earlier(BEFORE, size(random));
            var others = List.of(new Reading(40, size(random)), new Reading(120, size(random)));
            var height = new Earlier(BEFORE, size(random) * 10);
            var found =
                    List.of(
                            Plausible.trunk(
                                    new Reading(80, size(random)),
                                    ON,
                                    last,
                                    new TrunkAround(height, others, others)),
                            Plausible.wound(size(random), new Earlier(BEFORE, 20), last),
                            Plausible.shoot(size(random) * 40, last),
                            Plausible.foliage(random.nextInt(101), random.nextBoolean()),
                            Plausible.strength(
                                    random.nextInt(101),
                                    List.of(
                                            new AgedVigour.Seen(
                                                    VigourGrade.COLOUR,
                                                    random.nextInt(5),
                                                    BEFORE))));
            found.forEach(
                    doubt ->
                            doubt.ifPresent(
                                    odd -> {
                                        asked.add(odd.oddity());
                                        assertThat(odd.words())
                                                .containsOnlyOnce("Maybe ")
                                                .doesNotContain("null", "NaN", "  ")
                                                .endsWith(".");
                                    }));
        }
        assertThat(asked).containsExactlyElementsOf(Arrays.asList(Oddity.values()));
    }

    /** What grows as trees do is never asked about: laws on 5,000 trunks, seed 11. */
    @Test
    void aTrunkThatThickensALittleIsNotAskedAbout() {
        var random = new SplittableRandom(11);
        for (int i = 0; i < 5_000; i++) {
            double lastMm = 5 + random.nextDouble() * 200;
            double nowMm = lastMm * (1 + random.nextDouble() * 0.29);
            assertThat(Plausible.girth(nowMm, "", ON, new Earlier(BEFORE, lastMm)))
                    .as("%s after %s, seed 11", nowMm, lastMm)
                    .isEmpty();
        }
    }

    private static double size(SplittableRandom random) {
        return Math.pow(10, random.nextDouble() * 3 - 0.5);
    }

    private static void odd(Optional<Doubt> found, String expected) {
        assertThat(found.map(doubt -> doubt.oddity().name()).orElse("NONE"))
                .as(found.map(Doubt::words).orElse("no question"))
                .isEqualTo(expected);
    }
}
