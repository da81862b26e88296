package org.ripewood.web.kit;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Named;
import java.util.UUID;

/** The key of a form, by which it counts once however often it is sent. */
@Named("onceField")
@ApplicationScoped
public class OnceField {

    static final String NAME = "once";

    /** Another one each time it is asked for. */
    public String key() {
        return UUID.randomUUID().toString();
    }
}
