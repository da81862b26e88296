package org.ripewood.standing;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Technique;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.problems.Suggestion;
import org.ripewood.records.WorkDone;
import org.ripewood.records.WorksDone;
import org.ripewood.steps.StepWriter;
import org.ripewood.steps.Steps;
import org.ripewood.steps.TechniqueWork;

/**
 * Work that was done before anybody gave it as a step, before the tree came included. It loads the
 * tree and starts its clocks as work that was signed off does, and nobody signed it off.
 */
@ApplicationScoped
@Transactional
public class EarlierWorks {

    private final WorksDone worksDone;
    private final Steps steps;
    private final Assigner assigner;
    private final CourseContent content;

    EarlierWorks(WorksDone worksDone, Steps steps, Assigner assigner, CourseContent content) {
        this.worksDone = worksDone;
        this.steps = steps;
        this.assigner = assigner;
        this.content = content;
    }

    /** All work on a tree within reach, the latest first. */
    public List<WorkTold> of(Actor actor, long treeId) {
        return WorkTold.of(worksDone.of(actor, treeId), steps.briefs(actor, treeId));
    }

    /**
     * Enters work of a day from 1900 on that has begun; for everybody who reaches the tree. The
     * same technique a second time for the same day is a conflict (409), for it would count twice.
     */
    public WorkTold enter(Actor actor, long treeId, NewEarlierWork earlier) {
        var doneOn = earlier.doneOn();
        var before = worksDone.of(actor, treeId);
        var counts = Boolean.TRUE.equals(earlier.countsAsDone());
        if (counts) {
            actor.require(Role.INSTRUCTOR, "say that a technique counts as done");
        }
        var technique = technique(earlier.technique());
        requireFirst(before, technique, doneOn);
        var note = StepWriter.noteOf(earlier.note());
        var work =
                TechniqueWork.of(
                        technique,
                        doneOn,
                        share(earlier.foliagePercent()),
                        share(earlier.rootPercent()));
        var done = worksDone.record(actor, treeId, work, technique.startsClock(), note);
        if (counts) {
            assigner.noteFoundDone(actor, treeId, technique.code(), doneOn, note);
        }
        return new WorkTold(done, false);
    }

    private Technique technique(String code) {
        var known = content.inForce().techniques();
        var technique = known.get(code);
        if (technique == null) {
            throw Refused.invalid(
                    "technique",
                    "There is no technique “%s”.%s"
                            .formatted(code, Suggestion.maybe(known.keySet(), code)));
        }
        return technique;
    }

    private static void requireFirst(List<WorkDone> before, Technique technique, LocalDate doneOn) {
        var again =
                before.stream()
                        .filter(work -> work.doneOn().equals(doneOn))
                        .anyMatch(work -> work.work().technique().equals(technique.code()));
        if (again) {
            throw Refused.conflict(
                    "“%s” on %s is on record already and would count twice."
                            .formatted(technique.title(), doneOn),
                    "Maybe it was another day.");
        }
    }

    private static @Nullable Double share(@Nullable Double percent) {
        return percent == null ? null : percent / 100;
    }
}
