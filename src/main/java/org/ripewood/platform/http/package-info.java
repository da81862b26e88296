/** Addresses, answers and headers. */
@NullMarked
package org.ripewood.platform.http;

import org.jspecify.annotations.NullMarked;
