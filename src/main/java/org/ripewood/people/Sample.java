package org.ripewood.people;

import org.jspecify.annotations.Nullable;

/**
 * A made-up course to try the service with.
 *
 * @param siteId the site that was made for it; null when its trees stand at the school's own
 */
public record Sample(long courseId, @Nullable Long siteId) {}
