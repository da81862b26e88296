package org.ripewood.archive;

import java.util.List;
import java.util.Locale;
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

    /** Tables of which a tree's and a course's file has those rows only that others name. */
    static final List<String> NAMED_ONLY = List.of("person", "site");

    enum Kind {
        SCHOOL,
        COURSE,
        TREE,
        /** One person's own; it is for them to read and no school takes it in. */
        PERSON;

        /** The table of which a file of a tree or a course has one row. */
        String root() {
            return name().toLowerCase(Locale.ROOT);
        }

        /**
         * Whether such a file has a table at all: what is part of a tree, of a course for a
         * course's, and the persons and sites these name. A student's skills go with a course.
         */
        boolean holds(PlannedTable table, List<PlannedTable> all) {
            if (this == SCHOOL || this == PERSON) {
                return true;
            }
            var top = top(table, all);
            return !table.told().schoolOnly()
                    && switch (top) {
                        case "tree", "site" -> true;
                        case "course" -> this == COURSE;
                        case "person" -> this == COURSE || top.equals(table.name());
                        default -> false;
                    };
        }

        /** What a table is part of in the end; itself when it is part of nothing. */
        private static String top(PlannedTable table, List<PlannedTable> all) {
            var owner = table.ownerTable().orElse(null);
            return owner == null
                    ? table.name()
                    : all.stream()
                            .filter(each -> each.name().equals(owner))
                            .findFirst()
                            .map(each -> top(each, all))
                            .orElse(owner);
        }
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
