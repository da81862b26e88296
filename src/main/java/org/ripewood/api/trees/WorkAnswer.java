package org.ripewood.api.trees;

import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Work;
import org.ripewood.standing.WorkTold;

/** Work done on a tree, with what it cost it. */
record WorkAnswer(
        long id,
        long treeId,
        Work work,
        @Nullable String clock,
        @Schema(description = "who signed the work off, or entered it as earlier work") long byId,
        @Nullable String note,
        @Schema(description = "false for earlier work: somebody entered it, nobody signed it off")
                boolean signedOff) {

    static WorkAnswer of(WorkTold told) {
        var done = told.work();
        return new WorkAnswer(
                done.id(),
                done.treeId(),
                done.work(),
                done.clock(),
                done.byId(),
                done.note(),
                told.signedOff());
    }
}
