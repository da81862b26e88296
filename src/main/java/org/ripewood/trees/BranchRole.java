package org.ripewood.trees;

/** What a branch is there for. */
public enum BranchRole {
    PRIMARY,
    CANDIDATE,
    SACRIFICE,
    LEADER
}
