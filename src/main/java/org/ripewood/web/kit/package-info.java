/** What every page is made with. */
@NullMarked
package org.ripewood.web.kit;

import org.jspecify.annotations.NullMarked;
