/** What is refused before a door sees it. */
@NullMarked
package org.ripewood.platform.guards;

import org.jspecify.annotations.NullMarked;
