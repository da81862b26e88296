package org.ripewood.course;

import org.ripewood.core.progress.StageRule;

/** A stage in a tree's training: what the engine needs ({@code rule}) and what people read. */
public record Stage(StageRule rule, String title, String aim, String ready) {

    public String code() {
        return rule.code();
    }

    /** Its place in the sequence, from 1. */
    public int order() {
        return rule.order();
    }
}
