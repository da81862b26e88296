package org.ripewood.core.route;

import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;

/** What a work makes of a fact. */
public record Effect(Fact fact, Value becomes) {}
