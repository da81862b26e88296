/** Finding by words, for programs. */
@NullMarked
package org.ripewood.api.search;

import org.jspecify.annotations.NullMarked;
