package org.ripewood.core.progress;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.GrowingDays;
import org.ripewood.core.season.StageClock;
import org.ripewood.core.season.StageDays;
import org.ripewood.core.season.TypicalYear;

/** Trees from seeds, from neglected ones to such as meet nearly everything that is asked. */
final class RandomTrees {

    /** A tree and the day it is asked for. */
    record Case(long seed, Subject subject, LocalDate on) {}

    private static final LocalDate FIRST_DAY = LocalDate.of(2024, 1, 1);
    private static final List<Source> SOURCES = List.of(Source.values());
    private static final double[] LATITUDES = {50, 41, 12, -35};

    private final Rules rules;
    private final List<String> lessons;
    private final Map<String, GrowingDays> growing = new HashMap<>();

    RandomTrees(Rules rules) {
        this.rules = rules;
        this.lessons =
                rules.techniques().stream()
                        .map(TechniqueRule::skillLesson)
                        .filter(lesson -> lesson != null)
                        .distinct()
                        .toList();
    }

    List<Case> cases(int count) {
        var cases = new ArrayList<Case>();
        for (long seed = 0; seed < count; seed++) {
            cases.add(tree(seed));
        }
        return cases;
    }

    private Case tree(long seed) {
        var random = new SplittableRandom(seed);
        var on = FIRST_DAY.plusDays(random.nextInt(730));
        var traits = rules.species().get((int) (seed % rules.species().size()));
        var care = random.nextInt(3) == 0 ? random.nextDouble() : 0.9 + 0.1 * random.nextDouble();
        var latitude = LATITUDES[random.nextInt(LATITUDES.length)];
        var year = TypicalYear.of(traits.habit(), latitude);
        var subject =
                new Subject(
                        traits,
                        Facts.of(evidence(random, traits, care, on)),
                        new WorkLedger(works(random, care, on), latitude),
                        signedOff(random, care, on),
                        skills(random, care),
                        stages(random, year, on),
                        year.place(),
                        Forecasts.NONE,
                        growing(traits, latitude, year));
        return new Case(seed, subject, on);
    }

    private List<Evidence> evidence(
            SplittableRandom random, Traits traits, double care, LocalDate on) {
        var wanted = new RandomValues(random, rules, traits);
        var evidence = new ArrayList<Evidence>();
        for (var fact : Fact.values()) {
            if (random.nextDouble() > 0.5 + care / 2) {
                continue;
            }
            var value = wanted.value(fact, random.nextDouble() < care);
            // now and then it is too old, or from after the day asked for
            var age = random.nextDouble() < care ? random.nextInt(8) : random.nextInt(500) - 20;
            var source = SOURCES.get(random.nextInt(SOURCES.size()));
            evidence.add(
                    new Evidence(fact, value, on.minusDays(age), source, "seed", evidence.size()));
        }
        return evidence;
    }

    private static List<Work> works(SplittableRandom random, double care, LocalDate on) {
        var works = new ArrayList<Work>();
        for (int i = random.nextDouble() < care ? 0 : random.nextInt(5); i > 0; i--) {
            works.add(
                    new Work(
                            "work",
                            on.minusDays(random.nextInt(700) - 20),
                            random.nextInt(11),
                            random.nextInt(400),
                            random.nextInt(60) / 100.0,
                            random.nextInt(40) / 100.0));
        }
        return works;
    }

    private Map<String, LocalDate> signedOff(SplittableRandom random, double care, LocalDate on) {
        var signedOff = new HashMap<String, LocalDate>();
        for (var rule : rules.techniques()) {
            if (random.nextDouble() < care / 2) {
                signedOff.put(rule.code(), on.minusDays(random.nextInt(1600) - 20));
            }
        }
        return signedOff;
    }

    private @Nullable Set<String> skills(SplittableRandom random, double care) {
        return random.nextInt(4) == 0
                ? null
                : lessons.stream()
                        .filter(lesson -> random.nextDouble() < care * 0.9)
                        .collect(Collectors.toSet());
    }

    /** Counted over all days that come up, as for a site with temperatures. */
    private GrowingDays growing(Traits traits, double latitude, TypicalYear year) {
        return growing.computeIfAbsent(
                traits.habit() + " " + latitude,
                none -> StageDays.over(year, FIRST_DAY.minusYears(5), FIRST_DAY.plusYears(3)));
    }

    private static StageClock stages(SplittableRandom random, TypicalYear year, LocalDate on) {
        return random.nextBoolean()
                ? year
                : year.from(random.nextInt(40), on.minusDays(random.nextInt(200)));
    }
}
