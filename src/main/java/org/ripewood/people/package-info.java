/** PersonRows and the courses they belong to. */
@NullMarked
package org.ripewood.people;

import org.jspecify.annotations.NullMarked;
