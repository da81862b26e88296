/** Tables as the rooms describe them. */
@NullMarked
package org.ripewood.platform.records;

import org.jspecify.annotations.NullMarked;
