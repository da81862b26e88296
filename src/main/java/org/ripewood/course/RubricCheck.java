package org.ripewood.course;

import org.ripewood.core.progress.Fact;
import org.ripewood.course.CrossReferences.Codes;

/** What the schema cannot say of a rubric: its levels, and the fact or the skill they become. */
final class RubricCheck {

    private final Codes lessons;
    private final Faults faults;

    RubricCheck(Codes lessons, Faults faults) {
        this.lessons = lessons;
        this.faults = faults;
    }

    void check(Part rubric) {
        var levels = rubric.each("levels");
        for (int i = 0; i < levels.size(); i++) {
            var level = levels.get(i).at("level");
            if (level.isThere() && level.number() != i) {
                faults.add(
                        level,
                        "level " + level.value(),
                        "level %d, counted from 0 without gaps".formatted(i));
            }
        }
        if (rubric.has("feeds")) {
            checkFeeds(rubric, levels.size());
        }
        if (rubric.has("shows")) {
            checkShows(rubric, levels.size());
        }
    }

    private void checkShows(Part rubric, int levels) {
        var shows = rubric.at("shows");
        if ("tree".equals(rubric.text("subject"))) {
            faults.add(shows, "a skill of a student from judging a tree", "no shows");
        }
        shows.each("lessons").forEach(lesson -> lessons.check(lesson, faults));
        var from = shows.at("fromLevel");
        if (from.number() >= levels) {
            faults.add(
                    from, "level " + from.value(), "a level of the rubric, 1 to " + (levels - 1));
        }
    }

    private void checkFeeds(Part rubric, int levels) {
        var feeds = rubric.at("feeds");
        if ("student".equals(rubric.text("subject"))) {
            faults.add(feeds, "a fact of the tree from judging a student", "no feeds");
        }
        var perLevel = feeds.each("perLevel");
        if (perLevel.size() != levels) {
            faults.add(
                    feeds.at("perLevel"),
                    perLevel.size() + " values",
                    "one value for each of the %d levels".formatted(levels));
        }
        var fact = FactCheck.fact(feeds);
        if (fact == null) {
            return;
        }
        if (fact.kind() != Fact.Kind.NUMBER
                || fact.scope() != Fact.Scope.TREE
                || !fact.recordable()) {
            faults.add(
                    feeds.at("fact"),
                    "\"%s\"".formatted(fact.code()),
                    "a number of the tree as a whole that somebody records");
        } else {
            perLevel.forEach(value -> new FactCheck(faults).checkValue(fact, value));
        }
    }
}
