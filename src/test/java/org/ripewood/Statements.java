package org.ripewood;

import io.quarkus.hibernate.orm.PersistenceUnitExtension;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import org.hibernate.resource.jdbc.spi.StatementInspector;

/** Every statement the service sends to the database, as long as a test listens. */
@PersistenceUnitExtension
@ApplicationScoped
public class Statements implements StatementInspector {

    private volatile boolean listening;
    private final List<String> heard = new ArrayList<>();

    @Override
    public String inspect(String sql) {
        if (listening) {
            synchronized (heard) {
                heard.add(sql);
            }
        }
        return sql;
    }

    /** The statements that something sends, in turn. */
    public List<String> of(Runnable something) {
        synchronized (heard) {
            heard.clear();
        }
        listening = true;
        try {
            something.run();
        } finally {
            listening = false;
        }
        synchronized (heard) {
            return List.copyOf(heard);
        }
    }
}
