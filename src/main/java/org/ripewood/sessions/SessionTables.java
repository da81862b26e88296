package org.ripewood.sessions;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.ripewood.platform.KeptTable;
import org.ripewood.platform.KeptTables;

/** Class dates and who comes with which tree. */
@ApplicationScoped
class SessionTables implements KeptTables {

    private static final String SESSION = "class_session";

    @Override
    public List<KeptTable> tables() {
        return List.of(
                KeptTable.named(SESSION)
                        .numbered()
                        .partOf("course_id", "course")
                        .plain("held_on", "starts_at", "ends_at", "lesson", "place", "changed_at")
                        .plain("cancelled_at")
                        .writtenBy("cancelled_by_id")
                        .words("cancelled_because")
                        .version()
                        .done(),
                KeptTable.named("class_session_instructor")
                        .orderedBy("session_id", "position")
                        .partOf("session_id", SESSION)
                        .plain("position")
                        .refers("person_id", "person")
                        .done(),
                KeptTable.named("enrolment")
                        .numbered()
                        .partOf("session_id", SESSION)
                        .refers("person_id", "person")
                        .refers("tree_id", "tree")
                        .plain("bench", "withdrawn_at")
                        .leftOut(
                                "coming_tree_id",
                                "is the tree while it comes",
                                row -> row.get("withdrawn_at") == null ? row.get("tree_id") : null)
                        .done());
    }
}
