/** Years ahead: when each step towards a goal stage is likely to be done, and what it waits for. */
@NullMarked
package org.ripewood.core.route;

import org.jspecify.annotations.NullMarked;
