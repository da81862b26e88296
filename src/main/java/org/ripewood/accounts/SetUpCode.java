package org.ripewood.accounts;

import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.transaction.Transactional;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.concurrent.atomic.AtomicReference;
import org.jboss.logging.Logger;
import org.jspecify.annotations.Nullable;
import org.ripewood.people.PersonRows;

/**
 * The code that shows that whoever sets the school up can read the service's log. A new one at each
 * start while nobody is entered; worthless once somebody is.
 */
@ApplicationScoped
class SetUpCode {

    private static final Logger LOG = Logger.getLogger(SetUpCode.class);

    /** No letters and digits that look alike; 16 of 32 are 80 bits. */
    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ23456789";

    private static final int LENGTH = 16;

    /** After whoever may still enter persons at start. */
    private static final int LAST = 100_000;

    private final PersonRows persons;
    private final AtomicReference<@Nullable String> code = new AtomicReference<>();

    SetUpCode(PersonRows persons) {
        this.persons = persons;
    }

    @Transactional
    void offer(@Observes @Priority(LAST) StartupEvent start) {
        if (persons.count() == 0) {
            LOG.infof("Nobody is entered yet. Open /set-up and give this code: %s", fresh());
        }
    }

    String fresh() {
        var random = new SecureRandom();
        var letters = new StringBuilder();
        for (int i = 0; i < LENGTH; i++) {
            letters.append(i > 0 && i % 4 == 0 ? "-" : "");
            letters.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        code.set(letters.toString());
        return letters.toString();
    }

    /** Compared in constant time. */
    boolean is(String offered) {
        var expected = code.get();
        return expected != null
                && MessageDigest.isEqual(
                        expected.getBytes(StandardCharsets.UTF_8),
                        offered.strip().getBytes(StandardCharsets.UTF_8));
    }
}
