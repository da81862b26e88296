package org.ripewood.archive;

/**
 * What a file tells of.
 *
 * @param id of the course or tree; 0 for the school
 * @param named whether persons are told by name; otherwise as a person with a number, and what they
 *     wrote in their own words stays behind
 */
record Scope(Kind kind, long id, boolean named) {

    enum Kind {
        SCHOOL,
        COURSE,
        TREE,
        /** One person's own; it is for them to read and no school takes it in. */
        PERSON
    }

    static Scope school() {
        return new Scope(Kind.SCHOOL, 0, true);
    }

    static Scope course(long id) {
        return new Scope(Kind.COURSE, id, true);
    }

    static Scope tree(long id, boolean named) {
        return new Scope(Kind.TREE, id, named);
    }

    static Scope person(long id) {
        return new Scope(Kind.PERSON, id, true);
    }

    boolean whole() {
        return kind == Kind.SCHOOL;
    }
}
