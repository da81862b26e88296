package org.ripewood.platform.once;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.PersistenceException;
import jakarta.persistence.Query;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Problems;
import org.ripewood.platform.problems.Refused;

/** Requests answered of late, by who sent them and under which key. */
@ApplicationScoped
class IdempotencyKeyRows {

    static final Duration KEPT = Duration.ofDays(2);

    private static final Logger LOG = Logger.getLogger(IdempotencyKeyRows.class);
    private static final long SECONDS_BETWEEN_CLEANINGS = 3_600;

    private final EntityManager entityManager;
    private final Today today;
    private final boolean onPostgreSql;
    private final AtomicLong cleaned = new AtomicLong();

    IdempotencyKeyRows(
            EntityManager entityManager,
            Today today,
            @ConfigProperty(name = "quarkus.datasource.db-kind") String kind) {
        this.entityManager = entityManager;
        this.today = today;
        this.onPostgreSql = kind.equals("postgresql");
    }

    /**
     * Takes a key. Of two who do so at once the second waits until the first is done, for some
     * seconds: H2 of its own accord, PostgreSQL because it is told to. A key taken already is no
     * fault to either database, so the transaction goes on.
     *
     * @return whether it was free
     * @throws Refused 409 when the first is not done in that time
     */
    boolean begin(long personId, String key, String hash) {
        query(
                        "delete from answered_request where person_id = ? and request_key = ? and begun_at < ?")
                .setParameter(1, personId)
                .setParameter(2, key)
                .setParameter(3, today.moment().minus(KEPT))
                .executeUpdate();
        waitAtMost("'3s'");
        var taken = take(personId, key, hash);
        waitAtMost("default");
        return taken;
    }

    private boolean take(long personId, String key, String hash) {
        try {
            return query(
                                    "insert into answered_request (person_id, request_key,"
                                            + " request_hash, begun_at) values (?, ?, ?, ?)"
                                            + " on conflict do nothing")
                            .setParameter(1, personId)
                            .setParameter(2, key)
                            .setParameter(3, hash)
                            .setParameter(4, today.moment())
                            .executeUpdate()
                    == 1;
        } catch (PersistenceException e) {
            var conflict = Problems.of(e).filter(problem -> problem.status() == 409);
            if (conflict.isPresent()) {
                throw Refused.conflict(
                        "The same request is still being worked on.", "Maybe wait a little.");
            }
            throw e;
        }
    }

    private void waitAtMost(String time) {
        if (onPostgreSql) {
            query("set local lock_timeout to " + time).executeUpdate();
        }
    }

    /** What was answered under a key. */
    IdempotencyKeys.Answered first(long personId, String key, String hash) {
        List<?> found =
                query(
                                "select request_hash, status, location, entity_tag, body from"
                                        + " answered_request where person_id = ? and request_key = ?")
                        .setParameter(1, personId)
                        .setParameter(2, key)
                        .getResultList();
        if (found.isEmpty() || !(found.get(0) instanceof Object[] row) || row[1] == null) {
            throw Refused.conflict(
                    "The same request is still being worked on.", "Maybe wait a little.");
        }
        if (!hash.equals(row[0])) {
            throw new Refused(
                    new Problem(
                            422,
                            "key-used",
                            "This was sent with another content before",
                            "The key %s was used for something else; nothing was saved."
                                    .formatted(key),
                            "Maybe send it again under a fresh key.",
                            List.of()));
        }
        return new IdempotencyKeys.Answered(
                ((Number) row[1]).intValue(), text(row[2]), text(row[3]), text(row[4]));
    }

    void end(long personId, String key, IdempotencyKeys.Answered answer) {
        query(
                        "update answered_request set status = ?, location = ?, entity_tag = ?,"
                                + " body = ? where person_id = ? and request_key = ?")
                .setParameter(1, answer.status())
                .setParameter(2, answer.location())
                .setParameter(3, answer.tag())
                .setParameter(4, answer.kept())
                .setParameter(5, personId)
                .setParameter(6, key)
                .executeUpdate();
    }

    /** Takes away what is older than anybody sends again, now and then. */
    void clean() {
        var now = today.moment();
        long last = cleaned.get();
        if (now.getEpochSecond() - last < SECONDS_BETWEEN_CLEANINGS
                || !cleaned.compareAndSet(last, now.getEpochSecond())) {
            return;
        }
        try {
            QuarkusTransaction.requiringNew()
                    .run(
                            () ->
                                    query("delete from answered_request where begun_at < ?")
                                            .setParameter(1, now.minus(KEPT))
                                            .executeUpdate());
        } catch (RuntimeException e) {
            // what was asked for is done, and the next hour cleans as well
            LOG.warn("Old request keys are left for later.", e);
        }
    }

    private Query query(String sql) {
        return entityManager.createNativeQuery(sql);
    }

    private static @Nullable String text(@Nullable Object value) {
        return value == null ? null : value.toString();
    }
}
