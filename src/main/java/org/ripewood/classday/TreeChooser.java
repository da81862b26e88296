package org.ripewood.classday;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.Content;
import org.ripewood.course.Lesson;
import org.ripewood.sessions.Session;
import org.ripewood.standing.DayWork;
import org.ripewood.standing.DayWork.Ground;

/** Chooses what a tree does on a class day, the instructor's wishes before all. */
final class TreeChooser {

    private static final double PINNED = 950;

    /** Each place further down the tree's own list is worth a little less. */
    private static final double PER_PLACE = 2;

    private final Content content;
    private final @Nullable Lesson lesson;

    TreeChooser(Content content, @Nullable Lesson lesson) {
        this.content = content;
        this.lesson = lesson;
    }

    TreeChoice choose(Session.Enrolment enrolment, DayWork work, Map<String, DayWish> wishes) {
        var first = FirstChoice.of(undropped(work, wishes), lesson);
        boolean pins =
                work.options().stream()
                        .anyMatch(option -> wishes.get(option.technique()) == DayWish.PIN);
        var chosen = new ArrayList<TreeChoice.Taken>();
        var others = new ArrayList<SessionPlan.Other>();
        int place = 0;
        for (var option : work.options()) {
            var wish = wishes.get(option.technique());
            boolean taken = pins ? wish == DayWish.PIN : option.equals(first);
            if (taken) {
                chosen.add(taken(option, wish, place));
            } else {
                others.add(other(option, wish, pins));
            }
            place++;
        }
        wishes.forEach(
                (technique, wish) -> {
                    if (wish == DayWish.PIN && isNoOption(work, technique)) {
                        others.add(
                                new SessionPlan.Other(
                                        technique,
                                        title(technique),
                                        "Pinned, but it cannot be done on this tree that day.",
                                        wish));
                    }
                });
        return new TreeChoice(enrolment, work, chosen, others);
    }

    private TreeChoice.Taken taken(DayWork.Option option, @Nullable DayWish wish, int place) {
        var why = FirstChoice.why(option, lesson);
        return wish == DayWish.PIN
                ? new TreeChoice.Taken(option, PINNED, "Pinned. " + why)
                : new TreeChoice.Taken(option, usefulness(option) - place * PER_PLACE, why);
    }

    private double usefulness(DayWork.Option option) {
        double taught = FirstChoice.taught(option, lesson) ? 100 : 0;
        return taught
                + switch (option.ground()) {
                    case SENT_BACK -> 800;
                    case ASSIGNED -> 750;
                    case READY -> 500;
                    case WITH_LESSON -> 450;
                    case EXPECTED -> option.sure() ? 350 : 300;
                };
    }

    private SessionPlan.Other other(DayWork.Option option, @Nullable DayWish wish, boolean pins) {
        String why;
        if (wish == DayWish.DROP) {
            why = "Dropped by an instructor.";
        } else if (!FirstChoice.skillFits(option, lesson)) {
            why = "The student has not shown the skill, and the day's lesson does not teach it.";
        } else if (pins) {
            why = "Other work is pinned for this tree.";
        } else if (option.ground() == Ground.EXPECTED) {
            why = "Only a forecast says it will be ready. " + option.why();
        } else {
            why = "Something more useful comes first. " + option.why();
        }
        return new SessionPlan.Other(option.technique(), title(option.technique()), why, wish);
    }

    private String title(String technique) {
        var found = content.techniques().get(technique);
        return found == null ? technique : found.title();
    }

    private static boolean isNoOption(DayWork work, String technique) {
        return work.options().stream().noneMatch(option -> option.technique().equals(technique));
    }

    private static DayWork undropped(DayWork work, Map<String, DayWish> wishes) {
        List<DayWork.Option> left =
                work.options().stream()
                        .filter(option -> wishes.get(option.technique()) != DayWish.DROP)
                        .toList();
        return new DayWork(work.tree(), work.on(), left, work.otherwise(), work.measureFirst());
    }
}
