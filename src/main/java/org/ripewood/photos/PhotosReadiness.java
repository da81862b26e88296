package org.ripewood.photos;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.time.Duration;
import org.eclipse.microprofile.health.HealthCheck;
import org.eclipse.microprofile.health.HealthCheckResponse;
import org.eclipse.microprofile.health.Readiness;
import org.jboss.logging.Logger;
import org.ripewood.platform.meters.CachedValue;

/** Whether a photo could be kept, by keeping a byte and taking it away again. */
@Readiness
@ApplicationScoped
class PhotosReadiness implements HealthCheck {

    static final String NAME = "writes to the folder of photos";

    private static final Logger LOG = Logger.getLogger(PhotosReadiness.class);

    private static final Duration FRESH = Duration.ofSeconds(20);

    private final PhotoStore store;
    private final CachedValue<HealthCheckResponse> answer = new CachedValue<>(this::ask, FRESH);

    PhotosReadiness(PhotoStore store) {
        this.store = store;
    }

    @Override
    public HealthCheckResponse call() {
        return answer.get();
    }

    private HealthCheckResponse ask() {
        var key = FileKeys.fresh();
        try {
            store.put(key, new byte[1]);
            store.remove(key);
            return HealthCheckResponse.up(NAME);
        } catch (IOException e) {
            LOG.error("The folder of photos takes no files: the service is not ready.", e);
            return HealthCheckResponse.down(NAME);
        }
    }
}
