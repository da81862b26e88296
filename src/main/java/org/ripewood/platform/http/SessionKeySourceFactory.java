package org.ripewood.platform.http;

import io.smallrye.config.ConfigSourceContext;
import io.smallrye.config.ConfigSourceFactory;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.microprofile.config.spi.ConfigSource;

/** Looks where the data folder is before the configuration is whole. */
public final class SessionKeySourceFactory implements ConfigSourceFactory {

    @Override
    public Iterable<ConfigSource> getConfigSources(ConfigSourceContext context) {
        if (context.getProfiles().contains("test")) {
            // tests leave nothing behind; the framework then makes a key for as long as it runs
            return List.of();
        }
        var folder = context.getValue("ripewood.data").getValue();
        return List.of(new SessionKeySource(Path.of(folder == null ? "data" : folder)));
    }
}
