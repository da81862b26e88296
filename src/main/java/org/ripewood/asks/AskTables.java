package org.ripewood.asks;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.records.TableDescription;
import org.ripewood.platform.records.TableDescription.CodeKind;
import org.ripewood.platform.records.TableDescriptions;

/** What was asked at techniques, and the answers. */
@ApplicationScoped
class AskTables implements TableDescriptions {

    @Override
    public List<TableDescription> tables() {
        return List.of(
                TableDescription.named("ask")
                        .numbered()
                        .partOf("tree_id", "tree")
                        .code("technique", CodeKind.TECHNIQUE)
                        .oneOf("kind", AskKind.values())
                        .words("words")
                        .writtenBy("by_id")
                        .plain("asked_at", "closed_at")
                        .leftOut("open_for", "follows from the rest", AskTables::openFor)
                        .done(),
                TableDescription.named("ask_answer")
                        .numbered()
                        .partOf("ask_id", "ask")
                        .words("words")
                        .refers("step_id", "step")
                        .writtenBy("by_id")
                        .plain("answered_at")
                        .done());
    }

    /** As {@link AskEntity#openFor} says it. */
    private static @Nullable Object openFor(Map<String, @Nullable Object> row) {
        return row.get("closed_at") == null
                ? row.get("tree_id") + "/" + row.get("technique") + "/" + row.get("kind")
                : null;
    }
}
