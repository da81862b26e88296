package org.ripewood.trees;

import jakarta.validation.constraints.NotNull;
import java.time.LocalDate;

/**
 * A tree that goes to another keeper.
 *
 * @param since the first day it is the new keeper's
 */
public record HandOver(@NotNull Long keeperId, @NotNull LocalDate since) {}
