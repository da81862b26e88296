/** Finding by words: trees, people, courses and what is taught, as far as the reader may see. */
@NullMarked
package org.ripewood.search;

import org.jspecify.annotations.NullMarked;
