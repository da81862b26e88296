package org.ripewood.news;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Something that happened, as it is read.
 *
 * @param by name of whoever did it
 * @param tree label of the tree it is about; null for none
 * @param course name of the course it is about; null for none
 * @param thingId the row to look at
 * @param code of a technique or stage, or a day
 */
record NewsRow(
        Instant at,
        String what,
        String by,
        @Nullable Long treeId,
        @Nullable String tree,
        @Nullable String course,
        long thingId,
        String code) {}
