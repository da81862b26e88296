/** The years to a goal, and the way through all of this. */
@NullMarked
package org.ripewood.routes;

import org.jspecify.annotations.NullMarked;
