/** What was seen, measured and done on trees; nothing in it is overwritten. */
@NullMarked
package org.ripewood.records;

import org.jspecify.annotations.NullMarked;
