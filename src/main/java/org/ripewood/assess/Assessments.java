package org.ripewood.assess;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Lesson;
import org.ripewood.people.People;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.problems.Suggestion;
import org.ripewood.trees.TreeDays;

/** Judgements of students' skills. */
@ApplicationScoped
public class Assessments {

    private static final int FIRST_YEAR = 1900;

    private final SkillJudgements judgements;
    private final People people;
    private final PeopleUnchecked peopleUnchecked;
    private final CourseContent content;
    private final TreeDays treeDays;

    Assessments(
            SkillJudgements judgements,
            People people,
            PeopleUnchecked peopleUnchecked,
            CourseContent content,
            TreeDays treeDays) {
        this.judgements = judgements;
        this.people = people;
        this.peopleUnchecked = peopleUnchecked;
        this.content = content;
        this.treeDays = treeDays;
    }

    /** Enters a judgement; instructors who reach the student only. */
    @Transactional
    public SkillJudgement judge(Actor actor, long studentId, NewSkillJudgement judgement) {
        actor.require(Role.INSTRUCTOR, "judge a skill");
        requireReach(actor, studentId);
        if (actor.personId() == studentId) {
            throw Refused.forbidden("Nobody judges their own skill.");
        }
        if (!peopleUnchecked.get(studentId).roles().contains(Role.STUDENT)) {
            throw Refused.conflict("Person %d is not a student.".formatted(studentId), null);
        }
        requireSkill(judgement.lesson());
        requireDay(studentId, judgement);
        return keep(actor, studentId, judgement).told();
    }

    /** Judgements of a student, latest first. */
    @Transactional
    public List<SkillJudgement> of(Actor actor, long studentId) {
        requireReach(actor, studentId);
        return judgements.of(List.of(studentId)).stream()
                .map(SkillJudgementEntity::told)
                .sorted(
                        Comparator.comparing(SkillJudgement::judgedOn)
                                .thenComparing(SkillJudgement::id)
                                .reversed())
                .toList();
    }

    /**
     * Lessons whose skill each person has shown, in one query; persons without any have an empty
     * set.
     */
    @Transactional
    public Map<Long, Set<String>> skills(Collection<Long> personIds) {
        var shown = new HashMap<Long, Set<String>>();
        personIds.forEach(id -> shown.put(id, new HashSet<>()));
        if (shown.isEmpty()) {
            return shown;
        }
        for (var judgement : judgements.of(shown.keySet())) {
            var lessons = shown.computeIfAbsent(judgement.studentId, id -> new HashSet<>());
            if (judgement.shown) {
                lessons.add(judgement.lesson);
            } else {
                lessons.remove(judgement.lesson);
            }
        }
        return shown;
    }

    /**
     * The day each student was last judged, in skill or by rubric, up to a day; those who never
     * were are absent. One query; no reach is asked.
     */
    @Transactional
    public Map<Long, LocalDate> lastJudged(Collection<Long> studentIds, LocalDate until) {
        return studentIds.isEmpty() ? Map.of() : judgements.lastDay(studentIds, until);
    }

    private SkillJudgementEntity keep(Actor actor, long studentId, NewSkillJudgement judgement) {
        var entity = new SkillJudgementEntity();
        entity.studentId = studentId;
        entity.lesson = judgement.lesson();
        entity.shown = judgement.shown();
        entity.judgedOn = judgement.judgedOn();
        entity.byId = actor.personId();
        entity.note = judgement.note();
        judgements.persist(entity);
        return entity;
    }

    private void requireReach(Actor actor, long studentId) {
        if (!people.reaches(actor, studentId)) {
            throw Refused.notFound("person", studentId);
        }
    }

    private void requireSkill(String code) {
        var lessons = content.inForce().lessons();
        var lesson = lessons.get(code);
        if (lesson == null) {
            throw Refused.invalid(
                    "lesson",
                    "There is no lesson “%s”.".formatted(code)
                            + Suggestion.maybe(lessons.keySet(), code));
        }
        requireShowable(lesson);
    }

    private static void requireShowable(Lesson lesson) {
        if (lesson.skill() == null) {
            throw Refused.invalid(
                    "lesson",
                    "The lesson “%s” has no skill to be shown; expected one that has."
                            .formatted(lesson.title()));
        }
    }

    private void requireDay(long studentId, NewSkillJudgement judgement) {
        var day = judgement.judgedOn();
        var last = treeDays.lastOfPerson(studentId);
        if (day.isAfter(last) || day.getYear() < FIRST_YEAR) {
            throw Refused.invalid(
                    "judgedOn",
                    "Expected a day from %d up to today, %s; found %s."
                            .formatted(FIRST_YEAR, last, day));
        }
    }
}
