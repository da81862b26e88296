package org.ripewood.photos;

import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.transaction.Transactional;
import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jboss.logging.Logger;

/** Takes away at start what a crash left behind: bytes that no row points to. */
@ApplicationScoped
class OrphanFileCleanup {

    private static final Logger LOG = Logger.getLogger(OrphanFileCleanup.class);

    /** Longer than any upload takes, and any two clocks that share the folder differ. */
    private static final Duration SETTLED = Duration.ofHours(1);

    private static final int AT_ONCE = 500;

    private final PhotoStore store;
    private final PhotoRows rows;

    OrphanFileCleanup(PhotoStore store, PhotoRows rows) {
        this.store = store;
        this.rows = rows;
    }

    /** Files are dated by the machine's clock, whatever day the school is on. */
    @Transactional
    void atStart(@Observes StartupEvent start) {
        sweep(Clock.systemUTC().instant());
    }

    /** Answers how many files were taken away. */
    @Transactional
    int sweep(Instant now) {
        if (rows.count() == 0) {
            // more likely the wrong database, or a folder yet without its own, than only leftovers
            return 0;
        }
        int swept = 0;
        try {
            var keys = store.keptBefore(now.minus(SETTLED));
            for (int from = 0; from < keys.size(); from += AT_ONCE) {
                swept += sweep(keys.subList(from, Math.min(keys.size(), from + AT_ONCE)));
            }
        } catch (IOException e) {
            // leftovers harm nobody; the school opens all the same
            LOG.warn("The folder of photos could not be swept.", e);
        }
        if (swept > 0) {
            LOG.infof("Took away %d files of photos that were never written down.", swept);
        }
        return swept;
    }

    private int sweep(List<String> keys) throws IOException {
        var used = rows.inUse(keys);
        int swept = 0;
        for (var key : keys) {
            if (!used.contains(key)) {
                store.remove(key);
                swept++;
            }
        }
        return swept;
    }
}
