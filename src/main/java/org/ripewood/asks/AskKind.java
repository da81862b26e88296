package org.ripewood.asks;

/** What is asked. */
public enum AskKind {
    /** To be given the step. */
    STEP,
    /** A question in words. */
    QUESTION
}
