package org.ripewood.web.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.SeasonRule;
import org.ripewood.core.progress.TechniqueRule;
import org.ripewood.core.season.StageRange;
import org.ripewood.course.Content;
import org.ripewood.course.Lesson;
import org.ripewood.course.Stage;
import org.ripewood.course.Technique;

/**
 * A technique as it is read apart from any tree.
 *
 * @param whom names of the kinds of tree it is for; empty for every kind
 * @param after techniques that come first
 * @param seasons growth stages it may be done in, kind by kind
 * @param clock the kind of work whose season stands with each species; null for none
 * @param words of the glossary that name it
 * @param ofSchool whether it, or what is said of it, is the school's own
 */
record TechniqueText(
        Technique technique,
        String stage,
        String whom,
        List<Technique> after,
        List<CriterionLine> criteria,
        List<String> seasons,
        @Nullable String clock,
        @Nullable Lesson skill,
        List<Lesson> lessons,
        List<Content.Term> words,
        boolean ofSchool,
        String revision) {

    static TechniqueText of(Technique technique, Content content) {
        var rule = technique.rule();
        return new TechniqueText(
                technique,
                stage(technique, content),
                Kinds.told(rule.groups(), rule.species(), content),
                rule.after().stream().map(content::technique).toList(),
                rule.criteria().stream().map(one -> CriterionLine.of(one, content)).toList(),
                seasons(rule.season(), content),
                clock(rule.season()),
                rule.skillLesson() == null ? null : content.lesson(rule.skillLesson()),
                technique.lessons().stream().map(content::lesson).toList(),
                content.glossary().stream()
                        .filter(term -> term.techniques().contains(technique.code()))
                        .toList(),
                content.isOfSchool(technique),
                content.revision());
    }

    /** What it is to a tree's development, in words. */
    public String purpose() {
        return switch (technique.rule().purpose()) {
            case CARE -> "Care: it keeps a tree well.";
            case DEVELOPMENT -> "Development: nothing is styled while a tree needs it.";
            case STYLING -> "Styling: it waits until the material is there.";
            case OTHER -> "";
        };
    }

    /** How much it asks of a tree, in words. */
    public String load() {
        double stress = technique.rule().stress();
        return stress >= TechniqueRule.HEAVY_STRESS
                ? "heavy"
                : stress <= TechniqueRule.LIGHT_STRESS ? "light" : "moderate";
    }

    private static String stage(Technique technique, Content content) {
        return content.stages().stream()
                .filter(stage -> stage.code().equals(technique.stage()))
                .map(Stage::title)
                .collect(Collectors.joining());
    }

    private static List<String> seasons(SeasonRule season, Content content) {
        var told = new ArrayList<String>();
        season.windows()
                .forEach(
                        window ->
                                told.add(
                                        told(
                                                Kinds.told(
                                                        window.groups(), window.species(), content),
                                                "every other kind",
                                                "growth stages " + spell(window.stages()))));
        season.avoid()
                .forEach(
                        avoid ->
                                told.add(
                                        told(
                                                Kinds.told(
                                                        avoid.groups(), avoid.species(), content),
                                                "every kind",
                                                "never in growth stages "
                                                        + spell(avoid.stages())
                                                        + ". "
                                                        + avoid.why())));
        return told;
    }

    private static String told(String kinds, String otherwise, String what) {
        var whom = kinds.isEmpty() ? otherwise : kinds;
        return Character.toUpperCase(whom.charAt(0)) + whom.substring(1) + ": " + what;
    }

    private static String spell(List<StageRange> stages) {
        return stages.stream()
                .map(range -> range.toString().replace("-", " to "))
                .collect(Collectors.joining(", "));
    }

    private static @Nullable String clock(SeasonRule season) {
        var clock = season.clock();
        return clock == null ? null : clock.code().replace('_', ' ');
    }
}
