package org.ripewood.course;

import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithParentName;
import java.nio.file.Path;
import java.util.Optional;

/** Where the course content is read from. */
@ConfigMapping(prefix = "ripewood.content")
interface ContentPlace {

    /** A folder with the school's own content; the content inside the jar when it is not set. */
    @WithParentName
    Optional<Path> folder();
}
