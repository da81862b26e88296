package org.ripewood.assess;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Judgements by one rubric, gathered into occasions: looks at one tree or student within so many
 * days, when its state was the same for all who looked.
 */
final class Occasions {

    /** A time at which one or more judges looked at the same. */
    record Occasion(Judged of, LocalDate began) {}

    private Occasions() {}

    /**
     * Each judge's level on each occasion.
     *
     * <p>An occasion lasts from the first look for {@link Judgements#SAME_STATE_DAYS} days; the
     * next look after that begins another. Of several looks of one judge the last counts.
     *
     * @param byDay in the order of their days
     * @param blindOnly leaves out occasions on which nobody looked unswayed
     */
    static Map<Long, Map<Occasion, Integer>> levels(
            List<JudgementEntity> byDay, boolean blindOnly) {
        var gathered = new LinkedHashMap<Occasion, List<JudgementEntity>>();
        var current = new HashMap<Judged, Occasion>();
        for (var judgement : byDay) {
            var occasion =
                    current.compute(
                            judgement.of(),
                            (of, before) ->
                                    goesOn(before, judgement.judgedOn) ? before : began(judgement));
            gathered.computeIfAbsent(occasion, none -> new ArrayList<>()).add(judgement);
        }
        var levels = new LinkedHashMap<Long, Map<Occasion, Integer>>();
        gathered.forEach(
                (occasion, looks) -> {
                    if (!blindOnly || looks.stream().anyMatch(look -> look.blind)) {
                        looks.forEach(
                                look ->
                                        levels.computeIfAbsent(
                                                        look.byId, judge -> new LinkedHashMap<>())
                                                .put(occasion, look.levelGiven()));
                    }
                });
        return levels;
    }

    private static boolean goesOn(@Nullable Occasion before, LocalDate day) {
        return before != null
                && ChronoUnit.DAYS.between(before.began(), day) <= Judgements.SAME_STATE_DAYS;
    }

    private static Occasion began(JudgementEntity first) {
        return new Occasion(first.of(), first.judgedOn);
    }
}
