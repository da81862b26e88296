package org.ripewood.assess;

import io.quarkus.hibernate.orm.panache.PanacheQuery;
import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The rubric judgements kept. */
@ApplicationScoped
class JudgementRows implements PanacheRepositoryBase<JudgementEntity, Long> {

    /** A judgement nobody else can change meanwhile. */
    Optional<JudgementEntity> toChange(long id) {
        return Optional.ofNullable(findById(id, LockModeType.PESSIMISTIC_WRITE));
    }

    /** Those a judge may see: everybody's that are open, and their own; latest first. */
    PanacheQuery<JudgementEntity> seenBy(long judgeId, Judged of) {
        return find(
                of.column()
                        + " = :id and (openedAt is not null or byId = :by) order by judgedOn desc, id desc",
                Map.of("id", of.id(), "by", judgeId));
    }

    /** Of each rubric the latest that is open and not superseded, by rubric. */
    List<JudgementEntity> latest(Judged of) {
        return list(
                ("from JudgementEntity j where j.%1$s = :id"
                                + " and j.openedAt is not null and coalesce(j.supersededBy, 0) = 0"
                                + " and not exists (select 1 from JudgementEntity k"
                                + " where k.%1$s = :id"
                                + " and k.rubric = j.rubric and k.openedAt is not null"
                                + " and coalesce(k.supersededBy, 0) = 0 and (k.judgedOn > j.judgedOn"
                                + " or (k.judgedOn = j.judgedOn and k.id > j.id)))"
                                + " order by j.rubric")
                        .formatted(of.column()),
                Map.of("id", of.id()));
    }

    Optional<JudgementEntity> draft(String draftOf) {
        return find("draftOf", draftOf).firstResultOptional();
    }

    /** Others' signed judgements that wait for a second look since that day, locked. */
    List<JudgementEntity> waiting(Judged of, String rubric, long judgeId, LocalDate since) {
        return find(
                        of.column()
                                + " = :id and rubric = :rubric and byId <> :by and signedAt is not null"
                                + " and openedAt is null and coalesce(supersededBy, 0) = 0"
                                + " and judgedOn >= :since order by id",
                        Map.of("id", of.id(), "rubric", rubric, "by", judgeId, "since", since))
                .withLock(LockModeType.PESSIMISTIC_WRITE)
                .list();
    }

    /**
     * Open ones in force that were judged in a span, for comparing judges; at most so many. Those
     * of made-up trees and people are left out.
     */
    List<JudgementEntity> openBetween(LocalDate from, LocalDate until, int most) {
        return find(
                        "from JudgementEntity j where j.openedAt is not null"
                                + " and coalesce(j.supersededBy, 0) = 0"
                                + " and j.judgedOn between ?1 and ?2"
                                + " and not exists (select 1 from SamplePersonEntity s"
                                + " where s.personId = j.studentId or s.personId ="
                                + " (select t.keeperId from TreeEntity t where t.id = j.treeId))"
                                + " order by j.judgedOn, j.id",
                        from,
                        until)
                .range(0, most)
                .list();
    }
}
