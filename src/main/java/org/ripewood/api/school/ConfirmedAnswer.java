package org.ripewood.api.school;

import java.time.Instant;

/** Until when nobody is asked for their password again. */
record ConfirmedAnswer(Instant until) {}
