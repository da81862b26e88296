package org.ripewood.course;

import org.ripewood.core.progress.Fact;

/** What the schema cannot say of a rubric: its levels, and the fact they become. */
final class RubricCheck {

    private final Faults faults;

    RubricCheck(Faults faults) {
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
