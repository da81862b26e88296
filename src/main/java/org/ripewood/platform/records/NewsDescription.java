package org.ripewood.platform.records;

/**
 * Where one kind of news stands in a room's tables, as parts of a query. Whom a row is told to is
 * seen to by whoever asks; here only what happened is said.
 *
 * @param whom who is told of it
 * @param from tables and their joins
 * @param where further conditions; none for the empty text
 * @param at column: when it happened
 * @param what text or column: what happened, in capitals
 * @param by column: the person who did it
 * @param tree column: the tree it is about; {@code null} for none
 * @param course column: the course it is about; {@code null} for none
 * @param thing column: the row to look at
 * @param code column or text: a code or a day that the sentence needs
 */
public record NewsDescription(
        Whom whom,
        String from,
        String where,
        String at,
        String what,
        String by,
        String tree,
        String course,
        String thing,
        String code) {

    /** Who is told. */
    public enum Whom {
        /** The keeper of the tree. */
        KEEPER,
        /** Instructors of a course the tree's keeper is a student of. */
        TEACHER,
        /** Members of the course. */
        MEMBER,
        /** Instructors of the course. */
        STAFF
    }

    /** No column. */
    public static final String NONE = "null";

    /** Rows of that kind from a moment on, its parameter {@code :floor}. */
    public String sql() {
        return """
                select '%s' as whom, %s as happened, cast(%s as varchar(40)) as what, %s as by_id,
                cast(%s as bigint) as tree_id, cast(%s as bigint) as course_id, %s as thing_id,
                cast(%s as varchar(100)) as code
                from %s where %s >= :floor%s"""
                .formatted(
                        whom,
                        at,
                        what,
                        by,
                        tree,
                        course,
                        thing,
                        code,
                        from,
                        at,
                        where.isEmpty() ? "" : " and " + where);
    }
}
