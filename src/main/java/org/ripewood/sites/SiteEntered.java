package org.ripewood.sites;

import org.jspecify.annotations.Nullable;

/** A site, and who entered it; null where that was not yet recorded. */
public record SiteEntered(Site site, @Nullable Long enteredById) {}
