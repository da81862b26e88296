package org.ripewood.archive;

import java.util.Optional;
import java.util.Set;

/**
 * What a file tells of.
 *
 * @param id of the course or tree; 0 for the school
 * @param named whether persons are told by name; otherwise as a person with a number, and what they
 *     wrote in their own words stays behind
 * @param hidden persons whose own words stay behind in any case
 * @param judge who may read what they have sealed themselves; 0 for nobody
 */
record Scope(Kind kind, long id, boolean named, Set<Long> hidden, long judge) {

    private static final long NOBODY = 0;

    Scope {
        hidden = Set.copyOf(hidden);
    }

    enum Kind {
        SCHOOL,
        COURSE,
        TREE,
        /** One person's own; it is for them to read and no school takes it in. */
        PERSON
    }

    static Scope school() {
        return new Scope(Kind.SCHOOL, 0, true, Set.of(), NOBODY);
    }

    /**
     * A course.
     *
     * @param hidden persons who are told by a number, and whose own words stay behind
     */
    static Scope course(long id, Set<Long> hidden) {
        return new Scope(Kind.COURSE, id, true, hidden, NOBODY);
    }

    static Scope tree(long id, boolean named) {
        return new Scope(Kind.TREE, id, named, Set.of(), NOBODY);
    }

    /**
     * One person's own.
     *
     * @param byThemselves whether it goes to nobody but that person
     */
    static Scope person(long id, Set<Long> hidden, boolean byThemselves) {
        return new Scope(Kind.PERSON, id, true, hidden, byThemselves ? id : NOBODY);
    }

    boolean whole() {
        return kind == Kind.SCHOOL;
    }

    /** Whether it has rows of a table at all. */
    boolean has(PlannedTable table) {
        return !table.told().schoolOnly() || isOfTheSchool();
    }

    /** Whether it has a column: how somebody signs in here is nobody's business elsewhere. */
    boolean has(PlannedColumn column) {
        return !column.told().schoolOnly() || isOfTheSchool();
    }

    private boolean isOfTheSchool() {
        return kind == Kind.SCHOOL || kind == Kind.PERSON;
    }

    /**
     * What is to hold of a table's rows besides: of those that are sealed only the taker's own.
     *
     * @param before what stands before a column's name
     * @return a condition, empty when all rows may be had
     */
    Optional<String> open(PlannedTable table, String before) {
        var until = table.told().sealedUntil();
        if (until == null) {
            return Optional.empty();
        }
        var opened = before + until + " is not null";
        return Optional.of(
                judge == NOBODY
                        ? opened
                        : "(%s or %s%s = %d)".formatted(opened, before, table.told().by(), judge));
    }
}
