package org.ripewood.asks;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.Map;
import java.util.stream.Collectors;

/** The answers. */
@ApplicationScoped
class AnswerRows implements PanacheRepositoryBase<AnswerEntity, Long> {

    /** By what was asked. */
    Map<Long, AnswerEntity> of(Collection<Long> askIds) {
        return askIds.isEmpty()
                ? Map.of()
                : list("askId in ?1", askIds).stream()
                        .collect(Collectors.toMap(answer -> answer.askId, answer -> answer));
    }
}
