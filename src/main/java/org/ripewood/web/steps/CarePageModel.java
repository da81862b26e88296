package org.ripewood.web.steps;

import java.util.List;
import org.ripewood.aftercare.Care;
import org.ripewood.aftercare.CareTask;
import org.ripewood.boards.Checklist;
import org.ripewood.trees.Tree;
import org.ripewood.web.kit.FormState;

/**
 * Care of a tree as pages show it.
 *
 * @param speaks whether the reader may say that a task is done
 * @param reported care after work that nobody has signed off yet
 */
record CarePageModel(
        Tree tree, Care care, boolean speaks, List<Checklist.Care> reported, FormState typed) {

    /** So far ahead tasks are shown beside those that are due. */
    private static final int SOON_DAYS = 30;

    /** The form for a task: as it was typed when it was refused, with today's day otherwise. */
    public FormState form(CareTask task) {
        var name = formOf(task.id());
        return typed.orFresh(name, FormState.fresh(name).with("on", care.on()));
    }

    static String formOf(String taskId) {
        return "care-" + taskId;
    }

    /** Tasks that begin within a month. */
    public List<CareTask> soon() {
        var last = care.on().plusDays(SOON_DAYS);
        return care.ahead().stream().filter(task -> !task.from().isAfter(last)).toList();
    }

    /** How much care is due, also of work that nobody has signed off yet. */
    public int nowCount() {
        return care.now().size() + reported.size();
    }

    /** Whether anything is due or to be measured. */
    public boolean anyNow() {
        return !care.now().isEmpty() || !care.measuring().isEmpty() || !reported.isEmpty();
    }

    /** Whether anything is due, soon due or to be measured. */
    public boolean any() {
        return anyNow() || !soon().isEmpty();
    }
}
