package org.ripewood.web.courses;

import io.quarkus.qute.TemplateExtension;
import org.ripewood.sessions.Presence;

/** Whether somebody came, in words. */
@TemplateExtension
final class RollFormat {

    private RollFormat() {}

    static String came(Presence presence) {
        return switch (presence) {
            case CAME -> "Came";
            case LATE -> "Came late";
            case AWAY -> "Did not come";
        };
    }
}
