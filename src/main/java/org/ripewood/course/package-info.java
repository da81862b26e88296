/** Species, techniques, lessons and rubrics, read from course-content and checked. */
@NullMarked
package org.ripewood.course;

import org.jspecify.annotations.NullMarked;
