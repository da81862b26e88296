/** CourseRows, sessions and class days, as JSON. */
@NullMarked
package org.ripewood.api.courses;

import org.jspecify.annotations.NullMarked;
