package org.ripewood.assess;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** A judgement to be entered; a later one outweighs an earlier. */
public record NewSkillJudgement(
        @NotBlank @Size(max = 60) String lesson,
        @NotNull Boolean shown,
        @NotNull LocalDate judgedOn,
        @Nullable @Size(max = 2000) String note) {}
