package org.ripewood.records;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Work;

/** Work done on a tree, with what it cost it. */
public record WorkDone(
        long id, long treeId, Work work, @Nullable String clock, long byId, @Nullable String note) {

    public LocalDate doneOn() {
        return work.doneOn();
    }

    /** The same with another note; null for none. */
    public WorkDone withNote(@Nullable String other) {
        return new WorkDone(id, treeId, work, clock, byId, other);
    }
}
