package org.ripewood.platform.http;

import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Set;
import org.jboss.logging.Logger;
import org.ripewood.platform.Today;
import org.ripewood.platform.meters.Meter;
import org.ripewood.platform.meters.Meters;

/**
 * Writes down what was refused for the sake of safety: who asked, by which door, with which status,
 * and nothing of what was sent (OWASP ASVS 5.0, 16.3.2 and 16.3.3, from memory). So many a minute
 * and no more, or else a stranger could fill the disk.
 */
@ApplicationScoped
public class RefusalLog {

    static final int MOST_A_MINUTE = 60;

    private static final Logger LOG = Logger.getLogger(RefusalLog.class);

    /** Not yours, out of your reach, outdated, without a version, used key, too many. */
    private static final Set<Integer> WRITTEN = Set.of(403, 404, 412, 422, 428, 429);

    private final Today today;
    private final Meters meters;
    private long minute;
    private int written;

    RefusalLog(Today today, Meters meters) {
        this.today = today;
        this.meters = meters;
    }

    /** Notes the answer of a door, if it is one of those. */
    void answered(RoutingContext context, int status) {
        if (WRITTEN.contains(status)) {
            refused(context, status);
        }
    }

    /** Notes a request that was refused, whatever the status, before it came to a door. */
    public void refused(RoutingContext context, int status) {
        meters.count(Meter.REFUSED);
        if (!hasRoom(today.now())) {
            return;
        }
        var doing = RequestOrigin.loggable(context);
        LOG.infof(
                "Refused (status %d): %s at %s",
                status,
                doing.personId() == null ? "nobody known" : "person " + doing.personId(),
                doing.door());
    }

    private synchronized boolean hasRoom(Instant now) {
        long current = now.getEpochSecond() / 60;
        if (current != minute) {
            if (written > MOST_A_MINUTE) {
                LOG.infof("%d more refusals of a minute were not written", written - MOST_A_MINUTE);
            }
            minute = current;
            written = 0;
        }
        return ++written <= MOST_A_MINUTE;
    }

    /** As if a minute had begun; for tests, which share this log with all others. */
    synchronized void beginMinute() {
        written = 0;
    }
}
