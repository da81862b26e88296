package org.ripewood.web.trees;

import org.ripewood.core.progress.Fact;

/** Headings under which facts are listed; each begins with a fact and runs to the next heading. */
enum FactGroup {
    STRENGTH("Strength", Fact.VIGOUR_INDEX),
    ROOTS("Roots and root flare", Fact.FIRM_IN_CONTAINER),
    TRUNK("Trunk", Fact.TRUNK_BASE_MM),
    WOUNDS("Wounds and cuts", Fact.WOUND_OPEN_MM),
    BRANCHES("Branches", Fact.BRANCH_DIAMETER_MM),
    WIRE("Wire", Fact.WIRE_ON),
    CONTAINER("Container and substrate", Fact.CONTAINER_KIND),
    DESIGN("Front, plan and deadwood", Fact.FRONT_MARK),
    WORK("What the tree has gone through", Fact.RECOVERY_LOAD),
    SEASON("Growth stage", Fact.GROWTH_STAGE);

    final String title;
    private final Fact first;

    FactGroup(String title, Fact first) {
        this.title = title;
        this.first = first;
    }

    static FactGroup of(Fact fact) {
        var found = STRENGTH;
        for (var group : values()) {
            if (group.first.compareTo(fact) <= 0) {
                found = group;
            }
        }
        return found;
    }
}
