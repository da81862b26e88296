package org.ripewood.api;

/** Who calls, in the order of the role table's columns. */
enum Who {
    ANONYMOUS,
    /** Keeper of the tree asked for. */
    STUDENT,
    /** A student of another course. */
    OTHER_STUDENT,
    /** Teaches the course the student attends. */
    INSTRUCTOR,
    /** Teaches another course. */
    OTHER_INSTRUCTOR,
    REGISTRAR
}
