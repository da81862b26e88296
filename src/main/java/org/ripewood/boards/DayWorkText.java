package org.ripewood.boards;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Strength;
import org.ripewood.core.progress.TechniqueRule;
import org.ripewood.core.progress.Truth;
import org.ripewood.core.progress.Verdict;
import org.ripewood.core.season.Outlook;
import org.ripewood.course.Content;
import org.ripewood.standing.OutlookWords;
import org.ripewood.standing.ReasonText;
import org.ripewood.standing.TechniquePriority;
import org.ripewood.standing.TreeOnDay;
import org.ripewood.standing.Unknown;
import org.ripewood.steps.StepBrief;
import org.ripewood.steps.StepState;
import org.ripewood.steps.Wording;

/** Tells what could be done with a tree on a day, and why. */
final class DayWorkText {

    /** As many things to measure as fit on a bench card. */
    private static final int MOST_TO_MEASURE = 5;

    private final Content content;
    private final TechniquePriority usefulness;
    private final Headlines headlines;

    DayWorkText(Content content) {
        this.content = content;
        this.usefulness = new TechniquePriority(content);
        this.headlines = new Headlines(usefulness);
    }

    /**
     * @param then the tree on the day, by what is known today
     * @param now the tree today, whose forecasts tell what will have come about
     * @param seasonWaived ids of steps whose season an instructor let pass
     */
    DayWork tell(TreeOnDay then, TreeOnDay now, Collection<Long> seasonWaived) {
        var options = new ArrayList<DayWork.Option>();
        String hindered = null;
        for (var step : ChecklistMaker.withStudent(then)) {
            var standing = then.find(step.technique()).orElseThrow();
            var hindrance = hindrance(then, step, standing, seasonWaived);
            if (hindrance == null) {
                options.add(ofStep(step, standing));
            } else if (hindered == null) {
                hindered = hindrance;
            }
        }
        options.addAll(free(then, now));
        options.addAll(freeCare(then));
        var otherwise = hindered == null ? headlines.sentence(headlines.of(then)) : hindered;
        return new DayWork(
                then.tree(),
                then.on(),
                then.stageInWords(),
                options,
                otherwise,
                toMeasure(then),
                reported(then));
    }

    /** The work last reported, while it waits for an instructor's sign-off. */
    private @Nullable String reported(TreeOnDay tree) {
        return tree.open().values().stream()
                .filter(step -> step.state() == StepState.REPORTED)
                .filter(step -> tree.find(step.technique()).isPresent())
                .max(
                        Comparator.comparing(
                                        StepBrief::reportedAt,
                                        Comparator.nullsFirst(Comparator.naturalOrder()))
                                .thenComparing(StepBrief::id))
                .map(this::reported)
                .orElse(null);
    }

    private String reported(StepBrief step) {
        var title = content.technique(step.technique()).title();
        var on = step.doneOn();
        return on == null
                ? "“%s” is reported as done and not signed off yet.".formatted(title)
                : "“%s” is reported as done on %s and not signed off yet."
                        .formatted(title, Wording.day(on));
    }

    /** Care that is ready and that nobody was given. */
    private List<DayWork.Option> freeCare(TreeOnDay tree) {
        return tree.careNow().stream()
                .filter(standing -> !tree.open().containsKey(standing.technique()))
                .sorted(Comparator.comparing(Standing::technique, usefulness.byCode()))
                .map(
                        standing ->
                                option(
                                        tree,
                                        standing,
                                        DayWork.Ground.READY,
                                        null,
                                        true,
                                        "Ready on the day."))
                .toList();
    }

    private boolean isCare(String technique) {
        return content.technique(technique).rule().purpose() == TechniqueRule.Purpose.CARE;
    }

    private List<DayWork.Option> free(TreeOnDay then, TreeOnDay now) {
        Map<String, DayWork.Option> found = new HashMap<>();
        for (var standing : then.standings()) {
            var given = then.open().containsKey(standing.technique());
            var option = given || then.isCare(standing) ? null : ofFree(standing, now);
            if (option != null) {
                found.put(standing.technique(), option);
            }
        }
        return found.keySet().stream().sorted(usefulness.byCode()).map(found::get).toList();
    }

    private DayWork.@Nullable Option ofFree(Standing standing, TreeOnDay now) {
        if (standing.verdict() == Verdict.READY) {
            return option(now, standing, DayWork.Ground.READY, null, true, "Ready on the day.");
        }
        if (standing.verdict() == Verdict.LESSON) {
            var lesson = content.technique(standing.technique()).rule().skillLesson();
            return option(
                    now,
                    standing,
                    DayWork.Ground.WITH_LESSON,
                    lesson,
                    true,
                    "Ready on the day, once the student has shown the skill.");
        }
        return forecast(standing, now);
    }

