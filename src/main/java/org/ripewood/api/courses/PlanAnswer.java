package org.ripewood.api.courses;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.api.content.CareTerms;
import org.ripewood.api.content.LessonLine;
import org.ripewood.boards.DayWork;
import org.ripewood.classday.DayTimetable;
import org.ripewood.classday.SessionPlan;
import org.ripewood.core.bench.Span;
import org.ripewood.course.Technique;
import org.ripewood.sessions.Session;

/**
 * The plan of a class day.
 *
 * @param toolKinds tools with those of one kind told as one
 * @param breaks for all, in minutes of the day
 * @param lessonAt when all are taught together; nobody works at a bench then
 * @param inBetween small jobs and looks without a place of their own on the timetable
 */
record PlanAnswer(
        Session session,
        String course,
        @Nullable LessonLine lesson,
        List<String> instructors,
        List<Row> rows,
        List<SessionPlan.Need> tools,
        List<SessionPlan.Need> toolKinds,
        List<SessionPlan.Need> materials,
        List<SessionPlan.Want> wants,
        List<SessionPlan.Caution> cautions,
        int studentMinutes,
        int instructorMinutes,
        List<Span> breaks,
        List<Span> lessonAt,
        List<SessionPlan.InBetween> inBetween,
        @Nullable DayTimetable timetable) {

    /** One tree's work that day; technique and work are null when nothing can be done on it. */
    record Row(
            String bench,
            String student,
            long treeId,
            String tree,
            String species,
            @Nullable String technique,
            @Nullable Work work,
            @Nullable Long stepId,
            DayWork.@Nullable Ground ground,
            String why,
            List<String> measureFirst,
            List<SessionPlan.Other> others) {}

    record Work(
            String title,
            int studentMinutes,
            int instructorMinutes,
            boolean irreversible,
            List<String> tools,
            List<String> materials,
            List<Technique.Hazard> hazards,
            List<CareTerms> aftercare) {

        static Work of(Technique technique) {
            return new Work(
                    technique.title(),
                    technique.studentMinutes(),
                    technique.instructorMinutes(),
                    technique.irreversible(),
                    technique.tools(),
                    technique.materials(),
                    technique.hazards(),
                    CareTerms.of(technique));
        }
    }

    static PlanAnswer of(SessionPlan plan) {
        var lesson = plan.lesson();
        return new PlanAnswer(
                plan.session(),
                plan.course(),
                lesson == null ? null : LessonLine.of(lesson),
                plan.instructors(),
                plan.rows().stream().map(PlanAnswer::row).toList(),
                plan.tools(),
                plan.toolKinds(),
                plan.materials(),
                plan.wants(),
                plan.cautions(),
                plan.studentMinutes(),
                plan.instructorMinutes(),
                plan.breaks(),
                plan.lessonAt(),
                plan.inBetween(),
                plan.timetable() == null ? null : plan.timetable().plan());
    }

    private static Row row(SessionPlan.Row row) {
        var technique = row.technique();
        return new Row(
                row.bench(),
                row.student(),
                row.treeId(),
                row.tree(),
                row.species(),
                technique == null ? null : technique.code(),
                technique == null ? null : Work.of(technique),
                row.stepId(),
                row.ground(),
                row.why(),
                row.measureFirst(),
                row.others());
    }
}
