/** Pages of judgements and of how far judges agree. */
@NullMarked
package org.ripewood.web.judgements;

import org.jspecify.annotations.NullMarked;
