package org.ripewood.audit;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Which entries are asked for; what is null is left open.
 *
 * @param from first day
 * @param to last day
 * @param thing table of rows that were changed
 */
public record AuditQuestion(
        @Nullable Long personId,
        @Nullable LocalDate from,
        @Nullable LocalDate to,
        @Nullable String thing) {}
