/** Pages of stock and of what is calculated for it. */
@NullMarked
package org.ripewood.web.stock;

import org.jspecify.annotations.NullMarked;
