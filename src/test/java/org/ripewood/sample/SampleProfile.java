package org.ripewood.sample;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.HashMap;
import java.util.Map;
import org.ripewood.Database;
import org.ripewood.School;

/** A school of its own on a fixed day, with photos in a folder of their own. */
public class SampleProfile implements QuarkusTestProfile {

    @Override
    public Map<String, String> getConfigOverrides() {
        var settings = new HashMap<String, String>(Database.named("sample"));
        settings.put("ripewood.today", School.TODAY.toString());
        settings.put(
                "ripewood.photos.folder",
                "target/sample-photos-" + System.getProperty("ripewood.fork", "1"));
        return settings;
    }
}
