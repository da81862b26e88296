/** Which trees of a course are held from what, by what, until when. */
@NullMarked
package org.ripewood.readiness;

import org.jspecify.annotations.NullMarked;
