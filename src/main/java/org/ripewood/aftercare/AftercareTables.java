package org.ripewood.aftercare;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.ripewood.platform.records.KeptTable;
import org.ripewood.platform.records.KeptTables;

/** What people said of aftercare. */
@ApplicationScoped
class AftercareTables implements KeptTables {

    @Override
    public List<KeptTable> tables() {
        return List.of(
                KeptTable.named("aftercare_word")
                        .numbered()
                        .partOf("tree_id", "tree")
                        .refers("work_id", "work_done")
                        .plain("task", "times", "number")
                        .oneOf("what", Saying.values())
                        .plain("on_day")
                        .words("note")
                        .writtenBy("by_id")
                        .plain("recorded_at")
                        .done());
    }
}
