/** Pages of courses, sessions and class days. */
@NullMarked
package org.ripewood.web.courses;

import org.jspecify.annotations.NullMarked;
