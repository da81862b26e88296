package org.ripewood.asks;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What was asked. */
@ApplicationScoped
class AskRows implements PanacheRepositoryBase<AskEntity, Long> {

    private static final int MOST = 50;

    /** One that nobody else can answer until this transaction ends. */
    Optional<AskEntity> toAnswer(long id) {
        return findByIdOptional(id, LockModeType.PESSIMISTIC_WRITE);
    }

    /** The latest of a tree, at most 50. */
    List<AskEntity> ofTree(long treeId) {
        return find("treeId = ?1 order by id desc", treeId).range(0, MOST - 1).list();
    }

    @Nullable AskEntity open(long treeId, String technique, AskKind kind) {
        return find("openFor", AskEntity.openFor(treeId, technique, kind)).firstResult();
    }

    /**
     * Open ones of trees at the school of these keepers, longest first, at most 50; of all trees
     * when null.
     */
    List<AskEntity> openOf(@Nullable Collection<Long> keepers) {
        var query =
                keepers == null
                        ? find("openFor is not null order by askedAt, id")
                        : find(
                                "openFor is not null and treeId in (select t.id from TreeEntity t"
                                        + " where t.keeperId in ?1 and t.leftOn is null)"
                                        + " order by askedAt, id",
                                keepers);
        return query.range(0, MOST - 1).list();
    }

    /** Whether anything at all waits for an answer. */
    boolean anyOpen() {
        return find("openFor is not null").range(0, 0).firstResult() != null;
    }

    /** What a person asked and was answered since, latest answer first, at most 50. */
    List<AskEntity> answered(long personId, Instant since) {
        return find(
                        "byId = ?1 and id in (select a.askId from AnswerEntity a"
                                + " where a.answeredAt >= ?2) order by id desc",
                        personId,
                        since)
                .range(0, MOST - 1)
                .list();
    }
}
