/** Course content, as JSON. */
@NullMarked
package org.ripewood.api.content;

import org.jspecify.annotations.NullMarked;
