/** Pages of sites. */
@NullMarked
package org.ripewood.web.sites;

import org.jspecify.annotations.NullMarked;
