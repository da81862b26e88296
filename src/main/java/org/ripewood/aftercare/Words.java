package org.ripewood.aftercare;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.aftercare.CareTask.Said;

/** What stands of what was said of tasks; a word taken back is as if it had not been said. */
record Words(Map<TaskKey, WordEntity> latest, Map<Long, String> names) {

    Words {
        latest = Map.copyOf(latest);
        names = Map.copyOf(names);
    }

    @Nullable Said find(TaskKey key) {
        var word = latest.get(key);
        return word == null || word.what == Saying.TAKEN_BACK
                ? null
                : new Said(
                        word.what,
                        word.onDay,
                        word.byId,
                        names.getOrDefault(word.byId, "someone no longer here"),
                        word.note);
    }
}
