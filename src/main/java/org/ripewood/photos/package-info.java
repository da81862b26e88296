/** Photos of trees: taken in from anywhere, kept as harmless pixels, shown side by side. */
@NullMarked
package org.ripewood.photos;

import org.jspecify.annotations.NullMarked;