    /** What will have come about by the day, if its season is open then. */
    private DayWork.@Nullable Option forecast(Standing standing, TreeOnDay now) {
        boolean settled =
                standing.verdict() == Verdict.DONE || standing.verdict() == Verdict.NOT_NEEDED;
        if (settled || !TreeOnDay.inSeason(standing) || !standing.on().isAfter(now.on())) {
            return null;
        }
        var opening = now.openings().of(standing.technique()).orElse(null);
        if (opening == null) {
            return null;
        }
        if (opening.outlook() instanceof Outlook.Already) {
            return expected(now, standing, true, "Ready today; look again before it is begun.");
        }
        if (opening.outlook() instanceof Outlook.Expected expected
                && !expected.likely().isAfter(standing.on())) {
            var latest = expected.latest();
            return expected(
                    now,
                    standing,
                    latest != null && !latest.isAfter(standing.on()),
                    "By forecast ready %s; look before it is begun."
                            .formatted(OutlookWords.when(expected)));
        }
        return null;
    }

    private DayWork.Option expected(TreeOnDay tree, Standing standing, boolean sure, String why) {
        return option(tree, standing, DayWork.Ground.EXPECTED, null, sure, why);
    }

    private DayWork.Option option(
            TreeOnDay tree,
            Standing standing,
            DayWork.Ground ground,
            @Nullable String lesson,
            boolean sure,
            String why) {
        var technique = standing.technique();
        return new DayWork.Option(
                technique,
                null,
                ground,
                lesson,
                sure,
                isCare(technique),
                why + Headlines.waitingFor(tree, technique) + " To be assigned.",
                ground == DayWork.Ground.EXPECTED ? unmetOf(standing) : List.of());
    }

    private DayWork.Option ofStep(StepBrief step, Standing standing) {
        boolean back = step.state() == StepState.SENT_BACK;
        return new DayWork.Option(
                step.technique(),
                step.id(),
                back ? DayWork.Ground.SENT_BACK : DayWork.Ground.ASSIGNED,
                null,
                true,
                isCare(step.technique()),
                back
                        ? "Sent back; to be put right."
                        : "Assigned on %s.".formatted(Wording.day(step.assignedOn())),
                unknownOf(standing));
    }

    /** Why a step the student has cannot be done that day; null when it can. */
    private @Nullable String hindrance(
            TreeOnDay tree, StepBrief step, Standing standing, Collection<Long> seasonWaived) {
        var title = content.technique(step.technique()).title();
        var from = step.from();
        if (from != null && from.isAfter(tree.on())) {
            return "“%s” is assigned from %s on.".formatted(title, Wording.day(from));
        }
        for (var reason : standing.reasons()) {
            if (hinders(reason, seasonWaived.contains(step.id()))) {
                var teller = new ReasonText(content, tree.subject().traits());
                return "“%s” is assigned, but not for this day: %s"
                        .formatted(title, teller.tell(reason, title).sentence());
            }
        }
        return null;
    }

    /** A season that is closed and was not waived; or a hold for the health of tree or person. */
    private static boolean hinders(Reason reason, boolean seasonWaived) {
        if (reason.truth() != Truth.NO) {
            return false;
        }
        return reason instanceof Reason.OfSeason
                ? !seasonWaived
                : reason.strength() == Strength.MUST;
    }

    private List<String> unknownOf(Standing standing) {
        var unknown = new ArrayList<String>();
        for (var fact : Unknown.of(standing)) {
            var text = content.text(fact);
            unknown.add(text.title() + ": " + text.how());
        }
        return unknown.stream().distinct().toList();
    }

    /** What a forecast rests on has to be seen with one's own eyes. */
    private List<String> unmetOf(Standing standing) {
        var unmet = new ArrayList<>(unknownOf(standing));
        for (var reason : standing.against()) {
            if (reason instanceof Reason.OfCriterion criterion) {
                var text = content.text(criterion.criterion().fact());
                unmet.add(text.title() + ": " + text.how());
            }
        }
        return unmet.stream().distinct().limit(MOST_TO_MEASURE).toList();
    }

    private List<String> toMeasure(TreeOnDay tree) {
        return MeasureNext.of(tree).stream()
                .limit(MOST_TO_MEASURE)
                .map(measure -> measure.title() + ": " + measure.how())
                .toList();
    }
}
