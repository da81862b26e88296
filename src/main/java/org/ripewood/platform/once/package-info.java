/** Requests that are sent twice and count once. */
@NullMarked
package org.ripewood.platform.once;

import org.jspecify.annotations.NullMarked;
