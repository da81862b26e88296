package org.ripewood.web.steps;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.Technique;
import org.ripewood.photos.Photo;
import org.ripewood.standing.Decision;
import org.ripewood.steps.Step;
import org.ripewood.trees.Tree;
import org.ripewood.web.kit.FormState;

/**
 * What the page of a step shows.
 *
 * @param technique null when the content in force no longer has it
 * @param names of everybody who acted on it, by id
 * @param photos that are evidence for it
 * @param teaches whether the reader may sign off
 */
record StepPageModel(
        Tree tree,
        String keeper,
        Step step,
        String title,
        @Nullable Technique technique,
        @Nullable Decision decision,
        Map<Long, String> names,
        List<Photo> photos,
        boolean teaches,
        FormState report,
        FormState signOff,
        FormState sendBack,
        FormState withdraw,
        FormState typed) {

    public String name(long personId) {
        return names.getOrDefault(personId, "");
    }

    /** The reason a waiver let pass, as it was told then; its key when it was not kept. */
    public String waived(String key) {
        if (decision == null) {
            return key;
        }
        return decision.standing().reasons().stream()
                .filter(reason -> reason.key().equals(key))
                .map(reason -> reason.title())
                .findFirst()
                .orElse(key);
    }
}
