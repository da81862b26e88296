package org.ripewood.web.judgements;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.assess.Judgement;
import org.ripewood.course.Rubric;
import org.ripewood.platform.Paged;
import org.ripewood.trees.Tree;
import org.ripewood.web.kit.FormState;

/**
 * The judgements of a tree or a student.
 *
 * @param at address of the page
 * @param home address of the tree's or the student's page
 * @param tree the tree judged; null when it is a student
 * @param judge whether the reader may judge, and who that is
 */
public record JudgementPageModel(
        String at,
        String home,
        String of,
        @Nullable Tree tree,
        List<Rubric> rubrics,
        Map<String, Judgement> latest,
        Paged<Judgement> judgements,
        Map<Long, String> names,
        boolean judge,
        long reader,
        FormState typed) {

    public @Nullable Judgement latest(String rubric) {
        return latest.get(rubric);
    }

    public String title(String code) {
        return rubrics.stream()
                .filter(rubric -> rubric.code().equals(code))
                .map(Rubric::title)
                .findFirst()
                .orElse(code);
    }

    /** The level in words, as the content in force has them. */
    public String word(Judgement judgement) {
        var level = judgement.level();
        if (level == null) {
            return "no level yet";
        }
        return rubrics.stream()
                .filter(rubric -> rubric.code().equals(judgement.rubric()) && rubric.has(level))
                .map(rubric -> "%d, %s".formatted(level, rubric.levels().get(level).word()))
                .findFirst()
                .orElse("level " + level);
    }

    public String name(Judgement judgement) {
        return names.getOrDefault(judgement.byId(), "");
    }

    public boolean own(Judgement judgement) {
        return judgement.byId() == reader;
    }

    /** Whether its judge may still say that it was a mistake. */
    public boolean correctable(Judgement judgement) {
        return judge && own(judgement) && !judgement.draft() && judgement.supersededBy() == null;
    }
}
