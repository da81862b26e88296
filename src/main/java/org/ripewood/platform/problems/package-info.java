/** What is refused, why, and what is wrong with what was sent. */
@NullMarked
package org.ripewood.platform.problems;

import org.jspecify.annotations.NullMarked;
