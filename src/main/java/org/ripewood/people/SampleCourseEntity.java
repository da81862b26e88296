package org.ripewood.people;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** That a course is a made-up sample. */
@Entity
@Table(name = "sample_course")
class SampleCourseEntity {

    @Id Long courseId;

    /** The site made for it; null when its trees stand at the school's own. */
    @Nullable Long siteId;

    long byId;
    Instant addedAt;

    Sample toRecord() {
        return new Sample(courseId, siteId);
    }
}
