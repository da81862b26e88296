package org.ripewood.web.many;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the address of the page chooses, so that another page can link to it.
 *
 * @param act null while it is yet to be chosen
 * @param tree trees it is done to; null for all of the course
 * @param technique code of the technique that is to be assigned
 * @param fact code of the fact that is to be recorded
 */
record ActAsked(
        @Nullable Act act,
        @Nullable @Size(max = 100) List<@NotNull Long> tree,
        @Nullable @Size(max = 60) String technique,
        @Nullable @Size(max = 60) String fact) {}
