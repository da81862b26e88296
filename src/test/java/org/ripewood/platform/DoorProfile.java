package org.ripewood.platform;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.HashMap;
import java.util.Map;
import org.ripewood.Database;

/**
 * A service with small limits and short patience, behind a proxy that speaks TLS and HTTP/2 with
 * it, which nobody needs and somebody may set.
 */
public class DoorProfile implements QuarkusTestProfile {

    @Override
    public Map<String, String> getConfigOverrides() {
        var settings = new HashMap<String, String>(Database.named("door"));
        settings.put("ripewood.https", "true");
        settings.put("quarkus.http.http2", "true");
        settings.put("ripewood.body.most-of-records", "2M");
        // the framework's own limit, otherwise that of records, holds for photos too
        settings.put("quarkus.http.limits.max-body-size", "64M");
        settings.put("ripewood.body.longest", "PT3S");
        settings.put("quarkus.http.idle-timeout", "5S");
        return settings;
    }
}
