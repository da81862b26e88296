/** What measurements of wounds, trunk and shoots say about a tree. */
@NullMarked
package org.ripewood.core.growth;

import org.jspecify.annotations.NullMarked;
