package org.ripewood.asks;

import org.jspecify.annotations.Nullable;

/**
 * An ask with its tree and who asked, in words.
 *
 * @param answeredBy who answered; null while nobody has
 */
public record AskWaiting(Ask ask, String tree, String student, @Nullable String answeredBy) {}
