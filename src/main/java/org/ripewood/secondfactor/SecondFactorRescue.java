package org.ripewood.secondfactor;

import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;

/**
 * Takes the second factor from one person at start, for a school whose only registrar lost app and
 * sheet: whoever runs the service says whom.
 */
@ApplicationScoped
class SecondFactorRescue {

    private static final Logger LOG = Logger.getLogger(SecondFactorRescue.class);

    private final SecondFactors factors;
    private final Optional<String> login;

    SecondFactorRescue(
            SecondFactors factors,
            @ConfigProperty(name = "ripewood.second-factor-reset") Optional<String> login) {
        this.factors = factors;
        this.login = login;
    }

    void rescue(@Observes StartupEvent start) {
        login.ifPresent(this::rescue);
    }

    void rescue(String whose) {
        LOG.warnf(
                factors.rescue(whose)
                        ? "The second factor of \"%s\" was reset. Leave RIPEWOOD_SECOND_FACTOR_RESET out"
                                + " from now on."
                        : "RIPEWOOD_SECOND_FACTOR_RESET: nobody signs in as \"%s\" with a second"
                                + " factor. Maybe leave it out.",
                whose);
    }
}
