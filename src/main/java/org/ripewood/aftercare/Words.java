package org.ripewood.aftercare;

import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.aftercare.CareTask.Said;

/** What stands of what was said of tasks; a word taken back is as if it had not been said. */
record Words(
        Map<TaskKey, WordEntity> latest,
        Map<Long, String> names,
        Map<Long, Set<Long>> formerKeepers) {

    Words {
        latest = Map.copyOf(latest);
        names = Map.copyOf(names);
        formerKeepers = Map.copyOf(formerKeepers);
    }

    @Nullable Said find(TaskKey key) {
        var word = latest.get(key);
        if (word == null || word.what == Saying.TAKEN_BACK) {
            return null;
        }
        return formerKeepers.getOrDefault(word.treeId, Set.of()).contains(word.byId)
                ? new Said(word.what, word.onDay, word.byId, "a former keeper", null)
                : new Said(
                        word.what,
                        word.onDay,
                        word.byId,
                        names.getOrDefault(word.byId, "someone no longer here"),
                        word.note);
    }
}
