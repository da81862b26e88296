package org.ripewood.steps;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The reports kept, oldest first. */
@ApplicationScoped
public class ReportBook implements PanacheRepositoryBase<ReportEntity, Long> {

    List<ReportEntity> of(Collection<Long> stepIds) {
        return stepIds.isEmpty() ? List.of() : list("stepId in ?1 order by id", stepIds);
    }

    /** The day each person last reported something of these trees, up to a day. */
    public Map<Long, LocalDate> lastBy(
            Collection<Long> personIds, Collection<Long> treeIds, LocalDate until) {
        if (personIds.isEmpty() || treeIds.isEmpty()) {
            return Map.of();
        }
        return getEntityManager()
                .createQuery(
                        """
                        select r.byId, max(r.doneOn) from ReportEntity r
                        where r.stepId in (select s.id from StepEntity s where s.treeId in :trees)
                        and r.byId in :persons and r.doneOn <= :until
                        group by r.byId""",
                        Object[].class)
                .setParameter("trees", treeIds)
                .setParameter("persons", personIds)
                .setParameter("until", until)
                .getResultStream()
                .collect(Collectors.toMap(row -> (Long) row[0], row -> (LocalDate) row[1]));
    }
}
