package org.ripewood.school;

import io.quarkus.runtime.BlockingOperationControl;
import jakarta.enterprise.context.ApplicationScoped;
import java.sql.SQLException;
import java.util.concurrent.atomic.AtomicLong;
import javax.sql.DataSource;
import org.jboss.logging.Logger;

/**
 * The name as every page shows it. It is read anew once it is ten seconds old, so that another node
 * shows a change soon; a page is never kept waiting or refused for it.
 */
@ApplicationScoped
public class NameShown {

    private static final Logger LOG = Logger.getLogger(NameShown.class);

    /** Our own choice: nobody waits ten seconds for a heading. */
    private static final long FRESH_NANOS = 10_000_000_000L;

    private static final String ASK = "select name from school where id = 1";

    private final DataSource database;
    private final AtomicLong askAgainAt = new AtomicLong(System.nanoTime());
    private volatile String known = "";

    NameShown(DataSource database) {
        this.database = database;
    }

    /** What the school is called; empty while it has no name. */
    public String name() {
        long due = askAgainAt.get();
        long now = System.nanoTime();
        if (now - due >= 0
                && BlockingOperationControl.isBlockingAllowed()
                && askAgainAt.compareAndSet(due, now + FRESH_NANOS)) {
            ask();
        }
        return known;
    }

    /** Whoever asks next reads it anew. */
    void forget() {
        askAgainAt.set(System.nanoTime());
    }

    private void ask() {
        try (var connection = database.getConnection();
                var statement = connection.createStatement();
                var rows = statement.executeQuery(ASK)) {
            if (rows.next()) {
                known = rows.getString(1);
            }
        } catch (SQLException e) {
            LOG.warn("The name of the school cannot be read; pages show the one before.", e);
        }
    }
}
