package org.ripewood.aftercare;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.records.TableDescription;
import org.ripewood.platform.records.TableDescriptions;

/** What people said of aftercare. */
@ApplicationScoped
class AftercareTables implements TableDescriptions {

    @Override
    public List<TableDescription> tables() {
        return List.of(
                TableDescription.named("aftercare_word")
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

    /** A task of a time before the first would never be asked for again. */
    @Override
    public List<Fault> faults(String table, Map<String, @Nullable Object> row) {
        return table.equals("aftercare_word") && row.get("times") instanceof Long times && times < 1
                ? List.of(new Fault("times", "expected at least 1, found " + times))
                : List.of();
    }
}
