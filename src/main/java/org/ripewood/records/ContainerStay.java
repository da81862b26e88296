package org.ripewood.records;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What a tree stands in since a day: ground, nursery, training or show. */
public record ContainerStay(
        long id,
        long treeId,
        String kind,
        @Nullable String description,
        @Nullable Double litres,
        LocalDate since) {}
