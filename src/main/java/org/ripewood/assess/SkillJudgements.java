package org.ripewood.assess;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;

/** The judgements kept; the latest by day, then by entry, comes last. */
@ApplicationScoped
class SkillJudgements implements PanacheRepositoryBase<SkillJudgementEntity, Long> {

    List<SkillJudgementEntity> of(Collection<Long> studentIds) {
        return list("studentId in ?1 order by judgedOn, id", studentIds);
    }
}
