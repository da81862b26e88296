/** What the service measures of itself. */
@NullMarked
package org.ripewood.platform.meters;

import org.jspecify.annotations.NullMarked;
