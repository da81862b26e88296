package org.ripewood.api.content;

import java.util.List;
import java.util.Locale;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.ripewood.api.kit.PlainValue;
import org.ripewood.core.progress.Fact;
import org.ripewood.course.Technique;

/** A technique: what people read, and its rules in the terms of the content files. */
public record TechniqueAnswer(
        String code,
        String title,
        String stage,
        String summary,
        String teaching,
        List<String> lessons,
        RuleTerms rules,
        @Nullable String startsClock,
        int studentMinutes,
        int instructorMinutes,
        boolean irreversible,
        List<String> asks,
        List<EffectTerms> effects,
        List<String> measureAgain,
        List<String> tools,
        List<String> materials,
        List<Technique.Hazard> hazards,
        List<CareTerms> aftercare,
        List<String> evidence,
        String source) {

    /** What becomes true of the tree when the work is signed off. */
    record EffectTerms(
            String fact,
            @Schema(description = "a number, true or false, or a word") Object value) {}

    public static TechniqueAnswer of(Technique technique) {
        return new TechniqueAnswer(
                technique.code(),
                technique.title(),
                technique.stage(),
                technique.summary(),
                technique.teaching(),
                technique.lessons(),
                RuleTerms.of(technique.rule()),
                technique.startsClock(),
                technique.studentMinutes(),
                technique.instructorMinutes(),
                technique.irreversible(),
                technique.asks().stream().map(TechniqueAnswer::word).toList(),
                technique.effects().stream().map(TechniqueAnswer::effect).toList(),
                technique.unsettles().stream().map(Fact::code).toList(),
                technique.tools(),
                technique.materials(),
                technique.hazards(),
                CareTerms.of(technique),
                technique.evidence(),
                technique.source());
    }

    private static EffectTerms effect(Technique.Effect effect) {
        return new EffectTerms(effect.fact().code(), PlainValue.of(effect.value()));
    }

    /** As the content files write it: {@code foliageShare}. */
    private static String word(Technique.Ask ask) {
        return switch (ask) {
            case FOLIAGE_SHARE -> "foliageShare";
            case ROOT_SHARE -> "rootShare";
            case WOUND, CONTAINER, MEASURES -> ask.name().toLowerCase(Locale.ROOT);
        };
    }
}
