package org.ripewood.steps;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.records.TableDescription;
import org.ripewood.platform.records.TableDescription.CodeKind;
import org.ripewood.platform.records.TableDescriptions;

/** Steps, the decisions behind them and what was reported. */
@ApplicationScoped
class StandingTables implements TableDescriptions {

    private static final String STEP = "step";

    @Override
    public List<TableDescription> tables() {
        return List.of(
                TableDescription.named("decision")
                        .numbered()
                        .partOf("tree_id", "tree")
                        .plain("on_day", "content_revision")
                        .told("standing")
                        .refers("by_id", "person")
                        .plain("decided_at")
                        .done(),
                TableDescription.named(STEP)
                        .numbered()
                        .partOf("tree_id", "tree")
                        .code("technique", CodeKind.TECHNIQUE)
                        .oneOf("state", StepState.values())
                        .writtenBy("assigned_by_id")
                        .plain("assigned_on", "from_day", "until_day")
                        .words("note")
                        .refers("decision_id", "decision")
                        .plain("done_on", "reported_at")
                        .version()
                        .leftOut("open_for", "follows from the state", StandingTables::openFor)
                        .done(),
                TableDescription.named("step_waiver")
                        .numbered()
                        .partOf("step_id", STEP)
                        .plain("reason_key")
                        .words("why")
                        .writtenBy("by_id")
                        .plain("waived_on")
                        .done(),
                TableDescription.named("step_report")
                        .numbered()
                        .partOf("step_id", STEP)
                        .plain("done_on")
                        .words("evidence")
                        .plain("foliage_share", "root_share")
                        .plain("wound_place", "wound_width_mm", "wound_length_mm")
                        .plain("container_kind", "container_description", "container_litres")
                        .writtenBy("by_id")
                        .plain("reported_at")
                        .done(),
                TableDescription.named("step_event")
                        .numbered()
                        .partOf("step_id", STEP)
                        .oneOf("became", StepState.values())
                        .writtenBy("by_id")
                        .plain("happened_at")
                        .words("note")
                        .done());
    }

    /** As {@link StepEntity#become} says it. */
    private static @Nullable Object openFor(Map<String, @Nullable Object> row) {
        return StepState.valueOf(String.valueOf(row.get("state"))).isOpen()
                ? row.get("tree_id") + "/" + row.get("technique")
                : null;
    }
}
