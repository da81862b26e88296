package org.ripewood.classday;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.boards.DayWork;
import org.ripewood.core.bench.Candidate;
import org.ripewood.core.bench.DayChoice;
import org.ripewood.core.bench.DayLimits;
import org.ripewood.core.bench.TreeWork;
import org.ripewood.course.Content;
import org.ripewood.course.Lesson;
import org.ripewood.sessions.Session;

/**
 * Chooses what the trees of a class day do: the instructor's wishes first, then what is assigned,
 * then what helps most, as far as time, tools and stock go.
 */
final class DayChooser {

    /** A tree that comes, with what it could do and what is wished of it. */
    record Coming(Session.Enrolment enrolment, DayWork work, Map<String, DayWish> wishes) {}

    /** Each place further down a tree's own list is worth a little less. */
    private static final double PER_PLACE = 2;

    private static final double SURE = 0.9;
    private static final double LIKELY = 0.5;

    private final Content content;
    private final @Nullable Lesson lesson;
    private final Set<String> scarce;
    private final DayTakes takes;

    /**
     * @param scarce tools the school counts, in small letters
     * @param takes what work takes from stock
     */
    DayChooser(Content content, @Nullable Lesson lesson, Set<String> scarce, DayTakes takes) {
        this.content = content;
        this.lesson = lesson;
        this.scarce = scarce;
        this.takes = takes;
    }

    List<TreeChoice> choose(List<Coming> coming, DayLimits limits) {
        var choice = DayChoice.of(coming.stream().map(this::treeWork).toList(), limits);
        var chosen = new ArrayList<TreeChoice>();
        for (var one : coming) {
            chosen.add(told(one, choice.find(tree(one)).orElseThrow(), new ChoiceWords(content)));
        }
        return chosen;
    }

    private static String tree(Coming one) {
        return Long.toString(one.enrolment().treeId());
    }

    private TreeWork treeWork(Coming one) {
        var pinned = new HashSet<String>();
        var dropped = new HashSet<String>();
        one.wishes()
                .forEach(
                        (technique, wish) -> {
                            if (wish == DayWish.PIN) {
                                pinned.add(technique);
                            } else if (wish == DayWish.DROP) {
                                dropped.add(technique);
                            }
                        });
        var candidates = new ArrayList<Candidate>();
        var options = one.work().options();
        for (int place = 0; place < options.size(); place++) {
            if (whyNot(one, options.get(place)) == null) {
                candidates.add(candidate(one, options.get(place), place));
            }
        }
        return new TreeWork(
                tree(one), Long.toString(one.enrolment().personId()), candidates, pinned, dropped);
    }

    /** Why work is not to be chosen, unless an instructor wishes it; null when it may be. */
    private static @Nullable String whyNot(Coming one, DayWork.Option option) {
        if (one.wishes().get(option.technique()) == DayWish.PIN) {
            return null;
        }
        if (option.care()) {
            return "Care where the tree stands, no work for the bench.";
        }
        var reported = one.work().reported();
        return option.ground() == DayWork.Ground.SENT_BACK ? null : reported;
    }

    private Candidate candidate(Coming one, DayWork.Option option, int place) {
        var technique = content.technique(option.technique());
        return new Candidate(
                option.technique(),
                sureness(option),
                usefulness(option, place),
                DayJobs.minutes(technique),
                DayJobs.taughtMinutes(technique),
                DayJobs.toolMinutes(technique, scarce),
                takes.of(technique, one.enrolment().treeId()),
                technique.irreversible(),
                skill(option));
    }

    private static Candidate.Sureness sureness(DayWork.Option option) {
        return switch (option.ground()) {
            case SENT_BACK, ASSIGNED -> new Candidate.Assigned();
            case READY, WITH_LESSON -> new Candidate.Ready();
            case EXPECTED -> new Candidate.Expected(option.sure() ? SURE : LIKELY);
        };
    }

    private Candidate.Skill skill(DayWork.Option option) {
        var missing = option.skillLesson();
        boolean today = lesson != null && lesson.code().equals(missing);
        if (missing != null && !today) {
            return Candidate.Skill.MISSING;
        }
        return today || taught(option) ? Candidate.Skill.TAUGHT_TODAY : Candidate.Skill.SHOWN;
    }

    private boolean taught(DayWork.Option option) {
        return lesson != null && lesson.teaches().contains(option.technique());
    }

    /** What the day's lesson teaches is worth a fifth more than what else helps the tree. */
    private double usefulness(DayWork.Option option, int place) {
        double ground =
                switch (option.ground()) {
                    case SENT_BACK -> 800;
                    case ASSIGNED -> 750;
                    case READY, WITH_LESSON, EXPECTED -> 500;
                };
        return ground + (taught(option) ? 100 : 0) - place * PER_PLACE;
    }

    /** Why the first thing a tree does is not what helps it most; empty when it is. */
    private static String before(DayChoice.OfTree choice, ChoiceWords words) {
        return choice.decisions().stream()
                .filter(decision -> !decision.chosen())
                .map(decision -> words.before(decision.technique(), decision.reasons()))
                .filter(sentence -> !sentence.isEmpty())
                .findFirst()
                .map(sentence -> " " + sentence)
                .orElse("");
    }

    private TreeChoice told(Coming one, DayChoice.OfTree choice, ChoiceWords words) {
        var options =
                one.work().options().stream()
                        .collect(Collectors.toMap(DayWork.Option::technique, option -> option));
        Map<String, Double> usefulness = new HashMap<>();
        choice.chosen().forEach(work -> usefulness.put(work.technique(), work.usefulness()));
        var chosen = new ArrayList<TreeChoice.Taken>();
        var others = new ArrayList<SessionPlan.Other>();
        var before = before(choice, words);
        for (var decision : choice.decisions()) {
            var option = options.get(decision.technique());
            var why = words.of(decision.reasons());
            if (decision.chosen() && option != null) {
                chosen.add(
                        new TreeChoice.Taken(
                                option,
                                usefulness.getOrDefault(decision.technique(), 0.0),
                                (why + " " + option.why() + (chosen.isEmpty() ? before : ""))
                                        .strip()));
            } else {
                others.add(
                        new SessionPlan.Other(
                                decision.technique(),
                                words.title(decision.technique()),
                                why,
                                one.wishes().get(decision.technique())));
            }
        }
        for (var option : one.work().options()) {
            var why = whyNot(one, option);
            if (why != null) {
                others.add(
                        new SessionPlan.Other(
                                option.technique(),
                                words.title(option.technique()),
                                why,
                                one.wishes().get(option.technique())));
            }
        }
        return new TreeChoice(one.enrolment(), one.work(), chosen, others);
    }
}
