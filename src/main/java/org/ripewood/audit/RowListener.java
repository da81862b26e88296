package org.ripewood.audit;

import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.persistence.EntityManagerFactory;
import org.hibernate.engine.spi.SessionFactoryImplementor;
import org.hibernate.engine.spi.SharedSessionContractImplementor;
import org.hibernate.event.spi.AbstractCollectionEvent;
import org.hibernate.event.spi.EventType;
import org.hibernate.event.spi.PostCollectionRecreateEvent;
import org.hibernate.event.spi.PostCollectionRecreateEventListener;
import org.hibernate.event.spi.PostCollectionRemoveEvent;
import org.hibernate.event.spi.PostCollectionRemoveEventListener;
import org.hibernate.event.spi.PostCollectionUpdateEvent;
import org.hibernate.event.spi.PostCollectionUpdateEventListener;
import org.hibernate.event.spi.PostDeleteEvent;
import org.hibernate.event.spi.PostDeleteEventListener;
import org.hibernate.event.spi.PostInsertEvent;
import org.hibernate.event.spi.PostInsertEventListener;
import org.hibernate.event.spi.PostUpdateEvent;
import org.hibernate.event.spi.PostUpdateEventListener;
import org.hibernate.persister.entity.AbstractEntityPersister;
import org.hibernate.persister.entity.EntityPersister;
import org.ripewood.audit.Change.Kind;

/** Hears of every row that is written by way of an entity, whichever room it belongs to. */
@ApplicationScoped
class RowListener
        implements PostInsertEventListener,
                PostUpdateEventListener,
                PostDeleteEventListener,
                PostCollectionRecreateEventListener,
                PostCollectionUpdateEventListener,
                PostCollectionRemoveEventListener {

    /** Before whoever enters something at start. */
    private static final int FIRST = -1_000;

    private final Ledger ledger;

    RowListener(Ledger ledger) {
        this.ledger = ledger;
    }

    void listen(@Observes @Priority(FIRST) StartupEvent start, EntityManagerFactory factory) {
        var registry = factory.unwrap(SessionFactoryImplementor.class).getEventListenerRegistry();
        registry.appendListeners(EventType.POST_INSERT, this);
        registry.appendListeners(EventType.POST_UPDATE, this);
        registry.appendListeners(EventType.POST_DELETE, this);
        registry.appendListeners(EventType.POST_COLLECTION_RECREATE, this);
        registry.appendListeners(EventType.POST_COLLECTION_UPDATE, this);
        registry.appendListeners(EventType.POST_COLLECTION_REMOVE, this);
    }

    @Override
    public void onPostInsert(PostInsertEvent event) {
        note(event.getSession(), event.getPersister(), Kind.INSERTED, event.getId());
    }

    @Override
    public void onPostUpdate(PostUpdateEvent event) {
        note(event.getSession(), event.getPersister(), Kind.CHANGED, event.getId());
    }

    @Override
    public void onPostDelete(PostDeleteEvent event) {
        note(event.getSession(), event.getPersister(), Kind.REMOVED, event.getId());
    }

    @Override
    public void onPostRecreateCollection(PostCollectionRecreateEvent event) {
        noteOwner(event);
    }

    @Override
    public void onPostUpdateCollection(PostCollectionUpdateEvent event) {
        noteOwner(event);
    }

    @Override
    public void onPostRemoveCollection(PostCollectionRemoveEvent event) {
        noteOwner(event);
    }

    /** Rows of a collection, such as a person's roles, belong to its owner. */
    private void noteOwner(AbstractCollectionEvent event) {
        var owner = event.getAffectedOwnerIdOrNull();
        if (owner != null) {
            var session = event.getSession();
            var persister =
                    session.getFactory()
                            .getMappingMetamodel()
                            .getEntityDescriptor(event.getAffectedOwnerEntityName());
            note(session, persister, Kind.CHANGED, owner);
        }
    }

    private void note(
            SharedSessionContractImplementor session,
            EntityPersister persister,
            Kind kind,
            Object id) {
        if (!persister.getMappedClass().isAnnotationPresent(NotAudited.class)) {
            ledger.of(session).row(table(persister), kind, id instanceof Long known ? known : null);
        }
    }

    static String table(EntityPersister persister) {
        return ((AbstractEntityPersister) persister).getTableName();
    }
}
