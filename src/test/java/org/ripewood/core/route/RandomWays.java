package org.ripewood.core.route;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.ripewood.core.progress.DoseRule;
import org.ripewood.core.route.Ways.StepOf;
import org.ripewood.core.season.Outlook;

/** Networks of steps as a course might have them, from a seed. */
final class RandomWays {

    final SplittableRandom random;

    RandomWays(long seed) {
        random = new SplittableRandom(seed);
    }

    /**
     * Steps of five stages, each after up to two earlier ones.
     *
     * @param works whether they load the tree, or only wait
     */
    List<StepOf> steps(int count, boolean works) {
        var steps = new ArrayList<StepOf>();
        for (int i = 0; i < count; i++) {
            var step = new StepOf("s%02d".formatted(i));
            step.stageOrder = 1 + 5 * i / count;
            var after = new ArrayList<String>();
            for (int k = random.nextInt(3); k > 0 && i > 0; k--) {
                after.add(steps.get(random.nextInt(i)).code);
            }
            step.after = after;
            if (random.nextInt(4) > 0) {
                int month = 1 + random.nextInt(12);
                step.open(month, Math.min(12, month + random.nextInt(5)));
            }
            for (int k = random.nextInt(3); k > 0; k--) {
                step.waits("fact" + random.nextInt(count), outlook());
            }
            if (i > 0 && random.nextInt(4) == 0) {
                step.lag(steps.get(random.nextInt(i)).code, random.nextInt(500));
            }
            if (works) {
                load(step);
            }
            steps.add(step);
        }
        return steps;
    }

    Outlook outlook() {
        var likely = Ways.DAY.plusDays(random.nextInt(2500));
        return switch (random.nextInt(5)) {
            case 0 -> new Outlook.Already();
            case 1 -> new Outlook.Unsaid("Nothing is known.");
            case 2 -> Outlook.Expected.on(likely);
            default ->
                    new Outlook.Expected(
                            likely.minusDays(random.nextInt(400)),
                            likely,
                            likely.plusDays(random.nextInt(800)));
        };
    }

    private void load(StepOf step) {
        step.stress = Math.max(0, random.nextInt(12) - 3);
        step.recoveryDays = step.stress == 0 ? 0 : 30 + random.nextInt(330);
        step.quietDaysBefore = random.nextBoolean() ? random.nextInt(365) : 0;
        if (random.nextInt(5) == 0) {
            var kind = random.nextBoolean() ? DoseRule.Kind.ROOT : DoseRule.Kind.FOLIAGE;
            step.dose = new DoseRule(kind, 0.1 + 0.05 * random.nextInt(4), 0.3);
        }
    }
}
