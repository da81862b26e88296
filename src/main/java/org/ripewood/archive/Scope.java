package org.ripewood.archive;

import java.util.Set;

/**
 * What a file tells of.
 *
 * @param id of the course or tree; 0 for the school
 * @param named whether persons are told by name; otherwise as a person with a number, and what they
 *     wrote in their own words stays behind
 * @param hidden persons whose own words stay behind in any case
 */
record Scope(Kind kind, long id, boolean named, Set<Long> hidden) {

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
        return new Scope(Kind.SCHOOL, 0, true, Set.of());
    }

    static Scope course(long id) {
        return new Scope(Kind.COURSE, id, true, Set.of());
    }

    static Scope tree(long id, boolean named) {
        return new Scope(Kind.TREE, id, named, Set.of());
    }

    static Scope person(long id, Set<Long> hidden) {
        return new Scope(Kind.PERSON, id, true, hidden);
    }

    boolean whole() {
        return kind == Kind.SCHOOL;
    }
}
