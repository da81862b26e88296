/** The page that finds things by words. */
@NullMarked
package org.ripewood.web.search;

import org.jspecify.annotations.NullMarked;
