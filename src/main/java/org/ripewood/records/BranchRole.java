package org.ripewood.records;

/** What a branch is there for. */
public enum BranchRole {
    PRIMARY,
    CANDIDATE,
    SACRIFICE,
    LEADER
}
