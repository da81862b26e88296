/** Pages of photos. */
@NullMarked
package org.ripewood.web.photos;

import org.jspecify.annotations.NullMarked;
