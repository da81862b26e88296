/** Which trees there are, whose they are and who may see them. */
@NullMarked
package org.ripewood.trees;

import org.jspecify.annotations.NullMarked;
