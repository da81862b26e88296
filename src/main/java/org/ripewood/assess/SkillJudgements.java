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

    List<SkillJudgementEntity> of(Collection<Long> studentIds) {
        return list("studentId in ?1 order by judgedOn, id", studentIds);
    }

    /**
     * The day each student was last judged, up to a day: a skill, or by a rubric that is open to be
     * seen.
     */
    Map<Long, LocalDate> lastDay(Collection<Long> studentIds, LocalDate until) {
        var last = new HashMap<Long, LocalDate>();
        for (var from :
                List.of(
                        "SkillJudgementEntity j where j.studentId in :students",
                        "JudgementEntity j where j.studentId in :students and j.openedAt is not"
                                + " null")) {
            getEntityManager()
                    .createQuery(
                            "select j.studentId, max(j.judgedOn) from "
                                    + from
                                    + " and j.judgedOn <= :until group by j.studentId",
                            Object[].class)
                    .setParameter("students", studentIds)
                    .setParameter("until", until)
                    .getResultList()
                    .forEach(
                            row ->
                                    last.merge(
                                            (Long) row[0],
                                            (LocalDate) row[1],
                                            (one, other) -> one.isAfter(other) ? one : other));
        }
        return last;
    }
}
