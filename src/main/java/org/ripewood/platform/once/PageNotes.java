package org.ripewood.platform.once;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.transaction.Transactional;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Today;
import org.ripewood.platform.records.TableDescription;
import org.ripewood.platform.records.TableDescriptions;

/**
 * Notes for the next page, kept in the database, so that any node can show them. Each has a random
 * key, is told once, to nobody but the person it is for, and is gone after some minutes.
 */
@ApplicationScoped
@Transactional
public class PageNotes implements TableDescriptions {

    public static final Duration KEPT = Duration.ofMinutes(5);

    private static final int KEY_BYTES = 32;
    private static final int LONGEST = 1000;

    private final EntityManager entityManager;
    private final Today today;
    private final SecureRandom random = new SecureRandom();

    PageNotes(EntityManager entityManager, Today today) {
        this.entityManager = entityManager;
        this.today = today;
    }

    /** Keeps a note, in the transaction of what it tells of, and answers its key. */
    public String keep(long personId, PageNote note) {
        var key = freshKey();
        var now = today.moment();
        query("delete from page_note where said_at < ?")
                .setParameter(1, now.minus(KEPT))
                .executeUpdate();
        query(
                        "insert into page_note (note_key, person_id, said_at, sentence, path, label)"
                                + " values (?, ?, ?, ?, ?, ?)")
                .setParameter(1, key)
                .setParameter(2, personId)
                .setParameter(3, now)
                .setParameter(4, shortened(note.sentence()))
                .setParameter(5, note.path())
                .setParameter(6, note.label())
                .executeUpdate();
        return key;
    }

    /**
     * The note under a key, which is gone then; null for another's, one told already, an old one.
     */
    public @Nullable PageNote take(long personId, String key) {
        List<?> found =
                query(
                                "select sentence, path, label from page_note where note_key = ?"
                                        + " and person_id = ? and said_at >= ?")
                        .setParameter(1, key)
                        .setParameter(2, personId)
                        .setParameter(3, today.moment().minus(KEPT))
                        .getResultList();
        if (found.isEmpty() || !(found.get(0) instanceof Object[] row)) {
            return null;
        }
        var first =
                query("delete from page_note where note_key = ?")
                        .setParameter(1, key)
                        .executeUpdate();
        return first == 1 ? new PageNote(String.valueOf(row[0]), text(row[1]), text(row[2])) : null;
    }

    @Override
    public List<TableDescription> tables() {
        return List.of(
                TableDescription.secret(
                        "page_note", "person_id", "is told once, within five minutes"));
    }

    private String freshKey() {
        var bytes = new byte[KEY_BYTES];
        random.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    private static String shortened(String sentence) {
        return sentence.length() <= LONGEST ? sentence : sentence.substring(0, LONGEST - 1) + "…";
    }

    private Query query(String sql) {
        return entityManager.createNativeQuery(sql);
    }

    private static @Nullable String text(@Nullable Object value) {
        return value == null ? null : value.toString();
    }
}
