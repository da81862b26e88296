package org.ripewood.standing;

import java.util.ArrayList;
import java.util.List;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.SeasonRule;
import org.ripewood.core.progress.Traits;
import org.ripewood.core.progress.Truth;
import org.ripewood.core.season.StageRange;
import org.ripewood.core.season.WeatherRule;
import org.ripewood.core.season.WorkClocks;
import org.ripewood.course.Content;
import org.ripewood.steps.Wording;

/** Tells a season in growth stages, and what the stage is called in the BBCH scale. */
final class SeasonReasonText {

    private final Content content;
    private final Traits traits;
    private final StageWords stageWords;

    SeasonReasonText(Content content, Traits traits) {
        this.content = content;
        this.traits = traits;
        this.stageWords = StageWords.of(traits.habit());
    }

    ReasonView tell(Reason.OfSeason reason) {
        var because = reason.closedBecause();
        var words =
                new ReasonWords(reason, "Season")
                        .required(required(reason.rule()))
                        .observed(observed(reason))
                        .why(because == null ? reason.rule().why() : because);
        if (reason.truth() != Truth.UNKNOWN) {
            return words.view();
        }
        return words.how(content.text(Fact.FLOWER_STAGE).how()).toRecord(Fact.FLOWER_STAGE).view();
    }

    private String observed(Reason.OfSeason reason) {
        var stage = stageWords.stage(reason.stage());
        var opensOn = reason.opensOn();
        return opensOn == null ? stage : stage + "; opens about " + Wording.day(opensOn);
    }

    /** The open stages of this species, as the engine reads them, and what else is asked for. */
    private String required(SeasonRule rule) {
        var words = new ArrayList<String>();
        if (rule.anyStage()) {
            words.add("any time that is not to be avoided");
        } else {
            var stages = rule.stagesOf(traits).stream().map(this::open).toList();
            words.add(
                    stages.isEmpty() ? "no season for this species" : String.join("; or ", stages));
        }
        words.addAll(weather(rule.weather()));
        return String.join(", ", words);
    }

    private List<String> weather(WeatherRule weather) {
        var words = new ArrayList<String>();
        if (weather.growingDaysLeft() > 0) {
            words.add("with " + daysLeft(weather.growingDaysLeft()));
        }
        switch (weather.notWhileFrozen()) {
            case WOOD -> words.add("not while wood is frozen");
            case BALL -> words.add("not while root balls are frozen");
            case NOTHING -> {}
        }
        var shelter = traits.clocks().shelterBelowCelsius();
        if (weather.nearDangerousCold() && shelter != null) {
            words.add("while nights are near " + Wording.number(shelter) + " °C");
        }
        return words;
    }

    private static String daysLeft(int days) {
        return "%d days of growth left before frost".formatted(days);
    }

    private String open(WorkClocks.Stages stages) {
        var told = stages(stages.ranges());
        if (stages.growingDaysLeft() > 0) {
            told += " with " + daysLeft(stages.growingDaysLeft());
        }
        return Double.isInfinite(stages.notAboveCelsius())
                ? told
                : told
                        + " and days of at most %s °C"
                                .formatted(Wording.number(stages.notAboveCelsius()));
    }

    private String stages(List<StageRange> ranges) {
        var parts =
                ranges.stream().map(range -> stageWords.range(range.from(), range.to())).toList();
        return Wording.list(parts, "or");
    }
}
