package org.ripewood.course;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.TechniqueRule;
import org.ripewood.core.progress.Value;

/** A technique: what the engine needs ({@code rule}) and what people read. */
public record Technique(
        TechniqueRule rule,
        String title,
        String stage,
        String summary,
        String teaching,
        List<String> lessons,
        @Nullable String startsClock,
        int studentMinutes,
        int instructorMinutes,
        boolean irreversible,
        List<Ask> asks,
        List<Effect> effects,
        List<String> tools,
        List<String> materials,
        List<Hazard> hazards,
        List<Aftercare> aftercare,
        List<String> evidence,
        String source) {

    /** What a report must state. */
    public enum Ask {
        FOLIAGE_SHARE,
        ROOT_SHARE,
        WOUND,
        CONTAINER,
        MEASURES
    }

    /** A fact that becomes true at sign-off. */
    public record Effect(Fact fact, Value value) {}

    /** A caution: signal word, hazard, how to avoid it. */
    public record Hazard(String signal, String hazard, String avoid) {}

    /** Care after the work, counted from the day it was done. */
    public record Aftercare(String task, int fromDay, int days) {}

    public String code() {
        return rule.code();
    }
}
