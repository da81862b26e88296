package org.ripewood.audit;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import javax.sql.DataSource;
import org.eclipse.microprofile.health.HealthCheck;
import org.eclipse.microprofile.health.HealthCheckResponse;
import org.eclipse.microprofile.health.Readiness;
import org.jboss.logging.Logger;
import org.ripewood.platform.meters.CachedValue;

/**
 * Whether the record can be written, by doing so: an entry of the audit, which each change needs,
 * is written and taken back, and a row of its own is written for good, which needs room on the
 * disk.
 */
@Readiness
@ApplicationScoped
class WritesReadiness implements HealthCheck {

    static final String NAME = "writes to the database";

    private static final Logger LOG = Logger.getLogger(WritesReadiness.class);

    /** However many ask; a fault is noticed soon enough, and an idle school's file hardly grows. */
    private static final Duration FRESH = Duration.ofSeconds(20);

    private static final String[] ENTRY_OF_NOTHING = {
        "insert into audit_entry (id, happened_at, door, deed)"
                + " values (-1, current_timestamp, 'trial', 'CHANGED')",
        "insert into audit_change (entry_id, position, thing, kind, amount)"
                + " values (-1, 0, 'write_trial', 'CHANGED', 1)"
    };

    private static final String TRIAL = "update write_trial set tried_at = current_timestamp";

    private final DataSource database;
    private final CachedValue<HealthCheckResponse> answer = new CachedValue<>(this::ask, FRESH);

    WritesReadiness(DataSource database) {
        this.database = database;
    }

    @Override
    public HealthCheckResponse call() {
        return answer.get();
    }

    private HealthCheckResponse ask() {
        try (var connection = database.getConnection()) {
            connection.setAutoCommit(false);
            write(connection);
            return HealthCheckResponse.up(NAME);
        } catch (SQLException e) {
            LOG.error("The database takes no writes: the service is not ready.", e);
            return HealthCheckResponse.down(NAME);
        }
    }

    private static void write(Connection connection) throws SQLException {
        try (var statement = connection.createStatement()) {
            for (var insert : ENTRY_OF_NOTHING) {
                statement.executeUpdate(insert);
            }
            connection.rollback();
            if (statement.executeUpdate(TRIAL) != 1) {
                throw new SQLException("expected one row in write_trial, found none");
            }
            connection.commit();
        } catch (SQLException e) {
            connection.rollback();
            throw e;
        }
    }
}
