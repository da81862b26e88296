/** Steps given to trees: reported, signed off, sent back, withdrawn. */
@NullMarked
package org.ripewood.steps;

import org.jspecify.annotations.NullMarked;
