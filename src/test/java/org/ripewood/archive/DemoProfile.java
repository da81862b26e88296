package org.ripewood.archive;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.HashMap;
import java.util.Map;
import org.ripewood.Database;

/** The demo school, entered on a day in May, in a database of its own. */
public class DemoProfile implements QuarkusTestProfile {

    @Override
    public Map<String, String> getConfigOverrides() {
        var settings = new HashMap<String, String>(Database.named("archive-demo"));
        settings.put("ripewood.demo", "true");
        settings.put("ripewood.data", "target/archive-demo");
        settings.put("ripewood.today", "2026-05-20");
        return settings;
    }
}
