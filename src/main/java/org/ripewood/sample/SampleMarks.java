package org.ripewood.sample;

import io.quarkus.runtime.BlockingOperationControl;
import jakarta.enterprise.context.ApplicationScoped;
import java.sql.SQLException;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import javax.sql.DataSource;
import org.jboss.logging.Logger;

/**
 * Whether what a page is about is made up. While the school has no sample, that alone is asked, and
 * once in ten seconds at most, so that another node shows a change soon; no page is refused for it.
 */
@ApplicationScoped
public class SampleMarks {

    private static final Logger LOG = Logger.getLogger(SampleMarks.class);

    /** Our own choice, as for the name of the school. */
    private static final long FRESH_NANOS = 10_000_000_000L;

    private static final String ANY = "select count(*) from sample_course where course_id <> ?";
    private static final String OF_TREE =
            "select count(*) from sample_person p join tree t on t.keeper_id = p.person_id where ";
    private static final String OF_PERSON =
            "select count(*) from sample_person where person_id = ?";

    /** By the word an address begins with: how many sample rows the thing of that number is of. */
    private static final Map<String, String> ASK =
            Map.of(
                    "courses",
                    "select count(*) from sample_course where course_id = ?",
                    "sessions",
                    "select count(*) from sample_course c join class_session s on s.course_id ="
                            + " c.course_id where s.id = ?",
                    "people",
                    OF_PERSON,
                    "students",
                    OF_PERSON,
                    "sites",
                    "select count(*) from sample_course where site_id = ?",
                    "trees",
                    OF_TREE + "t.id = ?",
                    "steps",
                    OF_TREE + "t.id = (select s.tree_id from step s where s.id = ?)",
                    "photos",
                    OF_TREE + "t.id = (select f.tree_id from photo f where f.id = ?)",
                    "decisions",
                    OF_TREE + "t.id = (select d.tree_id from decision d where d.id = ?)");

    private final DataSource database;
    private final AtomicLong askAgainAt = new AtomicLong(System.nanoTime());
    private volatile boolean any;

    SampleMarks(DataSource database) {
        this.database = database;
    }

    /**
     * Whether a thing is of a sample.
     *
     * @param kind the first word of its address, such as {@code trees}; of any other nothing is
     */
    public boolean isSample(String kind, long id) {
        var ask = ASK.get(kind);
        return ask != null
                && BlockingOperationControl.isBlockingAllowed()
                && isAny()
                && isThere(ask, id);
    }

    private boolean isAny() {
        long due = askAgainAt.get();
        long now = System.nanoTime();
        if (now - due >= 0 && askAgainAt.compareAndSet(due, now + FRESH_NANOS)) {
            any = isThere(ANY, 0);
        }
        return any;
    }

    /** Whoever asks next finds out anew. */
    void forget() {
        askAgainAt.set(System.nanoTime());
    }

    private boolean isThere(String ask, long id) {
        try (var connection = database.getConnection();
                var statement = connection.prepareStatement(ask)) {
            statement.setLong(1, id);
            try (var rows = statement.executeQuery()) {
                return rows.next() && rows.getLong(1) > 0;
            }
        } catch (SQLException e) {
            LOG.warn("Whether a page is of the sample course cannot be read.", e);
            return false;
        }
    }
}
