/** Trees, wounds, branches, containers, observations and the work done on them. */
@NullMarked
package org.ripewood.trees;

import org.jspecify.annotations.NullMarked;
