/** The class day: what each tree does, when and with what, and which lesson fits when. */
@NullMarked
package org.ripewood.classday;

import org.jspecify.annotations.NullMarked;
