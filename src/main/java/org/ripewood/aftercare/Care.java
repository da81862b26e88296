package org.ripewood.aftercare;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Care of one tree, or of a person's trees.
 *
 * @param on the day it is told for
 * @param tasks what is due first
 * @param measuring days to measure again, soonest first
 * @param worked titles of the techniques in each tree's record, whether or not care is left
 */
public record Care(
        LocalDate on,
        List<CareTask> tasks,
        List<MeasuringDay> measuring,
        Map<Long, Set<String>> worked) {

    public Care {
        tasks = List.copyOf(tasks);
        measuring = List.copyOf(measuring);
        worked = Map.copyOf(worked);
    }

    /** Tasks late and due. */
    public List<CareTask> now() {
        return tasks.stream().filter(CareTask::now).toList();
    }

    /** Tasks to come. */
    public List<CareTask> ahead() {
        return tasks.stream().filter(CareTask::ahead).toList();
    }

    /** Tasks done, not needed, or over. */
    public List<CareTask> past() {
        return tasks.stream().filter(task -> !task.open()).toList();
    }

    /** Whether work by a technique stands in a tree's record, so that its care is told here. */
    public boolean tellsOf(long treeId, String title) {
        return worked.getOrDefault(treeId, Set.of()).contains(title);
    }
}
