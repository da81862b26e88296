/** What is done to many trees of a course at once and belongs to no room that does it to one. */
@NullMarked
package org.ripewood.many;

import org.jspecify.annotations.NullMarked;
