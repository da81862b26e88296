package org.ripewood.steps;

/** Where an assigned step is. */
public enum StepState {
    /** The student may do it. */
    ASSIGNED("assigned"),
    /** The student says it is done; an instructor has to look. */
    REPORTED("reported"),
    /** The instructor wants something put right. */
    SENT_BACK("sent back"),
    /** Done and seen. */
    SIGNED_OFF("signed off"),
    /** Taken back before it was done. */
    WITHDRAWN("withdrawn"),
    /** Found already done, before the tree or its record came to the school. */
    FOUND_DONE("found done");

    private final String words;

    StepState(String words) {
        this.words = words;
    }

    /** As it is told in a sentence. */
    public String words() {
        return words;
    }

    /** Whether something is still to happen. */
    public boolean isOpen() {
        return this == ASSIGNED || this == REPORTED || this == SENT_BACK;
    }

    /** Whether the student has it to do. */
    public boolean isWithStudent() {
        return this == ASSIGNED || this == SENT_BACK;
    }

    /** Whether the work is done and seen. */
    public boolean isDone() {
        return this == SIGNED_OFF || this == FOUND_DONE;
    }
}
