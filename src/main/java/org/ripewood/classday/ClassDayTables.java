package org.ripewood.classday;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.ripewood.platform.records.TableDescription;
import org.ripewood.platform.records.TableDescription.CodeKind;
import org.ripewood.platform.records.TableDescriptions;

/** Wishes for class days and the timetables laid out. */
@ApplicationScoped
class ClassDayTables implements TableDescriptions {

    private static final String SESSION = "class_session";
    private static final String TIMETABLE = "day_timetable";

    @Override
    public List<TableDescription> tables() {
        return List.of(
                TableDescription.named("day_wish")
                        .numbered()
                        .partOf("session_id", SESSION)
                        .refers("tree_id", "tree")
                        .code("technique", CodeKind.TECHNIQUE)
                        .plain("wish")
                        .writtenBy("said_by")
                        .plain("said_at")
                        .done(),
                TableDescription.named("day_break")
                        .orderedBy("session_id", "position")
                        .partOf("session_id", SESSION)
                        .plain("position", "from_minute", "to_minute")
                        .done(),
                TableDescription.named("day_lesson")
                        .orderedBy("session_id")
                        .partOf("session_id", SESSION)
                        .plain("from_minute", "minutes")
                        .done(),
                TableDescription.named(TIMETABLE)
                        .numbered()
                        .partOf("session_id", SESSION)
                        .plain("revision", "from_minute", "found", "finish_minute")
                        .plain("waiting_minutes", "cost", "least_cost", "jobs", "most_jobs")
                        .writtenBy("made_by")
                        .plain("made_at")
                        .done(),
                ofTimetable("day_slot")
                        .refers("tree_id", "tree")
                        .code("technique", CodeKind.TECHNIQUE)
                        .plain("phase", "kind", "cuts")
                        .refers("instructor_id", "person")
                        .plain("from_minute", "to_minute")
                        .done(),
                ofTimetable("day_left_out")
                        .refers("tree_id", "tree")
                        .code("technique", CodeKind.TECHNIQUE)
                        .words("because")
                        .done(),
                ofTimetable("day_arrival").refers("person_id", "person").plain("at_minute").done());
    }

    private static TableDescription.Telling ofTimetable(String name) {
        return TableDescription.named(name)
                .orderedBy("timetable_id", "position")
                .partOf("timetable_id", TIMETABLE)
                .plain("position");
    }
}
