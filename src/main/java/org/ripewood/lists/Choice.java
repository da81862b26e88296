package org.ripewood.lists;

/** What is to happen with a list. */
public enum Choice {
    /** Say what is wrong and what would be entered; enter nothing. */
    DRY_RUN,
    /** Enter all of it when nothing is wrong, else nothing. */
    ALL_OR_NOTHING,
    /** Enter what nothing is wrong with. */
    GOOD_ROWS
}
