package org.ripewood.platform.http;

import java.nio.file.Path;
import java.util.Set;
import org.eclipse.microprofile.config.spi.ConfigSource;
import org.jspecify.annotations.Nullable;

/**
 * The key that session cookies are sealed with, from the data folder, so that nobody has to sign in
 * again after a restart. Whoever sets the property elsewhere is heard first.
 */
public final class SessionKeySource implements ConfigSource {

    public static final String PROPERTY = "quarkus.http.auth.session.encryption-key";

    /** Below application.properties, system properties and the environment. */
    private static final int ORDINAL = 50;

    private final Path folder;

    SessionKeySource(Path folder) {
        this.folder = folder;
    }

    /** Asked for by name only, so that listing the configuration makes no file. */
    @Override
    public Set<String> getPropertyNames() {
        return Set.of();
    }

    @Override
    public @Nullable String getValue(String propertyName) {
        return propertyName.equals(PROPERTY) ? new SessionKey(folder).read() : null;
    }

    @Override
    public String getName() {
        return "session key in the data folder";
    }

    @Override
    public int getOrdinal() {
        return ORDINAL;
    }
}
