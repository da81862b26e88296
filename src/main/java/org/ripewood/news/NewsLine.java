package org.ripewood.news;

import java.time.Instant;

/**
 * Something others did, in a sentence.
 *
 * @param path of the page to look at
 */
public record NewsLine(Instant at, String sentence, String path) {}
