package org.ripewood.audit;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Who wrote to a row last, and when.
 *
 * @param personId null for nobody known
 */
public record LatestChange(@Nullable Long personId, Instant at) {}
