package org.ripewood.classday;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.ripewood.platform.records.KeptTable;
import org.ripewood.platform.records.KeptTables;

/** Wishes for class days and the timetables laid out. */
@ApplicationScoped
class ClassDayTables implements KeptTables {

    private static final String SESSION = "class_session";
    private static final String TIMETABLE = "day_timetable";

    @Override
    public List<KeptTable> tables() {
        return List.of(
                KeptTable.named("day_wish")
                        .numbered()
                        .partOf("session_id", SESSION)
                        .refers("tree_id", "tree")
                        .plain("technique", "wish")
                        .writtenBy("said_by")
                        .plain("said_at")
                        .done(),
                KeptTable.named("day_break")
                        .orderedBy("session_id", "position")
                        .partOf("session_id", SESSION)
                        .plain("position", "from_minute", "to_minute")
                        .done(),
                KeptTable.named(TIMETABLE)
                        .numbered()
                        .partOf("session_id", SESSION)
                        .plain("revision", "from_minute", "found", "finish_minute")
                        .plain("waiting_minutes", "cost", "least_cost", "jobs", "most_jobs")
                        .writtenBy("made_by")
                        .plain("made_at")
                        .done(),
                ofTimetable("day_slot")
                        .refers("tree_id", "tree")
                        .plain("technique", "phase", "kind", "cuts")
                        .refers("instructor_id", "person")
                        .plain("from_minute", "to_minute")
                        .done(),
                ofTimetable("day_left_out")
                        .refers("tree_id", "tree")
                        .plain("technique")
                        .words("because")
                        .done(),
                ofTimetable("day_arrival").refers("person_id", "person").plain("at_minute").done());
    }

    private static KeptTable.Telling ofTimetable(String name) {
        return KeptTable.named(name)
                .orderedBy("timetable_id", "position")
                .partOf("timetable_id", TIMETABLE)
                .plain("position");
    }
}
