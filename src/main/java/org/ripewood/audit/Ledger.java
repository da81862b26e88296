package org.ripewood.audit;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Synchronization;
import jakarta.transaction.TransactionSynchronizationRegistry;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Types;
import java.time.ZoneOffset;
import java.util.List;
import org.hibernate.engine.spi.SharedSessionContractImplementor;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Today;
import org.ripewood.platform.http.RequestOrigin;

/**
 * Writes entries, in the transaction they tell of and just before it ends: what is rolled back was
 * not done, and what was done cannot be kept without its entry.
 */
@ApplicationScoped
class Ledger {

    private static final String ENTRY =
            "insert into audit_entry (id, happened_at, person_id, door, deed)"
                    + " values (nextval('audit_entry_seq'), ?, ?, ?, ?)";
    private static final String CHANGE =
            "insert into audit_change (entry_id, position, thing, kind, first_id, last_id, amount)"
                    + " values (currval('audit_entry_seq'), ?, ?, ?, ?, ?, ?)";

    private final TransactionSynchronizationRegistry transactions;
    private final RequestOrigin doors;
    private final Today today;

    Ledger(TransactionSynchronizationRegistry transactions, RequestOrigin doors, Today today) {
        this.transactions = transactions;
        this.doors = doors;
        this.today = today;
    }

    /** What the running transaction has done; it is written when the session's work is flushed. */
    Collected of(SharedSessionContractImplementor session) {
        if (transactions.getResource(Ledger.class) instanceof Collected known) {
            return known;
        }
        var collected = new Collected();
        transactions.putResource(Ledger.class, collected);
        // after the session's own work before the end, which was told of first
        transactions.registerInterposedSynchronization(new AtTheEnd(session, collected));
        return collected;
    }

    /**
     * Of a transaction rolled back nothing is left over, as a callback of the session's would be.
     */
    private final class AtTheEnd implements Synchronization {

        private final SharedSessionContractImplementor session;
        private final Collected collected;

        AtTheEnd(SharedSessionContractImplementor session, Collected collected) {
            this.session = session;
            this.collected = collected;
        }

        @Override
        public void beforeCompletion() {
            write(session, collected);
            // the session had given its connection back before; what was written took it anew
            session.getJdbcCoordinator().getLogicalConnection().beforeTransactionCompletion();
        }

        @Override
        public void afterCompletion(int status) {
            // what was written went with the transaction
        }
    }

    private void write(SharedSessionContractImplementor session, Collected collected) {
        session.doWork(connection -> write(connection, collected));
    }

    private void write(Connection connection, Collected collected) throws SQLException {
        var deeds = collected.deeds();
        var changes = collected.changes();
        if (changes.isEmpty() && deeds.get(0).deed() == Deed.CHANGED) {
            return;
        }
        var doing = doors.now();
        for (int i = 0; i < deeds.size(); i++) {
            var noted = deeds.get(i);
            var person = noted.personId() == null ? doing.personId() : noted.personId();
            insert(connection, noted.deed(), person, noted.deed().door(doing.door()));
            if (i == 0) {
                insert(connection, changes);
            }
        }
    }

    private void insert(Connection connection, Deed deed, @Nullable Long personId, String door)
            throws SQLException {
        try (var insert = connection.prepareStatement(ENTRY)) {
            insert.setObject(1, today.moment().atOffset(ZoneOffset.UTC));
            insert.setObject(2, personId, Types.BIGINT);
            insert.setString(3, door);
            insert.setString(4, deed.name());
            insert.executeUpdate();
        }
    }

    private static void insert(Connection connection, List<Change> changes) throws SQLException {
        try (var insert = connection.prepareStatement(CHANGE)) {
            for (int i = 0; i < changes.size(); i++) {
                var change = changes.get(i);
                insert.setInt(1, i);
                insert.setString(2, change.thing());
                insert.setString(3, change.kind().name());
                insert.setObject(4, change.firstId(), Types.BIGINT);
                insert.setObject(5, change.lastId(), Types.BIGINT);
                insert.setInt(6, change.amount());
                insert.addBatch();
            }
            insert.executeBatch();
        }
    }
}
