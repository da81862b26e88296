/** Pages on which something is done to many trees of a course at once. */
@NullMarked
package org.ripewood.web.many;

import org.jspecify.annotations.NullMarked;
