/** Places where trees stand, their weather and their seasons. */
@NullMarked
package org.ripewood.sites;

import org.jspecify.annotations.NullMarked;
