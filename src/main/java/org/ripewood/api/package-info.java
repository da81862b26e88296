/** REST resources and their JSON records. */
@NullMarked
package org.ripewood.api;

import org.jspecify.annotations.NullMarked;
