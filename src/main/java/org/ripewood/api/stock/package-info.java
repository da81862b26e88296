/** Stock, as JSON. */
@NullMarked
package org.ripewood.api.stock;

import org.jspecify.annotations.NullMarked;
