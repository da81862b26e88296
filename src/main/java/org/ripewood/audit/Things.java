package org.ripewood.audit;

import java.util.List;
import java.util.TreeSet;
import org.hibernate.Session;
import org.hibernate.engine.spi.SessionFactoryImplementor;

/** The tables whose changes are noted. */
final class Things {

    /** Those whose rows have no entity. */
    private static final List<String> WITHOUT_ENTITY = List.of("site_reading");

    private Things() {}

    static List<String> of(Session session) {
        var found = new TreeSet<>(WITHOUT_ENTITY);
        session.getSessionFactory()
                .unwrap(SessionFactoryImplementor.class)
                .getMappingMetamodel()
                .forEachEntityDescriptor(
                        entity -> {
                            if (!entity.getMappedClass().isAnnotationPresent(NotAudited.class)) {
                                found.add(RowListener.table(entity));
                            }
                        });
        return List.copyOf(found);
    }
}
