/** Thermal time, day length, growth stage (BBCH), season windows and hemisphere. */
@NullMarked
package org.ripewood.core.season;

import org.jspecify.annotations.NullMarked;
