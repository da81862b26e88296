package org.ripewood.transfer;

import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Actor;

/**
 * What a sample finds at the school it is added to.
 *
 * @param teacher who adds it: a registrar and instructor
 * @param siteId where its trees are to stand; null to enter the site of its files
 */
record Given(Actor teacher, @Nullable Long siteId) {

    /** The login of somebody made up; it tells so, and is nobody's of the demo school. */
    String login(String inTheFiles) {
        return "made-up-" + inTheFiles;
    }
}
