package org.ripewood.assess;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ripewood.platform.Actor;

/** Judgements of students' skills. */
@ApplicationScoped
public class Assessments {

    /** Enters a judgement; instructors who reach the student only. */
    public SkillJudgement judge(Actor actor, long studentId, NewSkillJudgement judgement) {
        throw new IllegalStateException("to be built");
    }

    /** Judgements of a student, latest first. */
    public List<SkillJudgement> of(Actor actor, long studentId) {
        throw new IllegalStateException("to be built");
    }

    /**
     * Lessons whose skill each person has shown, in one query; persons without any have an empty
     * set.
     */
    public Map<Long, Set<String>> skills(Collection<Long> personIds) {
        throw new IllegalStateException("to be built");
    }
}
