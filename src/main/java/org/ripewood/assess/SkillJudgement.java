package org.ripewood.assess;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** An instructor's word on whether a student has shown a lesson's skill. */
public record SkillJudgement(
        long id,
        long studentId,
        String lesson,
        boolean shown,
        LocalDate judgedOn,
        long byId,
        @Nullable String note) {}
