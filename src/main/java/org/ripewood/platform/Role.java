package org.ripewood.platform;

/** What a person is at the school; one person may be several. */
public enum Role {
    STUDENT,
    INSTRUCTOR,
    REGISTRAR;

    /** Names for annotations. */
    public static final String STUDENT_NAME = "STUDENT";

    public static final String INSTRUCTOR_NAME = "INSTRUCTOR";
    public static final String REGISTRAR_NAME = "REGISTRAR";
}
