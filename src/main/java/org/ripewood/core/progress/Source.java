package org.ripewood.core.progress;

/** Where evidence came from; of two on one day the later in this list outweighs the earlier. */
public enum Source {
    FORECAST,
    DERIVED,
    STUDENT,
    INSTRUCTOR
}
