/** Pages of a tree and its record. */
@NullMarked
package org.ripewood.web.trees;

import org.jspecify.annotations.NullMarked;
