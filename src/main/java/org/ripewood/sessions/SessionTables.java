package org.ripewood.sessions;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.records.TableDescription;
import org.ripewood.platform.records.TableDescription.CodeKind;
import org.ripewood.platform.records.TableDescriptions;

/** Class dates and who comes with which tree. */
@ApplicationScoped
class SessionTables implements TableDescriptions {

    private static final String SESSION = "class_session";

    @Override
    public List<TableDescription> tables() {
        return List.of(
                TableDescription.named(SESSION)
                        .numbered()
                        .partOf("course_id", "course")
                        .plain("held_on", "starts_at", "ends_at")
                        .code("lesson", CodeKind.LESSON)
                        .plain("place", "changed_at")
                        .plain("cancelled_at")
                        .writtenBy("cancelled_by_id")
                        .words("cancelled_because")
                        .plain("places")
                        .version()
                        .done(),
                TableDescription.named("class_session_instructor")
                        .orderedBy("session_id", "position")
                        .partOf("session_id", SESSION)
                        .plain("position")
                        .refers("person_id", "person")
                        .done(),
                TableDescription.named("session_move")
                        .orderedBy("session_id", "position")
                        .partOf("session_id", SESSION)
                        .plain("position", "held_on", "starts_at", "ends_at", "place")
                        .writtenBy("moved_by_id")
                        .words("because")
                        .plain("moved_at")
                        .done(),
                TableDescription.named("session_wait")
                        .numbered()
                        .partOf("session_id", SESSION)
                        .refers("person_id", "person")
                        .refers("tree_id", "tree")
                        .plain("since", "ended_at")
                        .leftOut("waits_for", "follows from the rest", SessionTables::waitsFor)
                        .done(),
                TableDescription.named("enrolment")
                        .numbered()
                        .partOf("session_id", SESSION)
                        .refers("person_id", "person")
                        .refers("tree_id", "tree")
                        .plain("bench", "withdrawn_at")
                        .leftOut(
                                "coming_tree_id",
                                "is the tree while it comes",
                                row -> row.get("withdrawn_at") == null ? row.get("tree_id") : null)
                        .done(),
                TableDescription.named("roll_mark")
                        .numbered()
                        .partOf("session_id", SESSION)
                        .refers("person_id", "person")
                        .oneOf("presence", Presence.values())
                        .writtenBy("by_id")
                        .plain("marked_at", "replaced_at")
                        .leftOut("marked_for", "follows from the rest", SessionTables::markedFor)
                        .done());
    }

    private static @Nullable Object waitsFor(Map<String, @Nullable Object> row) {
        return row.get("ended_at") == null
                ? row.get("session_id") + "/" + row.get("tree_id")
                : null;
    }

    private static @Nullable Object markedFor(Map<String, @Nullable Object> row) {
        return row.get("replaced_at") == null
                ? row.get("session_id") + "/" + row.get("person_id")
                : null;
    }
}
