package org.ripewood.sites;

import org.jspecify.annotations.Nullable;

/**
 * A site in a list.
 *
 * @param place what is known of it; null for those who may not see where it is
 */
public record SiteLine(long id, String name, @Nullable Site place) {}
