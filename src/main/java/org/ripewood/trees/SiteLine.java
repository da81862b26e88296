package org.ripewood.trees;

import org.jspecify.annotations.Nullable;

/**
 * A site in a list.
 *
 * @param place what is known of it; null for whoever has no tree of theirs there
 */
public record SiteLine(long id, String name, @Nullable Site place) {}
