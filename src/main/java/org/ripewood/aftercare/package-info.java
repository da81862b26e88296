/** Care after work: what is due from it, by record and content, and what people say of it. */
@NullMarked
package org.ripewood.aftercare;

import org.jspecify.annotations.NullMarked;
