package org.ripewood.audit;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Optional;
import org.hibernate.Session;
import org.hibernate.engine.spi.SharedSessionContractImplementor;
import org.jspecify.annotations.Nullable;
import org.ripewood.audit.Change.Kind;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Paged;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;

/**
 * Who did what, when and by which door. Rows written by way of entities are noted by themselves;
 * here rooms note what those do not tell.
 */
@ApplicationScoped
@Transactional
public class Audit {

    private final AuditRows rows;
    private final Ledger ledger;
    private final Session session;
    private final Today today;

    Audit(AuditRows rows, Ledger ledger, Session session, Today today) {
        this.rows = rows;
        this.ledger = ledger;
        this.session = session;
        this.today = today;
    }

    /**
     * Notes a deed of the running transaction.
     *
     * @param personId whose deed it is; null for whoever is signed in
     */
    public void note(Deed deed, @Nullable Long personId) {
        ledger.of(session.unwrap(SharedSessionContractImplementor.class)).deed(deed, personId);
    }

    /** Notes rows that are written without an entity. */
    public void noteRows(String thing, Kind kind, int amount) {
        if (amount > 0) {
            ledger.of(session.unwrap(SharedSessionContractImplementor.class))
                    .rows(thing, kind, amount);
        }
    }

    /** Notes a row that something is told of which stands elsewhere. */
    public void noteRow(String thing, Kind kind, long id) {
        ledger.of(session.unwrap(SharedSessionContractImplementor.class)).row(thing, kind, id);
    }

    /** Entries, the latest first; registrars only. */
    public Paged<AuditEntry> entries(Actor actor, AuditQuestion question, PageRequest page) {
        actor.require(Role.REGISTRAR, "read who did what");
        if (question.thing() != null && !things().contains(question.thing())) {
            throw Refused.invalid(
                    "thing",
                    "expected one of %s, found \"%s\""
                            .formatted(String.join(", ", things()), question.thing()));
        }
        var asked = rows.asked(question, today.zone());
        var total = asked.count();
        var found = asked.page(page.page(), page.size()).list();
        var changes = rows.changes(found.stream().map(entry -> entry.id).toList());
        return Paged.of(
                found.stream()
                        .map(
                                entry ->
                                        new AuditEntry(
                                                entry.id,
                                                entry.happenedAt,
                                                entry.personId,
                                                entry.door,
                                                entry.deed,
                                                changes.getOrDefault(entry.id, List.of())))
                        .toList(),
                page,
                total);
    }

    /**
     * Who wrote to a row last. Told to whoever reaches that row, which the caller has asked; the
     * name may be another matter.
     */
    public Optional<LatestChange> latestChange(String thing, long id) {
        return rows.latestOf(thing, id)
                .map(entry -> new LatestChange(entry.personId, entry.happenedAt));
    }

    /** Every thing whose changes are noted, by name. */
    public List<String> things() {
        return Things.of(session);
    }
}
