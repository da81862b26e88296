package org.ripewood.archive;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.Map;

/** The demo school, entered on a day in May, in a database of its own. */
public class DemoProfile implements QuarkusTestProfile {

    @Override
    public Map<String, String> getConfigOverrides() {
        return Map.of(
                "ripewood.demo",
                "true",
                "ripewood.data",
                "target/archive-demo",
                "ripewood.today",
                "2026-05-20",
                "quarkus.datasource.jdbc.url",
                "jdbc:h2:mem:archive-demo;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH");
    }
}
