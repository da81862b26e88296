package org.ripewood.platform.once;

import org.jspecify.annotations.Nullable;

/**
 * What a page says once, after a form.
 *
 * @param path of what comes next; null for nothing
 * @param label what the link to it is called
 */
public record PageNote(String sentence, @Nullable String path, @Nullable String label) {}
