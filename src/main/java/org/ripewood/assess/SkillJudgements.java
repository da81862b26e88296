package org.ripewood.assess;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The judgements kept; the latest by day, then by entry, comes last. */
@ApplicationScoped
class SkillJudgements implements PanacheRepositoryBase<SkillJudgementEntity, Long> {

    private static final String LAST_DAYS =
            """
            select j.studentId as student, max(j.judgedOn) as day from SkillJudgementEntity j
            where j.studentId in :students and j.judgedOn <= :until group by j.studentId
            union all
            select r.studentId as student, max(r.judgedOn) as day from JudgementEntity r
            where r.studentId in :students and r.judgedOn <= :until and r.openedAt is not null
            group by r.studentId""";

    List<SkillJudgementEntity> of(Collection<Long> studentIds) {
        return list("studentId in ?1 order by judgedOn, id", studentIds);
    }

    /**
     * The day each student was last judged, up to a day: a skill, or by a rubric that is open to be
     * seen.
     */
    Map<Long, LocalDate> lastDay(Collection<Long> studentIds, LocalDate until) {
        var last = new HashMap<Long, LocalDate>();
        getEntityManager()
                .createQuery(LAST_DAYS, Object[].class)
                .setParameter("students", studentIds)
                .setParameter("until", until)
                .getResultList()
                .forEach(
                        row ->
                                last.merge(
                                        (Long) row[0],
                                        (LocalDate) row[1],
                                        (one, other) -> one.isAfter(other) ? one : other));
        return last;
    }
}
